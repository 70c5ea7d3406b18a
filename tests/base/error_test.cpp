#include "spotblue/base/error.hpp"

#include <gtest/gtest.h>

namespace spotblue {
namespace {

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

}  // namespace
}  // namespace spotblue
