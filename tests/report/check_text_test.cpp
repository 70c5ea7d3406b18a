#include "spotblue/report/check_text.hpp"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "report/example_look.hpp"
#include "report/shown_cells.hpp"

namespace spotblue::test::check_text_test {

using ::testing::ElementsAre;
using ::testing::EndsWith;
using ::testing::HasSubstr;
using ::testing::Not;

TEST(CheckText, NonconformingStandsFirstAndConformingLast) {
  const std::string text = check_text(example_check(), {});
  const auto bad = text.find("nonconforming  radial-1  radial fit");
  const auto open = text.find("undecided  axial-1  axial gap");
  const auto good = text.find("\nconforming  thread-1  thread");
  ASSERT_NE(good, std::string::npos);
  EXPECT_LT(bad, open);
  EXPECT_LT(open, good);
}

TEST(CheckText, WantedFoundAndMarginStandSideBySide) {
  const std::string text = check_text(example_check(), {});
  EXPECT_THAT(
      shown_cells(text, "    clearance"),
      ElementsAre("clearance", "-0.0590 to -0.0180", "-0.0610 to -0.0090", "-0.0090", "mm"));
  EXPECT_THAT(shown_cells(text, "H7/s6"), ElementsAre("fit", "H7/s6"));
  EXPECT_THAT(shown_cells(text, "tilt"), ElementsAre("tilt", "0.250", "deg"));
}

TEST(CheckText, BothEndsAndTheMiddleOfOneQuantityAreShown) {
  CheckResult result = example_check();
  result.findings.resize(1);
  result.findings[0].found = {{"pressure", megapascals(10.25), RangeEnd::least},
                              {"pressure", megapascals(14.5)},
                              {"pressure", megapascals(18.125), RangeEnd::greatest},
                              {"growth", millimetres(0.0125)},
                              {"growth", millimetres(0.0175), RangeEnd::greatest}};
  const std::string text = check_text(result, {});
  EXPECT_THAT(shown_cells(text, "pressure"),
              ElementsAre("pressure", "10.25 to 18.12, middle 14.5", "MPa"));
  EXPECT_THAT(shown_cells(text, "growth"),
              ElementsAre("growth", "at most 0.0175, middle 0.0125", "mm"));
}

TEST(CheckText, BasisAdviceAndCautionAreGiven) {
  const std::string text = check_text(example_check(), {});
  EXPECT_THAT(shown_cells(text, "basis"),
              ElementsAre("basis", "ISO 286-1:2010, 44 H7/s6; ISO 14253-1"));
  EXPECT_THAT(shown_cells(text, "advice"),
              ElementsAre("advice", "open Wheel: bore 44 or reduce Stud: outside 44.035"));
  EXPECT_THAT(shown_cells(text, "caution"), ElementsAre("caution", "guard the press"));
}

// By hand: 0.059 / 25.4 = 0.00232...
TEST(CheckText, InchShowsInchesInNumbersAndLeavesNames) {
  const std::string text = check_text(example_check(), {.unit = LengthUnit::inch});
  EXPECT_THAT(text, HasSubstr("Wheel: bore 44  with  Stud: outside 44.035"));
  EXPECT_THAT(text, HasSubstr("open Wheel: bore 44 or reduce Stud: outside 44.035"));
  EXPECT_THAT(shown_cells(text, "-0.00232"), ElementsAre("clearance", "-0.00232 to -0.00071",
                                                         "-0.00240 to -0.00035", "-0.00035", "in"));
  EXPECT_THAT(shown_cells(text, "area"), ElementsAre("area", "1.0000", "in2"));
}

TEST(CheckText, SummaryIsTheLastLine) {
  EXPECT_THAT(check_text(example_check(), {}),
              EndsWith("\n3 findings: 1 nonconforming, 1 undecided, 1 conforming\n"));
}

CheckResult repeated_findings(int times) {
  CheckResult result = example_check();
  const Finding first = result.findings[0];
  result.findings.clear();
  for (int i = 1; i <= times; ++i) {
    Finding finding = first;
    finding.id = fmt::format("radial-{}", i);
    const std::string hole = fmt::format("Line/Station {}/Wheel ({}): bore 44", i, i + 1);
    finding.about[0] = hole;
    finding.advice = "open " + hole;
    finding.found.push_back({"at_x", millimetres(100.0 * i)});
    result.findings.push_back(finding);
  }
  return result;
}

TEST(CheckText, FindingsAlikeButForTheirPlaceStandThereOnce) {
  const std::string text = check_text(repeated_findings(5000), {});
  EXPECT_LT(text.size(), 1500U);
  EXPECT_THAT(text, HasSubstr("radial-1  radial fit  x 5,000\n"));
  EXPECT_THAT(text, HasSubstr("radial-2, radial-3, radial-4, radial-5 and 4,995 more\n"));
}

TEST(CheckText, FindingWithAnotherNumberIsNotFolded) {
  CheckResult result = repeated_findings(50);
  result.findings[17].margin = {{"clearance", millimetres(-0.010)}};
  const std::string text = check_text(result, {});
  EXPECT_THAT(text, HasSubstr("radial-1  radial fit  x 49\n"));
  EXPECT_THAT(text, HasSubstr("radial-18  radial fit\n"));
}

TEST(CheckText, CautionStandsInFullOnceAndIsReferredToAfter) {
  CheckResult result = example_check();
  result.findings[2].caution = "guard the press";
  EXPECT_THAT(check_text(result, {}), HasSubstr("caution   as for radial-1\n"));
}

TEST(CheckText, LongAdviceIsWrappedUnderItsFirstWord) {
  CheckResult result = example_check();
  result.findings[2].advice = std::string(30, 'a') + " " + std::string(50, 'b') + " " +
                              std::string(20, 'c') + " " + std::string(3, 'd');
  EXPECT_THAT(check_text(result, {}),
              HasSubstr("    advice    " + std::string(30, 'a') + " " + std::string(50, 'b') +
                        "\n              " + std::string(20, 'c') + " ddd\n"));
}

TEST(CheckText, EscapeSequencesComeOnlyWhenAskedForAndOutcomesStayWords) {
  EXPECT_THAT(check_text(example_check(), {}), Not(HasSubstr("\x1b")));
  const std::string coloured = check_text(example_check(), {.colour = Colour::terminal});
  EXPECT_THAT(coloured, HasSubstr("\x1b[1;31mnonconforming\x1b[0m"));
}

}  // namespace spotblue::test::check_text_test
