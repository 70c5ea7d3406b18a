#include "spotblue/base/ascii.hpp"

#include <gtest/gtest.h>

namespace spotblue::ascii_test {

TEST(Ascii, CaseOfLettersChangesAndNothingElse) {
  EXPECT_EQ(ascii_lower("TIN Bronze 12 \xC3\x84"), "tin bronze 12 \xC3\x84");
  EXPECT_EQ(ascii_upper("undecided @[`{ \xC3\xA4"), "UNDECIDED @[`{ \xC3\xA4");
}

TEST(Ascii, WordsAreAlikeInWhateverCase) {
  EXPECT_TRUE(same_ascii_word("TIN bronze", "tin Bronze"));
  EXPECT_FALSE(same_ascii_word("tin", "tin bronze"));
  EXPECT_FALSE(same_ascii_word("\xC3\xA4", "\xC3\x84"));
}

TEST(Ascii, BytesOfOtherLettersAreNoLettersOrDigits) {
  for (const char byte : {'\x80', '\xC4', '\xFF'}) {
    EXPECT_FALSE(is_ascii_letter(byte) || is_ascii_digit(byte) || is_ascii_blank(byte));
  }
}

}  // namespace spotblue::ascii_test
