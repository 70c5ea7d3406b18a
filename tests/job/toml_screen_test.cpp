#include "spotblue/job/toml_screen.hpp"

#include <gmock/gmock.h>
#include <sys/stat.h>

#include <cstdio>
#include <filesystem>
#include <random>

#include "job/toml_table.hpp"
#include "support/thrown.hpp"

namespace spotblue::toml_screen_test {

using ::testing::HasSubstr;

// The place and rule, or nothing where the text passes.
std::string told(const std::string& text) {
  try {
    screen_toml(text, "some.toml");
  } catch (const Error& problem) {
    EXPECT_EQ(problem.code(), ErrorCode::bad_input);
    EXPECT_EQ(problem.file(), "some.toml");
    EXPECT_FALSE(problem.cure().empty());
    return problem.place() + ": " + problem.rule();
  }
  return {};
}

std::string times(int count, const std::string& text) {
  std::string all;
  for (int i = 0; i < count; ++i) {
    all += text;
  }
  return all;
}

TEST(TomlScreen, BracketsThatNestWithoutEndAreRefused) {
  EXPECT_THAT(told("\na = " + times(40'000, "[")), HasSubstr("line 2: brackets nest too deep"));
  EXPECT_THAT(told("a = " + times(40'000, "{b=")), HasSubstr("line 1: brackets nest too deep"));
  EXPECT_EQ(told("a = " + times(30, "[") + times(30, "]")), "");
}

TEST(TomlScreen, KeysOfTooManyPartsAreRefused) {
  EXPECT_THAT(told("a" + times(40'000, ".a") + " = 1"), HasSubstr("too many parts"));
  EXPECT_THAT(told("\n[a" + times(40'000, ".a") + "]"), HasSubstr("line 2"));
  EXPECT_THAT(told("a" + times(40, ".\"a\"") + " = 1"), HasSubstr("too many parts"));
  EXPECT_EQ(told("[a.b.c]\nd.e = [" + times(5000, "1.5, ") + "]"), "");
}

TEST(TomlScreen, LettersBeyondAsciiStandInTextsAndCommentsOnly) {
  EXPECT_THAT(told("a = 1\nWelle\xC3\xA4 = 2"), HasSubstr("line 2: a letter there stands outside"));
  EXPECT_EQ(told("# \xC3\xA4\na = \"\xC3\xA4\"\nb = '\xC3\xA4'\nc = \"\"\"\n\xC3\xA4\"\"\""), "");
}

TEST(TomlScreen, WhatStandsInTextsIsNoBracketAndNoPoint) {
  const std::string many = times(100, "[.{");
  EXPECT_EQ(told("a = \"" + many + "\"\nb = '" + many + "'\nc = '''\n" + many + "\n'''"), "");
  EXPECT_EQ(told("a = \"\\\"" + many + "\" # " + many), "");
  EXPECT_EQ(told("a = \"\"\nb = ''\nc = " + times(20, "[") + times(20, "]")), "");
}

TEST(TomlScreen, NoUtf8IsRefusedWhereverItStands) {
  EXPECT_THAT(told("a = \"\xFF\""), HasSubstr("no UTF-8"));
  EXPECT_THAT(told("\n\n# \xC3"), HasSubstr("line 3: a letter there is no UTF-8"));
  EXPECT_THAT(told(std::string("a = \"\0\"", 7)), HasSubstr("no UTF-8"));
}

TEST(TomlScreen, ATextTooLargeForAnyPersonIsRefused) {
  EXPECT_THAT(told(std::string(17'000'000, '\n')), HasSubstr("17.0 MB"));
}

// Each text either passes and is parsed, or is refused; neither ends the process.
TEST(TomlScreen, WhateverPassesIsParsedOrRefused) {
  std::mt19937_64 chance(11);
  const std::string letters = "ab=.[]{}\"'#\n\\, 1\xC3\xA4\xF0\x9F\x94\xA7";
  for (int round = 0; round < 3000; ++round) {
    std::string text;
    for (int i = 0; i < 1 + round % 60; ++i) {
      text += letters[chance() % letters.size()];
    }
    try {
      (void)TomlTable::read_text(text, "some.toml");
    } catch (const Error& problem) {
      EXPECT_EQ(problem.file(), "some.toml");
    }
  }
}

TEST(TomlScreen, APipeAndADeviceAreRefusedAtOnce) {
  const std::filesystem::path pipe =
      std::filesystem::temp_directory_path() / "spotblue-screen-pipe";
  std::filesystem::remove(pipe);
  ASSERT_EQ(mkfifo(pipe.c_str(), 0600), 0);
  for (const std::string& file : {pipe.string(), std::string("/dev/zero")}) {
    const Error problem = test::error_of([&] { return TomlTable::read_file(file); });
    EXPECT_EQ(problem.rule(), "this is no ordinary file");
    EXPECT_THAT(problem.cure(), HasSubstr("TOML"));
  }
  std::filesystem::remove(pipe);
}

TEST(TomlScreen, AByteOrderMarkIsTaken) {
  EXPECT_EQ(TomlTable::read_text("\xEF\xBB\xBF"
                                 "a = 1",
                                 "some.toml")
                .find_whole("a"),
            1);
}

}  // namespace spotblue::toml_screen_test
