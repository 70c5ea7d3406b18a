#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>

#include "bindings/command/program.hpp"
#include "command/help.hpp"
#include "command/table.hpp"
#include "spotblue/base/version.hpp"
#include "spotblue/geometry/open_cascade_version.hpp"

namespace spotblue::test::command_line_test {

using ::testing::HasSubstr;
using ::testing::Not;
using ::testing::StartsWith;

TEST(CommandLine, VersionNamesItselfAndOpenCascade) {
  const Said said = Bench().run("--version");
  EXPECT_EQ(said.code, 0);
  EXPECT_EQ(said.out, std::string("spotblue ") + kVersion + " (Open CASCADE " +
                          open_cascade_version() + ")\n");
}

struct Help {
  const char* arguments;
  const char* example;
};
void PrintTo(const Help& help, std::ostream* out) { *out << help.arguments; }
class HelpOf : public ::testing::TestWithParam<Help> {};

TEST_P(HelpOf, TeachesByExampleAndEndsWell) {
  const Said said = Bench().run(GetParam().arguments);
  EXPECT_EQ(said.code, 0);
  EXPECT_EQ(said.err, "");
  EXPECT_THAT(said.out, HasSubstr(GetParam().example));
}

INSTANTIATE_TEST_SUITE_P(
    CommandLine, HelpOf,
    ::testing::Values(Help{"--help", "  spotblue look press.step\n"},
                      Help{"model --help", "  spotblue model press.toml press.step\n"},
                      Help{"look --help", "  spotblue look press.step --unit in\n"},
                      Help{"draft --help", "  spotblue draft press.step --output"},
                      Help{"check --help", "  spotblue check press-job.toml --json"}));

class Misuse : public ::testing::TestWithParam<const char*> {};

TEST_P(Misuse, IsOneLineAndEndsWithTwo) {
  const Said said = Bench().run(GetParam());
  EXPECT_EQ(said.code, 2);
  EXPECT_EQ(said.out, "");
  EXPECT_THAT(said.err, StartsWith("spotblue: "));
  EXPECT_EQ(std::count(said.err.begin(), said.err.end(), '\n'), 1) << said.err;
}

INSTANTIATE_TEST_SUITE_P(CommandLine, Misuse,
                         ::testing::Values("", "lock x.step", "look", "look a.step b.step",
                                           "look a.step --unit cm", "look a.step --colour",
                                           "model a.toml", "check", "draft", "look missing.step",
                                           "draft missing.step", "check missing.toml",
                                           "model missing.toml out.step", "look ."));

TEST(CommandLine, AMistypedVerbIsAnsweredWithTheNearest) {
  const Said said = Bench().run("chek job.toml");
  EXPECT_EQ(said.code, 2);
  EXPECT_EQ(said.err, "spotblue: there is no verb 'chek'; did you mean check?\n");
}

TEST(CommandLine, AMistypedOptionIsAnsweredWithTheNearest) {
  for (const char* verb : {"look", "which"}) {
    const Said said = Bench().run(std::string(verb) + " x --jsn");
    EXPECT_EQ(said.code, 2);
    EXPECT_THAT(said.err, HasSubstr("has no option '--jsn', did you mean --json?"));
  }
}

TEST(CommandLine, AnOptionGivenTwiceOrWithoutItsValueIsToldInWords) {
  EXPECT_EQ(Bench().run("look x --unit in --unit mm").err,
            "spotblue: look takes --unit only once; spotblue look --help shows how\n");
  EXPECT_EQ(Bench().run("look x --unit").err,
            "spotblue: look --unit lacks what it takes; spotblue look --help shows how\n");
  EXPECT_EQ(Bench().run("look x --json=3").code, 2);
}

TEST(CommandLine, WithoutItsModuleLibraryItSaysSo) {
  const Bench bench;
  std::filesystem::copy_file(SPOTBLUE_PROGRAM, bench.path("alone"));
  const Said said = bench.run("--version; ./alone look x.step");
  EXPECT_EQ(said.code, 2);
  EXPECT_THAT(said.err, HasSubstr("spotblue_verbs.so: is not there"));
}

// What every option of the table takes, so that each reaches the verb.
std::string example_value(const command::Option& option) {
  switch (option.takes) {
    case command::Takes::nothing:
      return {};
    case command::Takes::unit:
      return "=in";
    case command::Takes::number:
    case command::Takes::count:
      return "=2";
    default:
      return "=somewhere";
  }
}

TEST(CommandLine, EveryOptionOfTheTableIsTaken) {
  const Bench bench;
  for (const command::Verb& verb : command::verbs()) {
    for (const command::Option& option : verb.options) {
      const std::string words =
          std::string(verb.name) + " " + option.name + example_value(option) + " missing other";
      EXPECT_THAT(bench.run(words).err, Not(HasSubstr("no option"))) << words;
      EXPECT_THAT(bench.run(std::string(verb.name) + " --help").out,
                  HasSubstr(command::shown_option(option)));
    }
  }
}

TEST(CommandLine, ManPagesAndCompletionNameEveryOption) {
  const std::filesystem::path share =
      std::filesystem::path(SPOTBLUE_PROGRAM).parent_path().parent_path() / "share";
  const auto text_of = [](const std::filesystem::path& file) {
    std::ifstream stream(file);
    return std::string(std::istreambuf_iterator<char>(stream), {});
  };
  const std::string completion = text_of(share / "bash-completion/completions/spotblue");
  for (const command::Verb& verb : command::verbs()) {
    std::string page = text_of(share / "man/man1" / (std::string("spotblue-") + verb.name + ".1"));
    page.erase(std::remove(page.begin(), page.end(), '\\'), page.end());
    EXPECT_THAT(completion, HasSubstr(std::string("    ") + verb.name + ")"));
    for (const command::Option& option : verb.options) {
      EXPECT_THAT(page, HasSubstr(std::string(".B ") + option.name)) << verb.name;
      EXPECT_THAT(completion, HasSubstr(option.name)) << verb.name;
    }
  }
}

TEST(CommandLine, VersionAndHelpLoadNoCadLibrary) {
  const Bench bench;
  for (const char* words : {"--version", "--help", "check --help", "which --help"}) {
    const Said said = bench.run(std::string("--version >/dev/null; LD_DEBUG=libs '") +
                                SPOTBLUE_PROGRAM + "' " + words);
    EXPECT_THAT(said.err, HasSubstr("libc.so"));
    EXPECT_THAT(said.err, Not(HasSubstr("libTK"))) << words;
  }
}

TEST(CommandLine, NoOptionThatNamesAFileTakesAnEmptyName) {
  const Bench bench;
  for (const command::Verb& verb : command::verbs()) {
    for (const command::Option& option : verb.options) {
      if (option.takes == command::Takes::path) {
        const Said said = bench.run(std::string(verb.name) + " a b " + option.name + " ''");
        EXPECT_EQ(said.code, 2) << verb.name;
        EXPECT_THAT(said.err, HasSubstr("takes the name of a file, not an empty one"))
            << verb.name << option.name;
      }
    }
  }
}

TEST(CommandLine, MissingFileIsNamed) {
  EXPECT_THAT(Bench().run("look 'no such.step'").err, HasSubstr("no such.step"));
}

}  // namespace spotblue::test::command_line_test
