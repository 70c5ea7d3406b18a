// Holes and shafts that wore to a taper, to a bell or to an oval are seats with a least and a
// greatest clearance.

#include <gmock/gmock.h>

#include <BRepBuilderAPI_MakeEdge.hxx>
#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRepBuilderAPI_MakeWire.hxx>
#include <BRepPrimAPI_MakePrism.hxx>
#include <BRepPrimAPI_MakeRevol.hxx>
#include <GeomAPI_Interpolate.hxx>
#include <Geom_BSplineCurve.hxx>
#include <Geom_BezierCurve.hxx>
#include <TColgp_Array1OfPnt.hxx>
#include <TColgp_HArray1OfPnt.hxx>
#include <cmath>
#include <gp_Elips.hxx>
#include <numbers>

#include "geometry/fouls/foul_solids.hpp"
#include "spotblue/geometry/foul.hpp"
#include "support/value_parts.hpp"

namespace spotblue::worn_test {

using test::bar_solid;
using test::block_solid;
using test::cut_solid;
using test::shifted;
using test::turned_solid;
using ::testing::IsEmpty;
using ::testing::SizeIs;

struct Looked {
  Model model;
  Seats seats;
  FoulReport report;
};

Looked looked_at(const TopoDS_Shape& a, const TopoDS_Shape& b, const Frame& b_in_a = {}) {
  Looked looked;
  looked.model = test::solid_model({{a, {}}, {b, b_in_a}});
  looked.seats = find_seats(looked.model, {});
  looked.report = find_fouls(looked.model, looked.seats, {}, {});
  return looked;
}

// From 30.0 at z = 0 to 30.2 at 40.
TopoDS_Shape tapered_hub() { return turned_solid({{15.0, 0}, {30, 0}, {30, 40}, {15.1, 40}}); }

void expect_worn(const Looked& looked, double least, double most, double within) {
  ASSERT_THAT(looked.seats.radial, SizeIs(1));
  const RadialSeat& seat = looked.seats.radial[0];
  ASSERT_TRUE(seat.worn);
  EXPECT_NEAR(seat.worn->least, least, within);
  EXPECT_NEAR(seat.worn->most, most, within);
  EXPECT_GE(seat.clearance, least - within);
  EXPECT_LE(seat.clearance, most + within);
}

TEST(Worn, AShaftInATaperedBoreHasTheClearancesOfItsTwoEnds) {
  const Looked looked = looked_at(tapered_hub(), bar_solid(0, 14.95, -5, 45));
  expect_worn(looked, 0.1, 0.3, 1e-9);
  EXPECT_NEAR(looked.seats.radial[0].least_gap, 0.05, 1e-9);
  EXPECT_NEAR(looked.seats.radial[0].engaged, 40.0, 1e-9);
  EXPECT_THAT(looked.seats.taper, IsEmpty());
  EXPECT_THAT(looked.report.found, IsEmpty());
}

TEST(Worn, AShaftInThePlainHalfOfATaperedBoreHasTheClearancesThere) {
  expect_worn(looked_at(tapered_hub(), bar_solid(0, 14.95, 20, 45)), 0.2, 0.3, 1e-9);
}

TEST(Worn, ATaperedJournalInAPlainBoreIsTheSameTheOtherWayRound) {
  const TopoDS_Shape journal = turned_solid({{0, -10}, {14.9, -10}, {14.8, 50}, {0, 50}});
  // 29.8 less 0.2 / 60 a mm: at 0 and at 40.
  expect_worn(looked_at(bar_solid(15, 30, 0, 40), journal), 0.2 + 0.2 * 10 / 60,
              0.2 + 0.2 * 50 / 60, 1e-9);
}

TEST(Worn, ATaperedBoreAskewInSpaceTellsTheSame) {
  const Frame turned = compose(shifted(12, -7, 90), test::rotated(unit({-1, 2, 0.5}), 2.2));
  Looked looked;
  looked.model =
      test::solid_model({{tapered_hub(), turned}, {bar_solid(0, 14.95, -5, 45), turned}});
  looked.seats = find_seats(looked.model, {});
  expect_worn(looked, 0.1, 0.3, 1e-9);
}

TEST(Worn, AShaftAsideInATaperedBoreFoulsAtTheNarrowEnd) {
  const Looked looked = looked_at(tapered_hub(), bar_solid(0, 14.95, -5, 45), shifted(0.07, 0, 0));
  expect_worn(looked, 0.1, 0.3, 1e-9);
  EXPECT_NEAR(looked.seats.radial[0].least_gap, -0.02, 1e-9);
  EXPECT_NEAR(looked.seats.radial[0].fouls_by, 0.02, 1e-9);
  ASSERT_THAT(looked.report.found, SizeIs(1));
  EXPECT_NEAR(looked.report.found[0].depth, 0.02, 1e-3);
}

TEST(Worn, AShaftThatIsTightAtTheNarrowEndOnlyIsNoFoul) {
  const Looked looked = looked_at(tapered_hub(), bar_solid(0, 15.02, -5, 45));
  expect_worn(looked, -0.04, 0.16, 1e-9);
  EXPECT_THAT(looked.report.found, IsEmpty());
}

TEST(Worn, TwoSlowTapersAlikeHaveOneClearance) {
  const TopoDS_Shape plug = turned_solid({{0, 0}, {14.95, 0}, {15.05, 40}, {0, 40}});
  expect_worn(looked_at(tapered_hub(), plug), 0.1, 0.1, 1e-9);
}

// Half axes 15.1 and 15.02, along z.
TopoDS_Shape oval_bar() {
  const gp_Elips oval(gp_Ax2(gp_Pnt(0, 0, -1), gp_Dir(0, 0, 1)), 15.1, 15.02);
  BRepBuilderAPI_MakeWire wire(BRepBuilderAPI_MakeEdge(oval).Edge());
  return BRepPrimAPI_MakePrism(BRepBuilderAPI_MakeFace(wire.Wire()).Face(), gp_Vec(0, 0, 42))
      .Shape();
}

TEST(Worn, AShaftInAnOvalBoreHasTheClearancesOfItsTwoWidths) {
  const TopoDS_Shape hub = cut_solid(block_solid({-25, -25, 0}, {25, 25, 40}), oval_bar());
  const Looked looked = looked_at(hub, bar_solid(0, 15, -5, 45));
  expect_worn(looked, 0.04, 0.2, 1e-6);
  EXPECT_NEAR(looked.seats.radial[0].least_gap, 0.02, 1e-6);
  EXPECT_THAT(looked.report.found, IsEmpty());
  EXPECT_THAT(looked.report.contacts, IsEmpty());
}

// The oval drawn through points that crowd on one side of it.
TopoDS_Shape crowded_oval_bar() {
  constexpr int kPoints = 240;
  const Handle(TColgp_HArray1OfPnt) points = new TColgp_HArray1OfPnt(1, kPoints);
  for (int i = 0; i < kPoints; ++i) {
    const double even = 2.0 * std::numbers::pi * i / kPoints;
    const double angle = even + 0.5 * std::sin(even);
    points->SetValue(i + 1, gp_Pnt(15.1 * std::cos(angle), 15.02 * std::sin(angle), -1.0));
  }
  GeomAPI_Interpolate curve(points, Standard_True, 1e-9);
  curve.Perform();
  BRepBuilderAPI_MakeWire wire(BRepBuilderAPI_MakeEdge(curve.Curve()).Edge());
  return BRepPrimAPI_MakePrism(BRepBuilderAPI_MakeFace(wire.Wire()).Face(), gp_Vec(0, 0, 42))
      .Shape();
}

TEST(Worn, AnOvalBoreHasItsAxisInItsMiddleHoweverItsCurveIsDrawn) {
  const TopoDS_Shape hub = cut_solid(block_solid({-25, -25, 0}, {25, 25, 40}), crowded_oval_bar());
  const Looked looked = looked_at(hub, bar_solid(0, 15, -5, 45));
  expect_worn(looked, 0.04, 0.2, 1e-4);
  EXPECT_NEAR(looked.seats.radial[0].offset, 0.0, 1e-4);
  EXPECT_NEAR(looked.seats.radial[0].least_gap, 0.02, 1e-4);
}

TEST(Worn, AnOvalJournalInABoreIsASeatToo) {
  const Looked looked = looked_at(bar_solid(15.2, 30, 5, 35), oval_bar());
  expect_worn(looked, 0.2, 0.36, 1e-6);
}

// r = 15 + 0.1 ((z - 20) / 20)^2, a parabola, as a curve of three poles.
TopoDS_Shape bell_mouthed_hub() {
  TColgp_Array1OfPnt poles(1, 3);
  poles(1) = gp_Pnt(15.1, 0, 40);
  poles(2) = gp_Pnt(14.9, 0, 20);
  poles(3) = gp_Pnt(15.1, 0, 0);
  const auto line = [](double r1, double z1, double r2, double z2) {
    return BRepBuilderAPI_MakeEdge(gp_Pnt(r1, 0, z1), gp_Pnt(r2, 0, z2)).Edge();
  };
  BRepBuilderAPI_MakeWire wire(line(15.1, 0, 30, 0), line(30, 0, 30, 40), line(30, 40, 15.1, 40));
  wire.Add(BRepBuilderAPI_MakeEdge(Handle(Geom_BezierCurve)(new Geom_BezierCurve(poles))).Edge());
  return BRepPrimAPI_MakeRevol(BRepBuilderAPI_MakeFace(wire.Wire()).Face(),
                               gp_Ax1(gp_Pnt(), gp_Dir(0, 0, 1)))
      .Shape();
}

TEST(Worn, AShaftInABellMouthedBoreHasTheClearancesOfItsWaistAndItsMouths) {
  const Looked looked = looked_at(bell_mouthed_hub(), bar_solid(0, 14.98, -5, 45));
  expect_worn(looked, 0.04, 0.24, 1e-6);
  EXPECT_THAT(looked.report.found, IsEmpty());
}

TEST(Worn, AFeatureTellsItsSizesWhereTheyAre) {
  const Looked looked = looked_at(bell_mouthed_hub(), bar_solid(0, 14.98, 10, 45));
  const auto& cylinders = looked.model.products[0].cylinders;
  const auto bore = std::ranges::find(cylinders, Side::internal, &Cylinder::side);
  ASSERT_NE(bore, cylinders.end());
  ASSERT_FALSE(bore->sizes.empty());
  EXPECT_NEAR(bore->sizes.front().greatest, 30.2, 1e-6);
  EXPECT_NEAR(bore->sizes[bore->sizes.size() / 2].least, 30.0, 1e-6);
  EXPECT_NEAR(bore->diameter, 30.1, 1e-6);
}

}  // namespace spotblue::worn_test
