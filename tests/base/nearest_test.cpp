#include "spotblue/base/nearest.hpp"

#include <gtest/gtest.h>

#include <vector>

namespace spotblue::nearest_test {

TEST(NearestWord, FindsTheWordWithTheFewestEdits) {
  const std::vector<std::string> known{"material", "measured", "model"};
  EXPECT_EQ(nearest_word("materiel", known), "material");
  EXPECT_EQ(nearest_word("Modell", known), "model");
}

// A hundred names of 100,000 letters would take 10^12 steps.
TEST(NearestWord, TakesNoLongerForNamesWithoutEnd) {
  std::vector<std::string> known(100, std::string(100'000, 'a'));
  known.push_back("b" + std::string(100'000, 'a'));
  EXPECT_EQ(nearest_word("b" + std::string(50'000, 'a'), known), known.back());
}

TEST(NearestWord, IsEmptyWhenNothingIsKnown) { EXPECT_EQ(nearest_word("x", {}), ""); }

TEST(LikelyWord, IsWhatWasMistyped) {
  const std::vector<std::string> known{"gunmetal", "POM", "bronze"};
  EXPECT_EQ(likely_word("gunmetl", known), "gunmetal");
  EXPECT_EQ(likely_word("Bronse", known), "bronze");
}

TEST(LikelyWord, IsNoneWhereTheNearestIsAnotherWord) {
  EXPECT_EQ(likely_word("PTFE", std::vector<std::string>{"POM", "bronze"}), "");
  EXPECT_EQ(likely_word("zinc", std::vector<std::string>{"iron"}), "");
}

}  // namespace spotblue::nearest_test
