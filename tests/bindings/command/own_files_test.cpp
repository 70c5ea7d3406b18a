// Open CASCADE's own files as the program takes them.

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>

#include <cstdlib>
#include <filesystem>
#include <nlohmann/json.hpp>

#include "bindings/command/program.hpp"
#include "support/shape_out.hpp"

namespace spotblue::test::own_files_test {

using ::testing::HasSubstr;
using ::testing::MatchesRegex;

class OwnFiles : public ::testing::Test {
 protected:
  OwnFiles() {
    bench_.write("press.toml", kPressMockup);
    EXPECT_EQ(bench_.run("model press.toml press.step").code, 0);
    step_to_xbf(bench_.path("press.step"), bench_.path("press.xbf"));
    step_to_brep(bench_.path("press.step"), bench_.path("press.brep"), BrepKind::text);
  }
  // But for what must differ: the file, and how long it took.
  [[nodiscard]] nlohmann::json seen(const std::string& words) const {
    nlohmann::json result = nlohmann::json::parse(bench_.run(words + " --json").out);
    result.erase("file");
    result.erase("seconds");
    return result;
  }
  void expect_one_line(const Said& said) const {
    EXPECT_EQ(said.code, 2) << said.out;
    EXPECT_EQ(said.out, "");
    EXPECT_THAT(said.err, MatchesRegex("spotblue: [^\n]+\n"));
  }
  Bench bench_;
};

TEST_F(OwnFiles, DocumentIsSeenAsItsStepFileIs) {
  EXPECT_EQ(seen("look press.xbf"), seen("look press.step"));
}

TEST_F(OwnFiles, JsonNamesTheFormatAndIsValid) {
  for (const std::string format : {"xbf", "brep"}) {
    EXPECT_EQ(bench_.run("look press." + format + " --json --output found.json").code, 0);
    const nlohmann::json found = nlohmann::json::parse(bench_.read("found.json"));
    EXPECT_EQ(found["file"]["protocol"], format);
    ASSERT_EQ(found["radial_seats"].size(), 1U);
    EXPECT_NEAR(found["radial_seats"][0]["clearance_mm"].get<double>(), -0.035, 1e-9);
    const std::string judge = SPOTBLUE_VALIDATE " " SPOTBLUE_REFERENCE "/schema-2.json " +
                              bench_.path("found.json").string();
    EXPECT_EQ(std::system(judge.c_str()), 0);
  }
}

TEST_F(OwnFiles, ShapesSayWhatTheyDoNotKnow) {
  const Said said = bench_.run("look press.brep");
  EXPECT_EQ(said.code, 0) << said.err;
  EXPECT_THAT(said.out, HasSubstr("mm are taken for granted"));
  EXPECT_THAT(said.out, HasSubstr("every solid of it"));
}

TEST_F(OwnFiles, DraftIsAcceptedByCheck) {
  for (const std::string format : {"xbf", "brep"}) {
    const Said drafted = bench_.run("draft press." + format + " --output " + format + ".toml");
    EXPECT_EQ(drafted.code, 0) << drafted.err;
    EXPECT_EQ(bench_.run("check " + format + ".toml").code, 3);
  }
}

TEST_F(OwnFiles, ModelOfAJobIsJudgedAsItsStepFileIs) {
  const std::string wants =
      "[[fits]]\nhole = \"Collar: bore 44\"\nshaft = \"Stud: outside 44.035\"\n"
      "class = \"H7/s6\"\nnominal = 44\n";
  for (const std::string format : {"xbf", "step"}) {
    bench_.write(format + ".toml",
                 "schema = 1\nmodel = \"press." + format + "\"\nunit = \"mm\"\n" + wants);
  }
  nlohmann::json document = seen("check xbf.toml");
  nlohmann::json step = seen("check step.toml");
  EXPECT_FALSE(step["findings"].empty());
  EXPECT_EQ(document["findings"], step["findings"]);
  EXPECT_EQ(document["outcomes"], step["outcomes"]);
}

TEST_F(OwnFiles, FileAloneIsCheckedByWhatItStates) {
  for (const std::string format : {"xbf", "brep"}) {
    const Said said = bench_.run("check press." + format);
    EXPECT_EQ(said.code, 3) << said.err;
    EXPECT_THAT(said.out, HasSubstr("undecided  radial-1"));
  }
}

TEST_F(OwnFiles, SizesAreWrittenIntoStepOnly) {
  bench_.write("job.toml",
               "schema = 1\nmodel = \"press.xbf\"\nunit = \"mm\"\n[[fits]]\nhole = \"Collar: bore "
               "44\"\nshaft = \"Stud: outside 44.035\"\nclass = \"H7/s6\"\nnominal = 44\n");
  const Said said = bench_.run("check job.toml --output report.txt --with-sizes stated.step");
  expect_one_line(said);
  EXPECT_THAT(said.err, HasSubstr("export the model as STEP"));
  EXPECT_FALSE(std::filesystem::exists(bench_.path("stated.step")));
}

TEST_F(OwnFiles, CutOffFileIsOneLine) {
  for (const std::string format : {"xbf", "brep"}) {
    const std::string whole = bench_.read("press." + format);
    bench_.write("cut." + format, whole.substr(0, whole.size() / 2));
    expect_one_line(bench_.run("look cut." + format));
    expect_one_line(bench_.run("check cut." + format));
  }
}

TEST_F(OwnFiles, ModelInAPipeIsNotWaitedFor) {
  for (const std::string name : {"pipe.xbf", "pipe.step"}) {
    ASSERT_EQ(mkfifo(bench_.path(name).c_str(), 0600), 0);
    expect_one_line(bench_.run("look " + name));
    expect_one_line(bench_.run("check " + name));
  }
}

// A pipe may never end, and what is read from it has no folder for the model.
TEST_F(OwnFiles, JobInAPipeOrADeviceIsRefusedAtOnce) {
  ASSERT_EQ(mkfifo(bench_.path("job.toml").c_str(), 0600), 0);
  expect_one_line(bench_.run("check job.toml"));
  expect_one_line(bench_.run("check /dev/zero"));
  expect_one_line(bench_.run("model job.toml out.step"));
}

}  // namespace spotblue::test::own_files_test
