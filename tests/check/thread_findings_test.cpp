// A screw has one thread, and enough of it in its hole. Sizes: ISO 261, tap drills ISO 2306.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>

#include "spotblue/base/error.hpp"
#include "spotblue/report/sentence_text.hpp"
#include "spotblue/standards/threads.hpp"
#include "support/bench.hpp"

namespace spotblue::thread_findings_test {

using test::Bench;
using test::number;
using test::of_kind;
using ::testing::AllOf;
using ::testing::Each;
using ::testing::Field;
using ::testing::HasSubstr;

constexpr double kNear = 1e-9;

// A screw drawn at its major diameter in a hole drawn at its minor one.
void screw(Bench& bench, const FeatureRef& hole, const FeatureRef& shank, double engaged) {
  Thread thread;
  thread.hole = hole;
  thread.screw = shank;
  thread.hole_diameter = bench.product(hole.occurrence).cylinders[hole.index].diameter;
  thread.screw_diameter = bench.product(shank.occurrence).cylinders[shank.index].diameter;
  thread.size = thread_of(Diameter(Length::mm(thread.hole_diameter)),
                          Diameter(Length::mm(thread.screw_diameter)))
                    .value();
  thread.engaged = engaged;
  bench.look.seats.threads.push_back(thread);
}

struct Joint {
  Bench bench;
  FeatureRef hole, shank;
};
Joint nut_on_shaft(double hole, double shank, double engaged) {
  Joint joint;
  joint.hole = joint.bench.bore(joint.bench.part("Nut"), "bore", hole);
  joint.shank = joint.bench.outside(joint.bench.part("Shaft"), "outside", shank);
  screw(joint.bench, joint.hole, joint.shank, engaged);
  return joint;
}

ThreadWant want(const std::string& size) {
  return {"Nut: bore", "Shaft: outside", size, {}, "", {}};
}

std::vector<Finding> threads(const Bench& bench) { return of_kind(bench, "thread"); }

TEST(OneThread, ACoarseOneNeedsNoDeclaration) {
  const Joint joint = nut_on_shaft(17.5, 20.0, 16.0);
  EXPECT_EQ(threads(joint.bench).at(0).outcome, Outcome::conforming);
}

TEST(OneThread, AnUsualFineOneNeedsNoDeclaration) {
  const Joint joint = nut_on_shaft(18.5, 20.0, 16.0);
  EXPECT_EQ(threads(joint.bench).at(0).outcome, Outcome::conforming);
}

TEST(OneThread, ARareOneIsUndecidedUntilItIsDeclared) {
  Joint joint = nut_on_shaft(18.95, 20.0, 16.0);
  const Finding open = threads(joint.bench).at(0);
  EXPECT_EQ(open.outcome, Outcome::undecided);
  EXPECT_THAT(text_of(open.advice), AllOf(HasSubstr("M20x1"), HasSubstr("[[threads]]")));
  joint.bench.job.threads.push_back(want("M20x1"));
  EXPECT_EQ(threads(joint.bench).at(0).outcome, Outcome::conforming);
}

TEST(OneThread, ARareOneIsDeclaredByTheNutThatIsSetByIt) {
  Joint joint = nut_on_shaft(18.95, 20.0, 16.0);
  Adjust adjust;
  adjust.part = "Nut";
  adjust.thread = "M20x1";
  joint.bench.job.adjust.push_back(adjust);
  EXPECT_EQ(threads(joint.bench).at(0).outcome, Outcome::conforming);
}

TEST(OneThread, OfAScrewInTwoNutsWithOtherPitchesIsUndecided) {
  Joint joint = nut_on_shaft(17.5, 20.0, 16.0);
  screw(joint.bench, joint.bench.bore(joint.bench.part("Lock nut"), "bore", 18.5), joint.shank,
        16.0);
  const std::vector<Finding> found = threads(joint.bench);
  ASSERT_EQ(found.size(), 2U);
  EXPECT_THAT(found, Each(Field(&Finding::outcome, Outcome::undecided)));
  EXPECT_THAT(text_of(found[0].advice), HasSubstr("M20 and M20x1.5"));
}

// 10.6 is near the minor diameters of M12x1.25 (10.647) and 1/2-13 UNC (10.584).
TEST(OneThread, OfANutOnTwoScrewsWithOtherPitchesIsUndecided) {
  Joint joint = nut_on_shaft(10.6, 12.0, 10.0);
  screw(joint.bench, joint.hole,
        joint.bench.outside(joint.bench.part("Other shaft"), "outside", 12.7), 10.0);
  const std::vector<Finding> found = threads(joint.bench);
  EXPECT_THAT(found, Each(Field(&Finding::outcome, Outcome::undecided)));
  EXPECT_THAT(text_of(found.at(0).advice), HasSubstr("1/2-13 UNC and M12x1.25"));
}

TEST(OneThread, IsThatOfThePartWhereverItStands) {
  Joint joint = nut_on_shaft(17.5, 20.0, 16.0);
  const ProductId shaft = joint.bench.look.model.occurrences[joint.shank.occurrence].product;
  const OccurrenceId again = joint.bench.occur(shaft, "Group/Shaft again");
  screw(joint.bench, joint.bench.bore(joint.bench.part("Block"), "bore", 18.5),
        {again, joint.shank.kind, joint.shank.index}, 16.0);
  EXPECT_THAT(threads(joint.bench), Each(Field(&Finding::outcome, Outcome::undecided)));
}

TEST(OneThread, ANutForAnotherPitchThanDeclaredDoesNotConform) {
  Joint joint = nut_on_shaft(18.5, 20.0, 16.0);
  screw(joint.bench, joint.bench.bore(joint.bench.part("Lock nut"), "bore", 17.5), joint.shank,
        16.0);
  joint.bench.job.threads.push_back(want("M20x1.5"));
  const std::vector<Finding> found = threads(joint.bench);
  EXPECT_EQ(found.at(0).outcome, Outcome::conforming);
  EXPECT_EQ(found.at(1).outcome, Outcome::nonconforming);
  EXPECT_THAT(text_of(found[1].advice), HasSubstr("M20 and M20x1.5"));
}

TEST(OneThread, DeclaredAsTwoDoesNotConform) {
  Joint joint = nut_on_shaft(18.5, 20.0, 16.0);
  screw(joint.bench, joint.bench.bore(joint.bench.part("Lock nut"), "bore", 17.5), joint.shank,
        16.0);
  joint.bench.job.threads.push_back(want("M20x1.5"));
  joint.bench.job.threads.push_back({"Lock nut: bore", "Shaft: outside", "M20", {}, "", {}});
  EXPECT_THAT(threads(joint.bench), Each(Field(&Finding::outcome, Outcome::nonconforming)));
}

TEST(OneThread, DrawnAsAnotherThanDeclaredIsUndecided) {
  Joint joint = nut_on_shaft(18.95, 20.0, 16.0);
  joint.bench.job.threads.push_back(want("M20"));
  const Finding finding = threads(joint.bench).at(0);
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_THAT(text_of(finding.advice), AllOf(HasSubstr("Nut: bore"), HasSubstr("M20 is declared")));
}

TEST(OneThread, DeclaredForPartsThatDoNotScrewIsTold) {
  Bench bench;
  bench.seat(bench.bore(bench.part("Nut"), "bore", 20.1),
             bench.outside(bench.part("Shaft"), "outside", 20.0));
  bench.job.threads.push_back(want("M20"));
  const Finding finding = threads(bench).at(0);
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("thread not found"));
}

TEST(OneThread, OfTwoEntriesForOneScrewInOneNutTheSecondIsRefused) {
  Joint joint = nut_on_shaft(17.5, 20.0, 16.0);
  joint.bench.job.threads = {want("M20"), want("M20")};
  EXPECT_THROW((void)joint.bench.findings(), Error);
}

// Half of 20 is 10.
TEST(ThreadEngaged, LessThanHalfTheDiameterIsUndecided) {
  const Finding finding = threads(nut_on_shaft(17.5, 20.0, 9.99).bench).at(0);
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_NEAR(number(finding.wanted, "engaged_min_mm"), 10.0, kNear);
  EXPECT_NEAR(number(finding.margin, "engaged_mm"), -0.01, kNear);
  EXPECT_EQ(threads(nut_on_shaft(17.5, 20.0, 10.0).bench).at(0).outcome, Outcome::conforming);
}

TEST(ThreadEngaged, WhatIsUsualIsNamedByTheMaterialOfTheHole) {
  Joint joint = nut_on_shaft(17.5, 20.0, 6.0);
  EXPECT_THAT(text_of(threads(joint.bench).at(0).advice),
              HasSubstr("20 mm in steel, 30 mm in iron"));
  joint.bench.declare("Nut", PartState::as_found, Drawn::at_the_size_wanted).material = "grey iron";
  EXPECT_THAT(text_of(threads(joint.bench).at(0).advice),
              AllOf(HasSubstr("at least 30 mm in iron"), ::testing::Not(HasSubstr("steel"))));
}

TEST(ThreadEngaged, IsEnoughWhereItIsDeclaredAndWhyIsTold) {
  Joint joint = nut_on_shaft(17.5, 20.0, 6.0);
  ThreadWant thin = want("M20");
  thin.engaged = Length::mm(5.0);
  thin.reason = "it keeps a ring in place";
  joint.bench.job.threads = {thin};
  const Finding finding = threads(joint.bench).at(0);
  EXPECT_EQ(finding.outcome, Outcome::conforming);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("it keeps a ring in place"));
}

TEST(ThreadEngaged, LessThanDeclaredDoesNotConform) {
  Joint joint = nut_on_shaft(17.5, 20.0, 12.0);
  ThreadWant much = want("M20");
  much.engaged = Length::mm(15.0);
  much.reason = "it carries the wheel";
  joint.bench.job.threads = {much};
  EXPECT_EQ(threads(joint.bench).at(0).outcome, Outcome::nonconforming);
}

}  // namespace spotblue::thread_findings_test
