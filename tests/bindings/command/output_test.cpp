#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>

#include "bindings/command/program.hpp"

namespace spotblue::test {
namespace {

using ::testing::HasSubstr;

class Output : public ::testing::Test {
 protected:
  Output() {
    bench_.write("press.toml", kPressMockup);
    EXPECT_EQ(bench_.run("model press.toml press.step").code, 0);
  }
  Bench bench_;
};

TEST_F(Output, FullDiskIsAnError) {
  for (const char* arguments :
       {"--help >/dev/full", "look press.step >/dev/full", "look press.step --output /dev/full"}) {
    const Said said = bench_.run(arguments);
    EXPECT_EQ(said.code, 2) << arguments;
    EXPECT_THAT(said.err, HasSubstr("No space left on device")) << arguments;
  }
}

TEST_F(Output, ClosedStandardOutputIsAnError) {
  const Said said = bench_.run("look press.step >&-");
  EXPECT_EQ(said.code, 2);
  EXPECT_THAT(said.err, HasSubstr("standard output"));
}

TEST_F(Output, ReaderThatGoesAwayIsAnError) {
  // The pipe's reader has ended before anything is written.
  const Said piped = bench_.run("--version >/dev/null; { sleep 0.2; '" SPOTBLUE_PROGRAM
                                "' --version; echo \"code $?\" >&2; } | true");
  EXPECT_THAT(piped.err, HasSubstr("Broken pipe"));
  EXPECT_THAT(piped.err, HasSubstr("code 2"));
}

TEST_F(Output, FileThatCannotBeMadeIsNamedAndNothingIsLeft) {
  const std::size_t before = bench_.files();
  const Said said = bench_.run("look press.step --output no/such/folder.txt");
  EXPECT_EQ(said.code, 2);
  EXPECT_THAT(said.err, HasSubstr("no/such/folder.txt"));
  EXPECT_EQ(bench_.files(), before);
}

TEST_F(Output, OlderResultIsReplacedWhole) {
  bench_.write("found.txt", std::string(100'000, 'x'));
  EXPECT_EQ(bench_.run("look press.step --output found.txt").code, 0);
  EXPECT_THAT(bench_.read("found.txt"), HasSubstr("Collar: bore 44"));
  EXPECT_THAT(bench_.read("found.txt"), ::testing::Not(HasSubstr("xxx")));
  EXPECT_EQ(bench_.files(), 3U);
}

}  // namespace
}  // namespace spotblue::test
