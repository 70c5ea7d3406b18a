#include "spotblue/base/shown_name.hpp"

#include <gtest/gtest.h>

#include <array>
#include <string>

#include "spotblue/base/error.hpp"

namespace spotblue::shown_name_test {

struct Named {
  const char* bytes;
  const char* shown;
};

void PrintTo(const Named& named, std::ostream* out) { *out << named.shown; }

class ShownName : public ::testing::TestWithParam<Named> {};

TEST_P(ShownName, IsTextAndStandsForTheVeryBytes) {
  EXPECT_EQ(shown_name(GetParam().bytes), GetParam().shown);
  EXPECT_EQ(path_of_shown(GetParam().shown).native(), GetParam().bytes);
  EXPECT_EQ(shown_text(GetParam().shown), GetParam().shown);
}

// UTF-8 by RFC 3629: E4 alone is the start of three bytes; C0 AF an overlong slash.
INSTANTIATE_TEST_SUITE_P(Names, ShownName,
                         ::testing::Values(Named{"press part.step", "press part.step"},
                                           Named{"B\xC3\xBC\x63hse.step", "B\xC3\xBC\x63hse.step"},
                                           Named{"R\xE4\x64.step", "R\\xE4d.step"},
                                           Named{"two\nlines\t.step", "two\\x0Alines\\x09.step"},
                                           Named{" ends ", "\\x20ends\\x20"},
                                           Named{"C:\\old\\x.step", "C:\\old\\x.step"},
                                           Named{"a\\xE4.step", "a\\x5CxE4.step"},
                                           Named{"\xC0\xAF", "\\xC0\\xAF"},
                                           Named{"esc\x1B[2J", "esc\\x1B[2J"},
                                           Named{"c1\xC2\x9B", "c1\\xC2\\x9B"}));

// U+061C, 200E, 200F, 2028 to 202E, 2066 to 2069; their neighbours are letters like others.
TEST(ShownText, ShowsMarksThatTurnOrBreakALine) {
  EXPECT_EQ(shown_text("\xD8\x9C"), "\\xD8\\x9C");
  const auto of_general = [](int second, int third) {
    return std::string{'\xE2', static_cast<char>(second), static_cast<char>(third)};
  };
  for (const auto& [second, first, last] :
       {std::array{0x80, 0x8E, 0x8F}, std::array{0x80, 0xA8, 0xAE}, std::array{0x81, 0xA6, 0xA9}}) {
    EXPECT_EQ(shown_text(of_general(second, first - 1)), of_general(second, first - 1));
    for (int third = first; third <= last; ++third) {
      EXPECT_EQ(shown_text(of_general(second, third)).size(), 12U) << third;
    }
    EXPECT_EQ(shown_text(of_general(second, last + 1)), of_general(second, last + 1));
  }
}

TEST(Shortened, LeavesOutTheMiddleInWholeLetters) {
  EXPECT_EQ(shortened("as it is", 16), "as it is");
  EXPECT_EQ(shortened("0123456789abcdefghij", 17), "01234567 ... ghij");
  std::string umlauts;
  for (int i = 0; i < 100; ++i) {
    umlauts += "\xC3\xBC";
  }
  for (std::size_t most = 16; most < 60; ++most) {
    const std::string cut = shortened(umlauts, most);
    EXPECT_LE(cut.size(), most);
    EXPECT_EQ(shown_text(cut), cut);
  }
}

TEST(ShownText, IsWhatAnErrorSaysOfAnyName) {
  const Error error(ErrorCode::bad_input, {"R\xE4\x64\n.toml", ""}, "no \x07 bell", "cure");
  EXPECT_STREQ(error.what(), "R\\xE4d\\x0A.toml: no \\x07 bell; cure");
  EXPECT_EQ(path_of_shown(error.file()).native(), "R\xE4\x64\n.toml");
}

}  // namespace spotblue::shown_name_test
