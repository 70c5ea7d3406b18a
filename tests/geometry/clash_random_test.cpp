// The clash search against the kernel's own boolean on real solids: what it calls clear must share
// nothing, what it reports must be what the boolean finds.
#include <gtest/gtest.h>

#include <numbers>

#include "clash_solids.hpp"
#include "spotblue/geometry/clash.hpp"
#include "support/value_parts.hpp"

namespace spotblue {
namespace {

using test::between;
using test::rotated;
using test::shifted;

/// mm3: thinner than 1e-6 mm over all the faces these parts have.
constexpr double kNothing = 0.01;

/// On one axis, a little off it, or anyhow; near enough to meet.
Frame random_pose(std::mt19937& random) {
  const double z = between(random, -45, 45);
  switch (random() % 4) {
    case 0:
      return shifted(0, 0, z);
    case 1:
      return compose(shifted(between(random, -0.4, 0.4), between(random, -0.4, 0.4), z),
                     rotated({1, 0, 0}, between(random, -0.01, 0.01)));
    case 2:
      return compose(shifted(between(random, -50, 50), between(random, -50, 50), z),
                     rotated({0, 0, 1}, between(random, 0, 6)));
    default:
      return compose(shifted(between(random, -40, 40), between(random, -40, 40), z),
                     rotated(unit({between(random, -1, 1), between(random, -1, 1), 0.3}),
                             between(random, 0, 3)));
  }
}

struct Tally {
  int pairs = 0, clear = 0, kernel = 0, clashes = 0, undecided = 0;
};

void judge(Tally& tally, const TopoDS_Shape& a, const TopoDS_Shape& b, const Frame& pose,
           const Frame& world) {
  const Model model = test::solid_model({{a, world}, {b, compose(world, pose)}});
  Seats seats;
  seats.near_pairs.emplace_back(0, 1);
  const ClashReport report = find_clashes(model, seats, {}, {});
  const double truth = test::shared_volume(a, test::moved_solid(b, pose));
  ++tally.pairs;
  tally.kernel += static_cast<int>(report.effort.kernel_pairs);
  if (report.clashes.empty()) {
    ++tally.clear;
    EXPECT_LT(truth, kNothing) << "called clear";
    return;
  }
  const Clash& clash = report.clashes.front();
  ++tally.clashes;
  if (!clash.exact) {
    ++tally.undecided;
    return;
  }
  EXPECT_NEAR(clash.volume, truth, 1e-4 * truth + 1e-6);
  EXPECT_GT(clash.depth, 0.0);
}

TEST(ClashRandom, WhatIsCalledClearSharesNothing) {
  std::mt19937 random(20240611);
  Tally tally;
  for (int i = 0; i < 200; ++i) {
    SCOPED_TRACE(i);
    const TopoDS_Shape a = test::random_solid(random);
    const TopoDS_Shape b = test::random_solid(random);
    const Frame pose = random_pose(random);
    const Frame world = compose(shifted(between(random, -200, 200), 30, -70),
                                rotated(unit({1, 2, 3}), between(random, 0, 6)));
    judge(tally, a, b, pose, world);
  }
  RecordProperty("clear", tally.clear);
  RecordProperty("kernel", tally.kernel);
  RecordProperty("clashes", tally.clashes);
  EXPECT_EQ(tally.undecided, 0);
  EXPECT_GT(tally.clear, 40);
  EXPECT_GT(tally.clashes, 40);
  EXPECT_LT(tally.kernel - tally.clashes, tally.pairs / 10) << "clear pairs that needed the kernel";
}

}  // namespace
}  // namespace spotblue
