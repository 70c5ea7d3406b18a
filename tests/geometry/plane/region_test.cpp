#include "spotblue/geometry/region.hpp"

#include <gtest/gtest.h>

#include "geometry/plane/region_shapes.hpp"
#include "spotblue/geometry/region_inner.hpp"

namespace spotblue::region_test {

using namespace shapes;

TEST(Region, AreaOfADiscIsPiRSquaredHoweverItIsCut) {
  EXPECT_NEAR(area(disc({3, -8}, 22)), kPi * 484, 1e-11);
  for (const int parts : {1, 2, 3, 7}) {
    EXPECT_NEAR(area(split_disc({300, -800}, 22, parts, 0.3)), kPi * 484, 1e-9) << parts;
  }
}

TEST(Region, AreaOfAnAnnulusLeavesTheHoleOut) {
  EXPECT_NEAR(area(annulus({5, 5}, 10, 16)), kPi * (256 - 100), 1e-11);
}

TEST(Region, AreaTurnsNegativeInsideOut) {
  EXPECT_DOUBLE_EQ(area(turned_inside_out(rectangle({1, 1}, {4, 3}))), -6.0);
}

TEST(Region, AnEmptyRegionHasNoAreaAndCoversNothing) {
  EXPECT_TRUE(is_empty(Region{}));
  EXPECT_EQ(area({}), 0.0);
  EXPECT_FALSE(contains({}, {0, 0}));
  EXPECT_TRUE(inner_points({}, 3).empty());
  EXPECT_FALSE(is_empty(disc({}, 1)));
}

TEST(Region, ContainsTellsHoleFromMaterial) {
  const Region ring = annulus({0, 0}, 10, 16);
  EXPECT_TRUE(contains(ring, {13, 0}));
  EXPECT_TRUE(contains(ring, {0, -10.001}));
  EXPECT_FALSE(contains(ring, {0, 0}));
  EXPECT_FALSE(contains(ring, {16.001, 0}));
  EXPECT_FALSE(contains(ring, {11.4, 11.4}));
}

TEST(Region, ContainsHoldsLevelWithVerticesAndChords) {
  // The chord of the arc lies on the level v = 0, as does the edge; their ends miss by a rounding.
  const Region half{{line({-5, 0}, {5, 0}), arc({0, 0}, 5, 0, kPi)}, true};
  EXPECT_TRUE(contains(half, {0, 1e-6}));
  EXPECT_FALSE(contains(half, {0, -1e-6}));
  EXPECT_FALSE(contains(half, {-7, 0}));
  const Region diamond = polygon({{0, -2}, {2, 0}, {0, 2}, {-2, 0}});
  EXPECT_TRUE(contains(diamond, {0, 0}));
  EXPECT_FALSE(contains(diamond, {-3, 0}));
  EXPECT_FALSE(contains(diamond, {-1, 2}));
}

TEST(Region, APointOnTheChordOfAnArcIsInsideWhenTheDiscIs) {
  // Four arcs: the chords are an inner diamond and no boundary.
  const Region round = split_disc({0, 0}, 1, 4, 0.0);
  for (int i = 0; i <= 20; ++i) {
    const double s = i / 20.0;
    EXPECT_TRUE(contains(round, {0.999 * (1 - s), 0.999 * s})) << s;
    EXPECT_TRUE(contains(round, {(1 - s) * 0.9 + 0.05, s * 0.9 + 0.05})) << s;
    EXPECT_TRUE(contains(round, {0.5 - 0.5 * s, -0.5 - 0.49 * s})) << s;
  }
  EXPECT_FALSE(contains(round, {1.5, 0}));
}

TEST(Region, ExtentOfAnArcReachesItsQuadrants) {
  const Region half{{line({-5, 0}, {5, 0}), arc({0, 0}, 5, 0, kPi)}, true};
  const Extent2 box = extent(half);
  EXPECT_DOUBLE_EQ(box.low.u, -5.0);
  EXPECT_DOUBLE_EQ(box.low.v, 0.0);
  EXPECT_DOUBLE_EQ(box.high.u, 5.0);
  EXPECT_DOUBLE_EQ(box.high.v, 5.0);
}

TEST(Region, ReachIsZeroInsideAndMeasuresArcsOutside) {
  const Region ring = annulus({0, 0}, 10, 16);
  EXPECT_DOUBLE_EQ(reach(ring, {12, 0}).least, 0.0);
  EXPECT_DOUBLE_EQ(reach(ring, {12, 0}).greatest, 28.0);
  EXPECT_DOUBLE_EQ(reach(ring, {0, 0}).least, 10.0);
  EXPECT_DOUBLE_EQ(reach(ring, {0, 0}).greatest, 16.0);
  const Region box = rectangle({0, 0}, {4, 3});
  EXPECT_DOUBLE_EQ(reach(box, {2, -5}).least, 5.0);
  EXPECT_DOUBLE_EQ(reach(box, {-4, -3}).greatest, std::hypot(8, 6));
  EXPECT_DOUBLE_EQ(reach(box, {-3, -4}).least, 5.0);
}

TEST(Region, AMirroredRegionKeepsItsMaterialOnTheLeft) {
  const Region part = both(rectangle({0, 0}, {20, 10}), turned_inside_out(disc({15, 5}, 3)));
  const double truth = 200 - kPi * 9;
  for (const PlaneMap& map : {rotation(0.7, {100, -40}), mirror(0.7, {100, -40})}) {
    const Region image = mapped(part, map);
    EXPECT_NEAR(area(image), truth, 1e-9);
    const auto moved = [&](double u, double v) {
      return Point2{map.origin.u + map.uu * u + map.uv * v, map.origin.v + map.vu * u + map.vv * v};
    };
    EXPECT_TRUE(contains(image, moved(2, 8)));
    EXPECT_FALSE(contains(image, moved(15, 5)));
    EXPECT_FALSE(contains(image, moved(15, 11)));
  }
}

TEST(Region, InnerPointsLieInEveryIslandAndInside) {
  const Region islands = both(annulus({0, 0}, 10, 16), disc({50, 1}, 4));
  const std::vector<Point2> points = inner_points(islands, 6);
  ASSERT_EQ(points.size(), 6U);
  int in_disc = 0;
  for (const Point2 p : points) {
    EXPECT_TRUE(contains(islands, p)) << p.u << " " << p.v;
    in_disc += std::hypot(p.u - 50, p.v - 1) < 4 ? 1 : 0;
  }
  EXPECT_GT(in_disc, 0);
  EXPECT_LT(in_disc, 6);
}

}  // namespace spotblue::region_test
