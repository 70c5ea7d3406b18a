#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "bindings/command/program.hpp"

namespace spotblue::test::model_verb_test {

using ::testing::HasSubstr;
using ::testing::StartsWith;

TEST(ModelVerb, WritesAStepFileAndSaysNothing) {
  const Bench bench;
  bench.write("press.toml", kPressMockup);
  const Said said = bench.run("model press.toml press.step");
  EXPECT_EQ(said.code, 0) << said.err;
  EXPECT_EQ(said.out + said.err, "");
  EXPECT_THAT(bench.read("press.step"), StartsWith("ISO-10303-21;"));
  EXPECT_EQ(bench.files(), 2U);
}

// By hand: 1 1/4 in is 31.75 mm, 1.251 in is 31.7754 mm. One version of Open CASCADE writes mm as
// inches.
TEST(ModelVerb, AnAssemblyInInchesIsAsLargeAsItSays) {
  const Bench bench;
  bench.write("pair.toml", R"(
title = "Pair"
unit = "inch"
[[part]]
name = "Pin"
kind = "turned"
outside = [{ length = 2, diameter = "1 1/4" }]
[[part]]
name = "Bush"
kind = "turned"
outside = [{ length = 1, diameter = 2 }]
inside = [{ diameter = 1.251, through = true }]
[[place]]
part = "Pin"
at = 0
[[place]]
part = "Bush"
at = "1/2"
)");
  const Said made = bench.run("model pair.toml pair.step");
  ASSERT_EQ(made.code, 0) << made.err;
  const auto seats = nlohmann::json::parse(bench.run("look pair.step --json").out)["radial_seats"];
  ASSERT_EQ(seats.size(), 1U);
  EXPECT_NEAR(seats[0]["hole_mm"].get<double>(), 31.7754, 1e-9);
  EXPECT_NEAR(seats[0]["shaft_mm"].get<double>(), 31.75, 1e-9);
  EXPECT_NEAR(seats[0]["engaged_mm"].get<double>(), 25.4, 1e-9);
}

TEST(ModelVerb, NeverOverwritesItsMockup) {
  const Bench bench;
  bench.write("press.toml", kPressMockup);
  const Said said = bench.run("model press.toml ./press.toml");
  EXPECT_EQ(said.code, 2);
  EXPECT_THAT(said.err, HasSubstr("would be overwritten"));
  EXPECT_EQ(bench.read("press.toml"), kPressMockup);
}

TEST(ModelVerb, NeverOverwritesWhatItsMockupIncludes) {
  const Bench bench;
  const std::string mockup = kPressMockup;
  const std::string shared = mockup.substr(mockup.find("[[part]]"));
  bench.write("shared.toml", shared);
  bench.write("press.toml", "title = \"Press\"\nunit = \"mm\"\ninclude = \"shared.toml\"\n");
  std::filesystem::create_hard_link(bench.path("shared.toml"), bench.path("hard.step"));
  for (const char* out : {"shared.toml", "hard.step"}) {
    const Said said = bench.run("model press.toml " + std::string(out));
    EXPECT_EQ(said.code, 2) << out;
    EXPECT_THAT(said.err, HasSubstr("would be overwritten")) << out;
  }
  EXPECT_EQ(bench.read("shared.toml"), shared);
  EXPECT_EQ(bench.run("model press.toml press.step").code, 0);
}

// A text of more than 16 KB is none that a STEP file may have.
TEST(ModelVerb, WhatWouldNotReadBackTakesNoPlace) {
  const Bench bench;
  const std::string mockup = kPressMockup;
  bench.write("press.toml",
              "title = \"" + std::string(20'000, 'x') + "\"" + mockup.substr(mockup.find('\n')));
  bench.write("press.step", "old");
  const Said said = bench.run("model press.toml press.step");
  EXPECT_EQ(said.code, 2);
  EXPECT_THAT(said.err, HasSubstr("press.step: not written, since it does not read back"));
  EXPECT_EQ(bench.read("press.step"), "old");
  EXPECT_EQ(bench.files(), 2U);
}

TEST(ModelVerb, IncludesAFileElsewhereOnlyWhereThatIsAllowed) {
  const Bench bench;
  const std::string mockup = kPressMockup;
  std::filesystem::create_directories(bench.path("plans"));
  bench.write("shared.toml", mockup.substr(mockup.find("[[part]]")));
  bench.write("plans/press.toml",
              "title = \"Press\"\nunit = \"mm\"\ninclude = \"../shared.toml\"\n");
  EXPECT_THAT(bench.run("model plans/press.toml press.step").err, HasSubstr("--allow-outside"));
  EXPECT_EQ(bench.run("model plans/press.toml press.step --allow-outside").code, 0);
}

TEST(ModelVerb, ALinkStaysAndWhatItLeadsToIsReplaced) {
  const Bench bench;
  bench.write("press.toml", kPressMockup);
  bench.write("old.step", "old");
  std::filesystem::create_symlink("old.step", bench.path("link.step"));
  ASSERT_EQ(bench.run("model press.toml link.step").code, 0);
  EXPECT_TRUE(std::filesystem::is_symlink(bench.path("link.step")));
  EXPECT_THAT(bench.read("old.step"), HasSubstr("ISO-10303-21"));
}

TEST(ModelVerb, MistakeInTheMockupNamesFileAndWord) {
  const Bench bench;
  bench.write("press.toml", std::string(kPressMockup) + "colour = 3\n");
  const Said said = bench.run("model press.toml press.step");
  EXPECT_EQ(said.code, 2);
  EXPECT_THAT(said.err, HasSubstr("press.toml"));
  EXPECT_THAT(said.err, HasSubstr("colour"));
  EXPECT_EQ(bench.files(), 1U);
}

}  // namespace spotblue::test::model_verb_test
