#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "spotblue/base/error.hpp"
#include "spotblue/mechanics/tooth_thickness.hpp"
#include "spotblue/report/sentence_text.hpp"
#include "support/bench.hpp"
#include "support/thrown.hpp"
#include "support/value_parts.hpp"

namespace spotblue::test::mesh_findings_test {

// Pinion 18 and wheel 36 of module 2.5 as plain blanks, as in hand-checks.md "Gear mesh".
class MeshFindings : public testing::Test {
 protected:
  MeshFindings() { place(67.6); }

  void place(double centre, double along = 0.0, double tilt = 0.0) {
    Frame frame = rotated({1, 0, 0}, tilt);
    frame.rows[0][3] = centre;
    frame.rows[2][3] = along;
    bench.look.model = placed_model(
        {{ring_part(10.0, 25.0, 0.0, 20.0), Frame{}}, {ring_part(15.0, 47.5, 0.0, 20.0), frame}});
  }
  void declare(std::optional<double> thickness) {
    Mesh mesh;
    mesh.a.part = "part 1";
    mesh.a.teeth = 18;
    mesh.b.part = "part 2";
    mesh.b.teeth = 36;
    mesh.module = Length::mm(2.5);
    mesh.line = 7;
    if (thickness) {
      mesh.a.thickness = mesh.b.thickness = Length::mm(*thickness);
    }
    bench.job.meshes = {mesh};
  }
  [[nodiscard]] Finding mesh() const {
    for (const Finding& finding : bench.findings()) {
      if (finding.kind == "gear mesh") {
        return finding;
      }
    }
    ADD_FAILURE() << "no gear mesh finding";
    return {};
  }

  const double standard = 0.5 * std::numbers::pi * 2.5;
  Bench bench;
};

TEST_F(MeshFindings, TheDemoPairAgreesWithTheHandCalculation) {
  declare(standard - 0.05);
  const Finding found = mesh();
  EXPECT_EQ(found.id, "gear-1");
  EXPECT_EQ(found.outcome, Outcome::conforming) << text_of(found.advice);
  EXPECT_NEAR(number(found.found, "centre_distance_mm"), 67.6, 1e-12);
  EXPECT_NEAR(number(found.found, "backlash_as_placed_mm"), 0.173456, 1e-6);
  EXPECT_NEAR(number(found.found, "normal_backlash_min_mm"), 0.162754, 1e-6);
  EXPECT_NEAR(number(found.found, "backlash_per_centre_ratio"), 0.739675, 1e-6);
  EXPECT_NEAR(number(found.found, "contact_ratio"), 1.57171, 1e-5);
  EXPECT_NEAR(number(found.found, "first_tip_clearance_mm"), 0.725, 1e-9);
  EXPECT_NEAR(number(found.found, "face_overlap_mm"), 20.0, 1e-9);
  EXPECT_NEAR(number(found.wanted, "normal_backlash_least_mm"), 0.11253, 1e-5);
}

TEST_F(MeshFindings, AssumedThicknessIsUndecidedAndSaysWhatToMeasure) {
  declare({});
  const Finding found = mesh();
  EXPECT_EQ(found.outcome, Outcome::undecided);
  // Base tangent lengths of module 1: 7.6324 and 13.7888 (tables), by 2.5.
  EXPECT_NE(text_of(found.advice).find("over 3 teeth of part 1 (19.081 mm"), std::string::npos)
      << text_of(found.advice);
  EXPECT_NE(text_of(found.advice).find("over 5 teeth of part 2 (34.472 mm"), std::string::npos)
      << text_of(found.advice);
}

TEST_F(MeshFindings, ThicknessComesFromTheSpan) {
  declare({});
  const ToothForm form{2.5, 20.0, 0.0};
  bench.job.meshes[0].a.span = ToothSpan{3, Length::mm(span_mm(form, 18, 3, standard - 0.05))};
  bench.job.meshes[0].b.pins = OverPins{
      Length::mm(4.3), Length::mm(over_pins_mm(form, 36, 4.3, standard - 0.05, Pins::two))};
  const Finding found = mesh();
  EXPECT_NEAR(number(found.found, "first_thickness_mm"), standard - 0.05, 1e-9);
  EXPECT_NEAR(number(found.found, "second_thickness_mm"), standard - 0.05, 1e-9);
  EXPECT_EQ(found.outcome, Outcome::conforming) << text_of(found.advice);
}

TEST_F(MeshFindings, ASpanOfAnotherGearIsRefusedWithItsLine) {
  declare({});
  bench.job.meshes[0].a.span = ToothSpan{3, Length::mm(34.4)};
  const Error error = test::error_of([&] { return bench.findings(); });
  EXPECT_EQ(error.code(), ErrorCode::bad_input);
  EXPECT_EQ(error.place(), "line 7, meshes");
}

TEST_F(MeshFindings, WantedBacklashIsJudgedOnTheWorkingCircle) {
  declare(standard - 0.05);
  bench.job.meshes[0].backlash = Limits{Length::mm(0.10), Length::mm(0.15)};
  const Finding found = mesh();
  EXPECT_EQ(found.outcome, Outcome::nonconforming);
  EXPECT_NEAR(number(found.margin, "backlash_mm"), 0.15 - 0.173456, 1e-6);
}

TEST_F(MeshFindings, LessThanTheRecommendedBacklashDoesNotPass) {
  declare(standard - 0.02);
  place(67.52);
  EXPECT_EQ(mesh().outcome, Outcome::nonconforming);
}

TEST_F(MeshFindings, TeethThatBindAreFound) {
  declare(standard);
  place(67.45);
  const Finding found = mesh();
  EXPECT_EQ(found.outcome, Outcome::nonconforming);
  EXPECT_NE(text_of(found.advice).find("bind"), std::string::npos) << text_of(found.advice);
}

TEST_F(MeshFindings, TipsThatBottomAreFound) {
  declare(standard - 0.6);
  place(66.8);
  const Finding found = mesh();
  EXPECT_EQ(found.outcome, Outcome::nonconforming);
  EXPECT_NE(text_of(found.advice).find("bottom"), std::string::npos) << text_of(found.advice);
}

TEST_F(MeshFindings, GearsTooFarApartAreFound) {
  declare(standard - 0.05);
  place(70.8);
  EXPECT_NE(text_of(mesh().advice).find("contact ratio"), std::string::npos);
}

TEST_F(MeshFindings, AxesOutOfParallelAreFound) {
  declare(standard - 0.05);
  place(67.6, 0.0, 0.03);
  const Finding found = mesh();
  EXPECT_EQ(found.outcome, Outcome::nonconforming);
  EXPECT_NEAR(number(found.found, "axes_tilt_deg"), 0.03 * 180.0 / std::numbers::pi, 1e-9);
}

TEST_F(MeshFindings, FacesThatPassEachOtherAreFound) {
  declare(standard - 0.05);
  place(67.6, 25.0);
  EXPECT_EQ(mesh().outcome, Outcome::nonconforming);
}

TEST_F(MeshFindings, FacesThatOverlapByLessThanFourFifthsDoNotConform) {
  declare(standard - 0.05);
  place(67.6, 8.0);
  const Finding found = mesh();
  EXPECT_EQ(found.outcome, Outcome::nonconforming);
  EXPECT_NEAR(number(found.found, "face_overlap_mm"), 12.0, 1e-9);
  EXPECT_NEAR(number(found.wanted, "face_overlap_least_mm"), 16.0, 1e-9);
  EXPECT_NE(text_of(found.advice).find("only 12.000 mm of 20.000 mm"), std::string::npos)
      << text_of(found.advice);
}

TEST_F(MeshFindings, FacesThatOverlapByTheShareThatTheJobAsksForConform) {
  declare(standard - 0.05);
  bench.job.meshes[0].face_share = 0.55;
  place(67.6, 8.0);
  const Finding found = mesh();
  EXPECT_EQ(found.outcome, Outcome::conforming) << text_of(found.advice);
  EXPECT_NE(text_of(found.advice).find("only 12.000 mm of 20.000 mm"), std::string::npos)
      << text_of(found.advice);
}

// Both float between two plates with 2 to either side: 4 apart at most, so 16 of 20 stay together.
TEST_F(MeshFindings, EndPlayTakesFacesApart) {
  declare(standard - 0.08);
  bench.job.meshes[0].face_share = 0.9;
  const std::vector<BlockHole> holes{{0, 0, 20.0}, {67.6, 0, 30.0}};
  const Frame beside = shifted(67.6, 0, 0);
  bench.look.model = placed_model({{ring_part(10.0, 25.0, 0.0, 20.0), Frame{}},
                                   {ring_part(15.0, 47.5, 0.0, 20.0), beside},
                                   {block_part({-60, -60, -10}, {130, 60, -2}, holes), Frame{}},
                                   {block_part({-60, -60, 22}, {130, 60, 30}, holes), Frame{}},
                                   {ring_part(0.0, 9.99, -10.0, 30.0), Frame{}},
                                   {ring_part(0.0, 14.99, -10.0, 30.0), beside}});
  bench.job.fixed = {{"part 3", "part 5", "pin", 0},
                     {"part 4", "part 5", "pin", 0},
                     {"part 3", "part 6", "pin", 0}};
  bench.look.seats = find_seats(bench.look.model, bench.look.settings.seats);
  const Finding found = mesh();
  EXPECT_NEAR(number(found.found, "face_overlap_in_play_min_mm"), 16.0, 1e-9);
  EXPECT_NEAR(number(found.found, "face_overlap_in_play_max_mm"), 20.0, 1e-9);
  EXPECT_EQ(found.outcome, Outcome::undecided);
  EXPECT_NE(text_of(found.advice).find("end play takes the faces to 16.000 mm of 20.000 mm"),
            std::string::npos)
      << text_of(found.advice);
}

TEST_F(MeshFindings, BearingClearanceMovesTheCentreBothWays) {
  declare(standard - 0.05);
  // The pinion's bore 20 runs on a spindle of 19.95: 0.025 each way.
  bench.look.model.products.push_back(ring_part(0.0, 9.975, 0.0, 40.0));
  const OccurrenceId spindle = bench.occur(2, "Group/Spindle");
  bench.look.model.products[2].id = "Spindle";
  std::size_t bore = 0;
  const Product& pinion = bench.look.model.products[0];
  while (pinion.cylinders[bore].side != Side::internal) {
    ++bore;
  }
  bench.seat({OccurrenceId(0), FeatureKind::cylinder, bore}, {spindle, FeatureKind::cylinder, 0});
  bench.look.seats.centre_lines = {
      {"centre line 1", {{0, 0, 0}, {0, 0, 1}}, {OccurrenceId(0), spindle}}};
  const Finding found = mesh();
  EXPECT_NEAR(number(found.found, "bearing_play_mm"), 0.025, 1e-9);
  EXPECT_NEAR(number(found.found, "backlash_max_mm") - number(found.found, "backlash_min_mm"),
              0.05 * 0.7397, 1e-4);
}

TEST_F(MeshFindings, PlayIsCountedUpToThePartThatCarriesBothGears) {
  declare(standard - 0.05);
  // The pinion's bore 20 runs on a spindle of 19.95 that turns in a plate, bore 15.04 on 15.
  bench.look.model.products.push_back(ring_part(0.0, 9.975, 0.0, 40.0));
  bench.look.model.products.push_back(ring_part(7.52, 100.0, -20.0, 0.0));
  const OccurrenceId spindle = bench.occur(2, "Group/Spindle");
  const OccurrenceId plate = bench.occur(3, "Group/Plate");
  bench.look.model.products[2].id = "Spindle";
  bench.look.model.products[3].id = "Plate";
  bench.look.model.products[2].cylinders.push_back(
      ring_part(0.0, 7.5, -20.0, 0.0).cylinders.front());
  const auto internal = [&](std::size_t product) {
    const std::vector<Cylinder>& all = bench.look.model.products[product].cylinders;
    return static_cast<std::size_t>(
        std::find_if(all.begin(), all.end(),
                     [](const Cylinder& c) { return c.side == Side::internal; }) -
        all.begin());
  };
  bench.seat({OccurrenceId(0), FeatureKind::cylinder, internal(0)},
             {spindle, FeatureKind::cylinder, 0});
  bench.seat({plate, FeatureKind::cylinder, internal(3)}, {spindle, FeatureKind::cylinder, 1});
  const Direction up{0, 0, 1};
  bench.look.seats.centre_lines = {
      {"centre line 1", {{0, 0, 0}, up}, {OccurrenceId(0), spindle, plate}},
      {"centre line 2", {{67.6, 0, 0}, up}, {OccurrenceId(1), plate}}};
  EXPECT_NEAR(number(mesh().found, "bearing_play_mm"), 0.025 + 0.02, 1e-9);
}

TEST_F(MeshFindings, OverlapOfTheBlanksIsAccountedForUpToTheAddenda) {
  declare(standard - 0.05);
  bench.foul(OccurrenceId(0), OccurrenceId(1), 4.9, "solids overlap");
  const std::vector<Finding> all = bench.findings();
  EXPECT_EQ(all.front().kind, "foul");
  EXPECT_EQ(all.front().outcome, Outcome::conforming);
  EXPECT_NE(text_of(all.front().basis).find("allowed overlap 12.5 mm3"), std::string::npos)
      << text_of(all.front().basis);
  EXPECT_NEAR(number(all.front().wanted, "overlap_most_mm"), 5.0, 1e-9);
}

TEST_F(MeshFindings, ADeeperOverlapIsStillAFoul) {
  declare(standard - 0.05);
  bench.foul(OccurrenceId(0), OccurrenceId(1), 5.2, "solids overlap");
  EXPECT_EQ(bench.findings().front().outcome, Outcome::nonconforming);
}

}  // namespace spotblue::test::mesh_findings_test
