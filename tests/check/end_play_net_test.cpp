// End play over nets of stops: what floats on what floats, stops a micrometre apart, ends held
// twice, stacks that a nut closes. Numbers worked by hand.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <numbers>

#include "check/end_play_rig.hpp"

namespace spotblue::end_play_net_test {

using namespace test;
using ::testing::HasSubstr;

constexpr double kNear = 1e-9;

// Two cheeks 100 apart; a shaft of 99.5 between its shoulders, with 30.3 between a collar of its
// own and one that is pinned on; a hub of 30 between the two.
Rig hub_on_floating_shaft() {
  Rig rig;
  Product frame = ring_part(12, 40, 0, 10);
  join(frame, ring_part(12, 40, 110, 120));
  rig.add(named(frame, "Frame", 9e5), 0.0);
  rig.add(named(turned_part({{0, -5},
                             {10, -5},
                             {10, 10},
                             {20, 10},
                             {20, 15},
                             {15, 15},
                             {15, 109.5},
                             {10, 109.5},
                             {10, 125},
                             {0, 125}}),
                "Shaft", 8e4),
          0.0);
  rig.add(named(ring_part(15, 22, 0, 10), "Collar", 1e3), 45.3);
  rig.add(named(ring_part(15.02, 30, 0, 30), "Hub", 5e4), 15.0);
  rig.job.fixed.push_back({"Collar", "Shaft", "pin", 0});
  return rig;
}

Finding of_part(const std::vector<Finding>& all, const std::string& part) {
  for (const Finding& finding : all) {
    if (!finding.about.empty() && finding.about.front() == part) {
      return finding;
    }
  }
  ADD_FAILURE() << "no finding of " << part;
  return {};
}

TEST(EndPlay, OfAHubOnAShaftThatItselfPlaysIsItsOwnOnTheShaft) {
  Rig rig = hub_on_floating_shaft();
  rig.want(0.2, 0.4, "Hub");
  rig.job.end_play.front().on = "Shaft";
  const Finding finding = of_part(rig.findings(), "Hub");
  EXPECT_EQ(finding.outcome, Outcome::conforming) << text_of(finding.advice);
  EXPECT_EQ(worded(finding.found, "plays_on"), "Shaft");
  EXPECT_NEAR(number(finding.found, "as_modelled_mm"), 0.3, kNear);
  // 30.3 - 30, each known to 0.002.
  EXPECT_NEAR(number(finding.found, "end_play_min_mm"), 0.296, kNear);
  EXPECT_NEAR(number(finding.found, "end_play_max_mm"), 0.304, kNear);
}

// 100 - 99.5 + 30.3 - 30: how the collars stand to the shoulders cancels.
TEST(EndPlay, WantedOfAHubRelativeToWhatStandsStillCountsTheShaftsToo) {
  Rig rig = hub_on_floating_shaft();
  rig.want(0.2, 0.4, "Hub");
  const Finding finding = of_part(rig.findings(), "Hub");
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_EQ(worded(finding.found, "stands"), "Frame");
  EXPECT_THAT(worded(finding.found, "carried_by"), HasSubstr("on = \"Shaft\""));
  EXPECT_NEAR(number(finding.found, "as_modelled_mm"), 0.8, kNear);
  EXPECT_NEAR(number(finding.found, "end_play_min_mm"), 0.792, kNear);
  EXPECT_NEAR(number(finding.found, "end_play_max_mm"), 0.808, kNear);
}

TEST(EndPlay, ThatNobodyAskedOfAHubIsToldOnWhatCarriesIt) {
  const std::vector<Finding> all = hub_on_floating_shaft().findings();
  ASSERT_EQ(all.size(), 2U);
  const Finding hub = of_part(all, "Hub");
  EXPECT_EQ(worded(hub.found, "plays_on"), "Shaft");
  EXPECT_NEAR(number(hub.found, "end_play_max_mm"), 0.304, kNear);
  const Finding shaft = of_part(all, "Shaft");
  EXPECT_EQ(worded(shaft.found, "stands"), "Frame");
  EXPECT_NEAR(number(shaft.found, "end_play_max_mm"), 0.504, kNear);
}

TEST(EndPlay, OnAPartThatItIsHeldToIsNone) {
  Rig rig = hub_on_floating_shaft();
  rig.want(0.2, 0.4, "Collar");
  rig.job.end_play.front().on = "Shaft";
  const std::vector<Finding> all = rig.findings();
  ASSERT_FALSE(all.empty());
  EXPECT_EQ(all.back().outcome, Outcome::undecided);
  EXPECT_THAT(text_of(all.back().advice), HasSubstr("held to each other"));
}

// Over the keeper 42.80 to 42.81 - 2.5 - 40: 0.296 to 0.314; over the ring, which stands 0.001
// farther out to 0.002: 0.295 to 0.307. The less of the two at each set of lengths is the play.
TEST(EndPlay, BetweenTwoStopsAMicrometreApartTakesBoth) {
  Rig rig = wheel_on_stud();
  rig.add(named(ring_part(19, 24, 0, 4), "Ring", 1e3), 42.801);
  rig.job.fixed.push_back({"Ring", "Stud", "set screw", 0});
  PartLength journal{"Stud: face 40 @ 0", "Stud: face 20 @ 42.8", {}, {}, {}, 31};
  journal.limits = Limits{Length::mm(42.80), Length::mm(42.81)};
  rig.job.lengths.push_back(journal);
  const Finding finding = of_part(rig.findings(), "Wheel");
  EXPECT_NEAR(number(finding.found, "end_play_min_mm"), 0.295, kNear);
  EXPECT_NEAR(number(finding.found, "end_play_max_mm"), 0.307, kNear);
}

// Each cheek has a shoulder of the shaft inside and a collar outside. One cheek is 9.8 to 10.1
// thick: L = 10.3 - that: 0.198 to 0.502. Collar to collar 120.35 - 120, where both are set on the
// shaft: 0.344 to 0.356. Shoulder to shoulder 100 - 99.65: 0.346 to 0.354. The other cheek's is
// what L leaves of those two: 0.188 at least.
TEST(EndPlay, OfAShaftHeldAtBothEndsIsTheLeastOfAllItsLoops) {
  Rig rig;
  Product frame = ring_part(12, 40, 0, 10);
  join(frame, ring_part(12, 40, 110, 120));
  rig.add(named(frame, "Frame", 9e5), 0.0);
  rig.add(named(turned_part({{0, -20},
                             {11, -20},
                             {11, 10.2},
                             {16, 10.2},
                             {16, 109.85},
                             {11, 109.85},
                             {11, 140},
                             {0, 140}}),
                "Shaft", 8e4),
          0.0);
  rig.add(named(ring_part(11, 18, -8, 0), "Collar", 1e3), -0.1);
  rig.add(named(ring_part(11, 18, 0, 8), "End collar", 1e3), 120.25);
  for (const char* collar : {"Collar", "End collar"}) {
    rig.job.fixed.push_back({collar, "Shaft", "set screw", 0});
  }
  PartLength cheek{"Frame: face 80 @ 0", "Frame: face 80 @ 10", {}, {}, {}, 31};
  cheek.limits = Limits{Length::mm(9.8), Length::mm(10.1)};
  rig.job.lengths.push_back(cheek);
  const Finding finding = of_part(rig.findings(), "Shaft");
  EXPECT_NEAR(number(finding.found, "as_modelled_mm"), 0.3, kNear);
  EXPECT_NEAR(number(finding.found, "end_play_min_mm"), 0.188, kNear);
  EXPECT_NEAR(number(finding.found, "end_play_max_mm"), 0.354, kNear);
}

// A post still to make is pressed into a base, its shoulder level with it and its end 30.05 to 30.3
// off that: a hub on the base has as much more play as the post is longer, not less alone.
TEST(EndPlay, OnAPressedPartStillToMakeCountsItsLengthBothWays) {
  for (const double turned : {0.0, 1.0}) {
    Rig rig;
    rig.add(named(ring_part(10, 30, -25, 0), "Base", 9e4), 0.0);
    rig.add(named(turned_part({{0, -20}, {10.015, -20}, {10.015, 0}, {9, 0}, {9, 30.1}, {0, 30.1}}),
                  "Post", 1e4),
            0.0);
    rig.add(named(ring_part(9.025, 25, 0, 30), "Hub", 5e4), 0.0);
    rig.add(named(ring_part(4, 13, 0, 5), "Cap", 1e3), 30.1);
    rig.job.fixed.push_back({"Cap", "Post", "screw", 0});
    rig.declare("Post").state = PartState::to_make;
    PartLength shoulder{"Post: face 20.03 @ 0", "Post: face 18 @ 30.1", {}, {}, {}, 31};
    shoulder.limits = Limits{Length::mm(30.05), Length::mm(30.3)};
    rig.job.lengths = {shoulder};
    for (Occurrence& part : rig.look.model.occurrences) {
      part.frame = compose(test::rotated({1, 0, 0}, turned * std::numbers::pi), part.frame);
      part.box = place_box(part.frame, rig.look.model.products[part.product].box);
    }
    rig.want(0.03, 0.15, "Hub");
    const Finding finding = of_part(rig.findings(), "Hub");
    EXPECT_NE(finding.outcome, Outcome::conforming);
    EXPECT_NEAR(number(finding.found, "end_play_max_mm"), 0.302, kNear);  // 30.3 - 29.998
    EXPECT_NEAR(number(finding.found, "end_play_min_mm"), 0.046, kNear);  // 30.05 - 30.002 - 0.002
  }
}

// A bush of 42.4 to 42.6 still to make, pressed into a wheel with both ends level, may be set by
// either: the other end then stands out by 0.1. Both are counted, each at its worst: 0.3 - 0.2.
TEST(EndPlay, OnAPressedBushDrawnLevelAtBothEndsCountsItsLengthAtEither) {
  Rig rig;
  rig.add(stud(), 0.0);
  rig.add(named(ring_part(10.02, 15.01, 0, 42.5), "Bush", 1e4), 0.0);
  rig.add(named(ring_part(15, 25, 0, 42.5), "Wheel", 5e4), 0.0);
  rig.add(named(ring_part(4.2, 18, 0, 4), "Keeper", 1e3), 42.8);
  rig.job.fixed.push_back({"Keeper", "Stud", "screw", 0});
  rig.declare("Bush").state = PartState::to_make;
  PartLength length{"Bush: face 30.02 @ 0", "Bush: face 30.02 @ 42.5", {}, {}, {}, 31};
  length.limits = Limits{Length::mm(42.4), Length::mm(42.6)};
  rig.job.lengths = {length};
  rig.want(0.1, 0.5);
  const Finding finding = rig.only();
  EXPECT_NEAR(number(finding.found, "end_play_min_mm"), 0.094, kNear);  // three lengths 0.002 off
  EXPECT_LE(number(finding.found, "end_play_max_mm"), 0.304 + kNear);
}

// A wheel of 40 and a loose washer of 3 between a stud's flange and its nut M16, 43.2 off it; the
// thread ends at 53, so 9.8 of it is engaged.
Rig nut_on_stud() {
  Rig rig;
  rig.add(
      named(turned_part(
                {{0, -10}, {20, -10}, {20, 0}, {10, 0}, {10, 39.5}, {8, 39.5}, {8, 53}, {0, 53}}),
            "Stud", 9e4),
      0.0);
  rig.add(named(ring_part(10.02, 25, 0, 40), "Wheel", 5e4), 0.0);
  rig.add(named(ring_part(8.5, 16, 0, 3), "Washer", 500), 40.1);
  rig.add(named(ring_part(0.5 * 13.835, 12, 0, 13), "Nut", 2e3), 43.2);
  Adjust nut;
  nut.part = "Nut";
  nut.thread = "M16";
  nut.line = 40;
  rig.job.adjust.push_back(nut);
  return rig;
}

Finding setting_of(Rig& rig) {
  rig.look.seats = find_seats(rig.look.model, rig.look.settings.seats);
  for (const Finding& finding : judge_job(rig.job, rig.look)) {
    if (finding.kind == "setting") {
      return finding;
    }
  }
  ADD_FAILURE() << "no setting";
  return {};
}

// Wheel and washer take up 42.996 to 43.004: 0.1 to 0.3 is left of 43.104 to 43.296.
TEST(Setting, OfANutThatClosesAStackIsTheWindowInWhichThePlayHolds) {
  Rig rig = nut_on_stud();
  rig.want(0.1, 0.3);
  const Finding finding = setting_of(rig);
  EXPECT_EQ(finding.outcome, Outcome::conforming);
  EXPECT_NEAR(number(finding.found, "window_min_mm"), 43.104, kNear);
  EXPECT_NEAR(number(finding.found, "window_max_mm"), 43.296, kNear);
  EXPECT_NEAR(number(finding.found, "turns_of_thread"), 0.096, kNear);
  // 53 less the two.
  EXPECT_NEAR(number(finding.found, "thread_left_min_mm"), 9.704, kNear);
  EXPECT_NEAR(number(finding.found, "thread_left_max_mm"), 9.896, kNear);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("Stud: face 40 @ 0 to Nut: face 24 @ 0"));
}

TEST(EndPlay, OfAStackThatANutClosesIsThatOfItsWindow) {
  Rig rig = nut_on_stud();
  rig.want(0.1, 0.3);
  const Finding finding = of_part(rig.findings(), "Wheel");
  EXPECT_EQ(finding.outcome, Outcome::conforming);
  EXPECT_NEAR(number(finding.found, "end_play_min_mm"), 0.1, kNear);
  EXPECT_NEAR(number(finding.found, "end_play_max_mm"), 0.3, kNear);
}

TEST(Setting, ThatHoldsOnlyOneOfTwoWantsNamesBoth) {
  Rig rig = nut_on_stud();
  rig.want(0.1, 0.3);
  rig.want(0.5, 0.6, "Washer");
  const Finding finding = setting_of(rig);
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_EQ(worded(finding.found, "window"), "none");
  EXPECT_THAT(worded(finding.found, "no_setting_holds"), HasSubstr("Wheel on Stud"));
  EXPECT_THAT(worded(finding.found, "no_setting_holds"), HasSubstr("Washer on Stud"));
}

// 0.004 of the lengths either way is more than the 0.006 that is wanted.
TEST(Setting, ThatNoLengthsAllowIsNone) {
  Rig rig = nut_on_stud();
  rig.want(0.100, 0.106);
  const Finding finding = setting_of(rig);
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("set it by the play that you measure"));
}

// Of the 0.0084 that is wanted the other lengths take up 0.008: no bench holds what is left.
TEST(Setting, OfNoWidthIsNone) {
  Rig rig = nut_on_stud();
  rig.want(0.100, 0.1084);
  const Finding finding = setting_of(rig);
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("nothing beside it"));
}

// A wheel to make on a stud and a bush that take up 0.2 and 0.2 of the 0.4 wanted.
TEST(EndPlay, ThatLeavesALengthNoWidthSaysSo) {
  Rig rig = wheel_on_stud();
  rig.declare("Stud").state = PartState::to_make;
  rig.declare("Bush").state = PartState::to_make;
  PartLength journal{"Stud: face 40 @ 0", "Stud: face 20 @ 42.8", {}, {}, {}, 31};
  journal.limits = Limits{Length::mm(42.7), Length::mm(42.9)};
  PartLength flange{"Bush: face 40 @ 0", "Bush: face 40 @ 2.5", {}, {}, {}, 32};
  flange.limits = Limits{Length::mm(2.4), Length::mm(2.6)};
  rig.job.lengths = {journal, flange};
  rig.want(0.2, 0.4044);
  const Finding finding = of_part(rig.findings(), "Wheel");
  EXPECT_THAT(text_of(finding.advice), HasSubstr("nothing is left for"));
}

// 8 of thread, half of 16, is left at 45: wanted is a play only had farther out.
TEST(Setting, EndsWhereHalfTheThreadsDiameterIsLeft) {
  Rig rig = nut_on_stud();
  rig.want(2.5, 2.7);
  const Finding finding = setting_of(rig);
  EXPECT_NEAR(number(finding.found, "range_max_mm"), 45.0, kNear);
  EXPECT_EQ(worded(finding.found, "window"), "none");
}

TEST(Setting, ThatNothingWantedGoesByIsUndecided) {
  Rig rig = nut_on_stud();
  const Finding finding = setting_of(rig);
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("[[wants]]"));
}

// 44.5 - 42.5 less the shim: 1.996 to 2.004 less 0.4 to 0.6.
TEST(Setting, OfAShimIsItsThickness) {
  Rig rig;
  rig.add(named(turned_part({{0, -10}, {20, -10}, {20, 0}, {10, 0}, {10, 44.5}, {0, 44.5}}), "Stud",
                9e4),
          0.0);
  rig.add(named(ring_part(10.02, 25, 0, 42.5), "Wheel", 5e4), 0.0);
  rig.add(named(ring_part(10.5, 16, 0, 1.5), "Shim", 500), 42.6);
  rig.add(named(ring_part(4.2, 18, 0, 4), "Keeper", 1e3), 44.5);
  rig.job.fixed.push_back({"Keeper", "Stud", "screw", 0});
  Adjust shim;
  shim.part = "Shim";
  shim.range = Limits{Length::mm(1), Length::mm(2)};
  rig.job.adjust.push_back(shim);
  rig.want(0.4, 0.6);
  const Finding finding = setting_of(rig);
  EXPECT_EQ(finding.outcome, Outcome::conforming);
  EXPECT_NEAR(number(finding.found, "window_min_mm"), 1.404, kNear);
  EXPECT_NEAR(number(finding.found, "window_max_mm"), 1.596, kNear);
}

// A washer still to make: ISO 2768-1 m gives 3 +- 0.1, so the window is narrower by as much.
TEST(Setting, CountsLengthsStillToMakeAsWideAsTheyMayBe) {
  Rig rig = nut_on_stud();
  rig.declare("Washer").state = PartState::to_make;
  rig.want(0.1, 0.5);
  const Finding finding = setting_of(rig);
  // 40 + 0.002 + 3.1 + 0.1, and 40 - 0.002 + 2.9 + 0.5.
  EXPECT_NEAR(number(finding.found, "window_min_mm"), 43.202, kNear);
  EXPECT_NEAR(number(finding.found, "window_max_mm"), 43.398, kNear);
}

}  // namespace spotblue::end_play_net_test
