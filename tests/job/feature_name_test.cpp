#include "spotblue/job/feature_name.hpp"

#include <gtest/gtest.h>

namespace spotblue {
namespace {

TEST(FeatureName, IsTakenApartAtItsLastColon) {
  const auto name = parse_feature_name("Press: old/Wheel: bore 44 @ 12.5 #2", LengthUnit::mm);
  ASSERT_TRUE(name.has_value());
  EXPECT_EQ(name->part, "Press: old/Wheel");
  EXPECT_EQ(name->word, FeatureWord::bore);
  EXPECT_EQ(name->sizes, std::vector<Length>{Length::mm(44)});
  EXPECT_EQ(name->position, Length::mm(12.5));
  EXPECT_EQ(name->ordinal, 2);
}

TEST(FeatureName, TellsATaperBoreFromATaper) {
  const auto hole = parse_feature_name("Hub: taper bore 20/24", LengthUnit::mm);
  const auto shaft = parse_feature_name("Stud: taper 20/24", LengthUnit::mm);
  ASSERT_TRUE(hole && shaft);
  EXPECT_EQ(hole->word, FeatureWord::taper_bore);
  EXPECT_EQ(shaft->word, FeatureWord::taper);
  EXPECT_EQ(shaft->sizes, (std::vector<Length>{Length::mm(20), Length::mm(24)}));
}

TEST(FeatureName, TakesFractionsInTheUnitOfTheJob) {
  const auto name = parse_feature_name("Pin: outside 1 3/4", LengthUnit::inch);
  ASSERT_TRUE(name.has_value());
  EXPECT_NEAR(name->sizes.front().in_mm(), 44.45, 1e-12);
}

TEST(FeatureName, ReadsBothExtentsOfAFace) {
  const auto name = parse_feature_name("Plate: face 80x45", LengthUnit::mm);
  ASSERT_TRUE(name.has_value());
  EXPECT_EQ(name->sizes, (std::vector<Length>{Length::mm(80), Length::mm(45)}));
}

TEST(FeatureName, IsNothingForAnOrdinalBelowOne) {
  EXPECT_FALSE(parse_feature_name("Wheel: bore 44 #0", LengthUnit::mm));
  EXPECT_FALSE(parse_feature_name("Wheel: bore 44 #-3", LengthUnit::mm));
}

TEST(FeatureName, IsNothingForAPartOrANonsenseWord) {
  EXPECT_FALSE(parse_feature_name("Wheel", LengthUnit::mm));
  EXPECT_FALSE(parse_feature_name("Wheel: bore", LengthUnit::mm));
  EXPECT_FALSE(parse_feature_name("Wheel: boring 44", LengthUnit::mm));
  EXPECT_FALSE(parse_feature_name(": bore 44", LengthUnit::mm));
}

}  // namespace
}  // namespace spotblue
