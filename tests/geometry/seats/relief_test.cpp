// A groove's floor between two lands that stand nearer to the same mate is no seat.

#include <gtest/gtest.h>

#include <cmath>

#include "spotblue/geometry/seats.hpp"
#include "support/shape_model.hpp"

namespace spotblue::relief_test {

using namespace testing;

std::vector<RadialSeat> radial_of(const std::vector<PlacedShape>& parts) {
  return find_seats(model_of(parts), SeatSettings{}).radial;
}

// A shaft 20 with a groove to `floor` from z 10 to 14.
TopoDS_Shape grooved(double floor) { return cut(rod(20, 0, 30), tube(30, floor, 10, 14)); }

// A ring of bore 20 with a groove to `floor` from z 10 to 14.
TopoDS_Shape undercut(double floor) { return cut(tube(50, 20, 0, 30), rod(floor, 10, 14)); }

TEST(GrooveFloor, InAShaftBetweenTwoLandsIsNoSeat) {
  for (const double floor : {19.9, 19.0, 18.1}) {
    const auto seats =
        radial_of({{"Bush", tube(40, 20.02, -5, 35), {}}, {"Shaft", grooved(floor), {}}});
    ASSERT_EQ(seats.size(), 1U) << floor;
    EXPECT_NEAR(seats[0].clearance, 0.02, 1e-9);
    EXPECT_NEAR(seats[0].engaged, 26.0, 1e-9);
  }
}

TEST(GrooveFloor, InAHoleBetweenTwoLandsIsNoSeat) {
  for (const double floor : {20.1, 21.0, 21.9}) {
    const auto seats =
        radial_of({{"Ring", undercut(floor), {}}, {"Shaft", rod(19.98, -5, 35), {}}});
    ASSERT_EQ(seats.size(), 1U) << floor;
    EXPECT_NEAR(seats[0].clearance, 0.02, 1e-9);
    EXPECT_NEAR(seats[0].engaged, 26.0, 1e-9);
  }
}

TEST(GrooveFloor, BetweenLandsOfUnlikeSizesIsNoSeat) {
  const TopoDS_Shape shaft =
      cut(cut(rod(20, 0, 30), tube(30, 19.96, 14, 31)), tube(30, 18.6, 10, 14));
  const auto seats = radial_of({{"Bush", tube(40, 20.02, -5, 35), {}}, {"Shaft", shaft, {}}});
  EXPECT_EQ(seats.size(), 2U);
}

TEST(GrooveFloor, BetweenPressedLandsIsNoSeat) {
  EXPECT_EQ(radial_of({{"Bush", tube(40, 19.96, -5, 35), {}}, {"Shaft", grooved(19.2), {}}}).size(),
            1U);
}

TEST(GrooveFloor, OfAPairOffItsAxisIsNoSeat) {
  Frame off;
  off.rows[0][3] = 0.004;
  EXPECT_EQ(
      radial_of({{"Bush", tube(40, 20.02, -5, 35), {}}, {"Shaft", grooved(19.0), off}}).size(), 1U);
}

// What runs free beside one land only may be a journal of its own.
TEST(Journal, BesideOneLandIsASeat) {
  const TopoDS_Shape shaft = cut(rod(20, 0, 30), tube(30, 19.0, 14, 31));
  EXPECT_EQ(radial_of({{"Bush", tube(40, 20.02, -5, 35), {}}, {"Shaft", shaft, {}}}).size(), 2U);
}

// The lands run in other parts: of this hole the middle is the nearest.
TEST(Journal, BetweenLandsInOtherPartsIsASeat) {
  const auto seats = radial_of({{"Left", tube(40, 20.02, 0, 9), {}},
                                {"Middle", tube(40, 19.02, 10.5, 13.5), {}},
                                {"Right", tube(40, 20.02, 15, 30), {}},
                                {"Shaft", grooved(19.0), {}}});
  EXPECT_EQ(seats.size(), 3U);
}

TEST(Journal, NearerThanTheLandsBesideItIsASeat) {
  const TopoDS_Shape shaft =
      cut(cut(rod(20, 0, 30), tube(30, 19.5, -1, 10)), tube(30, 19.5, 14, 31));
  const auto seats = radial_of({{"Bush", tube(40, 20.02, -5, 35), {}}, {"Shaft", shaft, {}}});
  EXPECT_EQ(seats.size(), 3U);
}

}  // namespace spotblue::relief_test
