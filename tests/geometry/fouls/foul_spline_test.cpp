// Solids whose round and plane faces are all written as B-splines, and turned: Open CASCADE's
// booleans of them invent fouls and miss thin ones, unless they are made plain first.

#include <gmock/gmock.h>

#include <BRepBuilderAPI_NurbsConvert.hxx>
#include <BRepBuilderAPI_Transform.hxx>
#include <BRepPrimAPI_MakeCylinder.hxx>
#include <BRepPrimAPI_MakeSphere.hxx>
#include <gp_Quaternion.hxx>
#include <gp_Trsf.hxx>
#include <numbers>

#include "geometry/fouls/foul_solids.hpp"
#include "spotblue/geometry/foul.hpp"
#include "support/value_parts.hpp"

namespace spotblue::foul_spline_test {

using test::bar_solid;
using test::block_solid;
using test::cut_solid;
using ::testing::IsEmpty;
using ::testing::SizeIs;

TopoDS_Shape turned_spline(const TopoDS_Shape& shape) {
  gp_Trsf pose;
  pose.SetRotation(gp_Quaternion(0.3, -0.4, 0.5, 0.7).Normalized());
  pose.SetTranslationPart(gp_Vec(440, -80, 1200));
  return BRepBuilderAPI_NurbsConvert(BRepBuilderAPI_Transform(shape, pose, true).Shape(), true)
      .Shape();
}

struct Looked {
  Seats seats;
  FoulReport report;
};

Looked looked_at(const TopoDS_Shape& a, const TopoDS_Shape& b) {
  const Model model = test::solid_model({{turned_spline(a), {}}, {turned_spline(b), {}}});
  Looked looked;
  looked.seats = find_seats(model, {});
  looked.report = find_fouls(model, looked.seats, {}, {});
  return looked;
}

TopoDS_Shape lying(double radius, double length, double height) {
  const gp_Ax2 along_x(gp_Pnt(-0.5 * length, 0, height), gp_Dir(1, 0, 0));
  return BRepPrimAPI_MakeCylinder(along_x, radius, length).Shape();
}

TEST(FoulSplines, AHalfBushOnItsShaftIsASeatAndNoFoul) {
  const TopoDS_Shape bush =
      cut_solid(bar_solid(20.04, 26, 0, 80), block_solid({-30, -30, -1}, {30, 0.05, 81}));
  const Looked looked = looked_at(bar_solid(0, 20, -40, 120), bush);
  EXPECT_THAT(looked.seats.radial, SizeIs(1));
  EXPECT_THAT(looked.report.found, IsEmpty());
}

TEST(FoulSplines, AScrewInATappedHoleThatBreaksOutOfASlopeIsAThreadAndNoFoul) {
  const TopoDS_Shape slope = cut_solid(
      cut_solid(block_solid({-20, -20, 0}, {20, 20, 40}), bar_solid(0, 2.5, 10, 50)),
      BRepBuilderAPI_Transform(block_solid({-60, -60, 0}, {60, 60, 60}),
                               [] {
                                 gp_Trsf by;
                                 by.SetRotation(gp_Ax1(gp_Pnt(0, 0, 30), gp_Dir(0, 1, 0)), 0.3);
                                 gp_Trsf up;
                                 up.SetTranslation(gp_Vec(0, 0, 30));
                                 return by * up;
                               }())
          .Shape());
  const Looked looked = looked_at(slope, bar_solid(0, 3, 12, 38));
  EXPECT_THAT(looked.seats.threads, SizeIs(1));
  EXPECT_THAT(looked.report.found, IsEmpty());
}

class ASplineRollerSunkIntoABed : public ::testing::TestWithParam<double> {};

TEST_P(ASplineRollerSunkIntoABed, IsAFoulAsDeepAsItIsSunk) {
  const double deep = GetParam();
  const Looked looked =
      looked_at(block_solid({-100, -100, -10}, {100, 100, 0}), lying(8, 10, 8 - deep));
  ASSERT_THAT(looked.report.found, SizeIs(1));
  EXPECT_TRUE(looked.report.found[0].exact);
  EXPECT_NEAR(looked.report.found[0].depth, deep, 2e-3 * deep);
}

INSTANTIATE_TEST_SUITE_P(Of, ASplineRollerSunkIntoABed, ::testing::Values(0.001, 0.01, 0.02, 0.5));

TEST(FoulSplines, TwoRollersThatOverlapAreAFoul) {
  const Looked looked = looked_at(lying(8, 10, 0), lying(8, 10, 15.98));
  ASSERT_THAT(looked.report.found, SizeIs(1));
  EXPECT_NEAR(looked.report.found[0].depth, 0.02, 1e-4);
}

TEST(FoulSplines, AHalfBushLineToLineInItsHousingIsNoFoul) {
  const TopoDS_Shape bush =
      cut_solid(bar_solid(20, 26, 0, 80), block_solid({-30, -30, -1}, {30, 0, 81}));
  const Looked looked = looked_at(
      cut_solid(block_solid({-50, -50, 0}, {50, 50, 80}), bar_solid(0, 26, -1, 81)), bush);
  EXPECT_THAT(looked.seats.radial, SizeIs(1));
  EXPECT_THAT(looked.report.found, IsEmpty());
}

// A cap of height h of a ball of radius r has pi h^2 (3 r - h) / 3 (Bronshtein and Semendyayev,
// Handbook of Mathematics, 5th ed., 2007, from memory).
TEST(FoulSplines, AVolumeCutFromAFreeFormBallIsNotCalledExact) {
  const TopoDS_Shape ball = BRepPrimAPI_MakeSphere(gp_Pnt(0, 0, 11.5), 12).Shape();
  const Looked looked = looked_at(block_solid({-20, -20, -10}, {20, 20, 0}), ball);
  ASSERT_THAT(looked.report.found, SizeIs(1));
  const Foul& foul = looked.report.found.front();
  EXPECT_NEAR(foul.volume, std::numbers::pi * 0.25 * (36 - 0.5) / 3, 1e-3);
  EXPECT_FALSE(foul.exact);
}

TEST(FoulSplines, AVolumeCutFromAPlainBallIsExact) {
  const Model model =
      test::solid_model({{block_solid({-20, -20, -10}, {20, 20, 0}), {}},
                         {BRepPrimAPI_MakeSphere(gp_Pnt(0, 0, 11.5), 12).Shape(), {}}});
  const FoulReport report = find_fouls(model, find_seats(model, {}), {}, {});
  ASSERT_THAT(report.found, SizeIs(1));
  EXPECT_NEAR(report.found.front().volume, std::numbers::pi * 0.25 * (36 - 0.5) / 3, 1e-5);
  EXPECT_TRUE(report.found.front().exact);
}

}  // namespace spotblue::foul_spline_test
