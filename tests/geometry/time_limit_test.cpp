// A look that is given so much time ends with what it found, and names what it did not look at.

#include "base/time_limit.hpp"

#include <gmock/gmock.h>

#include <algorithm>
#include <chrono>
#include <string>
#include <vector>

#include "clash_solids.hpp"
#include "geometry/exact_overlap.hpp"
#include "spotblue/base/stop.hpp"
#include "spotblue/geometry/look.hpp"
#include "support/value_parts.hpp"

namespace spotblue {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

Model two_bars_that_clash() {
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
  EXPECT_THROW(stop_if_asked(), TimeUp);
  EXPECT_FALSE(done_in_time([] { stop_if_asked(); }));
}

TEST(TimeLimit, ALookWithoutTimeNamesEachThingItDidNotLookAt) {
  LookSettings settings;
  settings.seconds = 1e-9;
  const Look look = look_at(two_bars_that_clash(), settings);
  EXPECT_THAT(look.clash.clashes, IsEmpty());
  ASSERT_THAT(look.not_looked_at, testing::Not(IsEmpty()));
  EXPECT_THAT(look.not_looked_at.front().text, HasSubstr("the time given was up"));
}

TEST(TimeLimit, ALookWithTimeNamesNone) {
  LookSettings settings;
  settings.seconds = 100.0;
  const Look look = look_at(two_bars_that_clash(), settings);
  EXPECT_THAT(look.clash.clashes, SizeIs(1));
  EXPECT_THAT(look.not_looked_at, IsEmpty());
}

// Pairs that the child came to are decided, the others are not said to be clear.
TEST(TimeLimit, SolidsThatWereNotComparedAreSaidToBeSo) {
  const Model model = two_bars_that_clash();
  proof::OpenPair pair;
  pair.product_b = 1;
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

}  // namespace
}  // namespace spotblue
