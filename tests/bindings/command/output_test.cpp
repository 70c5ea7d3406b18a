#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>

#include <filesystem>
#include <string>

#include "bindings/command/program.hpp"

namespace spotblue::test::output_test {

using ::testing::HasSubstr;
using ::testing::Not;

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

TEST_F(Output, APipeThatNobodyReadsIsRefusedInsteadOfWaitedForForEver) {
  ASSERT_EQ(mkfifo(bench_.path("pipe").c_str(), 0600), 0);
  for (const char* arguments : {"look press.step --output pipe", "model press.toml pipe"}) {
    const Said said = bench_.run(arguments);
    EXPECT_EQ(said.code, 2) << arguments;
    EXPECT_THAT(said.err, HasSubstr("pipe: it is a pipe that nothing reads")) << arguments;
  }
  const Said said = bench_.run("look press.step --output pipe & cat pipe >read; wait");
  EXPECT_EQ(said.code, 0) << said.err;
  EXPECT_THAT(bench_.read("read"), HasSubstr("Found: "));
}

// Its pipe holds the look up while its shapes are still in the temp folder.
TEST_F(Output, AVerbThatIsEndedLeavesNoTempFolder) {
  ASSERT_EQ(mkfifo(bench_.path("pipe").c_str(), 0600), 0);
  for (const char* signal : {"TERM", "HUP", "INT"}) {
    // A shell starts what runs beside it with INT ignored.
    const Said said = bench_.run(
        "--version >/dev/null; mkdir -p tmp; TMPDIR=tmp env --default-signal=INT '" SPOTBLUE_PROGRAM
        "' look press.step --output pipe & p=$!; "
        "while kill -0 $p && ! ls tmp | grep -q .; do sleep 0.01; done; kill -" +
        std::string(signal) + " $p; wait $p");
    EXPECT_GT(said.code, 128) << signal << said.err;
    EXPECT_THAT(said.err, Not(HasSubstr("spotblue: "))) << signal;  // the shell may tell the end
    EXPECT_TRUE(std::filesystem::is_empty(bench_.path("tmp"))) << signal;
  }
}

TEST_F(Output, ClosedStandardOutputIsAnError) {
  const Said said = bench_.run("look press.step >&-");
  EXPECT_EQ(said.code, 2);
  EXPECT_THAT(said.err, HasSubstr("standard output"));
}

// The pipe's reader has ended before anything is written. A shell calls the end by SIGPIPE 141.
TEST_F(Output, ReaderThatGoesAwayEndsEveryVerbQuietly) {
  for (const char* arguments : {"--version", "--help", "look press.step", "look press.step --json",
                                "draft press.step", "library --help", "which --help"}) {
    const Said piped = bench_.run("--version >/dev/null; { sleep 0.2; '" SPOTBLUE_PROGRAM "' " +
                                  std::string(arguments) + "; echo \"code $?\" >&2; } | true");
    EXPECT_EQ(piped.err, "code 141\n") << arguments;
  }
}

TEST_F(Output, ReaderThatGoesAwayTakesNoFileAlong) {
  bench_.write("press.job.toml",
               "schema = 1\nmodel = \"press.step\"\nunit = \"mm\"\n[[fits]]\n"
               "hole = \"Collar: bore 44\"\nshaft = \"Stud: outside 44.035\"\nclass = \"H7/s6\"\n");
  const Said piped = bench_.run("--version >/dev/null; { sleep 0.2; '" SPOTBLUE_PROGRAM
                                "' check press.job.toml --with-sizes sized.step; } | true");
  EXPECT_THAT(piped.err, HasSubstr("written to sized.step"));
  EXPECT_THAT(bench_.read("sized.step"), HasSubstr("DIMENSIONAL_SIZE"));
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
  EXPECT_THAT(bench_.read("found.txt"), HasSubstr("Collar: bore  Stud: outside 2"));
  EXPECT_THAT(bench_.read("found.txt"), ::testing::Not(HasSubstr("xxx")));
  EXPECT_EQ(bench_.files(), 3U);
}

}  // namespace spotblue::test::output_test
