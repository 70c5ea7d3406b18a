// Ways in of pins, soft parts and parts in halves, and lines that are none.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>

#include "check/mocked_up.hpp"
#include "spotblue/report/sentence_text.hpp"
#include "support/findings.hpp"

namespace spotblue::mocked_way_in_test {

using test::worded;
using ::testing::HasSubstr;
using ::testing::SizeIs;

// A collar on a shaft, a pin right through both.
constexpr const char* kPinned = R"(
title = "Pinned collar"
[[line]]
name = "shaft line"
[[line]]
name = "pin line"
at = [0, 0, 30]
along = [1, 0, 0]
[[part]]
name = "Shaft"
kind = "turned"
outside = [{ diameter = 20, length = 100 }]
cross_holes = [{ at = 30, diameter = 5.02, through = true }]
[[part]]
name = "Collar"
kind = "turned"
outside = [{ diameter = 36, length = 20 }]
inside = [{ diameter = 20.02, through = true }]
cross_holes = [{ at = 10, diameter = 5.02, through = true }]
[[place]]
part = "Shaft"
line = "shaft line"
at = 0
[[place]]
part = "Collar"
line = "shaft line"
at = 20
)";
constexpr const char* kPin = R"(
[[part]]
name = "Pin"
kind = "turned"
outside = [{ diameter = 5, length = 36 }]
[[place]]
part = "Pin"
line = "pin line"
at = -18
)";

std::string all_steps(const Finding& finding) {
  std::string steps;
  for (const Quantity& quantity : finding.found) {
    steps += quantity.name + ": " + worded(quantity) + "\n";
  }
  return steps;
}

TEST(MockedWayIn, OilHolesThatMeetAreNoLineToGoAlong) {
  const auto ways = test::of_kind(test::checked(kPinned, ""), "way in");
  ASSERT_THAT(ways, SizeIs(1));
  EXPECT_EQ(ways[0].outcome, Outcome::conforming) << all_steps(ways[0]);
}

TEST(MockedWayIn, ACrossPinGoesInOnceWhatItPinsStands) {
  const auto ways = test::of_kind(test::checked(std::string(kPinned) + kPin, ""), "way in");
  ASSERT_THAT(ways, SizeIs(2));
  EXPECT_EQ(ways[0].outcome, Outcome::conforming) << all_steps(ways[0]);
  // Whether it passes the saddles where its hole comes out is not told by rings about its line.
  EXPECT_NE(ways[1].outcome, Outcome::nonconforming) << all_steps(ways[1]);
  EXPECT_THAT(all_steps(ways[0]), HasSubstr("step_1: Collar over Shaft"));
  EXPECT_THAT(all_steps(ways[0]), HasSubstr("step_2: Pin into"));
  EXPECT_THAT(all_steps(ways[1]), HasSubstr("together_before"));
}

// The edge between chamfer and keyway is a hyperbola: the keyway's sides are known but for a slack,
// which must not close a bore with 0.013 to spare.
TEST(MockedWayIn, AKeyedHubWithAChamferedBoreGoesOn) {
  const auto ways = test::of_kind(test::checked(R"(
title = "Keyed pulley"
[[part]]
name = "Shaft"
kind = "turned"
outside = [
  { name = "journal", diameter = 20, length = 30 },
  { name = "seat", diameter = 15.995, length = 30 },
]
keyseats = [{ at = 33, length = 20, width = 4.99, depth = 3 }]
[[part]]
name = "Key"
kind = "key"
width = 4.985
height = 5
length = 18
[[part]]
name = "Pulley"
kind = "turned"
outside = [{ diameter = 60, length = 28 }]
inside = [{ diameter = 16.008, through = true, chamfer_start = 1, chamfer_end = 0.5 }]
keyways = [{ width = 5.0, depth = 2.3, bore = 16.008 }]
[[place]]
part = "Shaft"
at = 0
[[place]]
part = "Pulley"
at = 30
[[place]]
part = "Key"
keyseat_of = "Shaft"
)",
                                                ""),
                                  "way in");
  ASSERT_THAT(ways, SizeIs(1));
  EXPECT_EQ(ways[0].outcome, Outcome::conforming) << all_steps(ways[0]) << text_of(ways[0].advice);
}

// A ring between two shoulders of 30 on a barrel of 20.
std::string ringed_spool(const std::string& parts) {
  const auto ways = test::of_kind(test::checked(R"(
title = "Spool"
[[part]]
name = "Spool"
kind = "turned"
outside = [
  { diameter = 30, length = 10 },
  { diameter = 20, length = 30 },
  { diameter = 30, length = 10 },
]
[[part]]
name = "Ring"
kind = "ring"
outside = 40
inside = 20.05
thickness = 12
[[place]]
part = "Spool"
at = 0
[[place]]
part = "Ring"
at = 20
)",
                                                parts),
                                  "way in");
  return ways.empty() ? "" : std::string(word_of(ways.front().outcome));
}

TEST(MockedWayIn, APartInHalvesPassesWhereItIsDeclared) {
  EXPECT_EQ(ringed_spool(""), "nonconforming");
  EXPECT_EQ(ringed_spool("[[parts]]\npart = \"Ring\"\nsplit = true\n"), "conforming");
}

TEST(MockedWayIn, AFeltPassesWhereItsMaterialIsDeclared) {
  EXPECT_EQ(ringed_spool("[[parts]]\npart = \"Ring\"\nmaterial = \"felt\"\n"), "conforming");
}

}  // namespace spotblue::mocked_way_in_test
