#include "spotblue/check/draft.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "job/job_text.hpp"
#include "spotblue/check/judge_job.hpp"
#include "support/bench.hpp"

namespace spotblue::draft_test {

using test::Bench;
using test::job_of;
using test::wheel_on_bush;
using ::testing::Each;
using ::testing::Field;
using ::testing::HasSubstr;

Bench group() {
  Bench bench = wheel_on_bush(44.0, 43.98);
  const FeatureRef a = bench.face(OccurrenceId(0), "face 60", 0.0, 1.0);
  bench.gap(a, bench.face(OccurrenceId(1), "face 50", 0.1, -1.0), 0.1);
  bench.key(bench.width(OccurrenceId(0), "slot 8", Side::internal, 8.0),
            bench.width(OccurrenceId(1), "width 8", Side::external, 8.0));
  return bench;
}

// Takes the comment sign off every line that holds `key`.
std::string taken(std::string text, const std::string& key) {
  const std::string commented = "# " + key;
  for (auto at = text.find(commented); at != std::string::npos; at = text.find(commented, at)) {
    text.replace(at, 2, "");
  }
  return text;
}

TEST(Draft, IsAcceptedAsItStandsWithNothingDecided) {
  const Bench bench = group();
  const Job job = job_of(draft_job(bench.look, "group.step", LengthUnit::mm));
  EXPECT_EQ(job.parts.size(), 2U);
  const std::vector<Finding> findings = judge_job(job, bench.look);
  EXPECT_EQ(findings.size(), 3U);
  EXPECT_THAT(findings, Each(Field(&Finding::outcome, Outcome::undecided)));
}

TEST(Draft, OffersToDeclareAThreadThatIsSeldomMet) {
  Bench bench;
  Thread thread;
  thread.hole = bench.bore(bench.part("Nut"), "bore 18.95", 18.95);
  thread.screw = bench.outside(bench.part("Shaft"), "outside 20", 20.0);
  thread.hole_diameter = 18.95;
  thread.screw_diameter = 20.0;
  thread.engaged = 16.0;
  thread.size = "M20x1";
  bench.look.seats.threads = {thread};
  const std::string text = draft_job(bench.look, "group.step", LengthUnit::mm);
  std::string taken_up = text;
  for (const char* key : {"[[threads]]", "hole =", "screw =", "size ="}) {
    taken_up = taken(taken_up, key);
  }
  const Job job = job_of(taken_up);
  ASSERT_EQ(job.threads.size(), 1U);
  EXPECT_EQ(judge_job(job, bench.look).at(0).outcome, Outcome::conforming);
}

TEST(Draft, ShowsNoTerminalWhatItWouldActOnAndNamesThePartAllTheSame) {
  Bench bench = group();
  std::string& name = bench.look.model.products[0].id;
  name += "\xC2\x9B\xE2\x80\xAE";
  const std::string text = draft_job(bench.look, "group.step", LengthUnit::mm);
  EXPECT_THAT(text, HasSubstr("\\u009B\\u202E"));
  EXPECT_EQ(text.find("\xE2\x80\xAE"), std::string::npos);
  EXPECT_EQ(job_of(text).parts[0].part, name);
}

TEST(Draft, SaysWhereItsModelLiesElsewhereThanTheJobMayReach) {
  const Bench bench = group();
  for (const char* path : {"../group.step", "/elsewhere/group.step"}) {
    EXPECT_THAT(draft_job(bench.look, path, LengthUnit::mm), HasSubstr("--allow-outside")) << path;
  }
  EXPECT_EQ(draft_job(bench.look, "below/group.step", LengthUnit::mm).find("--allow-outside"),
            std::string::npos);
}

TEST(Draft, IsAcceptedInInchesToo) {
  const Bench bench = group();
  const Job job = job_of(draft_job(bench.look, "group.step", LengthUnit::inch));
  EXPECT_EQ(job.unit, LengthUnit::inch);
  EXPECT_EQ(judge_job(job, bench.look).size(), 3U);
}

// ISO 286-2: 44 H7/g6 has clearances +9 to +50 um.
TEST(Draft, ProposesAClassThatConformsOnceTaken) {
  Bench bench = wheel_on_bush(44.0, 43.98);
  std::string text = draft_job(bench.look, "group.step", LengthUnit::mm);
  ASSERT_THAT(text, HasSubstr("# class = \"H7/g6\""));
  for (const char* key : {"[[fits]]", "hole =", "shaft =", "class = \"H7/g6\""}) {
    text = taken(text, key);
  }
  EXPECT_EQ(judge_job(job_of(text), bench.look).at(0).outcome, Outcome::conforming);
}

TEST(Draft, ListsARepeatedMeetingOnce) {
  Bench bench = wheel_on_bush();
  bench.occur(0, "Group/Wheel again");
  FeatureRef again = bench.look.seats.radial[0].hole;
  again.occurrence = OccurrenceId(2);
  bench.seat(again, bench.look.seats.radial[0].shaft);
  EXPECT_THAT(draft_job(bench.look, "m.step", LengthUnit::mm), HasSubstr("2 times"));
}

TEST(Draft, KeepsNamesWithQuotesAndLineBreaks) {
  Bench bench;
  const FeatureRef hole = bench.bore(bench.part("Wheel \"A\"\n\\ big"), "bore 44", 44.0);
  bench.seat(hole, bench.outside(bench.part("Bush"), "outside 44", 44.0));
  const Job job = job_of(draft_job(bench.look, "a \"b\".step", LengthUnit::mm));
  EXPECT_EQ(job.parts.at(0).part, "Wheel \"A\"\n\\ big");
  EXPECT_EQ(job.model.filename(), "a \"b\".step");
}

}  // namespace spotblue::draft_test
