#include "spotblue/job/feature_name.hpp"

#include <gtest/gtest.h>

#include "spotblue/base/error.hpp"

namespace spotblue::feature_name_test {

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

TEST(PartialFeatureName, MayBeAWordAlone) {
  const auto name = parse_partial_feature_name("taper bore", LengthUnit::mm);
  ASSERT_TRUE(name.has_value());
  EXPECT_EQ(name->word, FeatureWord::taper_bore);
  EXPECT_TRUE(name->part.empty());
  EXPECT_TRUE(name->sizes.empty());
  EXPECT_FALSE(name->position || name->ordinal);
}

TEST(PartialFeatureName, TakesBlanksAsAPersonLeavesThem) {
  const auto name =
      parse_partial_feature_name(" Wheel: left :  bore\xC2\xA0 1 3/4 in@ 12.5 # 2", LengthUnit::mm);
  ASSERT_TRUE(name.has_value());
  EXPECT_EQ(name->part, "Wheel: left");
  EXPECT_EQ(name->word, FeatureWord::bore);
  EXPECT_EQ(name->sizes, std::vector<Length>{Length::inch(1.75)});
  EXPECT_EQ(name->position, Length::mm(12.5));
  EXPECT_EQ(name->ordinal, 2);
}

TEST(PartialFeatureName, HasItsPositionInMillimetresWhateverTheUnit) {
  const auto name = parse_partial_feature_name("outside 2 @ -8", LengthUnit::inch);
  ASSERT_TRUE(name.has_value());
  EXPECT_EQ(name->sizes, std::vector<Length>{Length::inch(2)});
  EXPECT_EQ(name->position, Length::mm(-8));
}

TEST(PartialFeatureName, TellsTwoSizesFromOneWithAFraction) {
  const auto two = parse_partial_feature_name("taper 20/24", LengthUnit::inch);
  const auto one = parse_partial_feature_name("taper 1 1/2", LengthUnit::inch);
  const auto face = parse_partial_feature_name("Plate: face 80x45 @ 12", LengthUnit::mm);
  ASSERT_TRUE(two && one && face);
  EXPECT_EQ(two->sizes.size(), 2U);
  EXPECT_EQ(one->sizes, std::vector<Length>{Length::inch(1.5)});
  EXPECT_EQ(face->sizes, (std::vector<Length>{Length::mm(80), Length::mm(45)}));
}

TEST(PartialFeatureName, KnowsTheDistanceOfTwoFacesAsALength) {
  const auto name = parse_partial_feature_name("length 80", LengthUnit::mm);
  ASSERT_TRUE(name.has_value());
  EXPECT_FALSE(name->word.has_value());
  EXPECT_EQ(name->sizes, std::vector<Length>{Length::mm(80)});
}

TEST(PartialFeatureName, IsNothingWithoutAWordOfFeatures) {
  for (const char* text : {"", "Wheel", "Wheel:", "boring 44", ": bore 44", "bore 44 @ here",
                           "bore 44 # two", "bore 44 #1 #2", "Wheel:bore 44"}) {
    EXPECT_FALSE(parse_partial_feature_name(text, LengthUnit::mm)) << text;
  }
}

TEST(PartialFeatureName, RefusesASizeThatIsNoLength) {
  EXPECT_THROW(static_cast<void>(parse_partial_feature_name("bore big", LengthUnit::mm)), Error);
}

}  // namespace spotblue::feature_name_test
