// Volumes of mock-up parts against formulas worked by hand, as Open CASCADE reads them back.

#include <gmock/gmock.h>

#include <cmath>
#include <functional>
#include <numbers>

#include "geometry/mockup/mockup_parts.hpp"
#include "spotblue/base/error.hpp"
#include "support/thrown.hpp"

namespace spotblue::mockup_solid_test {

using test::lone;
using test::plain_step;
using test::turned;
using test::write_and_read;

constexpr double kPi = std::numbers::pi;

struct Volume {
  const char* name;
  std::function<Mockup()> mockup;
  double expected_mm3;
};
void PrintTo(const Volume& volume, std::ostream* out) { *out << volume.name; }

class MockupVolume : public testing::TestWithParam<Volume> {};

TEST_P(MockupVolume, AgreesWithTheFormula) {
  const auto parts = write_and_read(GetParam().mockup());
  ASSERT_EQ(parts.size(), 1U);
  EXPECT_EQ(parts[0].solids, 1);
  // Open CASCADE integrates curved faces numerically: 1e-6 of the volume.
  EXPECT_NEAR(parts[0].volume, GetParam().expected_mm3, 1e-6 * GetParam().expected_mm3);
}

TurnedPart with_inside(TurnedPart part, std::vector<Step> inside) {
  part.inside = std::move(inside);
  return part;
}

Mockup cylinder() { return lone(turned({{30, 20}})); }

Mockup stepped_tube() {
  return lone(
      with_inside(turned({{60, 10}, {40, 30}}), {plain_step(0, 25, 20), plain_step(25, 15, 12)}));
}

Mockup blind_bore() { return lone(with_inside(turned({{30, 20}}), {plain_step(0, 12, 10)})); }
Mockup bore_from_last() { return lone(with_inside(turned({{30, 20}}), {plain_step(8, 12, 10)})); }

Mockup taper() {
  TurnedPart part = turned({{30, 24}});
  part.outside[0].end_diameter = 18;
  return lone(part);
}

Mockup chamfered() {
  TurnedPart part = turned({{30, 20}});
  part.outside[0].at_start = {BreakKind::chamfer, 2};
  return lone(part);
}

Mockup filleted() {
  TurnedPart part = turned({{40, 10}, {20, 30}});
  part.outside[1].at_start = {BreakKind::fillet, 3};
  return lone(part);
}

Mockup chamfered_bore() {
  TurnedPart part = with_inside(turned({{30, 20}}), {plain_step(0, 20, 10)});
  part.inside[0].at_start = {BreakKind::chamfer, 2};
  return lone(part);
}

Mockup grooved() {
  TurnedPart part = with_inside(turned({{30, 20}}), {plain_step(0, 20, 10)});
  part.outside_grooves = {{12, 3, 26}};
  part.inside_grooves = {{5, 2, 12}};
  return lone(part);
}

Mockup square_keyseat() {
  TurnedPart part = turned({{30, 40}});
  part.keyseats = {
      {.at = 5, .length = 20, .width = 8, .depth = 4, .angle = 0.7, .ends = EndShape::square}};
  return lone(part);
}

Mockup round_keyseat() {
  TurnedPart part = turned({{30, 40}});
  part.keyseats = {{.at = 5, .length = 20, .width = 8, .depth = 4, .ends = EndShape::round}};
  return lone(part);
}

Mockup hexagon() {
  TurnedPart part = turned({{60, 10}});
  part.flats = {{.at = 0, .length = 10, .across = 36, .count = 6}};
  return lone(part);
}

Mockup one_flat() {
  TurnedPart part = turned({{20, 10}});
  part.flats = {{.at = 0, .length = 10, .across = 17, .count = 1}};
  return lone(part);
}

Mockup off_axis_bore() {
  TurnedPart part = turned({{50, 12}});
  part.bores = {{.name = {},
                 .face = PartFace::first,
                 .u = 6,
                 .v = 0,
                 .diameter = 20,
                 .depth = {},
                 .count = 1,
                 .grooves = {}}};
  return lone(part);
}

Mockup bored_plate() {
  BlockPart plate{{80, 60, 10}, {}, {}, {}};
  plate.bores = {{.name = {},
                  .face = PartFace::last,
                  .u = 40,
                  .v = 30,
                  .diameter = 20,
                  .depth = {},
                  .counterbore = Counterbore{26, 4},
                  .count = 1,
                  .grooves = {{6, 2, 22}}},
                 {.name = {},
                  .face = PartFace::last,
                  .u = 40,
                  .v = 30,
                  .diameter = 5,
                  .depth = 6.0,
                  .count = 4,
                  .circle = 45,
                  .angle = 0.3,
                  .grooves = {}},
                 {.name = {},
                  .face = PartFace::left,
                  .u = 30,
                  .v = 5,
                  .diameter = 3,
                  .depth = 8.0,
                  .count = 1,
                  .grooves = {}}};
  return lone(plate);
}

Mockup bossed_plate() {
  BlockPart plate{{80, 60, 10}, {{{0, 0, 10}, {10, 60, 20}}}, {}, {}};
  plate.bosses = {
      {.name = {}, .face = PartFace::first, .u = 40, .v = 30, .diameter = 30, .height = 5}};
  plate.bores = {{.name = {},
                  .face = PartFace::first,
                  .u = 40,
                  .v = 30,
                  .diameter = 20,
                  .depth = {},
                  .count = 1,
                  .grooves = {}}};
  return lone(plate);
}

Mockup gapped_ring() {
  return lone(RingPart{.outside = 30, .inside = 24, .thickness = 2, .gap = 6});
}
Mockup round_key() { return lone(KeyPart{8, 7, 30, EndShape::round}); }

double disc_area(double diameter) { return kPi * diameter * diameter / 4; }

// Area of a circle of radius r on the far side of a chord at distance d from its centre.
double segment(double r, double d) {
  return r * r * std::acos(d / r) - d * std::sqrt(r * r - d * d);
}

// Area between two chords parallel to x at +-w/2 and a chord at x = floor, within a circle.
double slot_area(double r, double w, double floor) {
  const double h = w / 2;
  return h * std::sqrt(r * r - h * h) + r * r * std::asin(h / r) - w * floor;
}

// What a round-ended keyseat takes: square over the straight length, and at both ends a half disc
// of the depth there. Integral of 2 sqrt(h2 - z2)-wide strips: done over the disc by Simpson's
// rule.
double round_ends(double r, double w, double floor) {
  const double h = w / 2;
  const int n = 20000;
  double sum = 0.0;
  for (int i = 0; i <= n; ++i) {
    const double y = h * std::sin(-kPi / 2 + kPi * i / n);  // chords of the disc, dense at its edge
    const double weight = i == 0 || i == n ? 1 : i % 2 == 1 ? 4 : 2;
    const double chord = 2 * std::sqrt(h * h - y * y);
    const double dy = h * std::cos(-kPi / 2 + kPi * i / n) * kPi / n;
    sum += weight / 3 * chord * (std::sqrt(r * r - y * y) - floor) * dy;
  }
  return sum;
}

// A gap of width g cut through a ring from its centre out on one side.
double ring_gap_area(double outer, double inner, double g) {
  return slot_area(outer, g, 0) - slot_area(inner, g, 0);
}

INSTANTIATE_TEST_SUITE_P(
    ByHand, MockupVolume,
    testing::Values(
        Volume{"Cylinder", cylinder, disc_area(30) * 20},
        Volume{"SteppedTube", stepped_tube,
               disc_area(60) * 10 + disc_area(40) * 30 - disc_area(20) * 25 - disc_area(12) * 15},
        Volume{"BlindBore", blind_bore, disc_area(30) * 20 - disc_area(10) * 12},
        Volume{"BoreFromLast", bore_from_last, disc_area(30) * 20 - disc_area(10) * 12},
        // Frustum: pi h / 3 (R2 + R r + r2).
        Volume{"Taper", taper, kPi * 24 / 3 * (15.0 * 15 + 15 * 9 + 9 * 9)},
        // A 2 mm chamfer turns 2 mm of cylinder into a frustum.
        Volume{"Chamfer", chamfered,
               disc_area(30) * 18 + kPi * 2 / 3 * (15.0 * 15 + 15 * 13 + 13 * 13)},
        // Pappus: a fillet adds the area r2 (1 - pi/4) at the radius of its centroid, which lies
        // r (10 - 3 pi) / (12 - 3 pi) from each leg.
        Volume{"Fillet", filleted,
               disc_area(40) * 10 + disc_area(20) * 30 +
                   2 * kPi * 9 * (1 - kPi / 4) * (10 + 3 * (10 - 3 * kPi) / (12 - 3 * kPi))},
        Volume{"ChamferedBore", chamfered_bore,
               disc_area(30) * 20 - disc_area(10) * 18 - kPi * 2 / 3 * (5.0 * 5 + 5 * 7 + 7 * 7)},
        Volume{"Grooves", grooved,
               (disc_area(30) - disc_area(10)) * 20 - (disc_area(30) - disc_area(26)) * 3 -
                   (disc_area(12) - disc_area(10)) * 2},
        Volume{"SquareKeyseat", square_keyseat, disc_area(30) * 40 - slot_area(15, 8, 11) * 20},
        Volume{"RoundKeyseat", round_keyseat,
               disc_area(30) * 40 - slot_area(15, 8, 11) * 12 - round_ends(15, 8, 11)},
        // Regular hexagon across flats s: s2 sqrt(3) / 2; its corners lie at 41.57 < 60.
        Volume{"Hexagon", hexagon, 36.0 * 36 * std::numbers::sqrt3 / 2 * 10},
        Volume{"OneFlat", one_flat, (disc_area(20) - segment(10, 7)) * 10},
        Volume{"OffAxisBore", off_axis_bore, (disc_area(50) - disc_area(20)) * 12},
        Volume{"BoredPlate", bored_plate,
               80.0 * 60 * 10 - disc_area(20) * 6 - disc_area(26) * 4 -
                   (disc_area(22) - disc_area(20)) * 2 - 4 * disc_area(5) * 6 - disc_area(3) * 8},
        Volume{"BossedPlate", bossed_plate,
               80.0 * 60 * 10 + 10.0 * 60 * 20 + disc_area(30) * 5 - disc_area(20) * 15},
        Volume{"GappedRing", gapped_ring,
               (disc_area(30) - disc_area(24) - ring_gap_area(15, 12, 6)) * 2},
        Volume{"RoundKey", round_key, (8.0 * 22 + disc_area(8)) * 7}));

TEST(MockupSolid, AWholeTurnIsOneFaceASurface) {
  // Two cylinders, two ends and a shoulder: nothing is split.
  EXPECT_EQ(write_and_read(lone(turned({{40, 8}, {20, 30}}))).at(0).faces, 5);
}

Error refusal_of(const Mockup& mockup) {
  return test::error_of([&] { return write_and_read(mockup); });
}

TEST(MockupSolid, CutsThatLeaveThePartInPiecesAreRefused) {
  TurnedPart part = turned({{20, 40}});
  part.inside = {plain_step(0, 40, 16)};
  part.flats = {{.at = 15,
                 .length = 10,
                 .across = 10,
                 .count = 4}};  // a square of 10 within a bore of 16: nothing is left there
  const Error problem = refusal_of(lone(part));
  EXPECT_EQ(problem.place(), "part \"Part\", flats 1");
  EXPECT_THAT(problem.rule(), testing::HasSubstr("2 pieces"));
}

TEST(MockupSolid, ACutThatMissesIsRefusedByName) {
  TurnedPart part = turned({{40, 10}});
  part.inside = {plain_step(0, 10, 20)};
  part.bores = {{.name = {},
                 .face = PartFace::first,
                 .u = 0,
                 .v = 0,
                 .diameter = 12,
                 .depth = {},
                 .count = 1,
                 .grooves = {}}};
  const Error problem = refusal_of(lone(part));
  EXPECT_EQ(problem.place(), "part \"Part\", bores 1");
  EXPECT_THAT(problem.rule(), testing::HasSubstr("cuts nothing"));
}

}  // namespace spotblue::mockup_solid_test
