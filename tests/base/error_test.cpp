#include "spotblue/base/error.hpp"

#include <gtest/gtest.h>

namespace spotblue::error_test {

TEST(Error, TextNamesFilePlaceRuleAndCureInOneLine) {
  const Error error(ErrorCode::bad_input, {"press.toml", "parts.Wheel.bore"},
                    "need > 0 mm, got -1 mm", "measure the bore again");
  EXPECT_STREQ(error.what(),
               "press.toml, parts.Wheel.bore: need > 0 mm, got -1 mm; measure the bore again");
}

TEST(Error, EmptyPartsLeaveNoPunctuationBehind) {
  EXPECT_STREQ(Error(ErrorCode::bad_input, {}, "no size", "").what(), "no size");
  EXPECT_STREQ(Error(ErrorCode::bad_input, {"", "size"}, "none", "").what(), "size: none");
}

TEST(Error, NoMessageIsLongerThanItMayBeNorCutAtANul) {
  const std::string nul("a\0b", 3);
  const std::string endless(100'000, 'x');
  const Error error(ErrorCode::bad_input, {endless + ".toml", endless + nul}, nul + endless,
                    endless + " end");
  const std::string text = error.what();
  EXPECT_LE(text.size(), kMostMessage);
  EXPECT_NE(text.find(".toml, "), std::string::npos);
  EXPECT_NE(text.find("a\\x00b"), std::string::npos);
  EXPECT_TRUE(text.ends_with(" end"));
  EXPECT_LE(error.rule().size(), kMostMessage);
  EXPECT_EQ(error.file().size(), endless.size() + 5);  // path_of_shown needs all of it
}

}  // namespace spotblue::error_test
