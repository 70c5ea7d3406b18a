// Plain bearings on models of plain values. Numbers worked by hand.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "spotblue/base/angle.hpp"
#include "spotblue/report/sentence_text.hpp"
#include "support/bench.hpp"

namespace spotblue::bearing_findings_test {

using test::Bench;
using test::iso;
using test::number;
using ::testing::HasSubstr;

constexpr double kNear = 1e-6;

/// A shaft of 25 that turns at 60 in a bush 20 long; 0.033 clearance is 0.00132 of the diameter.
Bench shaft_in_bush(const std::string& bush_material, const std::string& shaft_material,
                    double bore = 25.033) {
  Bench bench;
  const FeatureRef hole = bench.bore(bench.part("Bush"), "bore 25", bore);
  const FeatureRef shaft = bench.outside(bench.part("Shaft"), "outside 25", 25.0);
  bench.seat(hole, shaft);
  bench.declare("Bush", PartState::as_found, Drawn::at_the_size_wanted).material = bush_material;
  bench.declare("Shaft", PartState::as_found, Drawn::at_the_size_wanted).material = shaft_material;
  return bench;
}

/// Another bush of 25.033 on the same shaft, its middle there.
void add_bearing(Bench& bench, const std::string& part, double middle) {
  const FeatureRef hole = bench.bore(bench.part(part), "bore 25", 25.033);
  bench.seat(hole, {OccurrenceId(1), FeatureKind::cylinder, 0});
  bench.look.seats.radial.back().from = bench.look.seats.radial.back().to = middle;
}

void turn(Bench& bench, double rpm, Duty duty, std::optional<double> load_n) {
  bench.job.turning.push_back({"Shaft", rpm, duty, load_n, std::nullopt, 0});
}

Finding only_bearing(const Bench& bench) { return of_kind(bench, "plain bearing").at(0); }

TEST(BearingFinding, NothingIsSaidOfWhatDoesNotTurn) {
  EXPECT_TRUE(of_kind(shaft_in_bush("bronze", "1045"), "plain bearing").empty());
}

// 500 N on 25 x 20 is 1 MPa; pi x 0.025 m x 1/s is 0.078540 m/s.
TEST(BearingFinding, ConformsWithinEveryLimit) {
  Bench bench = shaft_in_bush("bronze", "1045");
  turn(bench, 60, Duty::continuous, 500.0);
  const Finding finding = only_bearing(bench);
  EXPECT_EQ(finding.id, "plain-1");
  EXPECT_EQ(finding.outcome, Outcome::conforming);
  EXPECT_NEAR(number(finding.found, "pressure_mpa"), 1.0, kNear);
  EXPECT_NEAR(number(finding.found, "speed_m_s"), 0.078540, kNear);
  EXPECT_NEAR(number(finding.found, "pressure_speed_mpa_m_s"), 0.078540, kNear);
  EXPECT_NEAR(number(finding.found, "clearance_per_diameter_max_percent"), 0.132, kNear);
  EXPECT_NEAR(number(finding.found, "length_per_diameter_percent"), 80.0, kNear);
  // 3000 psi, 750 ft/min, as bush makers print.
  EXPECT_NEAR(number(finding.wanted, "pressure_max_mpa"), 20.684, 5e-4);
  EXPECT_NEAR(number(finding.margin, "speed_m_s"), 3.81 - 0.07854, 1e-5);
  EXPECT_THAT(text_of(finding.basis),
              HasSubstr("Mott, Machine Elements in Mechanical Design, table 16-1"));
  EXPECT_THAT(text_of(finding.advice), HasSubstr("feed hole"));
  EXPECT_THAT(text_of(finding.caution), HasSubstr("local rules"));
}

TEST(BearingFinding, OfASeatThatIsPressedAtAllSizesDoesNotConform) {
  Bench bench = shaft_in_bush("bronze", "1045", 24.98);
  bench.want("Bush: bore 25", "Shaft: outside 25", iso("H8/f7"));
  turn(bench, 60, Duty::continuous, 500.0);
  const Finding finding = only_bearing(bench);
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("that is no bearing"));
}

// Another bearing may be missing, and what it takes of the load.
TEST(BearingFinding, OfAModelThatDidNotArriveWholeIsUndecided) {
  Bench bench = shaft_in_bush("bronze", "1045");
  turn(bench, 60, Duty::continuous, 500.0);
  bench.look.model.not_compared = {{"product 'Collar'", "did not arrive"}};
  EXPECT_EQ(only_bearing(bench).outcome, Outcome::undecided);
  EXPECT_THAT(text_of(only_bearing(bench).advice), HasSubstr("export the model whole"));
}

TEST(BearingFinding, WithoutALoadOnlyTheSpeedIsJudged) {
  Bench bench = shaft_in_bush("bronze", "1045");
  turn(bench, 60, Duty::continuous, std::nullopt);
  const Finding finding = only_bearing(bench);
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("no load is given for Shaft"));
  EXPECT_NEAR(number(finding.margin, "speed_m_s"), 3.81 - 0.07854, 1e-5);
}

TEST(BearingFinding, SlowWithoutLoadNeedsNoLoad) {
  Bench bench = shaft_in_bush("bronze", "1045");
  turn(bench, 60, Duty::no_load_slow, std::nullopt);
  EXPECT_EQ(only_bearing(bench).outcome, Outcome::conforming);
}

TEST(BearingFinding, TooFastIsTooFastEvenWithoutALoad) {
  Bench bench = shaft_in_bush("bronze", "1045");
  turn(bench, 3000, Duty::no_load_slow, std::nullopt);
  const Finding finding = only_bearing(bench);
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("surface speed 3.927 m/s is over 3.81 m/s"));
}

// 4000 N is 8 MPa; grey iron bears 4.
TEST(BearingFinding, TooMuchPressureDoesNotConform) {
  Bench bench = shaft_in_bush("grey iron", "1045");
  turn(bench, 5, Duty::intermittent, 4000.0);
  const Finding finding = only_bearing(bench);
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_NEAR(number(finding.margin, "pressure_mpa"), -4.0, kNear);
}

// 10 MPa x 0.7854 m/s is 7.854 against 2.627: a third of the time.
TEST(BearingFinding, IntermittentWorkOverTheProductIsGivenItsShareOfTheTime) {
  Bench bench = shaft_in_bush("bronze", "1045");
  turn(bench, 600, Duty::intermittent, 5000.0);
  const Finding finding = only_bearing(bench);
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_NEAR(number(finding.found, "running_time_max_percent"), 33.45, 0.01);
}

TEST(BearingFinding, ContinuousWorkOverTheProductDoesNotConform) {
  Bench bench = shaft_in_bush("bronze", "1045");
  turn(bench, 600, Duty::continuous, 5000.0);
  EXPECT_EQ(only_bearing(bench).outcome, Outcome::nonconforming);
}

TEST(BearingFinding, TheWeakerMaterialSetsTheLimit) {
  Bench bench = shaft_in_bush("bronze", "ductile iron");
  turn(bench, 60, Duty::continuous, 500.0);
  EXPECT_NEAR(number(only_bearing(bench).wanted, "pressure_max_mpa"), 12.0, kNear);
}

TEST(BearingFinding, SteelOnSteelIsLeftUndecided) {
  Bench bench = shaft_in_bush("1020", "1045");
  turn(bench, 60, Duty::continuous, 500.0);
  const Finding finding = only_bearing(bench);
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("steel on steel"));
}

TEST(BearingFinding, AMaterialThatIsNotGivenIsNamed) {
  Bench bench = shaft_in_bush("", "1045");
  turn(bench, 60, Duty::continuous, 500.0);
  const Finding finding = only_bearing(bench);
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("no material is given for Bush"));
}

// 0.2 on 25 is 0.0080; practice ends at 0.0027 for continuous work.
TEST(BearingFinding, AWornBearingKnocksAndDoesNotConform) {
  Bench bench = shaft_in_bush("bronze", "1045", 25.2);
  turn(bench, 60, Duty::continuous, 500.0);
  const Finding finding = only_bearing(bench);
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("clearance may be 0.0080 of the diameter"));
}

TEST(BearingFinding, AClearanceThatMayBeTooGreatIsUndecided) {
  Bench bench = shaft_in_bush("bronze", "1045", 25.06);
  bench.measure("Bush: bore 25", 25.06, 0.02);
  turn(bench, 60, Duty::continuous, 500.0);
  EXPECT_EQ(only_bearing(bench).outcome, Outcome::undecided);
}

TEST(BearingFinding, APressedPairIsNoBearing) {
  Bench bench = shaft_in_bush("bronze", "1045", 24.97);
  bench.want("Bush: bore 25", "Shaft: outside 25", iso("H7/s6"));
  turn(bench, 60, Duty::continuous, 500.0);
  EXPECT_TRUE(of_kind(bench, "plain bearing").empty());
}

TEST(BearingFinding, AHoleThatOnlyLetsTheShaftThroughIsNoBearing) {
  Bench bench = shaft_in_bush("bronze", "1045", 25.6);
  turn(bench, 60, Duty::continuous, 500.0);
  EXPECT_TRUE(of_kind(bench, "plain bearing").empty());
}

// 500 N over bearings at 0 and 60, at 30 by the part's box: 250 each on 25 x 20.
TEST(BearingFinding, TwoBearingsCarryTheLoadByStatics) {
  Bench bench = shaft_in_bush("bronze", "1045");
  add_bearing(bench, "Second bush", 60.0);
  bench.product(OccurrenceId(1)).box = {{-12, -12, 0}, {12, 12, 60}};
  bench.declare("Second bush", PartState::as_found, Drawn::at_the_size_wanted).material = "bronze";
  turn(bench, 60, Duty::continuous, 500.0);
  const std::vector<Finding> found = of_kind(bench, "plain bearing");
  ASSERT_EQ(found.size(), 2U);
  EXPECT_NEAR(number(found[1].found, "pressure_mpa"), 0.5, kNear);
  EXPECT_THAT(text_of(found[1].basis), HasSubstr("at the middle of Shaft, no place is given"));
  EXPECT_THAT(text_of(found[1].basis), HasSubstr("two bearings 60.000 mm apart"));
}

// 500 N 30 off the middle of 20: 500 + 6 x 15,000/20 = 5000 N on 25 x 20.
TEST(BearingFinding, ALoneBearingIsJudgedAtItsHarderEnd) {
  Bench bench = shaft_in_bush("bronze", "1045");
  bench.product(OccurrenceId(1)).box = {{-12, -12, 0}, {12, 12, 60}};
  turn(bench, 60, Duty::continuous, 500.0);
  const Finding finding = only_bearing(bench);
  EXPECT_NEAR(number(finding.found, "moment_nm"), 15.0, kNear);
  EXPECT_NEAR(number(finding.found, "pressure_mpa"), 10.0, kNear);
  EXPECT_THAT(text_of(finding.basis), HasSubstr("pressure at its harder end"));
}

TEST(BearingFinding, APartialBearingThatTheLoadTiltsIsUndecided) {
  Bench bench = shaft_in_bush("bronze", "1045");
  bench.look.seats.radial[0].coverage = 180.0 * kDegree;
  bench.product(OccurrenceId(1)).box = {{-12, -12, 0}, {12, 12, 60}};
  turn(bench, 60, Duty::continuous, 500.0);
  const Finding finding = only_bearing(bench);
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("30.000 mm off its middle"));
}

// 500 N 40 off the bush, past another 20 off it, lift the shaft out of the half that is there.
TEST(BearingFinding, APartialBearingThatTheLoadLiftsTheShaftOutOfIsUndecided) {
  Bench bench = shaft_in_bush("bronze", "1045");
  bench.look.seats.radial[0].from = bench.look.seats.radial[0].to = 10.0;
  bench.look.seats.radial[0].coverage = 157.0 * kDegree;
  add_bearing(bench, "Second", 30.0);
  bench.product(OccurrenceId(1)).box = {{-12, -12, 0}, {12, 12, 100}};
  turn(bench, 60, Duty::continuous, 500.0);
  const Finding finding = of_kind(bench, "plain bearing").at(0);
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("lifted against the load"));
}

// 120 degrees of 25 are 21.650635 wide: 500/(21.650635 x 20).
TEST(BearingFinding, APartialBearingIsPressedOnItsChord) {
  Bench bench = shaft_in_bush("bronze", "1045");
  bench.look.seats.radial[0].coverage = 120.0 * kDegree;
  turn(bench, 60, Duty::continuous, 500.0);
  const Finding finding = only_bearing(bench);
  EXPECT_NEAR(number(finding.found, "pressure_mpa"), 1.1547005, 1e-6);
  EXPECT_THAT(text_of(finding.basis), HasSubstr("120 deg round"));
}

TEST(BearingFinding, RingsWithoutMaterialBesideABearingTakeLoadAndAreLeftToTheirMaker) {
  Bench bench = shaft_in_bush("bronze", "1045");
  const FeatureRef ring = bench.bore(bench.part("Ring"), "bore 30", 30.03);
  const OccurrenceId sleeve = bench.part("Sleeve");
  bench.seat(ring, bench.outside(sleeve, "outside 30", 30.0));
  bench.look.seats.radial.back().from = bench.look.seats.radial.back().to = 60.0;
  bench.product(OccurrenceId(1)).box = {{-12, -12, 0}, {12, 12, 60}};
  bench.job.fixed.push_back({"Sleeve", "Shaft", "clamped", 0});
  turn(bench, 60, Duty::continuous, 500.0);
  EXPECT_EQ(of_kind(bench, "plain bearing").size(), 1U);
  EXPECT_NEAR(number(only_bearing(bench).found, "pressure_mpa"), 0.5, kNear);
}

TEST(BearingFinding, WhereBothTurnTheyAreTakenAgainstEachOther) {
  Bench bench = shaft_in_bush("bronze", "1045");
  turn(bench, 60, Duty::intermittent, 500.0);
  bench.job.turning.push_back({"Bush", 40, Duty::continuous, std::nullopt, std::nullopt, 0});
  const Finding finding = only_bearing(bench);
  EXPECT_NEAR(number(finding.found, "turning_rpm"), 100.0, kNear);
  EXPECT_THAT(text_of(finding.basis), HasSubstr("against each other"));
}

}  // namespace spotblue::bearing_findings_test
