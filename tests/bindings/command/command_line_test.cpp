#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "bindings/command/program.hpp"
#include "spotblue/base/version.hpp"
#include "spotblue/geometry/kernel_version.hpp"

namespace spotblue::test {
namespace {

using ::testing::HasSubstr;
using ::testing::StartsWith;

TEST(CommandLine, VersionNamesItselfAndTheKernel) {
  const Said said = Bench().run("--version");
  EXPECT_EQ(said.code, 0);
  EXPECT_EQ(said.out,
            std::string("spotblue ") + kVersion + " (Open CASCADE " + kernel_version() + ")\n");
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

TEST(CommandLine, MissingFileIsNamed) {
  EXPECT_THAT(Bench().run("look 'no such.step'").err, HasSubstr("no such.step"));
}

}  // namespace
}  // namespace spotblue::test
