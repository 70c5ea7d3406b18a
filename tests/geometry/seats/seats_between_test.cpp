// What lies between two surfaces: material is where the solid is, not where a surface looks as if
// it went on; overlap is claimed only where both parts have metal.

#include <gtest/gtest.h>

#include <BRepAlgoAPI_Fuse.hxx>
#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRepBuilderAPI_MakePolygon.hxx>
#include <BRepPrimAPI_MakeCylinder.hxx>
#include <BRepPrimAPI_MakePrism.hxx>
#include <BRepPrimAPI_MakeRevol.hxx>
#include <BRepPrimAPI_MakeTorus.hxx>
#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>
#include <vector>

#include "spotblue/geometry/seats.hpp"
#include "support/shape_model.hpp"

namespace spotblue::seats_between_test {

using namespace testing;

constexpr double kPi = std::numbers::pi;

Seats seats_of(const std::vector<PlacedShape>& parts) {
  return find_seats(model_of(parts), SeatSettings{});
}

TopoDS_Shape prism(const std::vector<gp_Pnt>& corners, gp_Vec along) {
  BRepBuilderAPI_MakePolygon polygon;
  for (const gp_Pnt& corner : corners) {
    polygon.Add(corner);
  }
  polygon.Close();
  return BRepPrimAPI_MakePrism(BRepBuilderAPI_MakeFace(polygon.Wire()).Face(), along).Shape();
}

TopoDS_Shape hexagon(double flats, double from, double to) {
  std::vector<gp_Pnt> corners;
  for (int i = 0; i < 6; ++i) {
    const double r = 0.5 * flats / std::cos(kPi / 6.0);
    corners.emplace_back(r * std::cos(i * kPi / 3.0), r * std::sin(i * kPi / 3.0), from);
  }
  return prism(corners, {0, 0, to - from});
}

// Of a half section's corners (r, z).
TopoDS_Shape turned(const std::vector<std::pair<double, double>>& section) {
  BRepBuilderAPI_MakePolygon polygon;
  for (const auto& [r, z] : section) {
    polygon.Add(gp_Pnt(r, 0, z));
  }
  polygon.Close();
  return BRepPrimAPI_MakeRevol(BRepBuilderAPI_MakeFace(polygon.Wire()).Face(),
                               gp_Ax1(gp_Pnt(0, 0, 0), gp_Dir(0, 0, 1)))
      .Shape();
}

std::size_t between(const Seats& seats, std::size_t hole, std::size_t shaft) {
  return static_cast<std::size_t>(
      std::count_if(seats.radial.begin(), seats.radial.end(), [&](const RadialSeat& seat) {
        return seat.hole.occurrence == hole && seat.shaft.occurrence == shaft;
      }));
}

TEST(SeatsBetween, AHexagonInsideATubeLeavesTheSeatOutsideIt) {
  const Seats seats = seats_of({{"Hub", tube(80, 40, 0, 30), {}},
                                {"Tube", tube(39.95, 30, 0, 30), {}},
                                {"Nut", cut(hexagon(20, 0, 30), rod(10, -1, 31)), {}}});
  EXPECT_EQ(between(seats, 0, 1), 1U);
}

TEST(SeatsBetween, APartWithAHexagonRoundTheHubLeavesTheSeatInIt) {
  const Seats seats = seats_of({{"Hub", tube(50, 40, 0, 30), {}},
                                {"Shaft", rod(39.95, 0, 30), {}},
                                {"Spanner", cut(rod(90, 0, 30), hexagon(50.2, -1, 31)), {}}});
  EXPECT_EQ(between(seats, 0, 1), 1U);
}

TEST(SeatsBetween, ARaceRoundTheHubLeavesTheSeatInIt) {
  const TopoDS_Shape groove = BRepPrimAPI_MakeTorus(up_from(15), 27, 4).Shape();
  const TopoDS_Shape race = cut(cut(rod(70, 0, 30), rod(54, -1, 31)), groove);
  const Seats seats = seats_of(
      {{"Hub", tube(50, 40, 0, 30), {}}, {"Shaft", rod(39.95, 0, 30), {}}, {"Race", race, {}}});
  EXPECT_EQ(between(seats, 0, 1), 1U);
}

TEST(SeatsBetween, AHexagonalSleeveBlocksWhereItIs) {
  const TopoDS_Shape sleeve = cut(hexagon(40.5, 0, 10), rod(39.8, -1, 11));
  const Seats seats = seats_of({{"Hub", tube(80, 41.5, 0, 30), {}},
                                {"Sleeve", sleeve, {}},
                                {"Shaft", rod(39.7, 0, 30), {}}});
  ASSERT_EQ(between(seats, 0, 2), 1U);
  const auto seat = std::find_if(seats.radial.begin(), seats.radial.end(), [](const auto& one) {
    return one.hole.occurrence == 0 && one.shaft.occurrence == 2;
  });
  EXPECT_NEAR(seat->engaged, 20.0, 1e-9);
}

// The hole ends where the disc's rim does: farthest in at its side towards the disc's middle.
double length_of_hole_along_y(double disc_radius, double x, double hole_radius, double from) {
  const double nearest = std::max(0.0, std::abs(x) - hole_radius);
  return std::sqrt(disc_radius * disc_radius - nearest * nearest) - from;
}

struct BreakingOut {
  double x, hole_radius;
};

class HolesThatBreakOutOfARim : public ::testing::TestWithParam<BreakingOut> {};

TEST_P(HolesThatBreakOutOfARim, AreEngagedAsFarAsTheyReach) {
  const auto [x, r] = GetParam();
  const gp_Ax2 along_y(gp_Pnt(x, 1, 7.5), gp_Dir(0, 1, 0));
  const Seats seats =
      seats_of({{"Disc", cut(rod(44, 0, 15), BRepPrimAPI_MakeCylinder(along_y, r, 40).Shape()), {}},
                {"Pin", BRepPrimAPI_MakeCylinder(along_y, 3, 40).Shape(), {}}});
  ASSERT_EQ(between(seats, 0, 1), 1U);
  EXPECT_NEAR(seats.radial.front().engaged, length_of_hole_along_y(22, x, r, 1), 1e-6);
}

INSTANTIATE_TEST_SUITE_P(Of, HolesThatBreakOutOfARim,
                         ::testing::Values(BreakingOut{0, 3.3}, BreakingOut{4, 3.3},
                                           BreakingOut{8, 3.3}, BreakingOut{12, 3.3},
                                           BreakingOut{17, 3.3}, BreakingOut{-17, 3.3},
                                           BreakingOut{17, 3.02}));

// What the bush overlaps the hole by is the press fit's; its face does not stand too deep.
TEST(SeatsBetween, AThinBushPressedInFlushHasNoFaceSunkIntoThePlate) {
  const Seats seats =
      seats_of({{"Plate", tube(60, 19.92, 0, 0.9), {}}, {"Bush", tube(20, 10, 0, 0.9), {}}});
  EXPECT_EQ(between(seats, 0, 1), 1U);
  EXPECT_TRUE(seats.axial.empty());
}

TEST(SeatsBetween, AThinPressedBushWithAFlangeSunkIntoThePlateIsStillToldOf) {
  // The flange, 30 across, stands 0.1 deep in the plate's top.
  const TopoDS_Shape bush = turned({{5, 0}, {10, 0}, {10, 0.8}, {15, 0.8}, {15, 3}, {5, 3}});
  const Seats seats = seats_of({{"Plate", tube(60, 19.92, 0, 0.9), {}}, {"Bush", bush, {}}});
  ASSERT_EQ(seats.axial.size(), 1U);
  EXPECT_NEAR(seats.axial.front().gap, -0.1, 1e-9);
  EXPECT_NEAR(seats.axial.front().area, kPi * (15 * 15 - 10 * 10), 1e-3);
}

TEST(SeatsBetween, AnOwnRingBlocksTheBoreBehindIt) {
  // A housing with a thin collar that stands off its bore, on a web at z 5.
  const TopoDS_Shape housing = turned({{20, 0},
                                       {40, 0},
                                       {40, 30},
                                       {20, 30},
                                       {20, 6},
                                       {19.75, 6},
                                       {19.75, 25},
                                       {19.5, 25},
                                       {19.5, 5},
                                       {20, 5}});
  const Seats seats = seats_of({{"Housing", housing, {}}, {"Shaft", rod(38.5, 0, 30), {}}});
  double on_collar = 0.0;
  double on_bore = 0.0;
  for (const RadialSeat& seat : seats.radial) {
    (seat.hole_diameter < 39.5 ? on_collar : on_bore) += seat.engaged;
  }
  EXPECT_NEAR(on_collar, 20.0, 1e-9);
  EXPECT_NEAR(on_bore, 10.0, 1e-9);  // before the web and past the collar
}

TEST(SeatsBetween, ADiscSpringTakesItsOwnRingOffTheFaces) {
  const TopoDS_Shape spring = turned({{10, 30.0}, {20, 31.5}, {20, 32.0}, {10, 30.5}});
  const Seats seats = seats_of({{"Base", tube(60, 10, 0, 30), {}},
                                {"Cover", tube(60, 10, 32, 50), {}},
                                {"Spring", spring, {}}});
  const auto seat = std::find_if(seats.axial.begin(), seats.axial.end(), [](const auto& one) {
    return one.a.occurrence == 0 && one.b.occurrence == 1;
  });
  ASSERT_NE(seat, seats.axial.end());
  EXPECT_NEAR(seat->area, kPi * (900.0 - 25.0) - kPi * (400.0 - 100.0), 1e-3);
}

TEST(SeatsBetween, ASlopingShimTakesWhatItCoversOffTheFaces) {
  // 20 wide under half of the cover, its top leaning by 2 degrees.
  const TopoDS_Shape shim =
      prism({{0, -30, 30}, {30, -30, 30}, {30, -30, 31.5}, {0, -30, 30.5}}, {0, 60, 0});
  const Seats seats = seats_of({{"Base", block(60, 60, 0, 30), {}},
                                {"Cover", block(60, 60, 32, 50), {}},
                                {"Shim", shim, {}}});
  const auto seat = std::find_if(seats.axial.begin(), seats.axial.end(), [](const auto& one) {
    return one.a.occurrence == 0 && one.b.occurrence == 1;
  });
  ASSERT_NE(seat, seats.axial.end());
  EXPECT_NEAR(seat->area, 1800.0, 1.0);
}

TEST(SeatsBetween, AThirdFaceIsMeasuredWhereItLies) {
  Frame lean;  // a third of a degree about y: 1.7 mm at 300
  const double angle = 0.33 * kPi / 180.0;
  lean.rows = {{{std::cos(angle), 0, std::sin(angle), 0},
                {0, 1, 0, 0},
                {-std::sin(angle), 0, std::cos(angle), 0}}};
  const TopoDS_Shape strip =
      BRepPrimAPI_MakeBox(gp_Pnt(-20, -10, 30.5), gp_Pnt(600, 10, 31.0)).Shape();
  const Seats seats = seats_of({{"Base", block(20, 20, 0, 30), {}},
                                {"Cover", block(20, 20, 31.5, 50), {}},
                                {"Strip", strip, lean}});
  EXPECT_TRUE(std::none_of(seats.axial.begin(), seats.axial.end(), [](const auto& one) {
    return one.a.occurrence == 0 && one.b.occurrence == 1;
  }));
}

TEST(SeatsBetween, ASleeveBetweenTwoTapersLeavesNoSeatOfTheTwo) {
  const auto cone = [](double r) { return BRepPrimAPI_MakeCone(up_from(0), r, r - 5, 40).Shape(); };
  const Seats seats = seats_of({{"Socket", cut(rod(60, 0, 40), cone(15)), {}},
                                {"Sleeve", cut(cone(14.98), cone(14.3)), {}},
                                {"Plug", cone(14.28), {}}});
  EXPECT_EQ(seats.taper.size(), 2U);
}

TEST(SeatsBetween, BrokenEdgesThatDoNotTouchAreNoTaper) {
  const TopoDS_Shape ring = turned({{16, 0}, {25, 0}, {25, 10}, {15, 10}, {15, 1}});
  const TopoDS_Shape shaft =
      turned({{0, -10}, {20, -10}, {20, -0.3}, {15.4, -0.3}, {14.9, 0.2}, {14.9, 20}, {0, 20}});
  const Seats seats = seats_of({{"Ring", ring, {}}, {"Shaft", shaft, {}}});
  EXPECT_EQ(seats.taper.size(), 0U);
  EXPECT_EQ(seats.radial.size(), 1U);
}

TEST(SeatsBetween, ABrokenCornerThatAWideChamferDoesNotTouchIsNoTaper) {
  // Where the plug's chamfer is longer than a broken edge is; 0.9 mm apart.
  const TopoDS_Shape cup =
      turned({{0, -8}, {25, -8}, {25, 20}, {17, 20}, {17, 0.6}, {16.4, 0}, {0, 0}});
  const TopoDS_Shape plug = turned({{0, 0.2}, {14.8, 0.2}, {16.9, 2.3}, {16.9, 30}, {0, 30}});
  const Seats seats = seats_of({{"Cup", cup, {}}, {"Plug", plug, {}}});
  EXPECT_EQ(seats.taper.size(), 0U);
  EXPECT_EQ(seats.radial.size(), 1U);
  EXPECT_EQ(seats.axial.size(), 1U);
}

TEST(SeatsBetween, LinersBetweenTongueAndSlotLeaveNoSeatOfTheTwo) {
  const TopoDS_Shape slotted = cut(
      block(60, 40, 0, 30), BRepPrimAPI_MakeBox(gp_Pnt(-10, -30, 10), gp_Pnt(10, 30, 40)).Shape());
  const auto liner = [](double from) {
    return BRepPrimAPI_MakeBox(gp_Pnt(from, -20, 10), gp_Pnt(from + 0.48, 20, 30)).Shape();
  };
  const TopoDS_Shape tongue =
      BRepPrimAPI_MakeBox(gp_Pnt(-9.5, -20, 12), gp_Pnt(9.5, 20, 60)).Shape();
  const Seats seats = seats_of({{"Block", slotted, {}},
                                {"Left", liner(-9.99), {}},
                                {"Right", liner(9.51), {}},
                                {"Tongue", tongue, {}}});
  EXPECT_TRUE(std::none_of(seats.width.begin(), seats.width.end(), [](const WidthSeat& seat) {
    return seat.slot.occurrence == 0 && seat.key.occurrence == 3;
  }));
}

TEST(SeatsOverlap, TwoTubesThatPassEachOtherAreNoScrew) {
  const Seats seats =
      seats_of({{"Sleeve", tube(9.2, 8.5, 0, 20), {}}, {"Pipe", tube(10, 9.6, 0, 20), {}}});
  EXPECT_EQ(seats.threads.size(), 0U);
}

TEST(SeatsOverlap, TwoLinersThatPassEachOtherAreNoPressFit) {
  const Seats seats =
      seats_of({{"One", tube(300.8, 300, 0, 20), {}}, {"Other", tube(301.22, 300.9, 0, 20), {}}});
  ASSERT_EQ(seats.radial.size(), 1U);  // the one in the other
  EXPECT_NEAR(seats.radial[0].clearance, 0.1, 1e-9);
}

TEST(SeatsOverlap, TwoThinWedgesThatPassEachOtherDoNotOverlap) {
  const TopoDS_Shape low = prism({{0, 0, 0}, {30, 0, 0}, {30, 0, 0.15}, {0, 0, 0.1}}, {0, 30, 0});
  const TopoDS_Shape high =
      prism({{0, 0, 0.4}, {30, 0, 0.35}, {30, 0, 0.5}, {0, 0, 0.5}}, {0, 30, 0});
  const Seats seats = seats_of({{"Low", low, {}}, {"High", high, {}}});
  EXPECT_TRUE(std::none_of(seats.axial.begin(), seats.axial.end(),
                           [](const AxialSeat& seat) { return seat.gap < 0.0; }));
}

TEST(SeatsOverlap, APinStandsInItsOwnHoleOnly) {
  TopoDS_Shape plate = block(4, 2, 0, 1);
  std::vector<PlacedShape> parts;
  for (int i = -1; i <= 1; ++i) {
    plate = cut(plate, rod(0.2, -1, 2, 0.4 * i));
  }
  parts.push_back({"Plate", plate, {}});
  for (int i = -1; i <= 1; ++i) {
    parts.push_back({"Pin", rod(0.19, 0, 2, 0.4 * i), {}});
  }
  EXPECT_EQ(seats_of(parts).radial.size(), 3U);
}

}  // namespace spotblue::seats_between_test
