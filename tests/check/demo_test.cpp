// The demo, end to end: mock-up to STEP to findings. The numbers are those of models/README.md.

#include <gmock/gmock.h>
#include <unistd.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <map>
#include <numbers>

#include "spotblue/base/interval.hpp"
#include "spotblue/check/check.hpp"
#include "spotblue/geometry/mockup_write.hpp"
#include "spotblue/job/job_file.hpp"
#include "spotblue/job/mockup_file.hpp"
#include "support/advice.hpp"
#include "support/findings.hpp"

namespace spotblue::demo_test {

using test::number;
using test::worded;

using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::Field;
using ::testing::HasSubstr;

// Makes the STEP file in a place of its own and judges the job on it.
CheckResult check_demo(const std::string& name) {
  const std::filesystem::path models = SPOTBLUE_MODELS;
  const std::filesystem::path step =
      std::filesystem::temp_directory_path() /
      ("spotblue-demo-" + name + "-" + std::to_string(::getpid()) + ".step");
  write_mockup(read_mockup(models / (name + ".mockup.toml")), step);
  Job job = read_job(models / (name + ".job.toml"));
  job.model = step;
  CheckResult result = check({job});
  std::filesystem::remove(step);
  return result;
}

std::vector<Finding> nonconforming(const CheckResult& result) {
  std::vector<Finding> found;
  for (const Finding& finding : result.findings) {
    if (finding.outcome == Outcome::nonconforming) {
      found.push_back(finding);
    }
  }
  return found;
}

class EveryDemo : public testing::TestWithParam<const char*> {};

TEST_P(EveryDemo, GivesOneFeatureOneAdvice) {
  EXPECT_EQ(test::Advice(check_demo(GetParam()).findings).contradiction(), "");
}

INSTANTIATE_TEST_SUITE_P(Jobs, EveryDemo,
                         testing::Values("ink-disc-plan-a", "ink-disc-plan-b",
                                         "ink-disc-plan-b-mended", "ink-disc-plan-c",
                                         "hand-pump-crank"));

class DemoPlan : public testing::TestWithParam<const char*> {};

TEST_P(DemoPlan, EverySeatHasAFindingThatIsDecided) {
  const CheckResult result = check_demo(GetParam());
  const Seats& seats = result.look.seats;
  EXPECT_GE(result.findings.size(),
            seats.radial.size() + seats.axial.size() + seats.width.size() + seats.threads.size());
  for (const Finding& finding : result.findings) {
    // What the workshop has still to measure or to make stays open; so do what hangs on the rings
    // of a ball bearing whose steel nobody declared, and the bearing in plan B's bush, which closes
    // in to less than common practice. Every other seat is decided.
    const bool in_bush = finding.kind == "plain bearing" &&
                         finding.about.front().name.starts_with("Flanged bush: bore");
    const bool may_stay_open =
        finding.kind == "end play" || in_bush ||
        text_of(finding.advice).find("no material is given for") != std::string::npos;
    EXPECT_TRUE(finding.outcome != Outcome::undecided || may_stay_open) << finding.id;
  }
}

// The sizes that a finding says a feature must be made to, by feature.
std::map<std::string, std::vector<Interval>> windows(const CheckResult& result) {
  std::map<std::string, std::vector<Interval>> all;
  const auto add = [&all](const std::vector<Quantity>& wanted, const std::string& key,
                          const std::string& feature) {
    const auto has = [&](const std::string& end) {
      return std::any_of(wanted.begin(), wanted.end(),
                         [&](const Quantity& one) { return key_of(one) == key + end; });
    };
    if (has("_min_mm")) {
      all[feature].push_back({number(wanted, key + "_min_mm"), number(wanted, key + "_max_mm")});
    }
  };
  for (const Finding& finding : result.findings) {
    add(finding.wanted, "make_hole", finding.about.front().name);
    add(finding.wanted, "make_shaft", finding.about.back().name);
    if (finding.kind == "make to suit") {
      add(finding.wanted, "size", finding.about.front().name);
    }
  }
  return all;
}

TEST_P(DemoPlan, NoTwoFindingsGiveOneFeatureLimitsThatShareNoSize) {
  const auto told = windows(check_demo(GetParam()));
  EXPECT_FALSE(told.empty());
  for (const auto& [feature, all] : told) {
    Interval shared = all.front();
    for (const Interval window : all) {
      shared = {std::max(shared.low, window.low), std::min(shared.high, window.high)};
    }
    EXPECT_GT(shared.length(), 0.0) << feature;
  }
}

INSTANTIATE_TEST_SUITE_P(Demo, DemoPlan,
                         testing::Values("ink-disc-plan-a", "ink-disc-plan-b",
                                         "ink-disc-plan-b-mended", "ink-disc-plan-c",
                                         "hand-pump-crank"));

TEST(Demo, PlanBFindsEachPlantedFaultWithItsNumber) {
  const auto found = nonconforming(check_demo("ink-disc-plan-b"));
  ASSERT_EQ(found.size(), 7U);
  // Not planted: the bush's bore closes in under the press and leaves the stud too little.
  EXPECT_THAT(test::names(found[0].about), ElementsAre("Flanged bush: bore", "Stud: journal"));
  EXPECT_THAT(text_of(found[0].advice), HasSubstr("before pressing"));
  EXPECT_THAT(test::names(found[1].about),
              ElementsAre("Bracket: shaft bore", "Cross shaft: journal"));
  EXPECT_NEAR(number(found[1].found, "modelled_clearance_mm"), 0.26, 1e-6);
  EXPECT_THAT(test::names(found[2].about),
              ElementsAre("Cover: shaft hole", "Cross shaft: outer end"));
  EXPECT_NEAR(number(found[2].found, "offset_mm"), 0.42, 1e-6);
  EXPECT_NEAR(number(found[2].found, "least_gap_mm"), 0.27 - 0.42, 1e-6);
  EXPECT_EQ(found[3].kind, "axial gap");
  EXPECT_NEAR(number(found[3].found, "gap_mm"), -0.25, 1e-6);
  EXPECT_EQ(found[6].kind, "plain bearing");
}

// tests/reference/hand-checks.md, "What the bearings carry".
TEST(Demo, BearingsCarryTheirLoadsByStaticsFromTheMiddleOfTheirParts) {
  const CheckResult result = check_demo("ink-disc-plan-b-mended");
  std::map<std::string, double> pressures;  // by the shaft
  for (const Finding& finding : result.findings) {
    if (finding.kind == "plain bearing") {
      pressures[finding.about.back().name] = number(finding.found, "pressure_mpa");
    }
  }
  EXPECT_NEAR(pressures.at("Cross shaft: journal"), 0.0551, 5e-5);
  EXPECT_NEAR(pressures.at("Pinion: journal"), 2.93, 0.005);
}

// What two discs share: radii r < R, centres d apart, neither within the other.
double lens_area(double r, double big, double d) {
  const double near = (d * d + r * r - big * big) / (2 * d);
  const double far = d - near;
  return r * r * std::acos(near / r) - near * std::sqrt(r * r - near * near) +
         big * big * std::acos(far / big) - far * std::sqrt(big * big - far * far);
}

TEST(Demo, PlanBHasTheTwoRealFoulsBesideTheMeshOfItsGearBlanks) {
  const CheckResult result = check_demo("ink-disc-plan-b");
  ASSERT_EQ(result.look.fouls.found.size(), 3U);
  EXPECT_EQ(nonconforming(result)[4].kind, "foul");
  EXPECT_EQ(nonconforming(result)[4].id, "foul-2");
  EXPECT_NEAR(result.look.fouls.found[1].depth, 0.15, 1e-6);
  EXPECT_EQ(result.look.fouls.found[1].cause, "off axis");
  // The part of the shaft's disc outside the hole's, through the cover's 4 mm.
  const double pi = std::numbers::pi;
  EXPECT_NEAR(result.look.fouls.found[1].volume,
              4 * (pi * 7.98 * 7.98 - lens_area(7.98, 8.25, 0.42)), 1e-4);
  EXPECT_NEAR(result.look.fouls.found[2].depth, 0.25, 1e-6);
  EXPECT_EQ(result.look.fouls.found[2].cause, "faces overlap");
  // Boss and eccentric, less the worn bore and what the keyway, 13.805 from the axis, leaves open
  // beyond it.
  const double bore = 25.19 / 2;
  const double in_bore = 3 * std::sqrt(bore * bore - 9) + bore * bore * std::asin(3 / bore);
  EXPECT_NEAR(result.look.fouls.found[2].volume,
              0.25 * (lens_area(24, 28, 6) - pi * bore * bore - (6 * 13.805 - in_bore)), 1e-3);
}

// But for the ball bearing's own play when it is warm, of which its maker knows and the job does
// not.
TEST(Demo, TheMendedPlanConformsThroughout) {
  const CheckResult result = check_demo("ink-disc-plan-b-mended");
  for (const Finding& finding : result.findings) {
    if (finding.about.front() != "Outer ring: bore") {
      EXPECT_EQ(finding.outcome, Outcome::conforming) << finding.id;
    }
  }
  EXPECT_EQ(count_outcomes(result.findings).nonconforming, 0);
  ASSERT_EQ(result.look.fouls.found.size(), 1U);  // the gear blanks, meant by the mesh
}

TEST(Demo, PlanCAlsoHasTooMuchEndPlay) {
  const auto found = nonconforming(check_demo("ink-disc-plan-c"));
  ASSERT_EQ(found.size(), 8U);
  // The worn wheel is 41.9 long on a journal of 42.8; told of the gap and of the loop.
  EXPECT_THAT(found[2].about, Contains(Field(&Reference::name, HasSubstr("Wheel: "))));
  EXPECT_NEAR(number(found[2].found, "gap_mm"), 0.9, 1e-6);
  EXPECT_EQ(found.back().kind, "end play");
  EXPECT_NEAR(number(found.back().found, "end_play_min_mm"), 0.896, 1e-6);
}

const Finding& find(const CheckResult& result, const std::string& id) {
  const auto found = std::find_if(result.findings.begin(), result.findings.end(),
                                  [&](const Finding& finding) { return finding.id == id; });
  EXPECT_NE(found, result.findings.end()) << id;
  return found == result.findings.end() ? result.findings.front() : *found;
}

// By hand in tests/reference/hand-checks.md: 42.8 - 2.5 - 40, the flange to make to ISO 2768-1 m.
TEST(Demo, PlanBsWheelHasTheEndPlayOfTheHandCalculation) {
  const CheckResult result = check_demo("ink-disc-plan-b");
  const Finding* const play = &find(result, "end-1");
  EXPECT_EQ(play->about.front(), "Wheel");
  EXPECT_EQ(play->outcome, Outcome::undecided);
  EXPECT_NEAR(number(play->found, "as_modelled_mm"), 0.300, 1e-6);
  EXPECT_NEAR(number(play->found, "end_play_min_mm"), 0.196, 1e-6);
  EXPECT_NEAR(number(play->found, "end_play_max_mm"), 0.404, 1e-6);
  EXPECT_NEAR(number(play->found, "root_sum_square_max_mm"), 0.40004, 1e-5);
  EXPECT_THAT(text_of(play->advice), HasSubstr("2.404 to 2.646 mm"));
}

// The numbers of the next three: tests/reference/hand-checks.md, "Plan B".
TEST(Demo, PlanBsPressIsThatOfTheHandCalculation) {
  const CheckResult result = check_demo("ink-disc-plan-b");
  const Finding& press = find(result, "press-1");
  EXPECT_EQ(press.outcome, Outcome::conforming);
  EXPECT_NEAR(number(press.found, "pressure_min_mpa"), 9.07, 0.005);
  EXPECT_NEAR(number(press.found, "pressure_mpa"), 16.19, 0.005);
  EXPECT_NEAR(number(press.found, "pressure_max_mpa"), 18.16, 0.005);
  EXPECT_NEAR(number(press.found, "hub_hoop_mpa"), 38.0, 0.05);
  EXPECT_NEAR(std::abs(number(press.found, "inner_hoop_mpa")), 86.9, 0.05);
  EXPECT_NEAR(number(press.found, "bore_close_in_min_mm"), 0.0163, 5e-5);
  EXPECT_NEAR(number(press.found, "bore_close_in_max_mm"), 0.0252, 5e-5);
  EXPECT_THAT(text_of(press.advice), HasSubstr("press with up to 15.3 kN"));
}

TEST(Demo, PlanBsBushRunsAsTheHandCalculationSays) {
  const CheckResult result = check_demo("ink-disc-plan-b");
  const Finding& fit = find(result, "radial-3");
  EXPECT_EQ(fit.outcome, Outcome::nonconforming);
  EXPECT_NEAR(number(fit.found, "clearance_min_mm"), 0.0178, 5e-5);
  EXPECT_NEAR(number(fit.found, "clearance_max_mm"), 0.0490, 5e-5);
  EXPECT_NEAR(number(fit.wanted, "make_hole_min_mm"), 29.0182, 5e-5);
  EXPECT_NEAR(number(fit.wanted, "make_hole_max_mm"), 29.0410, 5e-5);
  const Finding& running = find(result, "running-1");
  EXPECT_EQ(running.outcome, Outcome::conforming);
  EXPECT_NEAR(number(running.found, "bore_close_in_min_mm"), 0.0, 1e-9);
  EXPECT_NEAR(number(running.found, "bore_close_in_max_mm"), 0.0252, 5e-5);
  EXPECT_NEAR(number(running.found, "warm_clearance_min_mm"), 0.0177, 5e-5);
  EXPECT_NEAR(number(running.found, "warm_clearance_max_mm"), 0.0536, 5e-5);
}

// tests/reference/hand-checks.md, "Plan C".
TEST(Demo, PlanCsSleeveMeetsTheWheelAtItsGrownSize) {
  const CheckResult result = check_demo("ink-disc-plan-c");
  const Finding& fit = find(result, "radial-5");
  EXPECT_EQ(fit.outcome, Outcome::conforming);
  EXPECT_NEAR(number(fit.found, "shaft_assembled_min_mm"), 30.6763, 1e-4);
  EXPECT_NEAR(number(fit.found, "shaft_assembled_max_mm"), 30.6854, 1e-4);
}

TEST(Demo, PlanBsKeeperTakesTheThrustOfTheHandCalculation) {
  const CheckResult result = check_demo("ink-disc-plan-b");
  const Finding& thrust = find(result, "thrust-1");
  EXPECT_NEAR(number(thrust.found, "area_mm2"), 614.2, 0.05);
  EXPECT_NEAR(number(thrust.found, "mean_radius_mm"), 21.830, 5e-4);
  EXPECT_NEAR(number(thrust.found, "pressure_mpa"), 0.0651, 5e-5);
  EXPECT_NEAR(number(thrust.found, "speed_m_s"), 0.0914, 5e-5);
}

TEST(Demo, PlanBsBushGoesInTheWheelBeforeTheWheelGoesOnTheStud) {
  const CheckResult result = check_demo("ink-disc-plan-b");
  const Finding& way = find(result, "way-1");
  EXPECT_EQ(way.outcome, Outcome::conforming);
  std::vector<std::string> steps;
  for (const Quantity& quantity : way.found) {
    steps.push_back(worded(quantity));
  }
  ASSERT_GE(steps.size(), 5U);
  EXPECT_THAT(steps[1], HasSubstr("Flanged bush into Wheel, press towards +z"));
  EXPECT_THAT(steps[2], HasSubstr("Wheel, Flanged bush over Stud, slide"));
  EXPECT_THAT(steps[4], HasSubstr("Keeper to Stud, slide"));
}

TEST(Demo, ThePumpCrankConformsThroughout) {
  const CheckResult result = check_demo("hand-pump-crank");
  EXPECT_EQ(count_outcomes(result.findings).conforming, static_cast<int>(result.findings.size()));
}

}  // namespace spotblue::demo_test
