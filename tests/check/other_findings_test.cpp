// Threads, widths, tapers, axial gaps, fouls and sizes. Numbers worked by hand.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "spotblue/report/sentence_text.hpp"
#include "support/bench.hpp"

namespace spotblue::other_findings_test {

using test::Bench;
using test::iso;
using test::number;
using ::testing::AllOf;
using ::testing::HasSubstr;

constexpr double kNear = 1e-9;

Bench screw_in_cover(double offset) {
  Bench bench;
  Thread thread;
  thread.hole = bench.bore(bench.part("Cover"), "bore 8.5", 8.5);
  thread.screw = bench.outside(bench.part("Screw"), "outside 10", 10.0);
  thread.size = "M10";
  thread.hole_diameter = 8.5;
  thread.screw_diameter = 10.0;
  thread.offset = offset;
  thread.engaged = 12.0;
  bench.look.seats.threads.push_back(thread);
  return bench;
}

TEST(ThreadFinding, ConformsAndListsTheOverlapItHides) {
  const Finding finding = screw_in_cover(0.0).only();
  EXPECT_EQ(finding.id, "thread-1");
  EXPECT_EQ(finding.outcome, Outcome::conforming);
  EXPECT_NEAR(number(finding.found, "overlap_allowed_mm"), 1.5, kNear);
  EXPECT_THAT(text_of(finding.basis), HasSubstr("M10"));
}

TEST(ThreadFinding, IsUndecidedWhenTheScrewIsOutOfLine) {
  EXPECT_EQ(screw_in_cover(0.3).only().outcome, Outcome::undecided);
}

TEST(ThreadFinding, IsJudgedAsTheFitThatIsDeclaredForIt) {
  Bench bench = screw_in_cover(0.0);
  bench.want("Cover: bore 8.5", "Screw: outside 10", ClearanceLimits{Length(), Length::mm(0.1)});
  const Finding finding = bench.only();
  EXPECT_EQ(finding.kind, "radial fit");
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
}

// ISO 286-2: 8 P9 = -15/-51 um, h9 = 0/-36 um (size step over 6 to 10): clearances -51 to +21 um.
TEST(WidthFinding, JudgesAKeyInItsKeyseatByClass) {
  Bench bench;
  const FeatureRef slot = bench.width(bench.part("Hub"), "slot 8", Side::internal, 7.97);
  const FeatureRef key = bench.width(bench.part("Key"), "width 8", Side::external, 7.99);
  bench.key(slot, key);
  bench.want("Hub: slot 8", "Key: width 8", iso("P9/h9"));
  const Finding finding = bench.only();
  EXPECT_EQ(finding.kind, "width fit");
  EXPECT_EQ(finding.outcome, Outcome::conforming);
  EXPECT_NEAR(number(finding.wanted, "clearance_min_mm"), -0.051, kNear);
  EXPECT_NEAR(number(finding.wanted, "clearance_max_mm"), 0.021, kNear);
}

TEST(WidthFinding, FoulsWhenTheKeyStandsBesideItsKeyseat) {
  Bench bench;
  const FeatureRef slot = bench.width(bench.part("Hub"), "slot 8", Side::internal, 8.02);
  const FeatureRef key = bench.width(bench.part("Key"), "width 8", Side::external, 8.0);
  bench.key(slot, key, -0.05);
  EXPECT_EQ(bench.only().outcome, Outcome::nonconforming);
}

Bench cone_in_hub(double hole_deg, double shaft_deg) {
  const double rad = std::numbers::pi / 180.0;
  Bench bench;
  TaperSeat seat;
  seat.hole = bench.cone(bench.part("Hub"), "taper bore 20/24", Side::internal, hole_deg * rad);
  seat.shaft = bench.cone(bench.part("Stud"), "taper 20/24", Side::external, shaft_deg * rad);
  seat.hole_half_angle = hole_deg * rad;
  seat.shaft_half_angle = shaft_deg * rad;
  bench.look.seats.taper.push_back(seat);
  return bench;
}

TEST(TaperFinding, IsUndecidedUntilDeclared) {
  EXPECT_EQ(cone_in_hub(2.86, 2.86).only().outcome, Outcome::undecided);
}

// A hole that opens faster than the shaft grows touches it where both are small.
TEST(TaperFinding, SaysAtWhichEndTheConesBear) {
  Bench bench = cone_in_hub(2.90, 2.80);
  bench.job.tapers.push_back({"Hub: taper bore 20/24", "Stud: taper 20/24", 0.05, {}, 0});
  const Finding finding = bench.only();
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("small end"));
  bench.job.tapers.front().angle_within_deg = 0.1;
  EXPECT_EQ(bench.only().outcome, Outcome::conforming);
}

// Offset 0.02 takes 0.02 x cos 2.86 deg = 0.01998 of the 0.01 by which the cones press.
TEST(TaperFinding, OffItsAxisByMoreThanItsInterferenceIsNonconforming) {
  Bench bench = cone_in_hub(2.86, 2.86);
  TaperSeat& seat = bench.look.seats.taper.front();
  seat.gap = -0.01;
  seat.offset = 0.02;
  bench.job.tapers.push_back({"Hub: taper bore 20/24", "Stud: taper 20/24", 0.05, {}, 0});
  const Finding finding = bench.only();
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("out of line by 0.020 mm"));
  bench.look.seats.taper.front().gap = -0.03;
  EXPECT_EQ(bench.only().outcome, Outcome::conforming);
}

// Tilt 0.1 deg over 40: 20 x tan 0.1 deg = 0.0349 at the end.
TEST(TaperFinding, TiltedByMoreThanItsInterferenceIsNonconforming) {
  Bench bench = cone_in_hub(2.86, 2.86);
  TaperSeat& seat = bench.look.seats.taper.front();
  seat.gap = -0.03;
  seat.engaged = 40.0;
  seat.tilt = 0.1 * std::numbers::pi / 180.0;
  bench.job.tapers.push_back({"Hub: taper bore 20/24", "Stud: taper 20/24", 0.05, {}, 0});
  EXPECT_EQ(bench.only().outcome, Outcome::nonconforming);
}

Bench faces(double gap) {
  Bench bench;
  const FeatureRef a = bench.face(bench.part("Bush"), "face 60", 0.0, 1.0);
  const FeatureRef b = bench.face(bench.part("Washer"), "face 50", gap, -1.0);
  bench.gap(a, b, gap);
  return bench;
}

AxialWant between_faces(AxialWantKind kind, double least, double greatest) {
  return {kind, "Washer: face 50", "Bush: face 60", Length::mm(least), Length::mm(greatest), 0};
}

TEST(AxialFinding, IsUndecidedWhenNothingIsDeclared) {
  EXPECT_EQ(faces(0.0).only().outcome, Outcome::undecided);
  EXPECT_EQ(faces(0.2).only().outcome, Outcome::undecided);
}

TEST(AxialFinding, AsksNothingOfFacesThatTouchAndAreHeldTogether) {
  Bench bench = faces(0.0);
  EXPECT_EQ(bench.only().outcome, Outcome::undecided);
  bench.job.fixed.push_back({"Bush", "Washer", "screw", 0});
  EXPECT_EQ(bench.only().outcome, Outcome::conforming);
}

TEST(AxialFinding, DoesNotConformWhenFacesOverlap) {
  const Finding finding = faces(-0.15).only();
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("overlap by 0.150 mm"));
}

TEST(AxialFinding, ConformsWhenTheOverlapIsAllowedAndSaysWhatItHides) {
  Bench bench = faces(-0.15);
  bench.job.allowed.push_back({"Bush", "Washer", "soft washer", Length::mm(0.2), 9});
  const Finding finding = bench.only();
  EXPECT_EQ(finding.outcome, Outcome::conforming);
  EXPECT_THAT(text_of(finding.basis),
              AllOf(HasSubstr("soft washer"), HasSubstr("allowed overlap 0.150 mm")));
  bench.job.allowed.front().depth = Length::mm(0.1);
  EXPECT_EQ(bench.only().outcome, Outcome::nonconforming);
}

TEST(AxialFinding, JudgesAGapWantInEitherOrderOfItsFaces) {
  Bench bench = faces(0.2);
  bench.job.axial.push_back(between_faces(AxialWantKind::gap, 0.1, 0.25));
  const Finding finding = bench.only();
  EXPECT_EQ(finding.outcome, Outcome::conforming);
  EXPECT_NEAR(number(finding.margin, "gap_mm"), 0.05, kNear);
  bench.job.axial.front().greatest = Length::mm(0.15);
  EXPECT_EQ(bench.only().outcome, Outcome::nonconforming);
}

TEST(AxialFinding, JudgesTouchBetweenTwoPartsWithTheModelsRounding) {
  Bench bench = faces(3e-7);
  bench.job.axial.push_back({AxialWantKind::touch, "Bush", "Washer", Length(), Length(), 0});
  EXPECT_EQ(bench.only().outcome, Outcome::conforming);
}

TEST(AxialFinding, TakesAFacesWantBeforeItsParts) {
  Bench bench = faces(0.2);
  bench.job.axial.push_back({AxialWantKind::touch, "Bush", "Washer", Length(), Length(), 0});
  bench.job.axial.push_back(between_faces(AxialWantKind::end_play, 0.1, 0.3));
  const std::vector<Finding> findings = bench.findings();
  EXPECT_EQ(findings.at(0).outcome, Outcome::conforming);
  // The want of the parts now speaks of nothing, and says so.
  ASSERT_EQ(findings.size(), 2U);
  EXPECT_THAT(text_of(findings.at(1).advice), HasSubstr("nothing to judge"));
}

TEST(AxialFinding, TakesAMeasuredGapBeforeTheModels) {
  Bench bench = faces(0.2);
  bench.job.axial.push_back(between_faces(AxialWantKind::gap, 0.1, 0.25));
  bench.job.measured_gaps.push_back(
      {"Bush: face 60", "Washer: face 50", Length::mm(0.24), Length::mm(0.02), 0});
  const Finding finding = bench.only();
  EXPECT_NEAR(number(finding.found, "gap_mm"), 0.24, kNear);
  EXPECT_EQ(finding.outcome, Outcome::undecided);
}

Bench two_parts(double depth, const std::string& cause) {
  Bench bench;
  const OccurrenceId a = bench.part("Seal");
  const OccurrenceId b = bench.part("Bracket");
  bench.foul(a, b, depth, cause);
  return bench;
}

TEST(FoulFinding, DoesNotConformAndGivesVolumeAndDepth) {
  const Finding finding = two_parts(0.4, "solids overlap").only();
  EXPECT_EQ(finding.id, "foul-1");
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_NEAR(number(finding.found, "volume_mm3"), 12.5, kNear);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("fouls by 0.400 mm, 12.5 mm3 shared"));
}

TEST(FoulFinding, SaysThatASeatsOwnOverlapIsNotCounted) {
  const Finding finding = two_parts(0.4, "press fit off axis").only();
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_THAT(text_of(finding.advice),
              HasSubstr("the two go 0.400 mm deeper and share 12.5 mm3: true"));
}

TEST(FoulFinding, ConformsWhenAllowedDeepEnoughInEitherOrder) {
  Bench bench = two_parts(0.4, "solids overlap");
  bench.job.allowed.push_back({"Bracket", "Seal", "squeezed on purpose", Length::mm(0.5), 0});
  const Finding finding = bench.only();
  EXPECT_EQ(finding.outcome, Outcome::conforming);
  EXPECT_THAT(text_of(finding.basis),
              AllOf(HasSubstr("squeezed on purpose"), HasSubstr("allowed overlap 12.5 mm3")));
  bench.job.allowed.front().depth = Length::mm(0.3);
  EXPECT_EQ(bench.only().outcome, Outcome::nonconforming);
}

TEST(FoulFinding, IsUndecidedWhenOpenCascadeCouldNotDecide) {
  EXPECT_EQ(two_parts(0.0, "undecided: boolean failed").only().outcome, Outcome::undecided);
}

// ISO 286-2: 30 F8 = +53/+20 um (size step over 18 to 30).
TEST(SizeFinding, JudgesAMeasuredSizeByItsOwnClass) {
  Bench bench;
  bench.bore(bench.part("Bush"), "bore 30", 30.0);
  bench.job.sizes.push_back({"Bush: bore 30", std::string("F8"), {}, 0});
  bench.measure("Bush: bore 30", 30.030, 0.002);
  const Finding finding = bench.only();
  EXPECT_EQ(finding.id, "size-1");
  EXPECT_EQ(finding.outcome, Outcome::conforming);
  EXPECT_NEAR(number(finding.margin, "size_mm"), 0.008, kNear);
  bench.job.measured.front().value = Length::mm(30.010);
  EXPECT_EQ(bench.only().outcome, Outcome::nonconforming);
  EXPECT_THAT(text_of(bench.only().advice), HasSubstr("too small by 0.012 mm: open it"));
}

TEST(SizeFinding, IsOneForAllOccurrencesAlike) {
  Bench bench;
  const OccurrenceId pin = bench.part("Pin");
  bench.occur(bench.look.model.occurrences[pin].product, "Group/Pin again");
  bench.outside(pin, "outside 6", 6.0);
  bench.job.sizes.push_back({"Pin: outside 6", Limits{Length::mm(5.9), Length::mm(6.1)}, {}, 0});
  ASSERT_EQ(bench.findings().size(), 1U);
  bench.measure("Group/Pin again: outside 6", 5.8, 0.0);
  const std::vector<Finding> findings = bench.findings();
  ASSERT_EQ(findings.size(), 2U);
  EXPECT_EQ(findings[0].outcome, Outcome::conforming);
  EXPECT_EQ(findings[1].outcome, Outcome::nonconforming);
  EXPECT_EQ(findings[1].about.front(), "Group/Pin again: outside 6");
}

TEST(SizeFinding, TellsOfAMeasuredSizeThatNothingUses) {
  Bench bench;
  bench.bore(bench.part("Bush"), "bore 30", 30.0);
  bench.measure("Bush: bore 30", 30.030, 0.002);
  const Finding finding = bench.only();
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("measured, but it makes no seat"));
}

}  // namespace spotblue::other_findings_test
