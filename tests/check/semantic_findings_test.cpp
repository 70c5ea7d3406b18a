// Judging by sizes that the model states itself. ISO 286-2: 44 H7 = +25/0, s6 = +59/+43, g6 =
// -9/-25 um (size step over 40 to 50); the rest is worked by hand.

#include <gmock/gmock.h>

#include "spotblue/check/decided_sizes.hpp"
#include "spotblue/job/bare_job.hpp"
#include "spotblue/report/sentence_text.hpp"
#include "support/bench.hpp"

namespace spotblue::semantic_findings_test {

using test::Bench;
using test::iso;
using test::number;
using test::of_kind;
using test::wheel_on_bush;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::SizeIs;

constexpr double kNear = 1e-9;

SemanticSize& state(Bench& bench, std::size_t product, double nominal, SizeLimits limits,
                    const std::string& tolerance_class) {
  SemanticSize size;
  size.entity = 100 + static_cast<int>(bench.look.model.semantic_sizes.size());
  size.name = "diameter";
  size.characteristic = SizeCharacteristic::diameter;
  size.product = ProductId(product);
  size.features = {{FeatureKind::cylinder, 0}};
  size.nominal_mm = nominal;
  size.limits = limits;
  size.tolerance_class = tolerance_class;
  bench.look.model.semantic_sizes.push_back(size);
  return bench.look.model.semantic_sizes.back();
}

Bench stated(double bore, double outside) {
  Bench bench = wheel_on_bush(bore, outside);
  state(bench, 0, 44.0, {44.0, 44.025}, "H7");
  state(bench, 1, 44.0, {44.043, 44.059}, "s6");
  return bench;
}

TEST(StatedFit, ConformsWhereBothPartsAreDrawnAtTheirNominal) {
  const Finding finding = stated(44.0, 44.0).only();
  EXPECT_EQ(finding.kind, "radial fit");
  EXPECT_EQ(finding.outcome, Outcome::conforming);
  EXPECT_NEAR(number(finding.wanted, "clearance_min_mm"), -0.059, kNear);
  EXPECT_NEAR(number(finding.wanted, "clearance_max_mm"), -0.018, kNear);
  EXPECT_NEAR(number(finding.found, "clearance_min_mm"), -0.059, kNear);
  EXPECT_THAT(text_of(finding.basis), HasSubstr("44 H7, stated in the model (#100)"));
  EXPECT_THAT(text_of(finding.basis), HasSubstr("44 s6, stated in the model (#101)"));
}

TEST(StatedFit, IsJudgedOnTheModelledSizesWhereTheyAreNotTheNominal) {
  EXPECT_EQ(stated(44.01, 44.05).only().outcome, Outcome::conforming);     // -0.040
  EXPECT_EQ(stated(44.03, 44.04).only().outcome, Outcome::nonconforming);  // -0.010
}

TEST(StatedFit, LeavesNoSizeFindingsOfItsFeatures) {
  EXPECT_THAT(of_kind(stated(44.0, 44.0), "size"), IsEmpty());
}

TEST(StatedFit, GivesWayToTheJob) {
  Bench bench = stated(44.01, 44.05);
  bench.want("Wheel: bore 44", "Bush: outside 44", iso("H7/g6"));
  const Finding finding = bench.only();
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_EQ(text_of(finding.basis).find("stated"), std::string::npos);
  EXPECT_THAT(of_kind(bench, "size"), IsEmpty());
}

TEST(StatedFit, UsesTheModelledSizeOfAPartThatTheJobCallsActual) {
  Bench bench = stated(44.0, 44.05);
  bench.declare("Wheel", PartState::as_found, Drawn::at_the_size_wanted);
  const Finding finding = bench.only();
  EXPECT_NEAR(number(finding.found, "hole_max_mm"), 44.0, kNear);
}

TEST(StatedFit, ReplacesTheModelledSizeByAMeasuredOne) {
  Bench bench = stated(44.0, 44.0);
  bench.measure("Wheel: bore 44", 44.06, 0.002);
  EXPECT_EQ(bench.only().outcome, Outcome::nonconforming);
}

TEST(StatedSize, OfAFeatureWhoseMateHasNoneIsJudgedByItself) {
  Bench bench = wheel_on_bush(44.03, 44.0);
  state(bench, 0, 44.0, {44.0, 44.025}, "H7");
  const std::vector<Finding> sizes = of_kind(bench, "size");
  ASSERT_THAT(sizes, SizeIs(1));
  EXPECT_EQ(sizes[0].outcome, Outcome::nonconforming);
  EXPECT_NEAR(number(sizes[0].margin, "size_mm"), -0.005, kNear);
  EXPECT_THAT(text_of(sizes[0].advice), HasSubstr("too large by 0.005"));
  EXPECT_EQ(of_kind(bench, "radial fit").at(0).outcome, Outcome::undecided);
}

TEST(StatedSize, OfAProductInTwoPlacesIsOneFinding) {
  Bench bench = wheel_on_bush();
  state(bench, 0, 44.0, {44.0, 44.025}, "H7");
  bench.occur(0, "Group/Second wheel");
  EXPECT_THAT(of_kind(bench, "size"), SizeIs(1));
}

TEST(StatedSize, OfARadiusIsJudgedOnTheDiameter) {
  Bench bench = wheel_on_bush(44.0, 43.9);
  SemanticSize& size = state(bench, 0, 22.0, {21.99, 22.01}, "");
  size.characteristic = SizeCharacteristic::radius;
  const std::vector<Finding> sizes = of_kind(bench, "size");
  ASSERT_THAT(sizes, SizeIs(1));
  EXPECT_NEAR(number(sizes[0].wanted, "size_min_mm"), 43.98, kNear);
  EXPECT_NEAR(number(sizes[0].wanted, "size_max_mm"), 44.02, kNear);
  EXPECT_EQ(sizes[0].outcome, Outcome::conforming);
}

TEST(StatedSize, InDoubtIsUndecidedAndSaysWhy) {
  Bench bench = wheel_on_bush();
  state(bench, 0, 44.0, {44.0, 44.025}, "").doubt = "its class is written 'H', 'hole', '19'";
  const std::vector<Finding> sizes = of_kind(bench, "size");
  ASSERT_THAT(sizes, SizeIs(1));
  EXPECT_EQ(sizes[0].outcome, Outcome::undecided);
  EXPECT_THAT(text_of(sizes[0].advice), HasSubstr("'19'"));
}

TEST(BareJob, HasNothingButItsModelAndUnit) {
  const Job job = bare_job("press.step", LengthUnit::inch);
  EXPECT_EQ(job.model, "press.step");
  EXPECT_EQ(job.unit, LengthUnit::inch);
  EXPECT_THAT(job.fits, IsEmpty());
  EXPECT_EQ(unit_of({"", "", "", "inch", {}}), LengthUnit::inch);
  EXPECT_EQ(unit_of({"", "", "", "metre", {}}), LengthUnit::mm);
}

TEST(DecidedSizes, AreTheClassesOfAFitOnItsTwoFeatures) {
  Bench bench = wheel_on_bush();
  bench.want("Wheel: bore 44", "Bush: outside 44", iso("H7 / s6"));
  const DecidedSizes decided = decided_sizes(bench.job, bench.look);
  ASSERT_THAT(decided.sizes, SizeIs(2));
  EXPECT_EQ(decided.sizes[0].product, "Wheel");
  EXPECT_EQ(decided.sizes[0].feature, "bore 44");
  EXPECT_EQ(decided.sizes[0].tolerance_class, "H7");
  EXPECT_EQ(decided.sizes[1].tolerance_class, "s6");
  EXPECT_EQ(decided.sizes[1].nominal_mm, 44.0);
  EXPECT_THAT(decided.left_out, IsEmpty());
}

TEST(DecidedSizes, OfAFeatureWithAnEntryOfItsOwnAreThatEntry) {
  Bench bench = wheel_on_bush();
  bench.want("Wheel: bore 44", "Bush: outside 44", iso("H7/s6"));
  bench.job.sizes.push_back(
      {"Wheel: bore 44", Limits{Length::mm(44.01), Length::mm(44.02)}, {}, 0});
  const DecidedSizes decided = decided_sizes(bench.job, bench.look);
  ASSERT_THAT(decided.sizes, SizeIs(2));
  ASSERT_TRUE(decided.sizes[0].deviations);
  EXPECT_NEAR(decided.sizes[0].deviations->lower_mm, 0.01, kNear);
  EXPECT_NEAR(decided.sizes[0].deviations->upper_mm, 0.02, kNear);
}

TEST(DecidedSizes, AreLeftOpenByAClearanceAlone) {
  Bench bench = wheel_on_bush();
  bench.want("Wheel: bore 44", "Bush: outside 44",
             ClearanceLimits{Length::mm(0.01), Length::mm(0.05)});
  const DecidedSizes decided = decided_sizes(bench.job, bench.look);
  EXPECT_THAT(decided.sizes, IsEmpty());
  EXPECT_THAT(decided.left_out, SizeIs(2));
}

TEST(DecidedSizes, AreLeftOutWherePlacesOfOnePartDiffer) {
  Bench bench = wheel_on_bush();
  const FeatureRef other = bench.outside(bench.part("Pin"), "outside 44", 44.0);
  const OccurrenceId second = bench.occur(0, "Group/Second wheel");
  bench.seat({second, FeatureKind::cylinder, 0}, other);
  bench.want("Wheel: bore 44", "Bush: outside 44", iso("H7/s6"));
  bench.want("Wheel: bore 44", "Pin: outside 44", iso("H8/f7"));
  const DecidedSizes decided = decided_sizes(bench.job, bench.look);
  EXPECT_THAT(decided.sizes, SizeIs(2));
  ASSERT_THAT(decided.left_out, SizeIs(1));
  EXPECT_EQ(decided.left_out[0].about, "Wheel: bore 44");
  EXPECT_THAT(decided.left_out[0].text, HasSubstr("44 H7 and 44 H8"));
}

}  // namespace spotblue::semantic_findings_test
