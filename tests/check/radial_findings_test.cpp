// Radial fits. ISO 286-2: 44 H7 = +25/0, s6 = +59/+43, g6 = -9/-25 um (size step over 40 to 50), so
// 44 H7/s6 has clearances -59 to -18 um and 44 H7/g6 +9 to +50 um. The rest is worked by hand.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "spotblue/report/sentence_text.hpp"
#include "support/bench.hpp"

namespace spotblue::radial_findings_test {

using test::Bench;
using test::iso;
using test::number;
using test::wheel_on_bush;
using ::testing::AllOf;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

constexpr double kNear = 1e-9;  // mm: sums of decimal limits in binary

Bench pressed(double bore, double uncertainty) {
  Bench bench = wheel_on_bush();
  bench.declare("Bush", PartState::to_make, Drawn::at_nominal);
  bench.measure("Wheel: bore 44", bore, uncertainty);
  bench.want("Wheel: bore 44", "Bush: outside 44", iso("H7/s6"));
  return bench;
}

TEST(RadialFit, ConformsWhenBothPartsAreMadeToItsClasses) {
  Bench bench = wheel_on_bush();
  bench.declare("Wheel", PartState::to_make, Drawn::at_nominal);
  bench.declare("Bush", PartState::to_make, Drawn::at_nominal);
  bench.want("Wheel: bore 44", "Bush: outside 44", iso("H7/s6"));
  const Finding finding = bench.only();
  EXPECT_EQ(finding.id, "radial-1");
  EXPECT_EQ(finding.outcome, Outcome::conforming);
  EXPECT_NEAR(number(finding.found, "clearance_min_mm"), -0.059, kNear);
  EXPECT_NEAR(number(finding.found, "clearance_max_mm"), -0.018, kNear);
  EXPECT_NEAR(number(finding.margin, "clearance_mm"), 0.0, kNear);
  EXPECT_THAT(text_of(finding.basis),
              AllOf(HasSubstr("ISO 286-1:2010, 44 H7/s6"), HasSubstr("14253-1")));
  EXPECT_THAT(text_of(finding.advice), HasSubstr("44.043 to 44.059 mm"));
}

TEST(RadialFit, CautionsWherePressingIsImpliedOnly) {
  Bench bench = wheel_on_bush();
  bench.want("Wheel: bore 44", "Bush: outside 44", iso("H7/s6"));
  EXPECT_THAT(text_of(bench.only().caution), HasSubstr("local rules"));
  bench.job.fits.front().rule = iso("H7/g6");
  EXPECT_THAT(text_of(bench.only().caution), IsEmpty());
}

// 44.010 - 44.050 with +-0.002 each: -0.044 to -0.036, inside -0.059 to -0.018 by 0.015.
TEST(RadialFit, ConformsWhenMeasuredSizesFitWithTheirUncertainty) {
  Bench bench = wheel_on_bush();
  bench.measure("Wheel: bore 44", 44.010, 0.002);
  bench.measure("Bush: outside 44", 44.050, 0.002);
  bench.want("Wheel: bore 44", "Bush: outside 44", iso("H7/s6"));
  const Finding finding = bench.only();
  EXPECT_EQ(finding.outcome, Outcome::conforming);
  EXPECT_NEAR(number(finding.found, "clearance_min_mm"), -0.044, kNear);
  EXPECT_NEAR(number(finding.margin, "clearance_mm"), 0.015, kNear);
}

// 44.000 - 44.020 = -0.020, 0.002 inside; +-0.005 crosses the limit.
TEST(RadialFit, IsUndecidedWhenMeasurementUncertaintyCrossesALimit) {
  Bench bench = wheel_on_bush();
  bench.measure("Wheel: bore 44", 44.000, 0.005);
  bench.measure("Bush: outside 44", 44.020, 0.0);
  bench.want("Wheel: bore 44", "Bush: outside 44", iso("H7/s6"));
  const Finding finding = bench.only();
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_THAT(text_of(finding.advice),
              AllOf(HasSubstr("measure Wheel: bore 44 closer"), HasSubstr("0.002 mm")));
}

TEST(RadialFit, TakesTheDefaultUncertaintyForSizesOfTheModel) {
  Bench bench = wheel_on_bush(44.0, 44.020);
  bench.job.settings.default_uncertainty = Length::mm(0.005);
  bench.want("Wheel: bore 44", "Bush: outside 44", iso("H7/s6"));
  const Finding finding = bench.only();
  EXPECT_NEAR(number(finding.found, "clearance_min_mm"), -0.030, kNear);
  EXPECT_EQ(finding.outcome, Outcome::undecided);
}

// 44.000 - 44.070 = -0.070: 0.011 past the least clearance of -0.059.
TEST(RadialFit, DoesNotConformOutsideItsLimitsAndSaysWhichPartMayBeCut) {
  Bench bench = wheel_on_bush(44.0, 44.070);
  bench.declare("Wheel", PartState::as_found, Drawn::at_the_size_wanted).irreplaceable = true;
  bench.want("Wheel: bore 44", "Bush: outside 44", iso("H7/s6"));
  const Finding finding = bench.only();
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_THAT(text_of(finding.advice),
              HasSubstr("too tight by up to 0.011 mm: reduce Bush: outside 44"));
}

// Bore 44.012 +-0.004, bush 44.043 to 44.059: -0.051 to -0.027. Window for the bush:
// 44.016 + 0.018 to 44.008 + 0.059.
TEST(RadialFit, NamesTheWindowOfThePartStillToMake) {
  const Finding finding = pressed(44.012, 0.004).only();
  EXPECT_EQ(finding.outcome, Outcome::conforming);
  EXPECT_THAT(text_of(finding.advice),
              HasSubstr("turn the Bush 44.034 to 44.067 mm (drawn 44 mm)"));
  EXPECT_NEAR(number(finding.wanted, "make_shaft_min_mm"), 44.034, kNear);
  EXPECT_NEAR(number(finding.wanted, "make_shaft_max_mm"), 44.067, kNear);
}

// Bore worn to 44.030: the class would leave -0.029 to -0.013; only 44.048 to 44.089 serves.
TEST(RadialFit, DoesNotConformWhenTheClassOfThePartToMakeIsNotEnough) {
  const Finding finding = pressed(44.030, 0.0).only();
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_THAT(text_of(finding.advice),
              HasSubstr("turn the Bush 44.048 to 44.089 mm (drawn 44 mm)"));
}

// Bore 44.018 alone leaves -0.041 to -0.025, inside; its +-0.010 alone takes it out.
TEST(RadialFit, IsUndecidedWhenOnlyTheMeasurementOfTheMateIsTooWide) {
  EXPECT_EQ(pressed(44.018, 0.010).only().outcome, Outcome::undecided);
}

// The mate's range of 0.060 is wider than the fit's 0.041: no bush suits all of it.
TEST(RadialFit, SaysSoWhenNoSizeSuits) {
  const Finding finding = pressed(44.040, 0.030).only();
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("no size of Bush: outside 44 suits"));
}

TEST(RadialFit, DoesNotConformWhenTheModelIsNotAtBasicSize) {
  Bench bench = wheel_on_bush(44.0, 44.05);
  bench.declare("Wheel", PartState::to_make, Drawn::at_nominal);
  bench.declare("Bush", PartState::to_make, Drawn::at_nominal);
  bench.want("Wheel: bore 44", "Bush: outside 44", iso("H7/s6"));
  const Finding finding = bench.only();
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_THAT(text_of(finding.advice),
              HasSubstr("model is not drawn at its nominal size: Bush: outside 44 is 44.05"));
}

// A bush with its own k6 (44.002 to 44.018) in a fit that wants s6.
TEST(RadialFit, TakesAFeaturesOwnWantedSizeBeforeTheFits) {
  Bench bench = pressed(44.000, 0.0);
  bench.job.sizes.push_back({"Bush: outside 44", std::string("k6"), {}, 0});
  const Finding finding = bench.only();
  EXPECT_NEAR(number(finding.found, "shaft_max_mm"), 44.018, kNear);
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
}

TEST(RadialFit, IsUndecidedWithoutADeclaredFitAndProposesSome) {
  const Finding finding = wheel_on_bush(44.0, 43.98).only();
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_THAT(finding.wanted, IsEmpty());
  EXPECT_THAT(text_of(finding.advice), AllOf(HasSubstr("no fit declared"), HasSubstr("H7/g6")));
}

TEST(RadialFit, JudgesPlainLimitsOfTheClearance) {
  Bench bench = wheel_on_bush(44.0, 43.98);
  bench.want("Wheel: bore 44", "Bush: outside 44",
             ClearanceLimits{Length::mm(0.01), Length::mm(0.025)}, 12);
  const Finding finding = bench.only();
  EXPECT_EQ(finding.outcome, Outcome::conforming);
  EXPECT_NEAR(number(finding.margin, "clearance_mm"), 0.005, kNear);
  EXPECT_THAT(text_of(finding.basis), HasSubstr("line 12"));
}

// 0.001 for each unit of 50: 0.050 +-0.010 interference.
TEST(RadialFit, JudgesAnAllowancePerDiameter) {
  Bench bench = wheel_on_bush(50.0, 50.045);
  bench.want("Wheel: bore 44", "Bush: outside 44",
             PerDiameter{-0.001, Length::mm(0.01), Length::mm(50)});
  const Finding finding = bench.only();
  EXPECT_EQ(finding.outcome, Outcome::conforming);
  EXPECT_NEAR(number(finding.wanted, "clearance_min_mm"), -0.060, kNear);
  EXPECT_NEAR(number(finding.wanted, "clearance_max_mm"), -0.040, kNear);
}

// Clearance 0.020 leaves 0.010 on a side; 0.030 off axis overlaps by 0.020.
TEST(RadialFit, DoesNotConformWhenBeingOffAxisUsesTheClearanceUp) {
  Bench bench = wheel_on_bush(44.0, 43.98, 0.03);
  const Finding undeclared = bench.only();
  EXPECT_EQ(undeclared.outcome, Outcome::nonconforming);
  EXPECT_THAT(text_of(undeclared.advice), HasSubstr("fouls: out of line by 0.030 mm"));
  bench.want("Wheel: bore 44", "Bush: outside 44", iso("H7/g6"));
  EXPECT_EQ(bench.only().outcome, Outcome::nonconforming);
}

TEST(RadialFit, OfSizesWithoutAnUncertaintyIsNotSaidToBeJudgedByTheStandardThatNeedsOne) {
  Bench bench = wheel_on_bush(44.0, 43.98);
  bench.want("Wheel: bore 44", "Bush: outside 44", iso("H7/g6"));
  const std::string basis = text_of(bench.only().basis);
  EXPECT_THAT(basis, HasSubstr("uncertainty of measurement is not known"));
  EXPECT_THAT(basis, ::testing::Not(HasSubstr("14253")));
}

// Interference 0.050 bites 0.025 on a side; 0.030 off axis leaves one side standing off by 0.005.
TEST(RadialFit, DoesNotConformWhenAPressFitIsOffItsAxisByMoreThanItsInterference) {
  Bench bench = wheel_on_bush(44.0, 44.05, 0.03);
  bench.want("Wheel: bore 44", "Bush: outside 44", iso("H7/s6"));
  const Finding finding = bench.only();
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("stands off on that side"));
}

TEST(RadialFit, ConformsWhenAPressFitIsOffItsAxisByLessThanItsInterference) {
  Bench bench = wheel_on_bush(44.0, 44.05, 0.02);
  bench.want("Wheel: bore 44", "Bush: outside 44", iso("H7/s6"));
  EXPECT_EQ(bench.only().outcome, Outcome::conforming);
}

// 44 H7/g6 wants 9 to 50 um. A bore worn 10 um to either side of its mean.
Bench worn(double shaft, double least, double most) {
  Bench bench = wheel_on_bush(44.0, shaft);
  RadialSeat& seat = bench.look.seats.radial.front();
  seat.worn = ClearanceRange{least, most};
  seat.least_gap = 0.5 * least;
  bench.want("Wheel: bore 44", "Bush: outside 44", iso("H7/g6"));
  return bench;
}

TEST(RadialFit, ConformsWhenAWornPairDoesAtItsTightestAndItsLoosest) {
  Bench bench = worn(43.970, 0.020, 0.040);
  const Finding finding = bench.only();
  EXPECT_EQ(finding.outcome, Outcome::conforming);
  EXPECT_NEAR(number(finding.found, "clearance_min_mm"), 0.020, kNear);
  EXPECT_NEAR(number(finding.found, "clearance_max_mm"), 0.040, kNear);
  EXPECT_NEAR(number(finding.margin, "clearance_mm"), 0.010, kNear);
}

TEST(RadialFit, IsUndecidedWhenAWornPairIsWellAtOneEndOnly) {
  Bench bench = worn(43.955, 0.035, 0.055);
  const Finding finding = bench.only();
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_THAT(text_of(finding.advice),
              AllOf(HasSubstr("worn"), HasSubstr("0.035"), HasSubstr("0.055")));
}

TEST(RadialFit, DoesNotConformWhenAWornPairIsTooLooseAllOver) {
  Bench bench = worn(43.930, 0.060, 0.080);
  EXPECT_EQ(bench.only().outcome, Outcome::nonconforming);
}

// Basic sizes show no clearance; what the classes leave is 9 to 50 um, so 0.002 off axis is room.
TEST(RadialFit, GivesBasicSizesTheClearanceOfTheirClassBeforeTheyFoul) {
  Bench bench = wheel_on_bush(44.0, 44.0, 0.002);
  bench.declare("Wheel", PartState::to_make, Drawn::at_nominal);
  bench.declare("Bush", PartState::to_make, Drawn::at_nominal);
  bench.want("Wheel: bore 44", "Bush: outside 44", iso("H7/g6"));
  EXPECT_EQ(bench.only().outcome, Outcome::conforming);
}

TEST(RadialFit, LeavesAPressFitDrawnAsOverlapAlone) {
  Bench bench = wheel_on_bush(44.0, 44.04, 0.003);
  bench.want("Wheel: bore 44", "Bush: outside 44", iso("H7/s6"));
  EXPECT_EQ(bench.only().outcome, Outcome::conforming);
}

}  // namespace spotblue::radial_findings_test
