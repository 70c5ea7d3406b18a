#include "spotblue/base/log.hpp"

#include <gtest/gtest.h>

#include <string>

#include "base/logger.hpp"

namespace spotblue::log_test {

TEST(Log, WritesNothingUntilASinkIsSet) {
  testing::internal::CaptureStdout();
  testing::internal::CaptureStderr();
  logger().warn("unheard");
  EXPECT_EQ(testing::internal::GetCapturedStdout(), "");
  EXPECT_EQ(testing::internal::GetCapturedStderr(), "");
}

TEST(Log, HandsEachMessageToTheSinkWithItsLevel) {
  std::string heard;
  LogLevel heard_level = LogLevel::debug;
  set_log_sink([&](LogLevel level, std::string_view text) {
    heard = text;
    heard_level = level;
  });
  logger().warn("bore {} mm", 44);
  set_log_sink({});
  EXPECT_EQ(heard, "bore 44 mm");
  EXPECT_EQ(heard_level, LogLevel::warning);
}

}  // namespace spotblue::log_test
