#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <regex>

#include "bindings/command/program.hpp"

namespace spotblue::test::check_verb_test {

using ::testing::HasSubstr;

class CheckVerb : public ::testing::Test {
 protected:
  CheckVerb() {
    bench_.write("press.toml", kPressMockup);
    EXPECT_EQ(bench_.run("model press.toml press.step").code, 0);
  }
  [[nodiscard]] Said check(const std::string& wants, const std::string& options = "") const {
    bench_.write("job.toml", "schema = 1\nmodel = \"press.step\"\nunit = \"mm\"\n" + wants);
    return bench_.run("check job.toml " + options);
  }
  Bench bench_;
};

// Every seat judged: the press by limits of its clearance and by its materials, the shoulder by
// touching.
std::string wants(const std::string& clearance) {
  return "[[parts]]\npart = \"Collar\"\nmaterial = \"carbon steel 1045\"\n"
         "[[parts]]\npart = \"Stud\"\nmaterial = \"carbon steel 1045\"\n[[fits]]\nhole = \"Collar: "
         "bore "
         "44\"\nshaft = \"Stud: outside 44.035\"\nclearance = " +
         clearance +
         "\n[[wants]]\nbetween = [\"Collar\", \"Stud\"]\nkind = \"touch\"\nwithin = 0.01\n";
}

TEST_F(CheckVerb, EverythingAsWantedIsConformingAndEndsWithZero) {
  const Said said = check(wants("[-0.05, -0.02]"));
  EXPECT_EQ(said.code, 0) << said.err << said.out;
  EXPECT_THAT(said.out, HasSubstr("0 nonconforming, 0 undecided"));
}

TEST_F(CheckVerb, NothingDeclaredIsUndecidedAndEndsWithThree) {
  const Said said = check("");
  EXPECT_EQ(said.code, 3) << said.err;
  EXPECT_THAT(said.out, HasSubstr("undecided  radial-1"));
  EXPECT_THAT(said.out, HasSubstr("0 nonconforming"));
}

// Two plans of which one had no time are not compared as if both were known.
TEST_F(CheckVerb, ComparedPlansThatWereNotLookedAtWholeEndWithThree) {
  EXPECT_EQ(check(wants("[-0.05, -0.02]")).code, 0);
  EXPECT_EQ(bench_.run("compare job.toml job.toml --seconds 100 --memory 2000").code, 0);
  const Said said = bench_.run("compare job.toml job.toml --seconds 0.000001");
  EXPECT_EQ(said.code, 3) << said.err;
  EXPECT_THAT(said.out, HasSubstr("No plan is known to be free of nonconforming findings"));
  EXPECT_THAT(said.out, HasSubstr("plan 2 was not looked at whole"));
}

// A radius as a text: nothing says which parts are made of it.
TEST_F(CheckVerb, ADamagedModelTakenInPartIsJudgedByNothingInIt) {
  EXPECT_EQ(check(wants("[-0.05, -0.02]")).code, 0);
  bench_.write("press.step",
               std::regex_replace(bench_.read("press.step"),
                                  std::regex(R"((CYLINDRICAL_SURFACE\('',#\d+),[^)]*\))"),
                                  "$1,'9')", std::regex_constants::format_first_only));
  EXPECT_EQ(bench_.run("check job.toml").code, 2);
  const Said said = bench_.run("check job.toml --accept-partial");
  EXPECT_EQ(said.code, 3) << said.err;
  EXPECT_THAT(said.out, HasSubstr("0 nonconforming, 7 undecided, 0 conforming"));
  EXPECT_THAT(said.out, HasSubstr("its radius is no number"));
  EXPECT_EQ(bench_.run("look press.step --accept-partial").code, 3);
  EXPECT_EQ(bench_.run("compare job.toml job.toml --accept-partial").code, 3);
}

// Nothing of a solid whose kind is misspelt arrives: what a job says of its part is not known.
TEST_F(CheckVerb, AJobThatNamesAPartOfAKindThatIsNotKnownIsUndecided) {
  EXPECT_EQ(check(wants("[-0.05, -0.02]")).code, 0);
  bench_.write("press.step",
               std::regex_replace(bench_.read("press.step"), std::regex("MANIFOLD_SOLID_BREP"),
                                  "MANIFOLD_SOLID_BRP", std::regex_constants::format_first_only));
  const Said said = bench_.run("check job.toml --accept-partial");
  EXPECT_EQ(said.code, 3) << said.err;
  EXPECT_THAT(said.out, HasSubstr("is in what arrived of the model"));
  EXPECT_THAT(said.out, HasSubstr("0 nonconforming"));
}

// What did not arrive may seat and foul: no look may call it clear, and no draft whole.
TEST_F(CheckVerb, AModelTakenInPartIsNotCalledClear) {
  EXPECT_EQ(check(wants("[-0.05, -0.02]")).code, 0);
  bench_.write("press.step",
               std::regex_replace(bench_.read("press.step"),
                                  std::regex(R"((MANIFOLD_SOLID_BREP\('[^']*',)#\d+\))"), "$1$$)",
                                  std::regex_constants::format_first_only));
  EXPECT_EQ(bench_.run("look press.step").code, 2);
  const Said look = bench_.run("look press.step --accept-partial");
  EXPECT_EQ(look.code, 3) << look.err;
  EXPECT_THAT(look.out, HasSubstr("left out, which may seat or foul\n"));
  EXPECT_EQ(bench_.run("look press.step --accept-partial --json").code, 3);
  const Said draft = bench_.run("draft press.step --accept-partial");
  EXPECT_EQ(draft.code, 3) << draft.err;
  EXPECT_THAT(draft.out, HasSubstr("# Not whole"));
  EXPECT_THAT(draft.out, HasSubstr("did not arrive"));
  const Said check = bench_.run("check job.toml --accept-partial");
  EXPECT_EQ(check.code, 3) << check.err;
  EXPECT_THAT(check.out, HasSubstr("is in what arrived of the model"));
  const Said compare = bench_.run("compare job.toml job.toml --accept-partial");
  EXPECT_EQ(compare.code, 3) << compare.err;
  EXPECT_THAT(compare.err, ::testing::IsEmpty());
  EXPECT_THAT(compare.out, HasSubstr("did not arrive whole"));
}

TEST_F(CheckVerb, NothingToJudgeIsUndecidedAndEndsWithThree) {
  bench_.write("pin.toml",
               "title = \"Pin\"\nunit = \"mm\"\n[[part]]\nname = \"Pin\"\nkind = \"turned\"\n"
               "outside = [{ length = 20, diameter = 8 }]\n");
  ASSERT_EQ(bench_.run("model pin.toml pin.step").code, 0);
  const Said said = bench_.run("check pin.step");
  EXPECT_EQ(said.code, 3) << said.err;
  EXPECT_THAT(said.out, HasSubstr("nothing to judge"));
}

TEST_F(CheckVerb, FitOutsideItsLimitsIsNonconformingAndEndsWithOne) {
  const Said said = check(wants("[0.01, 0.05]"));
  EXPECT_EQ(said.code, 1) << said.err;
  EXPECT_THAT(said.out, HasSubstr("nonconforming  radial-1  radial fit"));
}

TEST_F(CheckVerb, TwoResultsForOneFileAreRefusedBeforeAnyWork) {
  const Said said = check(wants("[-0.05, -0.02]"), "--with-sizes out.step --output ./out.step");
  EXPECT_EQ(said.code, 2);
  EXPECT_THAT(said.err, HasSubstr("two results"));
  EXPECT_FALSE(std::filesystem::exists(bench_.path("out.step")));
}

TEST_F(CheckVerb, AModelThatIsMissingIsNamedWithItsJob) {
  bench_.write("job.toml", "schema = 1\nmodel = \"gone.step\"\nunit = \"mm\"\n");
  const Said said = bench_.run("check job.toml");
  EXPECT_EQ(said.code, 2);
  EXPECT_THAT(said.err, HasSubstr("job.toml"));
  EXPECT_THAT(said.err, HasSubstr("gone.step"));
}

// A link to a folder: its ".." is where the operating system says, not what the text folds to.
TEST_F(CheckVerb, AJobBehindALinkedFolderFindsItsModel) {
  std::filesystem::create_directories(bench_.path("far/in"));
  std::filesystem::create_directories(bench_.path("deep/er"));
  std::filesystem::create_directory_symlink("../../deep/er", bench_.path("far/in/link"));
  bench_.write("deep/er/job.toml", "schema = 1\nmodel = \"../../press.step\"\nunit = \"mm\"\n");
  EXPECT_EQ(bench_.run("check far/in/link/job.toml --allow-outside").code, 3);
}

TEST_F(CheckVerb, AModelOutsideTheJobsFolderIsReadOnlyWhereThatIsAllowed) {
  std::filesystem::create_directories(bench_.path("jobs"));
  bench_.write("jobs/job.toml", "schema = 1\nmodel = \"../press.step\"\nunit = \"mm\"\n");
  for (const char* verb : {"check", "compare jobs/job.toml"}) {
    const std::string words = std::string(verb) + " jobs/job.toml";
    const Said said = bench_.run(words);
    EXPECT_EQ(said.code, 2) << verb;
    EXPECT_THAT(said.err, HasSubstr("jobs/job.toml, line 2, model: \"../press.step\" is /"));
    EXPECT_THAT(said.err, HasSubstr("--allow-outside"));
    EXPECT_NE(bench_.run(words + " --allow-outside").code, 2) << verb;
  }
}

TEST_F(CheckVerb, ADraftSaysThatItsModelLiesOutside) {
  std::filesystem::create_directories(bench_.path("jobs"));
  ASSERT_EQ(bench_.run("draft press.step --output jobs/job.toml").code, 0);
  EXPECT_THAT(bench_.read("jobs/job.toml"),
              HasSubstr("--allow-outside.\nmodel = \"../press.step\""));
  ASSERT_EQ(bench_.run("draft press.step --output job.toml").code, 0);
  EXPECT_THAT(bench_.read("job.toml"), ::testing::Not(HasSubstr("--allow-outside")));
  EXPECT_EQ(bench_.run("check job.toml").code, 3);
}

TEST_F(CheckVerb, WritesOverNoneOfItsFilesByWhateverLink) {
  (void)check(wants("[-0.05, -0.02]"));
  const std::string model = bench_.read("press.step");
  const std::string job = bench_.read("job.toml");
  std::filesystem::create_symlink("press.step", bench_.path("soft.step"));
  std::filesystem::create_hard_link(bench_.path("press.step"), bench_.path("hard.step"));
  std::filesystem::create_hard_link(bench_.path("job.toml"), bench_.path("hard.toml"));
  for (const char* out : {"press.step", "soft.step", "hard.step", "job.toml", "hard.toml"}) {
    for (const char* words :
         {"check job.toml --output ", "check job.toml --json --output ",
          "check job.toml --with-sizes ", "compare job.toml job.toml --output "}) {
      const Said said = bench_.run(words + std::string(out));
      EXPECT_EQ(said.code, 2) << words << out;
      EXPECT_THAT(said.err, HasSubstr("would be overwritten")) << words << out;
    }
  }
  for (const char* out : {"press.step", "soft.step", "hard.step"}) {
    for (const char* verb : {"look", "draft", "check"}) {
      EXPECT_EQ(bench_.run(verb + std::string(" press.step --output ") + out).code, 2) << verb;
    }
  }
  EXPECT_EQ(bench_.read("press.step"), model);
  EXPECT_EQ(bench_.read("job.toml"), job);
}

TEST_F(CheckVerb, JsonCountsItsOutcomes) {
  const Said said = check(wants("[0.01, 0.05]"), "--json");
  const nlohmann::json result = nlohmann::json::parse(said.out);
  EXPECT_EQ(result["outcomes"]["nonconforming"], 1);
  EXPECT_EQ(result["job"]["file"], "job.toml");
}

TEST_F(CheckVerb, UnknownKeyIsRefusedByFileAndName) {
  const Said said = check("modle = 3\n");
  EXPECT_EQ(said.code, 2);
  EXPECT_THAT(said.err, HasSubstr("job.toml"));
  EXPECT_THAT(said.err, HasSubstr("modle"));
}

TEST_F(CheckVerb, NeverOverwritesTheModelOfTheJob) {
  const std::string before = bench_.read("press.step");
  EXPECT_EQ(check("", "--output press.step").code, 2);
  EXPECT_EQ(bench_.read("press.step"), before);
}

constexpr const char* kClasses =
    "[[fits]]\nhole = \"Collar: bore 44\"\nshaft = \"Stud: outside 44.035\"\n"
    "class = \"H7/s6\"\nnominal = 44\n";

TEST_F(CheckVerb, WritesTheClassesOntoACopyThatIsThenCheckedWithoutAJob) {
  const Said said = check(kClasses, "--with-sizes stated.step");
  EXPECT_EQ(said.code, 3) << said.err;
  EXPECT_THAT(said.err, HasSubstr("2 of 2 sizes written to stated.step"));
  const Said look = bench_.run("look stated.step");
  EXPECT_THAT(look.out, HasSubstr("Sizes the file states"));
  EXPECT_THAT(look.out, HasSubstr("44 s6"));
  const Said bare = bench_.run("check stated.step");
  EXPECT_THAT(bare.out, HasSubstr("44 H7, stated in the model"));
  EXPECT_THAT(bare.out, HasSubstr("ISO 286-1:2010, 44 s6"));
  // 44 H7 as drawn against the modelled 44.035: clearance -0.035 to -0.010, wanted -0.059 to
  // -0.018.
  EXPECT_EQ(bare.code, 1) << bare.out;
}

TEST_F(CheckVerb, JobThatDecidesNoSizeWritesNoCopy) {
  const Said said = check(wants("[0.01, 0.05]"), "--with-sizes stated.step");
  EXPECT_EQ(said.code, 2);
  EXPECT_THAT(said.err, HasSubstr("decides no size"));
  EXPECT_FALSE(std::filesystem::exists(bench_.path("stated.step")));
}

TEST_F(CheckVerb, CopyWithSizesNeverReplacesTheModel) {
  const Said said = check(kClasses, "--with-sizes press.step");
  EXPECT_EQ(said.code, 2);
  EXPECT_THAT(said.err, HasSubstr("would be overwritten"));
}

TEST_F(CheckVerb, StepFileAloneIsCheckedByWhatItStates) {
  const Said said = bench_.run("check press.step");
  EXPECT_EQ(said.code, 3) << said.err;
  EXPECT_THAT(said.out, HasSubstr("undecided  radial-1"));
}

TEST_F(CheckVerb, StepFileThatIsMissingIsNamedAsSuch) {
  const Said said = bench_.run("check missing.step");
  EXPECT_EQ(said.code, 2);
  EXPECT_THAT(said.err, HasSubstr("missing.step"));
  EXPECT_THAT(said.err, HasSubstr("no such file"));
}

}  // namespace spotblue::test::check_verb_test
