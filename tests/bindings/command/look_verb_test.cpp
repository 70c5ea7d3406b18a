#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cstdlib>
#include <nlohmann/json.hpp>

#include "bindings/command/program.hpp"

namespace spotblue::test::look_verb_test {

using ::testing::HasSubstr;
using ::testing::Not;

class LookVerb : public ::testing::Test {
 protected:
  LookVerb() {
    bench_.write("press.toml", kPressMockup);
    const Said made = bench_.run("model press.toml press.step");
    EXPECT_EQ(made.code, 0) << made.err;
  }
  Bench bench_;
};

TEST_F(LookVerb, ShowsThePressFitInWords) {
  const Said said = bench_.run("look press.step");
  EXPECT_EQ(said.code, 0) << said.err;
  EXPECT_EQ(said.err, "");
  EXPECT_THAT(said.out, HasSubstr("Collar: bore  Stud: outside 2  44.0000  44.0350"));
  EXPECT_THAT(said.out, HasSubstr("-0.0350  interference"));
  EXPECT_THAT(said.out, HasSubstr("no fouls"));
  EXPECT_THAT(said.out, Not(HasSubstr("\x1b")));
}

// By hand: 44 / 25.4 = 1.73228...
TEST_F(LookVerb, ShowsInchesWhenAsked) {
  EXPECT_THAT(bench_.run("look press.step --unit in").out,
              HasSubstr("Collar: bore  Stud: outside 2  1.73228"));
}

TEST_F(LookVerb, JsonHoldsTheSeatAndIsValid) {
  const Said said = bench_.run("look press.step --json --output found.json");
  EXPECT_EQ(said.code, 0) << said.err;
  EXPECT_EQ(said.out, "");
  const nlohmann::json found = nlohmann::json::parse(bench_.read("found.json"));
  ASSERT_EQ(found["radial_seats"].size(), 1U);
  EXPECT_EQ(found["radial_seats"][0]["hole"]["feature"], "Collar: bore");
  EXPECT_NEAR(found["radial_seats"][0]["hole_mm"].get<double>(), 44.0, 1e-9);
  EXPECT_NEAR(found["radial_seats"][0]["clearance_mm"].get<double>(), -0.035, 1e-9);
  EXPECT_NEAR(found["radial_seats"][0]["engaged_mm"].get<double>(), 20.0, 1e-9);
  const std::string judge = SPOTBLUE_VALIDATE " " SPOTBLUE_REFERENCE "/schema-2.json " +
                            bench_.path("found.json").string();
  EXPECT_EQ(std::system(judge.c_str()), 0);
}

// A look that is given no time says so of the whole file and is no "all well".
TEST_F(LookVerb, WhatTheTimeDidNotReachIsUndecided) {
  const Said said = bench_.run("look press.step --seconds 0.000001 --json --output found.json");
  EXPECT_EQ(said.code, 3) << said.err;
  const nlohmann::json found = nlohmann::json::parse(bench_.read("found.json"));
  ASSERT_EQ(found["not_looked_at"].size(), 1U);
  EXPECT_THAT(found["not_looked_at"][0]["about"].get<std::string>(), HasSubstr("press.step"));
  const std::string judge = SPOTBLUE_VALIDATE " " SPOTBLUE_REFERENCE "/schema-2.json " +
                            bench_.path("found.json").string();
  EXPECT_EQ(std::system(judge.c_str()), 0);
  const std::string text = bench_.run("look press.step --seconds 0.000001").out;
  EXPECT_THAT(text, HasSubstr("Not looked at"));
  EXPECT_THAT(text, HasSubstr("Found: nothing was compared, 1 thing not looked at\n"));
  EXPECT_EQ(bench_.run("check press.step --seconds 0.000001").code, 3);
}

TEST_F(LookVerb, AFileThatTakesMoreMemoryThanItIsGivenIsRefusedByName) {
  const Said said = bench_.run("look press.step --memory 0.000001");
  EXPECT_EQ(said.code, 2);
  EXPECT_THAT(said.err, HasSubstr("press.step"));
  EXPECT_THAT(said.err, HasSubstr("raise the limit on memory"));
}

TEST_F(LookVerb, EnoughTimeChangesNothing) {
  const Said said = bench_.run("look press.step --seconds 100 --memory 2000");
  EXPECT_EQ(said.code, 0) << said.err;
  EXPECT_THAT(said.out, HasSubstr("-0.0350  interference"));
  EXPECT_THAT(said.out, Not(HasSubstr("not looked at")));
}

TEST_F(LookVerb, NeverOverwritesTheModel) {
  const std::string before = bench_.read("press.step");
  const Said said = bench_.run("look press.step --output ./press.step");
  EXPECT_EQ(said.code, 2);
  EXPECT_EQ(bench_.read("press.step"), before);
}

TEST_F(LookVerb, TextThatIsNoStepIsRefusedByName) {
  bench_.write("note.step", "not a STEP file\n");
  const Said said = bench_.run("look note.step");
  EXPECT_EQ(said.code, 2);
  EXPECT_THAT(said.err, HasSubstr("note.step"));
}

}  // namespace spotblue::test::look_verb_test
