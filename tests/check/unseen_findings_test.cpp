// What could not be compared is said, and a check that judged nothing says that.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <string>
#include <variant>
#include <vector>

#include "spotblue/check/judge_job.hpp"
#include "spotblue/report/sentence_text.hpp"
#include "support/bench.hpp"

namespace spotblue::unseen_findings_test {

using test::Bench;
using test::of_kind;
using test::wheel_on_bush;
using test::worded;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::StartsWith;

TEST(UnseenFinding, IsTheOnlyOneWhereThereIsNothingToJudge) {
  Bench bench;
  bench.part("Wheel");
  bench.look.model.file.name = "wheel.step";
  const std::vector<Finding> findings = bench.findings();
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_EQ(findings[0].id, "unseen-1");
  EXPECT_EQ(findings[0].outcome, Outcome::undecided);
  EXPECT_THAT(test::names(findings[0].about), ElementsAre("wheel.step"));
}

TEST(UnseenFinding, IsNotMadeWhereAllIsCompared) {
  EXPECT_THAT(of_kind(wheel_on_bush(), "unseen"), IsEmpty());
}

TEST(UnseenFinding, NamesAPartWhoseShellIsOpen) {
  Bench bench = wheel_on_bush();
  bench.product(OccurrenceId(1)).unsound = "its solid is not closed";
  const std::vector<Finding> findings = of_kind(bench, "unseen");
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_THAT(test::names(findings[0].about), ElementsAre("Bush"));
  EXPECT_EQ(findings[0].outcome, Outcome::undecided);
}

TEST(UnseenFinding, LeavesTheSeatsOfAnUnsoundPartUndecidedWithTheReason) {
  Bench bench = wheel_on_bush();
  bench.want("Wheel: bore 44", "Bush: outside 44", test::iso("H7/s6"));
  const std::vector<Finding> sound = of_kind(bench, "radial fit");
  ASSERT_EQ(sound.size(), 1U);
  ASSERT_NE(sound[0].outcome, Outcome::undecided);
  bench.product(OccurrenceId(0)).unsound = "faces lie off their own edges";
  const std::vector<Finding> unsound = of_kind(bench, "radial fit");
  ASSERT_EQ(unsound.size(), 1U);
  EXPECT_EQ(unsound[0].outcome, Outcome::undecided);
  EXPECT_EQ(worded(unsound[0].found.back()), "Wheel: faces lie off their own edges");
  EXPECT_THAT(text_of(unsound[0].advice), StartsWith("put Wheel right"));
}

// What is left of two parts called alike may be the other one.
TEST(UnseenFinding, LeavesTheSeatsOfAPartThatDidNotArriveWholeUndecided) {
  Bench bench = wheel_on_bush();
  bench.want("Wheel: bore 44", "Bush: outside 44", test::iso("H7/s6"));
  bench.look.model.not_compared = {{"product 'Bush'", "arrived with 1 of its 2 solids"}};
  EXPECT_EQ(of_kind(bench, "radial fit").at(0).outcome, Outcome::undecided);
}

// Names of a product may hold the marks that notes put round them.
TEST(UnseenFinding, FindsAPartThatDidNotArriveWholeWhateverItsName) {
  Bench bench;
  const FeatureRef hole = bench.bore(bench.part("Smith's wheel"), "bore 44", 44.0);
  bench.seat(hole, bench.outside(bench.part("Bush"), "outside 44", 44.1));
  bench.want("Smith's wheel: bore 44", "Bush: outside 44", test::iso("H7/s6"));
  bench.look.model.not_compared = {{"product 'Smith's wheel'", "arrived with 1 of its 2 solids"}};
  EXPECT_EQ(of_kind(bench, "radial fit").at(0).outcome, Outcome::undecided);
}

TEST(UnseenFinding, LeavesFindingsUndecidedHoweverTheJobSpellsAnUnsoundPart) {
  for (const char* spelled : {"Pin", "Group/Pin"}) {
    Bench bench = wheel_on_bush();
    const OccurrenceId pin = bench.part("Pin");
    bench.product(pin).unsound = "its solid is not closed";
    bench.outside(pin, "outside 10", 10.0);
    bench.job.sizes.push_back({.feature = std::string(spelled) + ": outside 10",
                               .rule = std::string("h6"),
                               .nominal = {}});
    for (const Finding& finding : of_kind(bench, "size")) {
      EXPECT_EQ(finding.outcome, Outcome::undecided) << spelled;
      EXPECT_THAT(worded(finding.found.back()), HasSubstr("not closed"));
    }
  }
}

TEST(UnseenFinding, LeavesTheSeatsOfOtherPartsDecided) {
  Bench bench = wheel_on_bush();
  bench.want("Wheel: bore 44", "Bush: outside 44", test::iso("H7/s6"));
  bench.product(bench.part("Wheel rim")).unsound = "its solid is not closed";
  EXPECT_NE(of_kind(bench, "radial fit")[0].outcome, Outcome::undecided);
}

TEST(UnseenFinding, NamesFacesThatBoundNoSolid) {
  Bench bench = wheel_on_bush();
  bench.look.model.not_compared.push_back({"Cover", "3 faces that bound no solid are left out"});
  const std::vector<Finding> findings = of_kind(bench, "unseen");
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_THAT(test::names(findings[0].about), ElementsAre("Cover"));
}

// With pairs left out, nothing that hangs on all of them is called well or bad.
TEST(UnseenFinding, NamesWhatTheTimeDidNotReachAndJudgesNoGroup) {
  Bench bench = wheel_on_bush();
  for (Product& product : bench.look.model.products) {
    extend(product.box, Point{1.0, 1.0, 1.0});
  }
  bench.look.not_looked_at.push_back({"Wheel and Bush", "whether they foul"});
  const std::vector<Finding> findings = bench.findings();
  std::set<std::string> kinds;
  for (const Finding& finding : findings) {
    kinds.insert(finding.kind);
  }
  EXPECT_FALSE(kinds.contains("way in"));
  EXPECT_FALSE(kinds.contains("end play"));
  const std::vector<Finding> unseen = of_kind(bench, "unseen");
  ASSERT_EQ(unseen.size(), 2U);
  EXPECT_THAT(test::names(unseen[0].about), ElementsAre("Wheel and Bush"));
}

// The fit that was judged in time stays; that others were not is a finding of its own.
TEST(UnseenFinding, SaysThatNotAllWasJudgedForWantOfTimeOrMemory) {
  Bench bench = wheel_on_bush();
  bench.look.settings.limits.memory_mb = 1e-6;
  const std::vector<Finding> findings = bench.findings();
  const auto cut = std::find_if(findings.begin(), findings.end(),
                                [](const Finding& one) { return one.kind == "not judged"; });
  ASSERT_NE(cut, findings.end());
  EXPECT_EQ(cut->outcome, Outcome::undecided);
  EXPECT_THAT(worded(cut->found.at(0)), HasSubstr("memory given was used up"));
  EXPECT_FALSE(is_whole({bench.look, bench.job, findings}));
  EXPECT_TRUE(is_whole({bench.look, bench.job, wheel_on_bush().findings()}));
}

TEST(UnseenFinding, JudgesNothingOfAModelThatWasNotRead) {
  Look look;
  look.model.file.name = "press.step";
  look.not_looked_at.push_back({"press.step", "reading it was not done after 1 s"});
  Job job;
  job.fits.emplace_back();
  const std::vector<Finding> findings = judge_job(job, look);
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_EQ(findings[0].kind, "unseen");
  EXPECT_EQ(findings[0].outcome, Outcome::undecided);
}

TEST(UnseenFinding, NamesTwoPartsThatTouchAtNoSeat) {
  Bench bench = wheel_on_bush();
  bench.look.fouls.contacts.push_back({.a = OccurrenceId(0),
                                       .b = OccurrenceId(1),
                                       .gap = 0.02,
                                       .a_face = "sphere",
                                       .b_face = "free form"});
  const std::vector<Finding> findings = of_kind(bench, "unseen");
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_THAT(test::names(findings[0].about), ElementsAre("Wheel", "Bush"));
  EXPECT_THAT(worded(findings[0].found.at(0)),
              HasSubstr("sphere and free form come within 0.020 mm"));
}

TEST(UnseenFinding, TellsContactsThatAreAlikeOnce) {
  Bench bench = wheel_on_bush();
  const Contact ball{.a = OccurrenceId(0),
                     .b = OccurrenceId(1),
                     .gap = 0.02,
                     .a_face = "sphere",
                     .b_face = "torus"};
  bench.look.fouls.contacts = {ball, ball, ball};
  const std::vector<Finding> findings = of_kind(bench, "unseen");
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_THAT(worded(findings[0].found.at(0)), HasSubstr("3 such pairs"));
}

TEST(UnseenFinding, SaysWhyAContactIsNotMeasured) {
  Bench bench = wheel_on_bush();
  bench.look.fouls.contacts.push_back(
      {.a = OccurrenceId(0), .b = OccurrenceId(1), .why = "Open CASCADE crashed on it"});
  const std::vector<Finding> findings = of_kind(bench, "unseen");
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_THAT(worded(findings[0].found.at(0)),
              HasSubstr("not measured: Open CASCADE crashed on it"));
}

TEST(UnseenFinding, LeavesOutContactsThatAMeshOrAnAllowanceSpeaksOf) {
  Bench bench = wheel_on_bush();
  bench.look.fouls.contacts.push_back({.a = OccurrenceId(0),
                                       .b = OccurrenceId(1),
                                       .gap = 0.0,
                                       .a_face = "torus",
                                       .b_face = "cylinder"});
  bench.job.allowed.push_back(
      {.a = "Wheel", .b = "Bush", .reason = "O-ring", .depth = Length::mm(0.5)});
  EXPECT_THAT(of_kind(bench, "unseen"), IsEmpty());
}

}  // namespace spotblue::unseen_findings_test
