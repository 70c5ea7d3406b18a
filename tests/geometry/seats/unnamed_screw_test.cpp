// What overlaps its hole as deep as a screw of that size does, and is no thread of the tables.

#include "geometry/seats/unnamed_screw.hpp"

#include <gtest/gtest.h>

#include "support/shape_model.hpp"

namespace spotblue::unnamed_screw_test {

using namespace testing;

std::optional<UnnamedThread> of(double hole, double screw, double engaged = 10.0) {
  const Model model = model_of({{"Plate", tube(hole + 30.0, hole, 0, 20), {}},
                                {"Screw", rod(screw, 20.0 - engaged, 60), {}}});
  return unnamed_thread(model.products[0], model.products[1], {}, SeatSettings{});
}

TEST(UnnamedScrew, IsOneThatNoThreadOfTheTablesHas) {
  for (const auto& [hole, screw] : {std::pair(3.1, 3.7), std::pair(19.5, 21.0)}) {
    const auto found = of(hole, screw);
    ASSERT_TRUE(found) << screw;
    EXPECT_TRUE(found->hole_first);
    EXPECT_EQ(found->thread, "");
  }
}

TEST(UnnamedScrew, IsNoPressFitThatIsTooTight) {
  EXPECT_FALSE(of(49.48, 50.0));
  EXPECT_FALSE(of(69.25, 70.0));
  EXPECT_FALSE(of(19.85, 20.0));
}

TEST(UnnamedScrew, IsNothingDeeperThanAScrewOfItsSize) {
  EXPECT_FALSE(of(40.0, 50.0));
  EXPECT_FALSE(of(2.2, 4.5));
}

TEST(UnnamedScrew, IsNothingGreaterThanTheTablesReach) { EXPECT_FALSE(of(394.0, 400.0)); }

TEST(UnnamedScrew, NamesTheThreadOfWhichLessThanATurnIsEngaged) {
  const auto found = of(8.5, 10.0, 1.0);
  ASSERT_TRUE(found);
  EXPECT_EQ(found->thread, "M10");
  EXPECT_FALSE(of(8.5, 10.0, 3.0));
}

}  // namespace spotblue::unnamed_screw_test
