#include <gtest/gtest.h>

#include <chrono>
#include <nlohmann/json.hpp>

#include "report/example_look.hpp"
#include "spotblue/report/json.hpp"

namespace spotblue::test::json_size_test {

// 22,500 stations of two parts: 45,000 occurrences, as the benchmark of 5,000 stations has.
constexpr std::size_t kStations = 22'500;

TEST(LargeLookJson, HoldsEveryOccurrenceAndSeat) {
  const nlohmann::json look = nlohmann::json::parse(look_json(repeated_look(kStations)));
  EXPECT_EQ(look["occurrences"].size(), 2 * kStations);
  EXPECT_EQ(look["radial_seats"].size(), kStations);
  EXPECT_EQ(look["centre_lines"][kStations - 1]["occurrences"][1],
            "Line/Station 22500/Stud \"worn\"");
}

// Ratio inside one run: writing must cost less than a general library needs to read it back.
TEST(LargeLookJson, IsWrittenFasterThanItIsParsed) {
  using Clock = std::chrono::steady_clock;
  const Look look = repeated_look(kStations);
  const auto start = Clock::now();
  const std::string text = look_json(look);
  const auto between = Clock::now();
  const nlohmann::json parsed = nlohmann::json::parse(text);
  const auto end = Clock::now();
  const double write_s = std::chrono::duration<double>(between - start).count();
  const double parse_s = std::chrono::duration<double>(end - between).count();
  RecordProperty("write_ms", static_cast<int>(1000.0 * write_s));
  RecordProperty("bytes", static_cast<int>(text.size()));
  EXPECT_LT(write_s, parse_s) << text.size() << " bytes, " << parsed.size() << " keys";
}

}  // namespace spotblue::test::json_size_test
