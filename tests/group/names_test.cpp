// How a job's names find the model's parts and features.

#include "group/match/names.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "support/bench.hpp"
#include "support/thrown.hpp"

namespace spotblue::names_test {

using test::Bench;
using ::testing::HasSubstr;

const Entry kEntry{"fits", "hole", 12};

Bench wheel() {
  Bench bench;
  const OccurrenceId part = bench.part("Wheel");
  bench.bore(part, "bore 44.45", 44.45);
  bench.bore(part, "bore 10 @ 5", 10.0);
  bench.bore(part, "bore 10 @ 40", 10.0);
  bench.occur(0, "Group/Wheel again");
  return bench;
}

Error refusal(const Bench& bench, const std::string& name) {
  return test::error_of([&] { return Names(bench.job, bench.look.model).feature(name, kEntry); });
}

TEST(Names, MeanEveryOccurrenceOfAProduct) {
  const Bench bench = wheel();
  const NamedFeature named =
      Names(bench.job, bench.look.model).feature("Wheel: bore 44.45", kEntry);
  EXPECT_EQ(named.meant, Meant::product);
  EXPECT_EQ(named.refs.size(), 2U);
}

// "Pump", a part of two bodies, of which the file calls the second "Bush".
Bench pump() {
  Bench bench;
  for (const int body : {1, 2}) {
    const OccurrenceId part = bench.part("Pump#" + std::to_string(body));
    Product& product = bench.look.model.products.back();
    product.part = "Pump";
    product.body = body;
    product.body_name = body == 2 ? "Bush" : "";
    bench.bore(part, body == 1 ? "bore 30" : "bore 20", body == 1 ? 30.0 : 20.0);
    bench.outside(part, "outside 60", 60.0);
  }
  return bench;
}

TEST(Names, MeanOneBodyByItsNumber) {
  const Bench bench = pump();
  const NamedFeature named = Names(bench.job, bench.look.model).feature("Pump#2: bore 20", kEntry);
  ASSERT_EQ(named.refs.size(), 1U);
  EXPECT_EQ(named.refs.front().occurrence, 1U);
}

TEST(Names, MeanABodyByWhatTheFileCallsIt) {
  const Bench bench = pump();
  const Names names(bench.job, bench.look.model);
  EXPECT_EQ(names.part("Bush", kEntry).occurrences, std::vector{OccurrenceId(1)});
  EXPECT_EQ(names.feature("Bush: bore 20", kEntry).refs.front().occurrence, 1U);
}

TEST(Names, MeanAllBodiesByThePart) {
  const Bench bench = pump();
  const NamedPart named = Names(bench.job, bench.look.model).part("Pump", kEntry);
  EXPECT_EQ(named.meant, Meant::part);
  EXPECT_EQ(named.occurrences, (std::vector{OccurrenceId(0), OccurrenceId(1)}));
}

TEST(Names, MeanTheFeatureThatOnlyOneBodyOfThePartHas) {
  const Bench bench = pump();
  const NamedFeature named = Names(bench.job, bench.look.model).feature("Pump: bore 20", kEntry);
  ASSERT_EQ(named.refs.size(), 1U);
  EXPECT_EQ(named.refs.front().occurrence, 1U);
}

TEST(Names, AskWhichBodyIsMeantWhereTwoHaveTheFeature) {
  const Error problem = refusal(pump(), "Pump: outside 60");
  EXPECT_EQ(problem.code(), ErrorCode::bad_input);
  EXPECT_EQ(problem.cure(), "write one of \"Pump#1: outside 60\", \"Pump#2: outside 60\"");
}

TEST(Names, MeanOneOccurrenceByItsPath) {
  const Bench bench = wheel();
  const NamedFeature named =
      Names(bench.job, bench.look.model).feature("Group/Wheel again: bore 44.45", kEntry);
  EXPECT_EQ(named.meant, Meant::occurrence);
  ASSERT_EQ(named.refs.size(), 1U);
  EXPECT_EQ(named.refs.front().occurrence, 1U);
}

TEST(Names, AreMetWithinFiveMicrometres) {
  const Bench bench = wheel();
  EXPECT_EQ(Names(bench.job, bench.look.model).feature("Wheel: bore 44.454", kEntry).refs.size(),
            2U);
  EXPECT_EQ(refusal(bench, "Wheel: bore 44.456").code(), ErrorCode::bad_input);
}

TEST(Names, MayBeInInchesInAnInchJob) {
  Bench bench = wheel();
  EXPECT_EQ(refusal(bench, "Wheel: bore 1 3/4").code(), ErrorCode::bad_input);
  bench.job.unit = LengthUnit::inch;
  const Names names(bench.job, bench.look.model);
  EXPECT_EQ(names.feature("Wheel: bore 1 3/4", kEntry).refs.front().index, 0U);
  EXPECT_EQ(names.feature("Wheel: bore 44.45", kEntry).refs.front().index, 0U);
}

TEST(Names, ThatCouldMeanSeveralFeaturesAreRefusedWithAllOfThem) {
  const Error problem = refusal(wheel(), "Wheel: bore 10");
  EXPECT_THAT(problem.rule(), HasSubstr("any of 2 features"));
  EXPECT_THAT(problem.cure(), HasSubstr("\"Wheel: bore 10 @ 5\", \"Wheel: bore 10 @ 40\""));
}

TEST(Names, OfNoFeatureAreRefusedWithTheNearest) {
  Bench bench = wheel();
  bench.job.file = "plan.toml";
  const Error problem = refusal(bench, "Wheel: bore 45.45");
  EXPECT_EQ(problem.file(), "plan.toml");
  EXPECT_EQ(problem.place(), "line 12, fits, hole");
  EXPECT_THAT(problem.cure(), HasSubstr("Wheel: bore 44.45"));
}

TEST(Names, OfNoPartAreRefusedWithTheNearest) {
  Bench bench = wheel();
  bench.declare("Weel", PartState::as_found, Drawn::at_the_size_wanted);
  const Error problem = test::error_of([&] { return bench.findings(); });
  EXPECT_THAT(problem.rule(), HasSubstr("no part \"Weel\""));
  EXPECT_THAT(problem.cure(), HasSubstr("\"Wheel\""));
}

TEST(Names, OfFindingsAreThePathOnlyWhereAProductRepeats) {
  Bench bench = wheel();
  const FeatureRef pin = bench.outside(bench.part("Pin"), "outside 10", 10.0);
  const Names names(bench.job, bench.look.model);
  EXPECT_EQ(names.id_of(pin), "Pin: outside 10");
  EXPECT_EQ(names.id_of(FeatureRef{OccurrenceId(1), FeatureKind::cylinder, 0}),
            "Group/Wheel again: bore 44.45");
}

// By its short name and by its path.
TEST(Names, OfOnePartAreNoPair) {
  for (const auto add :
       {+[](Job& job) {
          job.keep_off.push_back({.a = "Bush", .b = "Group/Bush", .least = {}, .reason = {}});
        },
        +[](Job& job) {
          job.allowed.push_back({.a = "Bush", .b = "Group/Bush", .reason = "none", .depth = {}});
        },
        +[](Job& job) { job.fixed.push_back({.a = "Group/Bush", .b = "Bush", .by = "weld"}); }}) {
    Bench bench = test::wheel_on_bush();
    add(bench.job);
    const Error refused = test::error_of([&] { return bench.findings(); });
    EXPECT_EQ(refused.code(), ErrorCode::bad_input);
    EXPECT_THAT(refused.rule(), HasSubstr("are one part, which stands once"));
  }
}

// A wheel on a bush of a file whose pin did not arrive.
Bench pin_is_missing() {
  Bench bench = test::wheel_on_bush();
  bench.look.model.not_compared = {{"solid #263 of product 'Pin'", "did not arrive"}};
  bench.want("Bush: bore 30", "Pin: outside 30", test::iso("H7/g6"), 8);
  return bench;
}

TEST(LostNames, AreFindingsOfAPartialModelThatNameWhatDidNotArrive) {
  Bench bench = pin_is_missing();
  bench.bore(OccurrenceId(1), "bore 30", 30.0);
  const std::vector<Finding> unseen = of_kind(bench, "unseen");
  ASSERT_EQ(unseen.size(), 2U);
  EXPECT_EQ(unseen[0].outcome, Outcome::undecided);
  EXPECT_THAT(test::names(unseen[0].about), ::testing::ElementsAre("Pin: outside 30"));
  EXPECT_EQ(test::worded(unseen[0].found.at(0)),
            "line 8, fits, shaft: no \"Pin: outside 30\" is in what arrived of the model; solid "
            "#263 of product 'Pin': did not arrive");
}

TEST(LostNames, LeaveOtherEntriesOfTheJobJudged) {
  Bench bench = pin_is_missing();
  bench.bore(OccurrenceId(1), "bore 30", 30.0);
  bench.want("Wheel: bore 44", "Bush: outside 44", test::iso("H7/s6"));
  EXPECT_EQ(of_kind(bench, "radial fit").at(0).outcome, Outcome::nonconforming);
}

// The bush is there and sound: nothing that is missing can be a bore of its own.
TEST(LostNames, AreRefusedWhereWhatIsMissingCanNotBeIt) {
  const Bench bench = pin_is_missing();
  const Error refused = test::error_of([&] { (void)bench.findings(); });
  EXPECT_THAT(refused.what(), HasSubstr("the model has no feature \"Bush: bore 30\""));
}

TEST(LostNames, AreRefusedWhereAllArrived) {
  Bench bench = pin_is_missing();
  bench.bore(OccurrenceId(1), "bore 30", 30.0);
  bench.look.model.not_compared.clear();
  const Error refused = test::error_of([&] { (void)bench.findings(); });
  EXPECT_THAT(refused.what(), HasSubstr("the model has no feature \"Pin: outside 30\""));
}

// A name without a part can mean nothing that is missing.
TEST(LostNames, AreRefusedWhereTheyNameNoPart) {
  Bench bench = pin_is_missing();
  bench.job.fits.clear();
  bench.measure("bore 30", 30.0, 0.002);
  const Error refused = test::error_of([&] { (void)bench.findings(); });
  EXPECT_THAT(refused.what(), HasSubstr("the model has no feature \"bore 30\""));
}

TEST(LostNames, MayBeFeaturesOfAPartThatIsNotSound) {
  Bench bench = test::wheel_on_bush();
  bench.product(OccurrenceId(1)).unsound = "its solid is not closed";
  bench.measure("Bush: bore 30", 30.0, 0.002);
  const std::vector<Finding> unseen = of_kind(bench, "unseen");
  ASSERT_EQ(unseen.size(), 2U);
  EXPECT_THAT(test::worded(unseen[0].found.at(0)), HasSubstr("Bush: its solid is not closed"));
}

TEST(LostNames, OfEveryKindOfEntryAreFindings) {
  Bench bench = test::wheel_on_bush();
  bench.look.model.not_compared = {{"solid #263 of product 'Pin'", "did not arrive"}};
  Job& job = bench.job;
  const std::string pin = "Pin";
  const std::string face = "Pin: face 30 @ 0";
  bench.declare(pin, PartState::as_found, Drawn::at_the_size_wanted);
  job.sizes.push_back({.feature = face, .rule = std::string("h6"), .nominal = {}});
  bench.measure(face, 30.0, 0.002);
  job.measured_gaps.push_back({.a = "Wheel", .b = face, .value = {}, .uncertainty = {}});
  job.axial.push_back({.a = pin, .b = "Wheel", .least = {}, .greatest = {}});
  job.tapers.push_back({.hole = face, .shaft = face, .gap = {}});
  job.allowed.push_back({.a = pin, .b = "Wheel", .reason = "none", .depth = {}});
  job.turning.push_back({.part = pin, .load_n = {}, .thrust_n = {}});
  job.fixed.push_back({.a = "Wheel", .b = pin, .by = "weld"});
  job.keep_off.push_back({.a = "Wheel", .b = pin, .least = {}, .reason = {}});
  job.surfaces.push_back({.feature = face});
  job.lengths.push_back({.a = face, .b = face, .measured = {}, .uncertainty = {}, .limits = {}});
  job.end_play.push_back({.of = pin, .gap = {}});
  job.end_play.push_back({.of = "Wheel", .gap = {}, .line = {}, .on = pin});
  Adjust adjust;
  adjust.part = "Wheel";
  adjust.from = face;
  job.adjust.push_back(adjust);
  Mesh mesh;
  mesh.a.part = "Wheel";
  mesh.b.part = pin;
  job.meshes.push_back(mesh);
  Cut cut;
  cut.feature = face;
  job.cuts.push_back(cut);
  EXPECT_EQ(of_kind(bench, "unseen").size(), 18U);  // 17 entries, and the pin itself
}

// "Pin" stands nowhere: its own name is no help.
TEST(Names, AreNeverSuggestedForThemselves) {
  Bench bench = wheel();
  Product pin;
  pin.id = pin.name = "Pin";
  pin.cylinders.push_back({});
  pin.cylinders.back().name = "outside 30";
  bench.look.model.products.push_back(pin);
  const Error refused = refusal(bench, "Pin: outside 30");
  EXPECT_THAT(refused.what(), HasSubstr("\"Pin\" stands nowhere in the model"));
  EXPECT_THAT(refused.what(), ::testing::Not(HasSubstr("did you mean")));
}

}  // namespace spotblue::names_test
