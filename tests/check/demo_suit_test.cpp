// Plan B's bush, made to suit: tests/reference/hand-checks.md, "Make to suit".

#include <gmock/gmock.h>
#include <unistd.h>

#include <algorithm>
#include <filesystem>
#include <set>
#include <string>

#include "spotblue/check/judge_job.hpp"
#include "spotblue/geometry/mockup_write.hpp"
#include "spotblue/job/job_file.hpp"
#include "spotblue/job/mockup_file.hpp"
#include "support/bench.hpp"

namespace spotblue::demo_suit_test {

using test::number;

// Printed to a tenth of a micrometre in the hand calculation.
constexpr double kByHand = 6e-5;

class PlanB : public testing::Test {
 protected:
  static void SetUpTestSuite() {
    const std::filesystem::path models = SPOTBLUE_MODELS;
    const std::filesystem::path step = std::filesystem::temp_directory_path() /
                                       ("spotblue-suit-" + std::to_string(::getpid()) + ".step");
    write_mockup(read_mockup(models / "ink-disc-plan-b.mockup.toml"), step);
    look_ = new Look(look(step, {}));
    std::filesystem::remove(step);
  }
  static void TearDownTestSuite() { delete look_; }

  PlanB() : job(read_job(std::filesystem::path(SPOTBLUE_MODELS) / "ink-disc-plan-b.job.toml")) {
    measure("Wheel: bore", 38.012, 0.004);
    measure("Stud: journal", 28.97, 0.003);
  }

  void measure(const std::string& feature, double value, double uncertainty) {
    const auto found =
        std::find_if(job.measured.begin(), job.measured.end(),
                     [&](const MeasuredSize& size) { return size.feature == feature; });
    ASSERT_NE(found, job.measured.end());
    found->value = Length::mm(value);
    found->uncertainty = Length::mm(uncertainty);
  }

  [[nodiscard]] Finding suit(const std::string& feature) const {
    for (const Finding& finding : judge_job(job, *look_)) {
      if (finding.kind == "make to suit" && finding.about.front() == feature) {
        return finding;
      }
    }
    ADD_FAILURE() << feature;
    return {};
  }
  [[nodiscard]] Finding outside() const { return suit("Flanged bush: sleeve"); }
  [[nodiscard]] Finding bore() const { return suit("Flanged bush: bore"); }

  static void expect_range(const std::vector<Quantity>& quantities, const std::string& key,
                           double least, double greatest) {
    EXPECT_NEAR(number(quantities, key + "_min_mm"), least, kByHand) << key;
    EXPECT_NEAR(number(quantities, key + "_max_mm"), greatest, kByHand) << key;
  }

  Job job;
  static Look* look_;
};

Look* PlanB::look_ = nullptr;

TEST_F(PlanB, TheOutsideSuitsTheWheel) {
  const Finding finding = outside();
  expect_range(finding.found, "made_first", 38.034, 38.067);
  EXPECT_LE(38.034, number(finding.wanted, "size_min_mm") + 1e-9);
  EXPECT_GE(38.067, number(finding.wanted, "size_max_mm") - 1e-9);
}

TEST_F(PlanB, InInchesIsToldWithNothingMetric) {
  job.unit = LengthUnit::inch;
  int told = 0;
  for (const Finding& finding : judge_job(job, *look_)) {
    const std::set<std::string> kinds{"make to suit",  "press fit", "stock",
                                      "shaft section", "keep off",  "way in"};
    if (kinds.contains(finding.kind)) {
      ++told;
      EXPECT_EQ(test::metric_in(finding), "") << finding.id;
    }
  }
  EXPECT_GT(told, 5);
}

TEST_F(PlanB, TheBoreSaysToWhatItIsBoredAndWhatPressingLeaves) {
  EXPECT_THAT(text_of(bore().advice), ::testing::StartsWith("bore the Flanged bush 29.0"));
  EXPECT_THAT(text_of(bore().advice),
              ::testing::HasSubstr("before it is pressed in (then 28.993 to 29.041 mm)"));
}

TEST_F(PlanB, TheBoreClosesByWhatTheHandCalculationSays) {
  const Finding finding = bore();
  EXPECT_NEAR(number(finding.found, "close_in_min_percent"), 52.72, 0.01);
  EXPECT_NEAR(number(finding.found, "close_in_max_percent"), 68.27, 0.01);
  expect_range(finding.found, "pressed_in", 28.993, 29.041);
}

TEST_F(PlanB, TheBoreBeforePressingKeepsTheFitAtEveryCorner) {
  const Finding made = outside();
  const Finding finding = bore();
  const double least = number(made.wanted, "size_min_mm");
  const double greatest = number(made.wanted, "size_max_mm");
  // Largest close-in on the tightest press against the largest stud, and the other way round.
  expect_range(finding.wanted, "size", 28.993 + 0.68268 * (greatest - 38.008 - 0.00504),
               29.041 + 0.52719 * (least - 38.016 - 0.01008));
}

TEST_F(PlanB, EditingTheStudMovesOnlyTheBore) {
  const Finding outside_before = outside();
  const Finding bore_before = bore();
  measure("Stud: journal", 28.95, 0.003);
  expect_range(outside().wanted, "size", number(outside_before.wanted, "size_min_mm"),
               number(outside_before.wanted, "size_max_mm"));
  expect_range(bore().found, "pressed_in", 28.973, 29.021);
  expect_range(bore().wanted, "size", number(bore_before.wanted, "size_min_mm") - 0.02,
               number(bore_before.wanted, "size_max_mm") - 0.02);
}

TEST_F(PlanB, EditingTheWheelMovesOnlyTheOutside) {
  const Finding bore_before = bore();
  measure("Wheel: bore", 38.020, 0.004);
  expect_range(outside().found, "made_first", 38.042, 38.075);
  expect_range(bore().wanted, "size", number(bore_before.wanted, "size_min_mm"),
               number(bore_before.wanted, "size_max_mm"));
}

TEST_F(PlanB, OnceTheOutsideIsMadeTheBoreHasTheRoomTheHandCalculationSays) {
  job.measured.push_back({"Flanged bush: sleeve", Length::mm(38.05), Length::mm(0.002), 0});
  // 28.993 + 0.68268 x (38.052 - 38.008 - 0.00504), 29.041 + 0.52719 x (38.048 - 38.016 - 0.01008)
  expect_range(bore().wanted, "size", 29.0196, 29.0526);
}

}  // namespace spotblue::demo_suit_test
