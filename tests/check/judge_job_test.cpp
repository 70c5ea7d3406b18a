// The job as a whole: what matches nothing, what contradicts itself, order, ids and units.

#include "spotblue/check/judge_job.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "job/job_text.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/report/sentence_text.hpp"
#include "support/bench.hpp"
#include "support/thrown.hpp"

namespace spotblue::judge_job_test {

using test::Bench;
using test::iso;
using test::wheel_on_bush;
using ::testing::ElementsAre;
using ::testing::HasSubstr;

// A wheel and a bush that no seat joins, the bush moved by `by`.
Bench apart(Point by, double outside) {
  Bench bench = wheel_on_bush(44.0, outside);
  bench.look.seats.radial.clear();
  Frame& frame = bench.look.model.occurrences[1].frame;
  frame.rows[0][3] = by.x;
  frame.rows[1][3] = by.y;
  frame.rows[2][3] = by.z;
  bench.want("Wheel: bore 44", "Bush: outside 44", iso("H7/s6"), 30);
  return bench;
}

struct Unmatched {
  const char* name;
  Point by;
  double outside;
  const char* advice;
};

void PrintTo(const Unmatched& unmatched, std::ostream* out) { *out << unmatched.name; }

class UnmatchedFit : public ::testing::TestWithParam<Unmatched> {};

TEST_P(UnmatchedFit, DoesNotConformAndSaysHowFarThePartsAreFromOne) {
  const Finding finding = apart(GetParam().by, GetParam().outside).only();
  EXPECT_EQ(finding.id, "radial-1");
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("declared fit not found (job file, line 30)"));
  EXPECT_THAT(text_of(finding.advice), HasSubstr(text_of(GetParam().advice)));
}

// Axes 3 and 4 off make 5; features 20 long moved by 32 lie 12 apart; a seat of 44 allows 1 mm of
// radial gap (2 % of 44 is 0.88) and 0.5 % of 44.6 = 0.223 mm of radial overlap.
const Unmatched kUnmatched[] = {
    {"Beside", {3, 4, 0}, 44.0, "their axes are 5.000 mm apart"},
    {"Along", {0, 0, 32}, 44.0, "12.000 mm apart along the axis"},
    {"Loose", {0, 0, 0}, 41.0, "clearance of 3.000 mm is more than a seat's of 2.000 mm"},
    {"Tight", {0, 0, 0}, 44.6, "overlap by 0.600 mm, more than a press fit's 0.446 mm"},
};

INSTANTIATE_TEST_SUITE_P(Job, UnmatchedFit, ::testing::ValuesIn(kUnmatched),
                         [](const auto& entry) { return std::string(entry.param.name); });

TEST(JudgeJob, TellsOfFacesThatMakeNoSeat) {
  Bench bench;
  bench.face(bench.part("Bush"), "face 60", 0.0, 1.0);
  bench.face(bench.part("Washer"), "face 50", 3.1, -1.0);
  bench.job.axial.push_back({AxialWantKind::gap, "Bush: face 60", "Washer: face 50",
                             Length::mm(0.1), Length::mm(0.3), 7});
  const Finding finding = bench.only();
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("they are 3.100 mm apart"));
}

TEST(JudgeJob, TellsOfAnAllowanceThatHidesNothing) {
  Bench bench = wheel_on_bush();
  bench.job.allowed.push_back({"Wheel", "Bush", "why not", Length::mm(1), 0});
  const std::vector<Finding> findings = bench.findings();
  ASSERT_EQ(findings.size(), 2U);
  EXPECT_EQ(findings[1].outcome, Outcome::conforming);
  EXPECT_THAT(text_of(findings[1].basis), HasSubstr("nothing overlaps"));
}

TEST(JudgeJob, LetsOneOccurrencesFitWinOverItsProducts) {
  Bench bench = wheel_on_bush();
  bench.want("Wheel: bore 44", "Bush: outside 44", ClearanceLimits{Length::mm(1), Length::mm(2)});
  bench.want("Group/Wheel: bore 44", "Bush: outside 44",
             ClearanceLimits{Length::mm(-1), Length::mm(1)});
  EXPECT_EQ(bench.only().outcome, Outcome::conforming);
}

Error refusal(const Bench& bench) {
  return test::error_of([&] { return bench.findings(); });
}

TEST(JudgeJob, RefusesTwoFitsForOnePairHoweverTheyAreSpelt) {
  Bench bench = wheel_on_bush();
  bench.want("Wheel: bore 44", "Bush: outside 44", iso("H7/s6"), 10);
  bench.want("Wheel: bore 44.00", "Bush: outside 44", iso("H7/g6"), 20);
  const Error problem = refusal(bench);
  EXPECT_EQ(problem.place(), "line 20, fits");
  EXPECT_THAT(problem.rule(), HasSubstr("line 10"));
}

TEST(JudgeJob, RefusesTwoEntriesForOnePartThoughTheyStandInOneLine) {
  Bench bench = wheel_on_bush();
  bench.declare("Bush", PartState::to_make, Drawn::at_nominal).line = 10;
  bench.declare("Bush", PartState::as_found, Drawn::at_the_size_wanted).line = 10;
  EXPECT_THAT(refusal(bench).rule(), HasSubstr("the entry in line 10"));
}

TEST(JudgeJob, RefusesTwoEntriesForOnePartOfAJobMadeInCode) {
  Bench bench = wheel_on_bush();
  bench.declare("Bush", PartState::to_make, Drawn::at_nominal);
  bench.declare("Bush", PartState::as_found, Drawn::at_the_size_wanted);
  EXPECT_THAT(refusal(bench).rule(), HasSubstr("an earlier entry"));
}

TEST(JudgeJob, RefusesAFeatureMeasuredTwiceHoweverItIsSpelt) {
  Bench bench = wheel_on_bush();
  bench.job.measured.push_back({"Wheel: bore 44", Length::mm(44), {}, 10});
  bench.job.measured.push_back({"Wheel: bore 44.0", Length::mm(44), {}, 20});
  EXPECT_THAT(refusal(bench).rule(), HasSubstr("line 10"));
}

TEST(JudgeJob, PlacesTheStandardsRefusalInTheJobFile) {
  Bench bench = wheel_on_bush();
  bench.job.file = "plan.toml";
  bench.want("Wheel: bore 44", "Bush: outside 44", iso("H7/qq6"), 10);
  const Error problem = refusal(bench);
  EXPECT_EQ(problem.file(), "plan.toml");
  EXPECT_EQ(problem.place(), "line 10, fits");
  EXPECT_FALSE(problem.cure().empty());
}

TEST(JudgeJob, NumbersFindingsByKindInTheOrderOfTheLook) {
  Bench bench = wheel_on_bush();
  bench.seat(bench.look.seats.radial[0].hole, bench.look.seats.radial[0].shaft);
  const FeatureRef a = bench.face(OccurrenceId(0), "face 60", 0.0, 1.0);
  bench.gap(a, bench.face(OccurrenceId(1), "face 60", 0.0, -1.0), 0.0);
  bench.foul(OccurrenceId(0), OccurrenceId(1), 0.1, "solids overlap");
  std::vector<std::string> ids;
  for (const Finding& finding : bench.findings()) {
    ids.push_back(finding.id);
  }
  EXPECT_THAT(ids, ElementsAre("radial-1", "radial-2", "axial-1", "foul-1"));
}

// The same job in both units: 44.012 +-0.004 mm, and the want as limits -0.059 to -0.018 mm.
TEST(JudgeJob, ComesToTheSameInInches) {
  const std::string parts = "[[parts]]\npart = \"Bush\"\nstate = \"to make\"\n";
  const std::string fit =
      "[[fits]]\nhole = \"Wheel: bore 44\"\nshaft = \"Bush: outside 44\"\nclass = \"H7/s6\"\n";
  const std::string measured = "[[measured]]\nfeature = \"Wheel: bore 44\"\n";
  const std::string head = "schema = 1\nmodel = \"m.step\"\nunit = ";
  const Bench bench = wheel_on_bush();
  const auto in_mm = judge_job(test::job_of(head + "\"mm\"\n" + parts + fit + measured +
                                            "size = 44.012\nuncertainty = 0.004\n"),
                               bench.look);
  const auto in_inch =
      judge_job(test::job_of(head + "\"inch\"\n" + parts + fit + measured +
                             "size = 1.732755905511811\nuncertainty = \"0.004 mm\"\n"),
                bench.look);
  ASSERT_EQ(in_mm.size(), in_inch.size());
  EXPECT_EQ(in_mm[0].outcome, Outcome::conforming);
  EXPECT_EQ(in_inch[0].outcome, in_mm[0].outcome);
  for (const char* key : {"clearance_min_mm", "clearance_max_mm", "hole_min_mm"}) {
    EXPECT_NEAR(test::number(in_inch[0].found, key), test::number(in_mm[0].found, key), 1e-9);
  }
  EXPECT_THAT(text_of(in_inch[0].advice),
              HasSubstr("1.73362 to 1.73492 in"));  // 44.034 and 44.067 mm
}

}  // namespace spotblue::judge_job_test
