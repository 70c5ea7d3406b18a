#include "spotblue/geometry/region_overlay.hpp"

#include <gtest/gtest.h>

#include "geometry/plane/region_shapes.hpp"
#include "spotblue/geometry/region.hpp"

namespace spotblue::region_overlay_test {

using namespace shapes;

double shared(const Region& a, const Region& b) {
  const Region both = intersect(a, b);
  EXPECT_TRUE(both.exact);
  return area(both);
}

double rest(const Region& a, const Region& b) {
  const Region left = subtract(a, b);
  EXPECT_TRUE(left.exact);
  return area(left);
}

struct TwoCircles {
  const char* name;
  double r1, r2, distance;
};

void PrintTo(const TwoCircles& c, std::ostream* out) { *out << c.name; }

class CrossingCircles : public testing::TestWithParam<TwoCircles> {};

TEST_P(CrossingCircles, ShareTheLensOfTheClosedForm) {
  const auto& [name, r1, r2, distance] = GetParam();
  const Region a = disc({7, -3}, r1);
  for (const double angle : {0.0, 1.1, 2.9, 4.7}) {
    const Region b = split_disc(on_circle({7, -3}, distance, angle), r2, 2, 0.4);
    EXPECT_NEAR(shared(a, b), lens(r1, r2, distance), 1e-9);
    EXPECT_NEAR(rest(a, b), kPi * r1 * r1 - lens(r1, r2, distance), 1e-9);
    EXPECT_NEAR(rest(b, a), kPi * r2 * r2 - lens(r1, r2, distance), 1e-9);
  }
}

// Source: lens() in region_shapes.hpp, plane geometry.
INSTANTIATE_TEST_SUITE_P(Lenses, CrossingCircles,
                         testing::Values(TwoCircles{"equal", 10, 10, 10},
                                         TwoCircles{"unequal", 22, 5, 20},
                                         TwoCircles{"centre_inside", 22, 8, 15},
                                         TwoCircles{"sliver", 10, 6, 15.99},
                                         TwoCircles{"nearly_concentric", 30, 30, 0.02}));

TEST(RegionOverlay, EqualCirclesCutAtOtherAnglesAreOneDisc) {
  const double truth = kPi * 22 * 22;
  for (const int parts : {1, 2, 3, 5}) {
    for (const double start : {0.0, 0.1, kPi / 2, 3.3}) {
      const Region a = disc({1, 2}, 22);
      const Region b = split_disc({1, 2}, 22, parts, start);
      EXPECT_NEAR(shared(a, b), truth, 1e-9 * truth) << parts << " " << start;
      EXPECT_TRUE(is_empty(subtract(a, b))) << parts << " " << start;
      EXPECT_TRUE(is_empty(subtract(b, a))) << parts << " " << start;
    }
  }
}

TEST(RegionOverlay, CirclesANanometreApartCountAsOne) {
  for (const double off : {1e-15, 1e-12, 1e-9, 5e-8}) {
    const Region a = split_disc({0, 0}, 15, 2, 0.0);
    const Region b = split_disc({off, off / 2}, 15 + off / 3, 3, 1.0);
    EXPECT_NEAR(shared(a, b), kPi * 225, 1e-5) << off;
    EXPECT_NEAR(rest(a, b), 0.0, 1e-5) << off;
  }
}

TEST(RegionOverlay, NoOffsetBetweenTwoCirclesBreaksTheSum) {
  // The offset runs through the tolerance of 1e-7 mm, where some features fuse and others do not.
  for (double off = 1e-10; off < 1e-3; off *= 1.17) {
    const Region a = annulus({0, 0}, 12, 15);
    const Region b = split_disc(on_circle({0, 0}, off, 0.3), 15, 3, 1.0);
    EXPECT_NEAR(shared(a, b) + rest(a, b), area(a), 2e-5) << off;
    EXPECT_NEAR(shared(a, b), area(a), 30 * off + 2e-5) << off;
  }
}

TEST(RegionOverlay, AnnulusOnAnnulusIsTheCommonBand) {
  const Region a = annulus({4, 4}, 10, 20);
  EXPECT_NEAR(shared(a, annulus({4, 4}, 15, 30)), kPi * (400 - 225), 1e-9);
  EXPECT_NEAR(shared(a, annulus({4, 4}, 10, 16)), kPi * (256 - 100), 1e-9);
  EXPECT_NEAR(rest(a, annulus({4, 4}, 10, 16)), kPi * (400 - 256), 1e-9);
  EXPECT_TRUE(is_empty(intersect(a, annulus({4, 4}, 20, 30))));
  EXPECT_TRUE(is_empty(intersect(a, disc({4, 4}, 10))));
  EXPECT_NEAR(rest(a, annulus({4, 4}, 12, 18)), kPi * (400 - 324 + 144 - 100), 1e-9);
}

TEST(RegionOverlay, TangentCirclesShareNothingOutsideAndTheLesserInside) {
  for (const double angle : {0.0, 0.5, kPi / 2, 2.2}) {
    for (const double off : {0.0, 1e-12, -1e-12, 1e-9, -1e-9, 3e-8, -3e-8}) {
      const Region a = disc({0, 0}, 20);
      const Region outside = split_disc(on_circle({0, 0}, 25 + off, angle), 5, 2, 0.3);
      EXPECT_NEAR(shared(a, outside), 0.0, 1e-9) << angle << " " << off;
      EXPECT_NEAR(rest(a, outside), kPi * 400, 1e-9) << angle << " " << off;
      const Region inside = disc(on_circle({0, 0}, 15 + off, angle), 5);
      EXPECT_NEAR(shared(a, inside), kPi * 25, 1e-8) << angle << " " << off;
      EXPECT_NEAR(rest(a, inside), kPi * 375, 1e-8) << angle << " " << off;
    }
  }
}

TEST(RegionOverlay, ADiscTouchingAPolygonsSideSharesAllOrNothing) {
  const Region box = rectangle({0, 0}, {40, 30});
  EXPECT_TRUE(is_empty(intersect(box, disc({20, -5}, 5))));
  EXPECT_NEAR(shared(box, disc({20, 5}, 5)), kPi * 25, 1e-9);
  EXPECT_NEAR(shared(box, disc({5, 5}, 5)), kPi * 25, 1e-9);
  EXPECT_NEAR(rest(box, disc({5, 5}, 5)), 1200 - kPi * 25, 1e-9);
  EXPECT_NEAR(shared(box, disc({20, 15}, 15)), kPi * 225, 1e-9);
}

TEST(RegionOverlay, ADiscOnACornerSharesItsQuarter) {
  EXPECT_NEAR(shared(rectangle({0, 0}, {40, 30}), disc({0, 0}, 8)), kPi * 16, 1e-9);
  EXPECT_NEAR(rest(rectangle({0, 0}, {40, 30}), disc({40, 30}, 8)), 1200 - kPi * 16, 1e-9);
}

TEST(RegionOverlay, SharedStraightEdgesAreKeptOnceOrDropped) {
  const Region box = rectangle({0, 0}, {40, 30});
  EXPECT_TRUE(is_empty(intersect(box, rectangle({40, 5}, {60, 20}))));
  EXPECT_NEAR(shared(box, rectangle({10, 0}, {60, 30})), 900, 1e-12);
  EXPECT_NEAR(rest(box, rectangle({10, 0}, {60, 30})), 300, 1e-12);
  EXPECT_NEAR(rest(box, rectangle({10, 0}, {30, 30})), 600, 1e-12);
  EXPECT_NEAR(shared(box, box), 1200, 1e-12);
  EXPECT_TRUE(is_empty(subtract(box, box)));
  EXPECT_NEAR(rest(box, rectangle({40, 0}, {60, 30})), 1200, 1e-12);
}

TEST(RegionOverlay, ARegionInTheOthersHoleIsNotShared) {
  const Region ring = annulus({0, 0}, 10, 20);
  EXPECT_TRUE(is_empty(intersect(ring, disc({0, 0}, 6))));
  EXPECT_NEAR(rest(ring, disc({0, 0}, 6)), kPi * 300, 1e-9);
  EXPECT_NEAR(shared(ring, disc({15, 0}, 3)), kPi * 9, 1e-9);
  EXPECT_NEAR(rest(ring, disc({15, 0}, 3)), kPi * 291, 1e-9);
  EXPECT_TRUE(is_empty(intersect(ring, disc({100, 0}, 3))));
}

TEST(RegionOverlay, AKeywayIsNetOfTheBandItCuts) {
  // Hub face 20..60 with a keyway 6 wide to 12.8 from the centre, against a shoulder 24..40
  // diameter.
  const Region hub = subtract(annulus({0, 0}, 10, 30), rectangle({-3, 0}, {3, 12.8}));
  const double below = std::asin(3.0 / 10.0) * 100 / 2 * 2 + 3 * std::sqrt(100.0 - 9);
  EXPECT_NEAR(area(hub), kPi * 800 - (6 * 12.8 - below), 1e-9);
  // Keyway inside the shoulder's band: above r = 12, below v = 12.8.
  const double to_twelve = std::asin(3.0 / 12.0) * 144 / 2 * 2 + 3 * std::sqrt(144.0 - 9);
  EXPECT_NEAR(shared(hub, annulus({0, 0}, 12, 20)), kPi * 256 - (6 * 12.8 - to_twelve), 1e-9);
}

TEST(RegionOverlay, SeamsBetweenFacesOfOnePlaneAreNoBoundary) {
  // A plate of two halves, their common edge in the bag twice, once cut at another place.
  Region plate = both(rectangle({0, 0}, {20, 30}), rectangle({20, 0}, {40, 30}));
  EXPECT_NEAR(shared(plate, disc({20, 15}, 5)), kPi * 25, 1e-9);
  EXPECT_NEAR(shared(plate, rectangle({20, 5}, {30, 10})), 50, 1e-12);
  EXPECT_NEAR(rest(plate, rectangle({10, 5}, {20, 10})), 1150, 1e-12);
  plate = both(rectangle({0, 0}, {20, 30}),
               both(rectangle({20, 0}, {40, 12}), rectangle({20, 12}, {40, 30})));
  EXPECT_NEAR(shared(plate, rectangle({19, 0}, {20, 30})), 30, 1e-12);
  EXPECT_NEAR(rest(rectangle({-10, -10}, {50, 50}), plate), 2400, 1e-12);
  EXPECT_NEAR(shared(plate, rectangle({5, 12}, {35, 14})), 60, 1e-12);
}

TEST(RegionOverlay, ToothedWheelsKeepTheSumOfTheirParts) {
  const Region a = toothed_wheel({0, 0}, 55, 62, 60);
  for (const double off : {0.0, 1e-9, 0.37, 5.0, 116.9}) {
    const Region b = toothed_wheel({off, 0.2 * off}, 55, 62, 60);
    EXPECT_NEAR(shared(a, b) + rest(a, b), area(a), 1e-5) << off;
    EXPECT_NEAR(shared(a, b), shared(b, a), 1e-5) << off;
  }
  EXPECT_NEAR(shared(a, disc({0, 0}, 55)), kPi * 55 * 55, 1e-7);
  EXPECT_NEAR(shared(a, disc({0, 0}, 62)), area(a), 1e-7);
}

TEST(RegionOverlay, EdgesWhoseEndsMissByTheModelsToleranceStillClose) {
  Region box = rectangle({0, 0}, {40, 30});
  box.edges[0].to.u += 4e-8;
  box.edges[1].to.v -= 4e-8;
  box.edges[3].from.u += 3e-8;
  EXPECT_NEAR(shared(box, disc({40, 30}, 8)), kPi * 16, 1e-5);
  EXPECT_NEAR(rest(box, rectangle({0, 0}, {40, 10})), 800, 1e-5);
  EXPECT_NEAR(shared(box, rectangle({-5, -5}, {50, 50})), 1200, 1e-5);
}

TEST(RegionOverlay, AnInexactRegionMakesAnInexactAnswer) {
  Region chords = split_disc({0, 0}, 5, 12, 0.0);
  chords.exact = false;
  EXPECT_FALSE(intersect(disc({1, 0}, 5), chords).exact);
  EXPECT_FALSE(subtract(chords, disc({1, 0}, 5)).exact);
}

}  // namespace spotblue::region_overlay_test
