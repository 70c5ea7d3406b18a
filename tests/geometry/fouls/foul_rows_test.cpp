// A foul is told once for each region, as deep as metal is in metal there, at a place that is in
// it.

#include <gmock/gmock.h>

#include <BRepAlgoAPI_Fuse.hxx>
#include <BRepPrimAPI_MakeTorus.hxx>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/fouls/foul_solids.hpp"
#include "spotblue/geometry/foul.hpp"
#include "support/value_parts.hpp"

namespace spotblue::foul_rows_test {

using test::bar_solid;
using test::block_solid;
using test::cut_solid;
using test::moved_solid;
using test::shifted;
using test::turned_solid;
using ::testing::IsEmpty;
using ::testing::SizeIs;

constexpr double kTurn = 2.0 * std::numbers::pi;

std::vector<Foul> rows_of(const TopoDS_Shape& a, const TopoDS_Shape& b, const Frame& b_in_a = {}) {
  const Model model = test::solid_model({{a, {}}, {b, b_in_a}});
  return find_fouls(model, find_seats(model, {}), {}, {}).found;
}

TopoDS_Shape fused(const TopoDS_Shape& a, const TopoDS_Shape& b) {
  return BRepAlgoAPI_Fuse(a, b).Shape();
}

// 5.0 + 0.8 - 5.1: as deep as the post stands in the wall, not as wide as the crescent.
TEST(FoulRows, APostFarOffTheAxisOfItsHoleIsAsDeepAsItStandsInTheWall) {
  const TopoDS_Shape bed =
      cut_solid(block_solid({-20, -20, 0}, {20, 20, 30}), bar_solid(0, 5.1, -1, 31));
  const double angle = 0.4;
  const auto rows = rows_of(bed, bar_solid(0, 5.0, -5, 40),
                            shifted(0.8 * std::cos(angle), 0.8 * std::sin(angle), 0));
  ASSERT_THAT(rows, SizeIs(1));
  EXPECT_NEAR(rows[0].depth, 0.7, 1e-3);
  EXPECT_NEAR(rows[0].length.value(), 30.0, 1e-6);
}

// By hand: a lens as deep as the roller is sunk; its mesh is a third flatter.
class ARollerSunkIntoABed : public ::testing::TestWithParam<double> {};

TEST_P(ARollerSunkIntoABed, IsAsDeepAsItIsSunk) {
  const double deep = GetParam();
  const TopoDS_Shape bed = block_solid({-20, -20, -10}, {20, 20, 0});
  const Frame lying{{{{0, 0, 1, -5}, {0, 1, 0, 0}, {-1, 0, 0, 8 - deep}}}};
  const auto rows = rows_of(bed, bar_solid(0, 8, 0, 10), lying);
  ASSERT_THAT(rows, SizeIs(1));
  EXPECT_NEAR(rows[0].depth, deep, 2e-3 * deep);
}

INSTANTIATE_TEST_SUITE_P(Of, ARollerSunkIntoABed, ::testing::Values(0.001, 0.01, 0.02, 0.5));

TEST(FoulRows, AnEdgeSunkIntoABedIsAsDeepAsItIsSunk) {
  const double half = std::sqrt(0.5);
  const Frame on_edge{{{{half, 0, -half, 0}, {0, 1, 0, 0}, {half, 0, half, -0.02}}}};
  const auto rows = rows_of(block_solid({-20, -20, -10}, {20, 20, 0}),
                            block_solid({0, -2.5, 0}, {5, 2.5, 5}), on_edge);
  ASSERT_THAT(rows, SizeIs(1));
  EXPECT_NEAR(rows[0].depth, 0.02, 1e-4);
}

TEST(FoulRows, EachOfManyTeethThatFoulHasARowOfItsOwn) {
  TopoDS_Shape comb = block_solid({0, 0, 0}, {240, 10, 10});
  for (int i = 0; i < 24; ++i) {
    comb = fused(comb, block_solid({10.0 * i, 0, 9}, {10.0 * i + 4, 10, 15}));
  }
  const auto rows = rows_of(comb, block_solid({-5, -5, 14.9}, {245, 15, 20}));
  ASSERT_THAT(rows, SizeIs(24));
  for (const Foul& row : rows) {
    EXPECT_NEAR(row.volume, 4.0 * 10.0 * 0.1, 1e-6);
  }
}

// A half round trough with a post of its size sunk 0.05 into it: a crescent 0.05 deep and 20 wide.
TEST(FoulRows, APostSunkIntoABedOfItsSizeIsAsDeepAsItIsSunk) {
  const TopoDS_Shape bed =
      cut_solid(block_solid({-20, -20, 0}, {20, 0, 40}), bar_solid(0, 10, -1, 41));
  const auto rows = rows_of(bed, bar_solid(0, 10, -5, 45), shifted(0, -0.05, 0));
  ASSERT_THAT(rows, SizeIs(1));
  EXPECT_NEAR(rows[0].depth, 0.05, 1e-4);
  EXPECT_NEAR(rows[0].length.value(), 40.0, 1e-6);
  EXPECT_EQ(rows[0].cause, "off axis");
  // 2 R e, less what the trough's edge keeps of the crescent's ends: derived by hand.
  EXPECT_NEAR(rows[0].volume, 2.0 * 10.0 * 0.05 * 40.0, 0.2);
}

// 0.5 across where it is 15 long and 34 wide.
TEST(FoulRows, ATooTightRingIsAsDeepAsItsOverlapAndAsLongAsItsEngagement) {
  const auto rows = rows_of(bar_solid(16.6, 25, 0, 15), bar_solid(0, 17.1, -10, 25));
  ASSERT_THAT(rows, SizeIs(1));
  EXPECT_NEAR(rows[0].depth, 0.5, 1e-6);
  EXPECT_NEAR(rows[0].length.value(), 15.0, 1e-6);
}

TEST(FoulRows, TwoLegsDrivenIntoOneBlockAreTwoRows) {
  for (const double deep : {0.5, 2.0}) {
    const TopoDS_Shape staple = fused(
        fused(block_solid({-10, -3, -deep}, {-6, 3, 10}), block_solid({6, -3, -deep}, {9, 3, 10})),
        block_solid({-10, -3, 8}, {9, 3, 12}));
    const auto rows = rows_of(block_solid({-30, -30, -20}, {30, 30, 0}), staple);
    ASSERT_THAT(rows, SizeIs(2)) << deep;
    std::vector<double> volumes{rows[0].volume, rows[1].volume};
    std::ranges::sort(volumes);
    EXPECT_NEAR(volumes[0], 3.0 * 6.0 * deep, 1e-6);
    EXPECT_NEAR(volumes[1], 4.0 * 6.0 * deep, 1e-6);
    EXPECT_NEAR(rows[0].depth, deep, 1e-6);
    EXPECT_NEAR(rows[1].depth, deep, 1e-6);
  }
}

TEST(FoulRows, AShaftOffItsAxisWithItsShoulderSunkInIsOneRow) {
  const TopoDS_Shape hub = bar_solid(10.1, 30, 0, 40);
  const TopoDS_Shape shaft =
      turned_solid({{0, -20}, {10, -20}, {10, 39.75}, {16, 39.75}, {16, 50}, {0, 50}});
  const Frame aside = shifted(0.3, 0, 0);
  const auto rows = rows_of(hub, shaft, aside);
  ASSERT_THAT(rows, SizeIs(1));
  const double truth = test::shared_volume(hub, moved_solid(shaft, aside));
  EXPECT_NEAR(rows[0].volume, truth, 1e-3 * truth);
}

// A corner cut off at 45 degrees: a triangle of legs 5, 10 thick. Its longest way square to the cut
// runs through the corner itself, and its farthest points stand across its thickness.
TEST(FoulRows, ACornerIsAsDeepAndAsLongAsItIsWhereverItsEdgesLie) {
  const double half = 0.5 * std::numbers::sqrt2;
  const auto rows =
      rows_of(block_solid({-60, -60, 0}, {0, 0, 10}), block_solid({0, -50, 0}, {50, 50, 10}),
              compose(shifted(-2.5, -2.5, 0), test::rotated({0, 0, 1}, 0.25 * std::numbers::pi)));
  ASSERT_THAT(rows, SizeIs(1));
  EXPECT_NEAR(rows[0].depth, 5.0 * half, 1e-5);
  EXPECT_NEAR(rows[0].length.value(), std::hypot(5.0 * std::numbers::sqrt2, 10.0), 1e-9);
}

TEST(FoulRows, AnOverlapWithinTheFilesUncertaintyIsNoFoul) {
  const TopoDS_Shape low = block_solid({0, 0, 0}, {20, 20, 10});
  const TopoDS_Shape high = block_solid({5, 5, 10 - 5e-6}, {15, 15, 20});
  Model model = test::solid_model({{low, {}}, {high, {}}});
  EXPECT_THAT(find_fouls(model, find_seats(model, {}), {}, {}).found, SizeIs(1));
  for (Product& product : model.products) {
    product.uncertainty = 1e-5;
  }
  EXPECT_THAT(find_fouls(model, find_seats(model, {}), {}, {}).found, IsEmpty());
}

TEST(FoulRows, AnUndecidedPairHasNoPlace) {
  const Model model = test::solid_model(
      {{block_solid({0, 0, 0}, {10, 10, 10}), {}}, {block_solid({5, 5, 5}, {15, 15, 15}), {}}});
  ReadLimits hurried;
  hurried.seconds = 1e-4;
  const auto rows = find_fouls(model, find_seats(model, {}), {}, hurried).found;
  ASSERT_THAT(rows, SizeIs(1));
  EXPECT_FALSE(rows[0].at);
}

// The segment of a circle of radius r beyond a chord at h from its middle, turned about the axis
// at R: its area times the way of its centroid (Pappus).
double beyond(double big, double small, double chord) {
  const double h = chord - big;
  const double half = std::acos(h / small);
  const double area = small * small * (half - std::sin(half) * std::cos(half));
  const double centroid = 2.0 / 3.0 * std::pow(small * std::sin(half), 3) / area;
  return kTurn * (big + centroid) * area;
}

TEST(FoulRows, ARoundRingInATooSmallBoreIsFoundByItsEquator) {
  const TopoDS_Shape ring = BRepPrimAPI_MakeTorus(10.0, 1.5).Shape();
  for (const double bore : {11.2, 11.45, 11.499}) {
    const auto rows = rows_of(bar_solid(bore, 20, -10, 10), ring);
    ASSERT_THAT(rows, SizeIs(1)) << bore;
    EXPECT_NEAR(rows[0].depth, 11.5 - bore, 1e-6) << bore;
    EXPECT_NEAR(rows[0].volume, beyond(10.0, 1.5, bore), 1e-6 * rows[0].volume + 1e-9) << bore;
  }
  EXPECT_THAT(rows_of(bar_solid(11.5, 20, -10, 10), ring), IsEmpty());
}

TEST(FoulRows, ARoundRingSqueezedInItsGrooveAndBoreIsTwoFouls) {
  const Model model = test::solid_model({{BRepPrimAPI_MakeTorus(10.0, 1.5).Shape(), {}},
                                         {bar_solid(11.3, 20, -10, 10), {}},
                                         {turned_solid({{0, -15},
                                                        {11.2, -15},
                                                        {11.2, -2},
                                                        {8.7, -2},
                                                        {8.7, 2},
                                                        {11.2, 2},
                                                        {11.2, 15},
                                                        {0, 15}}),
                                          {}}});
  const auto rows = find_fouls(model, find_seats(model, {}), {}, {}).found;
  ASSERT_THAT(rows, SizeIs(2));
  EXPECT_NEAR(rows[0].volume, beyond(10.0, 1.5, 11.3), 1e-6);
  EXPECT_NEAR(rows[1].depth, 0.2, 1e-6);
}

// A bead on a shaft in a bore of its size but for the bead's top.
TEST(FoulRows, ABeadThatBearsOnABoreIsNotMissed) {
  const TopoDS_Shape shaft =
      fused(bar_solid(0, 10, -20, 20), BRepPrimAPI_MakeTorus(10.0, 1.5).Shape());
  for (const double bore : {11.2, 11.48}) {
    const auto rows = rows_of(bar_solid(bore, 20, -10, 10), shaft);
    ASSERT_THAT(rows, SizeIs(1)) << bore;
  }
}

}  // namespace spotblue::foul_rows_test
