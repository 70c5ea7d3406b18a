#include "spotblue/base/nearest.hpp"

#include <gtest/gtest.h>

#include <vector>

namespace spotblue {
namespace {

TEST(NearestWord, FindsTheWordWithTheFewestEdits) {
  const std::vector<std::string> known{"material", "measured", "model"};
  EXPECT_EQ(nearest_word("materiel", known), "material");
  EXPECT_EQ(nearest_word("Modell", known), "model");
}

TEST(NearestWord, IsEmptyWhenNothingIsKnown) { EXPECT_EQ(nearest_word("x", {}), ""); }

}  // namespace
}  // namespace spotblue
