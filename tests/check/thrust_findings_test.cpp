// Thrust faces and parts that must stay off each other, on models of plain values. By hand.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "spotblue/report/sentence_text.hpp"
#include "support/bench.hpp"

namespace spotblue::thrust_findings_test {

using test::Bench;
using test::number;
using ::testing::HasSubstr;

constexpr double kNear = 1e-6;

/// A wheel that turns at 60, its face against a bracket's: 30 to 50, 1200 mm2 left by grooves.
Bench wheel_on_face(double inner = 30.0, double outer = 50.0, double area = 1200.0,
                    double gap = 0.0) {
  Bench bench;
  const FeatureRef wheel = bench.face(bench.part("Wheel"), "face 50", 0.0, -1.0);
  const FeatureRef bracket = bench.face(bench.part("Bracket"), "face 64", -gap, 1.0);
  bench.gap(wheel, bracket, gap);
  AxialSeat& seat = bench.look.seats.axial.back();
  seat.centre_line = CentreLineId(0);
  seat.inner = inner;
  seat.outer = outer;
  seat.area = area;
  bench.look.seats.centre_lines.push_back(
      {"centre line 1", {{0, 0, 0}, {0, 0, 1}}, {OccurrenceId(0), OccurrenceId(1)}});
  bench.declare("Wheel", PartState::as_found, Drawn::at_the_size_wanted).material = "bronze";
  bench.declare("Bracket", PartState::as_found, Drawn::at_the_size_wanted).material = "grey iron";
  return bench;
}

void turn(Bench& bench, std::optional<double> thrust_n, Duty duty = Duty::continuous) {
  bench.job.turning.push_back({"Wheel", 60.0, duty, std::nullopt, thrust_n, 0});
}

void want_gap(Bench& bench, AxialWantKind kind, double least, double greatest) {
  bench.job.axial.push_back(
      {kind, "Wheel: face 50", "Bracket: face 64", Length::mm(least), Length::mm(greatest), 0});
}

// 600 N on 1200 mm2; 2/3 (25^3 - 15^3)/(25^2 - 15^2) = 20.4167 mm, at 60 rpm 0.128282 m/s.
TEST(ThrustFinding, JudgesTheNetAreaAtTheMeanRadius) {
  Bench bench = wheel_on_face();
  turn(bench, 600.0);
  const Finding finding = of_kind(bench, "thrust face").at(0);
  EXPECT_EQ(finding.id, "thrust-1");
  EXPECT_EQ(finding.outcome, Outcome::conforming);
  EXPECT_NEAR(number(finding.found, "pressure_mpa"), 0.5, kNear);
  EXPECT_NEAR(number(finding.found, "mean_radius_mm"), 20.416667, kNear);
  EXPECT_NEAR(number(finding.found, "speed_m_s"), 0.128282, kNear);
  EXPECT_NEAR(number(finding.wanted, "pressure_max_mpa"), 4.0, kNear);
  EXPECT_NEAR(number(finding.margin, "band_mm"), 7.5, kNear);
}

TEST(ThrustFinding, OfAModelThatDidNotArriveWholeIsUndecided) {
  Bench bench = wheel_on_face();
  turn(bench, 600.0);
  bench.look.model.not_compared = {{"product 'Washer'", "did not arrive"}};
  EXPECT_EQ(of_kind(bench, "thrust face").at(0).outcome, Outcome::undecided);
}

TEST(ThrustFinding, WithoutAThrustIsUndecided) {
  Bench bench = wheel_on_face();
  turn(bench, std::nullopt);
  const Finding finding = of_kind(bench, "thrust face").at(0);
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("no thrust is given for Wheel"));
}

TEST(ThrustFinding, TooMuchPressureOnWhatTheGroovesLeaveDoesNotConform) {
  Bench bench = wheel_on_face(30.0, 50.0, 100.0);
  turn(bench, 600.0);
  const Finding finding = of_kind(bench, "thrust face").at(0);
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("pressure 6 MPa is over 4 MPa"));
}

TEST(ThrustFinding, ANarrowBandDoesNotConform) {
  Bench bench = wheel_on_face(48.0, 50.0, 150.0);
  turn(bench, 6.0);
  const Finding finding = of_kind(bench, "thrust face").at(0);
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("a band of only 1.000 mm"));
}

TEST(ThrustFinding, ANarrowBandWithoutLoadIsUndecided) {
  Bench bench = wheel_on_face(48.0, 50.0, 150.0);
  turn(bench, std::nullopt, Duty::no_load_slow);
  EXPECT_EQ(of_kind(bench, "thrust face").at(0).outcome, Outcome::undecided);
}

TEST(ThrustFinding, AnEndPlayIsClosedByItsFaces) {
  Bench bench = wheel_on_face(30.0, 50.0, 1200.0, 0.3);
  want_gap(bench, AxialWantKind::end_play, 0.1, 0.5);
  turn(bench, 600.0);
  EXPECT_EQ(of_kind(bench, "thrust face").size(), 1U);
}

TEST(ThrustFinding, FacesThatAreWantedApartTakeNoThrust) {
  Bench bench = wheel_on_face(30.0, 50.0, 1200.0, 0.3);
  want_gap(bench, AxialWantKind::gap, 0.1, 0.5);
  turn(bench, 600.0);
  EXPECT_TRUE(of_kind(bench, "thrust face").empty());
}

// Beside the faces others meet 0.1 sooner as drawn: these may never meet.
Bench wheel_that_others_stop(double area) {
  Bench bench = wheel_on_face(30.0, 50.0, area, 0.3);
  bench.gap(bench.face(OccurrenceId(0), "rim", 5.0, -1.0),
            bench.face(OccurrenceId(1), "rim", 4.8, 1.0), 0.2);
  for (AxialSeat& seat : bench.look.seats.axial) {
    seat.axis = {{0, 0, 0}, {0, 0, -1}};
  }
  turn(bench, 600.0);
  return bench;
}

TEST(ThrustFinding, OfFacesThatMayNeverMeetConformsWhereItWouldIfTheyDid) {
  const Finding finding = of_kind(wheel_that_others_stop(1200.0), "thrust face").at(0);
  EXPECT_EQ(finding.outcome, Outcome::conforming);
  EXPECT_THAT(text_of(finding.basis), HasSubstr("as if the two met, which is not known"));
}

TEST(ThrustFinding, OfFacesThatMayNeverMeetIsUndecidedWhereItWouldNotConform) {
  const Finding finding = of_kind(wheel_that_others_stop(100.0), "thrust face").at(0);
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("pressure 6 MPa is over 4 MPa"));
}

TEST(ThrustFinding, PartsThatTurnTogetherDoNotRub) {
  Bench bench = wheel_on_face();
  bench.job.fixed.push_back({"Wheel", "Bracket", "pin", 0});
  turn(bench, 600.0);
  EXPECT_TRUE(of_kind(bench, "thrust face").empty());
}

Finding keep_off(Bench bench, double least) {
  bench.job.keep_off.push_back({"Wheel", "Bracket", Length::mm(least), "it is the cage", 0});
  return of_kind(bench, "keep off").at(0);
}

TEST(KeepOffFinding, FacesTooNearAreNamed) {
  const Finding finding = keep_off(wheel_on_face(30.0, 50.0, 1200.0, 0.3), 0.5);
  EXPECT_EQ(finding.id, "keep-1");
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("Wheel: face 50 and Bracket: face 64"));
  EXPECT_NEAR(number(finding.margin, "gap_mm"), -0.2, kNear);
  EXPECT_THAT(text_of(finding.basis), HasSubstr("it is the cage"));
}

TEST(KeepOffFinding, FarEnoughConforms) {
  const Finding finding = keep_off(wheel_on_face(30.0, 50.0, 1200.0, 0.8), 0.5);
  EXPECT_EQ(finding.outcome, Outcome::conforming);
  EXPECT_NEAR(number(finding.found, "gap_mm"), 0.8, kNear);
}

TEST(KeepOffFinding, AMeasuredGapCountsWithItsUncertainty) {
  Bench bench = wheel_on_face(30.0, 50.0, 1200.0, 0.8);
  bench.job.measured_gaps.push_back(
      {"Wheel: face 50", "Bracket: face 64", Length::mm(0.52), Length::mm(0.05), 0});
  EXPECT_EQ(keep_off(bench, 0.5).outcome, Outcome::undecided);
}

// A shaft of 29 in a ring bored 29.9 to 30.1: 0.45 to 0.55 on a side.
Bench shaft_in_ring() {
  Bench bench;
  const FeatureRef bore = bench.bore(bench.part("Wheel"), "bore 30", 30.0);
  bench.seat(bore, bench.outside(bench.part("Bracket"), "outside 29", 29.0));
  bench.declare("Wheel", PartState::to_make, Drawn::at_nominal);
  bench.job.sizes.push_back({"Wheel: bore 30", Limits{Length::mm(29.9), Length::mm(30.1)}, {}, {}});
  return bench;
}

TEST(KeepOffFinding, SizesToMakeCountByTheirLimits) {
  EXPECT_EQ(keep_off(shaft_in_ring(), 0.44).outcome, Outcome::conforming);
  const Finding open = keep_off(shaft_in_ring(), 0.48);
  EXPECT_EQ(open.outcome, Outcome::undecided);
  EXPECT_NEAR(number(open.found, "gap_min_mm"), 0.45, kNear);
  EXPECT_NEAR(number(open.found, "gap_max_mm"), 0.55, kNear);
  EXPECT_EQ(keep_off(shaft_in_ring(), 0.56).outcome, Outcome::nonconforming);
}

TEST(KeepOffFinding, MeasuredSizesCountBeforeTheModels) {
  Bench bench;
  bench.seat(bench.bore(bench.part("Wheel"), "bore 30", 30.0),
             bench.outside(bench.part("Bracket"), "outside 29", 29.0));
  bench.measure("Bracket: outside 29", 29.2, 0.02);
  EXPECT_NEAR(number(keep_off(bench, 0.3).found, "gap_min_mm"), 0.39, kNear);
}

TEST(KeepOffFinding, AFoulIsNearestOfAll) {
  Bench bench = wheel_on_face(30.0, 50.0, 1200.0, 0.8);
  bench.foul(OccurrenceId(0), OccurrenceId(1), 0.4, "overlap");
  const Finding finding = keep_off(bench, 0.5);
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_NEAR(number(finding.found, "gap_mm"), -0.4, kNear);
}

Bench boxes_apart(double gap) {
  Bench bench = wheel_on_face();
  bench.look.seats.axial.clear();
  bench.look.model.occurrences[0].box = {{0, 0, 0}, {10, 10, 10}};
  bench.look.model.occurrences[1].box = {{0, 0, 10 + gap}, {10, 10, 30}};
  return bench;
}

TEST(KeepOffFinding, InAnInchJobNothingMetricIsSaid) {
  for (Bench bench : {wheel_on_face(30.0, 50.0, 1200.0, 0.3),
                      wheel_on_face(30.0, 50.0, 1200.0, 0.52), boxes_apart(-5.0)}) {
    bench.job.unit = LengthUnit::inch;
    EXPECT_EQ(test::metric_in(keep_off(bench, 0.5)), "");
  }
}

TEST(KeepOffFinding, IsAboutThePartsOfTheModel) {
  const Finding finding = keep_off(wheel_on_face(30.0, 50.0, 1200.0, 0.3), 0.5);
  EXPECT_EQ(finding.about,
            (std::vector<Reference>{{"Wheel", OccurrenceId(0)}, {"Bracket", OccurrenceId(1)}}));
}

TEST(KeepOffFinding, WithNoFacesNearTheBoxesAreProof) {
  EXPECT_EQ(keep_off(boxes_apart(3.0), 0.5).outcome, Outcome::conforming);
}

TEST(KeepOffFinding, NestedBoxesWithNoFacesNearProveNothing) {
  EXPECT_EQ(keep_off(boxes_apart(-5.0), 0.5).outcome, Outcome::undecided);
}

}  // namespace spotblue::thrust_findings_test
