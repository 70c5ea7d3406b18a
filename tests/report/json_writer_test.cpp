#include "report/json_writer.hpp"

#include <gtest/gtest.h>

#include <bit>
#include <cmath>
#include <cstdint>
#include <limits>
#include <nlohmann/json.hpp>
#include <random>

#include "spotblue/base/error.hpp"
#include "support/thrown.hpp"

namespace spotblue::test::json_writer_test {

std::string number(double value) {
  JsonText out;
  out.open_array();
  out.number(value);
  out.close_array();
  return out.take();
}

TEST(JsonWriter, AnyFiniteDoubleReadsBackToTheSameBits) {
  std::mt19937_64 random(20261125);
  for (int i = 0; i < 100'000; ++i) {
    const double value = std::bit_cast<double>(random());
    if (!std::isfinite(value)) {
      continue;
    }
    const double back = nlohmann::json::parse(number(value))[0].get<double>();
    ASSERT_EQ(std::bit_cast<std::uint64_t>(back), std::bit_cast<std::uint64_t>(value)) << value;
  }
}

TEST(JsonWriter, LettersThatATerminalActsOnAreCodedAndReadBack) {
  const std::string text = "\x7F\x1B[2J \xC2\x9B \xE2\x80\xAE B\xC3\xBC";
  EXPECT_EQ(json_quoted(text), "\"\\u007f\\u001b[2J \\u009b \\u202e B\xC3\xBC\"");
  EXPECT_EQ(nlohmann::json::parse(json_quoted(text)).get<std::string>(), text);
}

TEST(JsonWriter, NegativeZeroIsWrittenAsZero) { EXPECT_EQ(number(-0.0), "[0]"); }

TEST(JsonWriter, NumberThatIsNotFiniteIsRefusedWithItsKey) {
  for (const double value : {std::nan(""), std::numeric_limits<double>::infinity()}) {
    JsonText out;
    out.open_object();
    out.key("depth_mm");
    const Error error = test::error_of([&] { return out.number(value); });
    EXPECT_EQ(error.code(), ErrorCode::bad_input);
    EXPECT_EQ(error.place(), "depth_mm");
  }
}

TEST(JsonWriter, QuotesControlLettersAndForeignLettersReadBack) {
  const std::string text = "a\"b\\c\n\t\x01 \xC3\xBC \xE6\xAD\xAF";
  EXPECT_EQ(nlohmann::json::parse(json_quoted(text)).get<std::string>(), text);
}

TEST(JsonWriter, ByteThatIsNoUtf8BecomesTheReplacementLetter) {
  EXPECT_EQ(nlohmann::json::parse(json_quoted("f\xFCr")).get<std::string>(), "f\xEF\xBF\xBDr");
}

TEST(JsonWriter, EmptyAndNestedLevelsAreWellFormed) {
  JsonText out;
  out.open_object(JsonWriter::Layout::line_each);
  out.key("none");
  out.open_array(JsonWriter::Layout::line_each);
  out.close_array();
  out.key("some");
  out.open_array(JsonWriter::Layout::line_each);
  out.whole(-3);
  out.truth(true);
  out.text("x");
  out.close_array();
  out.close_object();
  EXPECT_EQ(nlohmann::json::parse(out.take()),
            nlohmann::json::parse(R"({"none": [], "some": [-3, true, "x"]})"));
}

}  // namespace spotblue::test::json_writer_test
