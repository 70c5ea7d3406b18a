// What metal beyond a joint's ends does, against the theory of long tubes and on made-up parts.

#include "group/rings/beyond_joint.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "support/value_parts.hpp"

namespace spotblue::beyond_joint_test {

RadialSeat pressed(double from, double to) {
  RadialSeat joint;
  joint.axis = {{0, 0, 0}, {0, 0, 1}};
  joint.from = from;
  joint.to = to;
  return joint;
}
Ring tube(double inner, double outer) {
  Ring ring{inner, outer, {}};
  ring.material.poisson_ratio = 0.3;
  return ring;
}

// A tube 48/52 of a mean radius of 25 and a wall of 2, far longer than what is pressed: in the
// middle of 2 a it gives 1 - exp(-beta a) cos(beta a) of what it does pressed all along.
TEST(BeyondJoint, BoundsWhatALongTubeGivesWherePressedOverAPart) {
  const Model model = test::placed_model({{test::ring_part(24, 26, -500, 500), {}}});
  const double beta = std::pow(3.0 * (1.0 - 0.3 * 0.3), 0.25) / std::sqrt(25.0 * 2.0);
  for (double a = 0.5; a < 60.0; a *= 1.1) {
    const Interval stiffness =
        stiffness_beyond(model, OccurrenceId(0), pressed(-a, a), tube(48, 52));
    const double gives = 1.0 - std::exp(-beta * a) * std::cos(beta * a);
    // Over a long joint, where what lies beyond is taken as none, the wave is less than this.
    constexpr double kSmallWave = 0.01;
    EXPECT_LE(1.0 / stiffness.high, gives + kSmallWave) << a;
    EXPECT_GE(1.0 / stiffness.low, gives - kSmallWave) << a;
  }
}

TEST(BeyondJoint, IsNothingWhereThePartEndsWithTheJoint) {
  const Model model = test::placed_model({{test::ring_part(24, 26, 10, 30), {}}});
  const Interval stiffness =
      stiffness_beyond(model, OccurrenceId(0), pressed(10, 30), tube(48, 52));
  EXPECT_EQ(stiffness, (Interval{1.0, 1.0}));
}

// 5 beyond the one end and nothing beyond the other: as one ring 25 instead of 20 long.
TEST(BeyondJoint, ALittleMetalCountsAsOneRingWithTheRest) {
  const Model model = test::placed_model({{test::ring_part(24, 26, 5, 30), {}}});
  EXPECT_NEAR(stiffness_beyond(model, OccurrenceId(0), pressed(10, 30), tube(48, 52)).high, 1.25,
              1e-12);
}

}  // namespace spotblue::beyond_joint_test
