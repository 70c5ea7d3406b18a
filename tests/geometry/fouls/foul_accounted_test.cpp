// What a seat or thread accounts for ends where it ends: past its depth and its length it is a
// foul.

#include <gmock/gmock.h>

#include <cmath>
#include <numbers>

#include "geometry/fouls/foul_solids.hpp"
#include "spotblue/geometry/foul.hpp"
#include "support/value_parts.hpp"

namespace spotblue::foul_accounted_test {

constexpr double kPi = std::numbers::pi;

using test::bar_solid;
using test::shifted;
using ::testing::IsEmpty;
using ::testing::SizeIs;

FoulReport fouls_of(const TopoDS_Shape& a, const TopoDS_Shape& b, const Frame& b_in_a = {}) {
  const Model model = test::solid_model({{a, {}}, {b, b_in_a}});
  return find_fouls(model, find_seats(model, {}), {}, {});
}

TEST(Accounted, APressFitALittleOffItsAxisIsNoFoul) {
  const FoulReport report =
      fouls_of(bar_solid(15, 30, 0, 40), bar_solid(0, 15.03, -10, 50), shifted(0.05, 0, 0));
  EXPECT_THAT(report.found, IsEmpty());
}

// 0.33 deep on one side where a press fit of 30 may have 0.15: what is past that fouls, 0.18.
TEST(Accounted, APressFitFarOffItsAxisFoulsOnOneSide) {
  const TopoDS_Shape hub = bar_solid(15, 30, 0, 40);
  const TopoDS_Shape shaft = bar_solid(0, 15.03, -10, 50);
  const Frame aside = shifted(0.3, 0, 0);
  const FoulReport report = fouls_of(hub, shaft, aside);
  ASSERT_THAT(report.found, SizeIs(1));
  EXPECT_NEAR(report.found.front().depth, 0.18, 1e-9);
  EXPECT_NEAR(report.found.front().length.value(), 40.0, 1e-9);
  const double truth =
      test::shared_volume(bar_solid(15.15, 30, 0, 40), test::moved_solid(shaft, aside));
  EXPECT_NEAR(report.found.front().volume, truth, 1e-3 * truth);
}

Frame tilted(double degrees) {
  return compose(shifted(0, 0, 20),
                 compose(test::rotated({1, 0, 0}, degrees / 180.0 * kPi), shifted(0, 0, -20)));
}

// At the ends of 40 engaged, 20 tan(t) off, and the section is longer by 1/cos(t).
TEST(Accounted, ATiltedPressFitFoulsByWhatIsTooDeepAtItsEnds) {
  const TopoDS_Shape hub = bar_solid(15, 30, 0, 40);
  const TopoDS_Shape shaft = bar_solid(0, 15.03, -10, 50);
  EXPECT_THAT(fouls_of(hub, shaft, tilted(0.3)).found, IsEmpty());
  const FoulReport report = fouls_of(hub, shaft, tilted(0.6));
  const double t = 0.6 / 180.0 * kPi;
  const double depth = 20.0 * std::tan(t) + 15.03 / std::cos(t) - 15.15;
  ASSERT_FALSE(report.found.empty());
  EXPECT_NEAR(report.found.front().depth, depth, 1e-6);
}

TopoDS_Shape taper_hole() { return test::turned_solid({{20, 0}, {40, 0}, {40, 40}, {24, 40}}); }
TopoDS_Shape taper() { return test::turned_solid({{0, 0}, {20, 0}, {24, 40}, {0, 40}}); }

TEST(Accounted, ATaperALittleOffItsAxisIsNoFoul) {
  EXPECT_THAT(fouls_of(taper_hole(), taper(), shifted(0.1, 0, 0)).found, IsEmpty());
}

// Cones that only touch in line have no overlap that is meant: all of it is told, square to the
// surface 0.4 cos(a) deep, tan(a) = 0.1.
TEST(Accounted, ATaperFarOffItsAxisFoulsByAllThatItOverlaps) {
  const TopoDS_Shape aside = test::moved_solid(taper(), shifted(0.4, 0, 0));
  const FoulReport report = fouls_of(taper_hole(), taper(), shifted(0.4, 0, 0));
  ASSERT_THAT(report.found, SizeIs(1));
  const double truth = test::shared_volume(taper_hole(), aside);
  EXPECT_NEAR(report.found.front().depth, 0.4 * std::cos(std::atan(0.1)), 0.002);
  EXPECT_NEAR(report.found.front().volume, truth, 1e-3 * truth);
  EXPECT_EQ(report.found.front().cause, "off axis");
}

// Driven in by 0.5 the taper overlaps by 0.05 all round: only what is deeper than 0.5 % of 44 is
// told, square to the surface (0.4 + 0.05) cos(a) less that.
TEST(Accounted, APressedTaperFarOffItsAxisFoulsByWhatIsTooDeep) {
  const FoulReport report = fouls_of(taper_hole(), taper(), shifted(0.4, 0, -0.5));
  ASSERT_FALSE(report.found.empty());
  EXPECT_EQ(report.found.front().cause, "taper off axis");
  EXPECT_NEAR(report.found.front().depth, 0.45 * std::cos(std::atan(0.1)) - 0.22, 0.005);
}

/// Ridges of M10 coarse along z, `at` along the pitch; crest and root radii, metal within.
TopoDS_Shape ridged(double crest, double root, double at) {
  std::vector<std::pair<double, double>> section{{0, -5}, {root, -5}};
  for (double z = at; z < 15; z += 1.5) {
    section.insert(section.end(),
                   {{root, z + 0.1}, {crest, z + 0.6}, {crest, z + 0.8}, {root, z + 1.3}});
  }
  section.insert(section.end(), {{root, 25}, {0, 25}});
  return test::turned_solid(section);
}

/// A nut that leaves `gap` round that screw.
TopoDS_Shape ridged_nut(double gap) {
  const TopoDS_Shape nut = bar_solid(0, 12, -2, 18);
  return test::cut_solid(nut, ridged(5.0 + gap, 4.2 + gap, 0.0));
}

TEST(Accounted, ARidgedThreadInStepIsNoFoul) {
  EXPECT_THAT(fouls_of(ridged_nut(0.05), ridged(5.0, 4.2, 0.0)).found, IsEmpty());
}

TEST(Accounted, ARidgedThreadHalfAPitchOutOfStepFouls) {
  EXPECT_FALSE(fouls_of(ridged_nut(0.05), ridged(5.0, 4.2, 0.75)).found.empty());
}

TEST(Accounted, AScrewThatRunsOnIntoAPlainHoleFouls) {
  const TopoDS_Shape nut =
      test::turned_solid({{4.25, 0}, {15, 0}, {15, 40}, {4.875, 40}, {4.875, 20}, {4.25, 20}});
  const FoulReport report = fouls_of(nut, bar_solid(0, 5, -5, 45));
  EXPECT_THAT(report.found, SizeIs(1));
}

TEST(Accounted, AScrewInACountersunkTappedHoleIsNoFoul) {
  const TopoDS_Shape nut =
      test::turned_solid({{5.25, 0}, {15, 0}, {15, 20}, {4.25, 20}, {4.25, 1}});
  const FoulReport report = fouls_of(nut, bar_solid(0, 5, -5, 25));
  EXPECT_THAT(report.found, IsEmpty());
}

}  // namespace spotblue::foul_accounted_test
