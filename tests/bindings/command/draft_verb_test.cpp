#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>

#include "bindings/command/program.hpp"

namespace spotblue::test::draft_verb_test {

using ::testing::HasSubstr;

class DraftVerb : public ::testing::Test {
 protected:
  DraftVerb() {
    bench_.write("press.toml", kPressMockup);
    EXPECT_EQ(bench_.run("model press.toml press.step").code, 0);
  }
  Bench bench_;
};

TEST_F(DraftVerb, CheckAcceptsTheDraftAndLeavesItUndecided) {
  const Said drafted = bench_.run("draft press.step --output job.toml");
  EXPECT_EQ(drafted.code, 0) << drafted.err;
  EXPECT_EQ(drafted.out, "");
  const Said checked = bench_.run("check job.toml");
  EXPECT_EQ(checked.code, 3) << checked.err;
  EXPECT_THAT(checked.out, HasSubstr("Collar: bore (44)  with  Stud: outside 2 (44.035)"));
}

TEST_F(DraftVerb, DraftInAnotherFolderStillFindsItsModel) {
  std::filesystem::create_directory(bench_.path("jobs"));
  EXPECT_EQ(bench_.run("draft press.step --output jobs/job.toml").code, 0);
  EXPECT_EQ(bench_.run("check jobs/job.toml --allow-outside").code, 3);
}

TEST_F(DraftVerb, JobFileThatExistsIsKept) {
  bench_.write("job.toml", "filled in\n");
  const Said said = bench_.run("draft press.step --output job.toml");
  EXPECT_EQ(said.code, 2);
  EXPECT_THAT(said.err, HasSubstr("job.toml"));
  EXPECT_EQ(bench_.read("job.toml"), "filled in\n");
}

// A draft of which something is missing says so at its head, and the exit code too.
TEST_F(DraftVerb, WhatWasNotLookedAtStandsInTheDraftAndEndsWithThree) {
  for (const char* bound : {"--seconds 0.000001", "--memory 0.000001"}) {
    const Said drafted = bench_.run(std::string("draft press.step ") + bound);
    if (std::string(bound).starts_with("--seconds")) {
      EXPECT_EQ(drafted.code, 3) << drafted.err;
      EXPECT_THAT(drafted.out, HasSubstr("# Not whole"));
      EXPECT_THAT(drafted.out, HasSubstr("press.step"));
    } else {  // of a file that could not even be read there is nothing to draft
      EXPECT_EQ(drafted.code, 2);
      EXPECT_THAT(drafted.err, HasSubstr("press.step"));
      EXPECT_THAT(drafted.err, HasSubstr("MB"));
    }
  }
}

TEST_F(DraftVerb, EnoughTimeAndMemoryChangeNothing) {
  const Said drafted = bench_.run("draft press.step --seconds 100 --memory 2000");
  EXPECT_EQ(drafted.code, 0) << drafted.err;
  EXPECT_EQ(drafted.out, bench_.run("draft press.step").out);
}

TEST_F(DraftVerb, InchDraftIsAcceptedToo) {
  const Said drafted = bench_.run("draft press.step --unit in --output job.toml");
  EXPECT_EQ(drafted.code, 0) << drafted.err;
  EXPECT_THAT(bench_.read("job.toml"), HasSubstr("1.73228"));
  EXPECT_EQ(bench_.run("check job.toml").code, 3);
}

}  // namespace spotblue::test::draft_verb_test
