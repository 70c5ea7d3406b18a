// A look that is given so much time or memory ends with what it found, and names what it did not
// look at.

#include "base/work_limit.hpp"

#include <gmock/gmock.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <new>
#include <string>
#include <thread>
#include <vector>

#include "base/machine_memory.hpp"
#include "geometry/fouls/exact_overlap.hpp"
#include "geometry/fouls/foul_solids.hpp"
#include "spotblue/base/stop.hpp"
#include "spotblue/geometry/look.hpp"
#include "support/value_parts.hpp"

namespace spotblue::work_limit_test {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

Model two_bars_that_foul() {
  return test::solid_model(
      {{test::bar_solid(0, 10, 0, 20), {}}, {test::bar_solid(0, 8, 15, 30), {}}});
}

TEST(TimeLimit, NoneSetLeavesAllTheTimeThereIs) {
  EXPECT_GT(seconds_left(), 1e18);
  EXPECT_NO_THROW(stop_if_asked());
}

TEST(TimeLimit, TheEarlierOfTwoHoldsAndTheOuterComesBack) {
  const TimeLimit outer(1000.0);
  {
    const TimeLimit inner(1.0);
    const TimeLimit longer(500.0);
    EXPECT_LE(seconds_left(), 1.0);
  }
  EXPECT_GT(seconds_left(), 900.0);
}

TEST(TimeLimit, PastItWorkEnds) {
  const TimeLimit limit(0.0);
  while (seconds_left() >= 0.0) {
  }
  EXPECT_THROW(stop_if_asked(), LimitReached);
  EXPECT_FALSE(done_within_limits([] { stop_if_asked(); }));
}

TEST(TimeLimit, ALookWithoutTimeNamesEachThingItDidNotLookAt) {
  LookSettings settings;
  settings.seconds = 1e-9;
  const Look look = look_at(two_bars_that_foul(), settings);
  EXPECT_THAT(look.fouls.found, IsEmpty());
  ASSERT_THAT(look.not_looked_at, testing::Not(IsEmpty()));
  EXPECT_THAT(look.not_looked_at.front().text, HasSubstr("the time given was up"));
}

TEST(TimeLimit, ALookWithTimeNamesNone) {
  LookSettings settings;
  settings.seconds = 100.0;
  const Look look = look_at(two_bars_that_foul(), settings);
  EXPECT_THAT(look.fouls.found, SizeIs(1));
  EXPECT_THAT(look.not_looked_at, IsEmpty());
}

// Bytes that are there and touched.
std::vector<char> taken(std::size_t bytes) { return std::vector<char>(bytes, 'x'); }

TEST(MemoryLimit, NoneSetLeavesAllThereIs) { EXPECT_GT(memory_mb_left(), 1e18); }

TEST(MemoryLimit, EndsWorkOnceTheProcessHasGrownByIt) {
  const MemoryLimit limit(50.0);
  EXPECT_NO_THROW(stop_if_asked());
  const std::vector<char> much = taken(150'000'000);
  std::this_thread::sleep_for(std::chrono::milliseconds(10));
  EXPECT_THROW(stop_if_asked(), LimitReached);
  EXPECT_EQ(limit_reached(), Bound::memory);
  EXPECT_THAT(why_not_done(), HasSubstr("the memory given was used up"));
  EXPECT_EQ(much.back(), 'x');
}

TEST(MemoryLimit, WhatIsPromisedCountsAsTaken) {
  const MemoryLimit limit(100.0);
  promise_memory(60e6);
  EXPECT_FALSE(memory_is_up());
  promise_memory(60e6);
  EXPECT_TRUE(memory_is_up());
  EXPECT_GE(memory_mb_taken(), 119.0);
}

TEST(MemoryLimit, TheTighterOfTwoHoldsAndTheOuterComesBack) {
  const MemoryLimit outer(1000.0);
  {
    const MemoryLimit inner(100.0);
    const MemoryLimit wider(500.0);
    EXPECT_LE(memory_mb_left(), 101.0);
    promise_memory(200e6);
    EXPECT_TRUE(memory_is_up());
  }
  EXPECT_FALSE(memory_is_up());
  EXPECT_LE(memory_mb_left(), 801.0) << "what was promised within it is still to come";
}

TEST(MemoryLimit, NeverGivesMoreThanTheMachineHas) {
  const MemoryLimit limit(1e12);
  EXPECT_LE(memory_mb_left(), machine_memory_left_mb() * 1.1);
  promise_memory(1e18);
  EXPECT_TRUE(memory_is_up());
  EXPECT_EQ(limit_reached(), Bound::machine);
  EXPECT_THAT(why_not_done(), HasSubstr("the machine had no more memory"));
}

TEST(MemoryLimit, MemoryThatWasNotToBeHadIsItsEnd) {
  const MemoryLimit limit(1000.0);
  EXPECT_EQ(ended_by([] { throw std::bad_alloc(); }), Bound::memory);
  EXPECT_FALSE(done_within_limits([] { stop_if_asked(); }));
}

TEST(MemoryLimit, ALookWithoutMemoryNamesEachPairItDidNotLookAt) {
  LookSettings settings;
  settings.limits.memory_mb = 1e-6;
  const Look look = look_at(two_bars_that_foul(), settings);
  EXPECT_THAT(look.fouls.found, IsEmpty());
  ASSERT_THAT(look.not_looked_at, testing::Not(IsEmpty()));
  EXPECT_THAT(look.not_looked_at.front().text, HasSubstr("the memory given was used up"));
  EXPECT_FALSE(look.machine_lacked);
}

TEST(LookBounds, StandInPlaceOfTheSettingsOwnLimits) {
  const LookSettings settings = bounded({}, {.seconds = 300.0, .memory_mb = 50.0});
  EXPECT_EQ(settings.seconds, 300.0);
  EXPECT_EQ(settings.limits.seconds, 300.0);
  EXPECT_EQ(settings.limits.memory_mb, 50.0);
  EXPECT_EQ(bounded({}, {}).limits.memory_mb, ReadLimits{}.memory_mb);
}

TEST(LookBounds, NoneOfNoneOrOfNoNumber) {
  for (const double none : {0.0, -1.0, std::nan("")}) {
    EXPECT_THROW((void)bounded({}, {.seconds = none, .memory_mb = {}}), Error);
    EXPECT_THROW((void)bounded({}, {.seconds = {}, .memory_mb = none}), Error);
  }
}

// Pairs that the child came to are decided, the others are not said to be clear.
TEST(TimeLimit, SolidsThatWereNotComparedAreSaidToBeSo) {
  const Model model = two_bars_that_foul();
  proof::OpenPair pair;
  pair.product_b = ProductId(1);
  const std::vector<proof::OpenPair> pairs(3000, pair);
  const auto start = std::chrono::steady_clock::now();
  std::vector<proof::Overlap> overlaps;
  {
    const TimeLimit limit(1.0);
    overlaps = proof::exact_overlaps(model.shapes.get(), pairs, {});
  }
  EXPECT_LT(std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count(), 2.0);
  const auto count = [&](proof::Overlap::State state) {
    return std::count_if(overlaps.begin(), overlaps.end(),
                         [&](const proof::Overlap& one) { return one.state == state; });
  };
  EXPECT_GT(count(proof::Overlap::State::shared), 0);
  EXPECT_GT(count(proof::Overlap::State::not_looked_at), 0);
  EXPECT_EQ(count(proof::Overlap::State::clear), 0);
}

}  // namespace spotblue::work_limit_test
