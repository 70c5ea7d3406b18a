#include "spotblue/report/group_text.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "report/example_look.hpp"
#include "report/shown_cells.hpp"

namespace spotblue::test::group_text_test {

using ::testing::ElementsAre;
using ::testing::HasSubstr;

TEST(GroupText, NamesThePartsOfABodyAndHowTheyTurn) {
  const std::string text = group_text(example_check(), {});
  EXPECT_THAT(shown_cells(text, "40 rpm"), ElementsAre("40 rpm", "Press/Wheel, Stud \"worn\""));
  EXPECT_THAT(shown_cells(text, "stands"), ElementsAre("stands", "Press/Wheel (2)"));
}

TEST(GroupText, SaysWhatEachPairIsToEachOther) {
  EXPECT_THAT(
      shown_cells(group_text(example_check(), {}), "H7/s6"),
      ElementsAre("Press/Wheel", "Stud \"worn\"", "pressed", "yes", "yes", "pressed, H7/s6"));
}

TEST(GroupText, SaysWhereEachBearingStandsAndWhatItCarries) {
  EXPECT_THAT(
      shown_cells(group_text(example_check(), {}), "-220 N"),
      ElementsAre("Wheel: bore 44", "Stud \"worn\": outside 44.035", "40 rpm", "12.700", "25.400",
                  "-220 N", "perhaps, it may be pressed; one bearing carries all"));
  EXPECT_THAT(group_text(example_check(), {LengthUnit::inch}), HasSubstr("0.50000"));
}

TEST(GroupText, SaysWhichFacesRub) {
  EXPECT_THAT(group_text(example_check(), {}), HasSubstr("perhaps: others stop the two sooner"));
}

TEST(GroupText, ShowsEachSurfaceInEachState) {
  const std::string text = group_text(example_check(), {});
  EXPECT_THAT(shown_cells(text, "44.010 to 44.035"),
              ElementsAre("Wheel: bore 44", "pressed", "44.000 to 44.025", "44.000 to 44.025",
                          "44.010 to 44.035"));
}

TEST(GroupText, ShowsEachStopWithThePlayThatItEnds) {
  const std::string text = group_text(example_check(), {});
  EXPECT_THAT(text, HasSubstr("Stops in mm"));
  EXPECT_THAT(text, HasSubstr("0.280 to 0.320"));
}

TEST(GroupText, SaysWhyAStateIsNotKnown) {
  EXPECT_THAT(group_text(example_check(), {}), HasSubstr("no material is given for Stud"));
}

TEST(GroupText, IsInInchesWhereThatIsAsked) {
  EXPECT_THAT(group_text(example_check(), {LengthUnit::inch}), HasSubstr("1.73228 to 1.73327"));
}

TEST(GroupText, OfAModelThatIsNotWholeSaysSo) {
  CheckResult result = example_check();
  result.group.reset();
  EXPECT_THAT(group_text(result, {}), HasSubstr("not worked out"));
}

}  // namespace spotblue::test::group_text_test
