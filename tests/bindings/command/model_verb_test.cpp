#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "bindings/command/program.hpp"

namespace spotblue::test {
namespace {

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

TEST(ModelVerb, NeverOverwritesItsMockup) {
  const Bench bench;
  bench.write("press.toml", kPressMockup);
  const Said said = bench.run("model press.toml ./press.toml");
  EXPECT_EQ(said.code, 2);
  EXPECT_THAT(said.err, HasSubstr("would be overwritten"));
  EXPECT_EQ(bench.read("press.toml"), kPressMockup);
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

}  // namespace
}  // namespace spotblue::test
