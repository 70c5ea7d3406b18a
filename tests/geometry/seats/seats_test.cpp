#include "spotblue/geometry/seats.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "support/shape_model.hpp"

namespace spotblue::seats_test {

using namespace testing;

constexpr double kPi = std::numbers::pi;

Frame moved(double x, double y, double z) {
  Frame frame;
  frame.rows[0][3] = x;
  frame.rows[1][3] = y;
  frame.rows[2][3] = z;
  return frame;
}

Frame tilted(double angle) {
  Frame frame;
  frame.rows = {{{std::cos(angle), 0, std::sin(angle), 0},
                 {0, 1, 0, 0},
                 {-std::sin(angle), 0, std::cos(angle), 0}}};
  return frame;
}

Seats seats_of(const std::vector<PlacedShape>& parts) {
  return find_seats(model_of(parts), SeatSettings{});
}

TEST(RadialSeat, OverlappingABitIsAPressFitWithNegativeClearance) {
  const Seats seats =
      seats_of({{"Hub", tube(80, 44, 0, 30), {}}, {"Bush", tube(44.05, 36, 0, 30), {}}});
  ASSERT_EQ(seats.radial.size(), 1U);
  EXPECT_NEAR(seats.radial[0].clearance, -0.05, 1e-9);
  EXPECT_NEAR(seats.radial[0].least_gap, -0.025, 1e-9);
  EXPECT_NEAR(seats.radial[0].engaged, 30.0, 1e-9);
  EXPECT_NEAR(seats.radial[0].coverage, 2.0 * kPi, 1e-9);
}

TEST(RadialSeat, AShaftInABushInAHubMakesTwoSeatsHoweverThinTheBush) {
  for (const double wall : {4.0, 0.5, 0.2}) {
    const double bore = 44.02 - 2.0 * wall;
    const Seats seats = seats_of({{"Hub", tube(80, 44, 0, 30), {}},
                                  {"Bush", tube(44.02, bore, 0, 30), {}},
                                  {"Shaft", rod(bore - 0.04, -20, 50), {}}});
    EXPECT_EQ(seats.radial.size(), 2U) << "wall " << wall;
  }
}

TEST(RadialSeat, WhatASleeveLeavesOpenIsTheEngagedLength) {
  const Seats seats = seats_of({{"Hub", tube(80, 44, 0, 30), {}},
                                {"Ring", tube(44.0, 42.6, 0, 10), {}},
                                {"Shaft", rod(42.5, -20, 50), {}}});
  ASSERT_EQ(seats.radial.size(), 3U);
  // Hub and shaft face each other only above the ring.
  EXPECT_NEAR(seats.radial[1].engaged, 20.0, 1e-9);
}

TEST(RadialSeat, AnOffsetShaftTouchesWhereTheGapIsLeast) {
  const Seats seats = seats_of(
      {{"Hub", tube(80, 44, 0, 30), {}}, {"Shaft", rod(43.9, -20, 50), moved(0.03, 0.04, 0)}});
  ASSERT_EQ(seats.radial.size(), 1U);
  EXPECT_NEAR(seats.radial[0].offset, 0.05, 1e-9);
  EXPECT_NEAR(seats.radial[0].least_gap, 0.0, 1e-9);
}

TEST(RadialSeat, ATiltedShaftIsAnEllipseInTheHole) {
  const double angle = 0.002;
  const Seats seats =
      seats_of({{"Hub", tube(80, 44, -15, 15), {}}, {"Shaft", rod(43.9, -50, 50), tilted(angle)}});
  ASSERT_EQ(seats.radial.size(), 1U);
  EXPECT_NEAR(seats.radial[0].tilt, angle, 1e-12);
  EXPECT_NEAR(seats.radial[0].offset, 0.0, 1e-9);
  // At the ends the axis is off by 15 tan(a), and the section's long half-axis is r / cos(a).
  const double most = 15.0 * std::tan(angle) + 21.95 / std::cos(angle);
  EXPECT_NEAR(seats.radial[0].least_gap, 22.0 - most, 1e-9);
}

TEST(RadialSeat, AHoleInTwoCheeksMakesOneSeatWithBothLengths) {
  const TopoDS_Shape fork = cut(cut(block(40, 40, 0, 50), block(60, 60, 20, 30)), rod(16, -1, 51));
  const Seats seats = seats_of({{"Fork", fork, {}}, {"Pin", rod(15.98, -5, 55), {}}});
  ASSERT_EQ(seats.radial.size(), 1U);
  EXPECT_NEAR(seats.radial[0].engaged, 40.0, 1e-9);
}

TEST(RadialSeat, AGapJustOverTheLimitIsNoSeat) {
  EXPECT_EQ(
      seats_of({{"Hub", tube(80, 40, 0, 30), {}}, {"Shaft", rod(37.99, 0, 30), {}}}).radial.size(),
      0U);
  EXPECT_EQ(
      seats_of({{"Hub", tube(80, 40, 0, 30), {}}, {"Shaft", rod(38.01, 0, 30), {}}}).radial.size(),
      1U);
}

TEST(Thread, AScrewInATappedHoleIsNoFoulAndNoPressFit) {
  const Seats seats = seats_of(
      {{"Plate", cut(block(60, 60, 0, 20), rod(8.5, -1, 21)), {}}, {"Screw", rod(10, -2, 25), {}}});
  EXPECT_EQ(seats.radial.size(), 0U);
  ASSERT_EQ(seats.threads.size(), 1U);
  EXPECT_EQ(seats.threads[0].size, "M10");
  EXPECT_NEAR(seats.threads[0].engaged, 20.0, 1e-9);
}

TEST(AxialSeat, IsTheAnnulusBothFacesShare) {
  const Seats seats =
      seats_of({{"Hub", tube(80, 44, 0, 30), {}}, {"Washer", tube(60, 40, 30.1, 33), {}}});
  ASSERT_EQ(seats.axial.size(), 1U);
  EXPECT_NEAR(seats.axial[0].gap, 0.1, 1e-9);
  EXPECT_NEAR(seats.axial[0].inner.value(), 44.0, 1e-9);
  EXPECT_NEAR(seats.axial[0].outer.value(), 60.0, 1e-9);
  EXPECT_NEAR(seats.axial[0].area, kPi / 4.0 * (60.0 * 60.0 - 44.0 * 44.0), 1e-9);
  EXPECT_TRUE(seats.axial[0].centre_line);
}

TEST(AxialSeat, AWasherBetweenTwoFacesLeavesNoSeatOfTheTwo) {
  const Seats seats = seats_of({{"Hub", tube(80, 44, 0, 30), {}},
                                {"Washer", tube(80, 44, 30, 31.5), {}},
                                {"Collar", tube(80, 44, 31.5, 40), {}}});
  EXPECT_EQ(seats.axial.size(), 2U);
}

TEST(AxialSeat, OverlapIsANegativeGap) {
  const Seats seats =
      seats_of({{"Hub", tube(80, 44, 0, 30), {}}, {"Collar", tube(70, 44, 29.8, 40), {}}});
  ASSERT_EQ(seats.axial.size(), 1U);
  EXPECT_NEAR(seats.axial[0].gap, -0.2, 1e-9);
}

TEST(WidthSeat, AKeyInItsKeyseatIsOneSeatNotTwoGaps) {
  const TopoDS_Shape slot = BRepPrimAPI_MakeBox(gp_Pnt(-4, 11, 5), gp_Pnt(4, 20, 35)).Shape();
  const TopoDS_Shape key =
      BRepPrimAPI_MakeBox(gp_Pnt(-3.99, 11, 5.5), gp_Pnt(3.99, 17, 34.5)).Shape();
  const Seats seats = seats_of({{"Shaft", cut(rod(30, 0, 40), slot), {}}, {"Key", key, {}}});
  // Its width and, in a keyseat closed at both ends, its length.
  ASSERT_EQ(seats.width.size(), 2U);
  const WidthSeat& sides = seats.width[0].slot_width < 10.0 ? seats.width[0] : seats.width[1];
  const WidthSeat& ends = seats.width[0].slot_width < 10.0 ? seats.width[1] : seats.width[0];
  EXPECT_NEAR(sides.clearance, 0.02, 1e-9);
  EXPECT_NEAR(sides.offset, 0.0, 1e-9);
  EXPECT_NEAR(ends.clearance, 1.0, 1e-9);
  EXPECT_EQ(seats.axial.size(), 1U);  // the bottom of the key on the bottom of its seat
}

TEST(TaperSeat, TellsTheGapSquareToTheSurface) {
  const TopoDS_Shape plug = BRepPrimAPI_MakeCone(up_from(0), 14.9, 9.9, 40).Shape();
  const TopoDS_Shape socket =
      cut(rod(60, 0, 40), BRepPrimAPI_MakeCone(up_from(0), 15, 10, 40).Shape());
  const Seats seats = seats_of({{"Socket", socket, {}}, {"Plug", plug, {}}});
  ASSERT_EQ(seats.taper.size(), 1U);
  EXPECT_NEAR(seats.taper[0].gap, 0.1 * std::cos(std::atan(5.0 / 40.0)), 1e-9);
  EXPECT_NEAR(seats.taper[0].engaged, 40.0, 1e-9);
}

TEST(CentreLine, PartsInOneStackShareOne) {
  const Seats seats = seats_of({{"Hub", tube(80, 44, 0, 30), {}},
                                {"Bush", tube(44.02, 36, 0, 30), {}},
                                {"Shaft", rod(35.97, -20, 50), {}}});
  ASSERT_EQ(seats.centre_lines.size(), 1U);
  EXPECT_EQ(seats.centre_lines[0].occurrences,
            (std::vector{OccurrenceId(0), OccurrenceId(1), OccurrenceId(2)}));
}

TEST(FindSeats, AlikeStationsGiveAlikeSeats) {
  std::vector<PlacedShape> parts;
  const TopoDS_Shape hub = tube(80, 44, 0, 30);
  const TopoDS_Shape shaft = rod(43.95, -20, 50);
  for (int i = 0; i < 5; ++i) {
    parts.push_back({"Hub", hub, moved(100.0 * i, 0, 0)});
    parts.push_back({"Shaft", shaft, moved(100.0 * i, 0, 0)});
  }
  const Seats seats = seats_of(parts);
  ASSERT_EQ(seats.radial.size(), 5U);
  for (const RadialSeat& seat : seats.radial) {
    EXPECT_NEAR(seat.clearance, 0.05, 1e-12);
    EXPECT_NEAR(seat.axis.at.x, 100.0 * static_cast<double>(seat.hole.occurrence / 2), 1e-9);
  }
  EXPECT_EQ(seats.centre_lines.size(), 5U);
}

// M10 has a pitch of 1.5: a screw that reaches 0.5 mm into its hole holds nothing.
TEST(Threads, AreThereForAFullTurnOrMoreOnly) {
  for (const double engaged : {0.5, 1.4}) {
    const Seats seats =
        seats_of({{"Nut", tube(20, 8.5, 0, 8), {}}, {"Screw", rod(10, 8 - engaged, 40), {}}});
    EXPECT_TRUE(seats.threads.empty()) << engaged;
  }
  const Seats seats = seats_of({{"Nut", tube(20, 8.5, 0, 8), {}}, {"Screw", rod(10, 6, 40), {}}});
  ASSERT_EQ(seats.threads.size(), 1U);
  EXPECT_EQ(seats.threads[0].size, "M10");
}

}  // namespace spotblue::seats_test
