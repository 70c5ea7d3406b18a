#include "spotblue/report/look_text.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "report/example_look.hpp"
#include "report/shown_cells.hpp"

namespace spotblue::test::look_text_test {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::Not;

TEST(LookText, RadialSeatShowsSizesFitAndPlace) {
  EXPECT_THAT(shown_cells(look_text(example_look(), {}), "Wheel: bore 44"),
              ElementsAre("Wheel: bore 44", "Stud \"worn\": outside 44.035", "44.0000", "44.0350",
                          "-0.0350", "interference", "0.0125", "0.250", "-0.0300", "22.600"));
}

// By hand: 44 / 25.4 = 1.732283..., 44.035 / 25.4 = 1.733661..., 0.035 / 25.4 = 0.001378...
TEST(LookText, InchShowsInchesInSizesAndLeavesNames) {
  EXPECT_THAT(shown_cells(look_text(example_look(), {.unit = LengthUnit::inch}), "Wheel: bore 44"),
              ElementsAre("Wheel: bore 44", "Stud \"worn\": outside 44.035", "1.73228", "1.73366",
                          "-0.00138", "interference", "0.00049", "0.250", "-0.00118", "0.8898"));
}

TEST(LookText, AxialSeatSaysGapAndDiameters) {
  EXPECT_THAT(shown_cells(look_text(example_look(), {}), "Wheel: face 60"),
              ElementsAre("Wheel: face 60 @ 30", "Stud \"worn\": face 60 @ 30", "0.1250", "gap",
                          "44.000", "60.000", "1306.90"));
}

TEST(LookText, FacesOnNoCentreLineAreListedApart) {
  const std::string text = look_text(example_look(), {});
  const std::string rest = text.substr(text.find("Faces on no centre line"));
  EXPECT_THAT(shown_cells(rest, "Wheel: face 10x10 #1"),
              ElementsAre("Wheel: face 10x10 #1", "Stud \"worn\": face 10x10 #2", "-0.0200",
                          "overlap", "100.00"));
}

TEST(LookText, KeyScrewAndTaperAreShown) {
  const std::string text = look_text(example_look(), {});
  EXPECT_THAT(shown_cells(text, "Wheel: slot 8"),
              ElementsAre("Wheel: slot 8", "Stud \"worn\": width 7.95", "8.0000", "7.9500",
                          "0.0500", "clearance", "0.0000", "0.000", "90.00"));
  EXPECT_THAT(shown_cells(text, "M10"), ElementsAre("Wheel: bore 8.5", "Stud \"worn\": outside 10",
                                                    "M10", "8.5000", "10.0000", "15.000"));
  EXPECT_THAT(shown_cells(text, "Wheel: taper bore"),
              ElementsAre("Wheel: taper bore 20/24", "Stud \"worn\": taper 20/24", "45.000",
                          "44.500", "0.0100", "0.0000", "0.000", "22.000", "2.000"));
}

TEST(LookText, FoulNamesPlacesDepthAndCause) {
  EXPECT_THAT(shown_cells(look_text(example_look(), {}), "solids overlap"),
              ElementsAre("Press/Stud", "Press/Wheel (2)", "12.25", "0.5000", "7.250",
                          "1.000, 2.000, 3.000", "solids overlap (volume not exact)"));
}

TEST(LookText, AWornSeatTellsItsLeastAndGreatestClearance) {
  Look look = example_look();
  look.seats.radial[0].worn = ClearanceRange{0.05, 0.25};
  EXPECT_EQ(shown_cells(look_text(look, {}), "Wheel: bore 44").back(), "worn: 0.0500 to 0.2500");
}

TEST(LookText, SeatThatFoulsSaysSo) {
  Look look = example_look();
  look.seats.radial[0].fouls_by = 0.05;
  EXPECT_THAT(shown_cells(look_text(look, {}), "Wheel: bore 44").back(), HasSubstr("fouls"));
}

TEST(LookText, SummaryCountsEverything) {
  EXPECT_THAT(look_text(example_look(), {}),
              HasSubstr("Found: 1 radial seat (1 with interference), 2 axial seats, 1 taper, 1 key "
                        "or slot, 1 screw in a tapped hole, 1 foul\n"));
}

TEST(LookText, SummaryTellsWhatIsLeftOut) {
  Look look = example_look();
  look.model.not_compared = {{"product 'Pin'", "did not arrive"}};
  EXPECT_THAT(look_text(look, {}), HasSubstr("1 foul, 1 thing left out, which may seat or foul\n"));
}

TEST(LookText, AlikeCentreLinesStandThereOnce) {
  const std::string text = look_text(repeated_look(5000), {});
  EXPECT_LT(text.size(), 2000U);
  EXPECT_THAT(text, HasSubstr("centre line 1 and 4,999 more alike, x 5,000"));
  EXPECT_THAT(text, HasSubstr("5,000 radial seats (5,000 with interference)"));
}

TEST(LookText, UnlikeSeatIsNotHiddenAmongAlikeOnes) {
  Look look = repeated_look(5000);
  look.seats.radial[1234].clearance = 0.011;
  const std::string text = look_text(look, {});
  EXPECT_THAT(text, HasSubstr("centre line 1 and 4,998 more alike, x 4,999"));
  EXPECT_THAT(text, HasSubstr("centre line 1235,"));
  EXPECT_THAT(text, HasSubstr("0.0110"));
}

TEST(LookText, EscapeSequencesComeOnlyWhenAskedFor) {
  EXPECT_THAT(look_text(example_look(), {}), Not(HasSubstr("\x1b")));
  EXPECT_THAT(look_text(example_look(), {.colour = Colour::terminal}), HasSubstr("\x1b["));
}

TEST(LookText, NameInTheFileCannotDriveTheTerminal) {
  Look look = example_look();
  look.model.products[0].id = "\x1b]0;x\x07Wheel\xC2\x9B";
  EXPECT_THAT(look_text(look, {}), HasSubstr("\\x1B]0;x\\x07Wheel\\xC2\\x9B"));
}

TEST(LookText, SaysInTheReadersUnitWhatOverlapsAsAScrewAndIsNone) {
  Look look = example_look();
  look.fouls.unnamed_screws.push_back({look.seats.radial[0].hole, look.seats.radial[0].shaft, ""});
  EXPECT_THAT(look_text(look, {}), HasSubstr(" mm in a hole of 44 mm: overlaps as a screw does"));
  EXPECT_THAT(look_text(look, {.unit = LengthUnit::inch}), HasSubstr(" in in a hole of 1.732"));
  look.fouls.unnamed_screws[0].thread = "M10";
  EXPECT_THAT(look_text(look, {}), HasSubstr("less than a turn of M10 is engaged"));
}

TEST(LookText, NothingFoundIsSaidInWords) {
  EXPECT_THAT(look_text({}, {}), HasSubstr("no radial seats, no axial seats"));
}

}  // namespace spotblue::test::look_text_test
