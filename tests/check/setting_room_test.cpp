// Where metal ends the way of a nut, a screw or a collar that is set; worked by hand.
#include <gmock/gmock.h>

#include <numbers>

#include "check/end_play_rig.hpp"
#include "support/findings.hpp"
#include "support/thrown.hpp"

namespace spotblue::setting_room_test {

using test::named;
using test::number;
using test::Rig;
using test::ring_part;
using test::turned_part;
using test::worded;
using ::testing::HasSubstr;

constexpr double kNear = 1e-6;
constexpr double kBore = 0.5 * 13.835;  // of an M16 nut

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

// A wheel of 20 and a washer of 9.9 lie on the shank 20 that ends at 30, before a thread M16 to 55;
// the nut stands at 30.2. Lengths are known to 0.002.
Rig nut_before_shank(const Product& stud, double wheel_radius = 25.0) {
  Rig rig;
  rig.add(named(stud, "Stud", 9e4), 0.0);
  rig.add(named(ring_part(10.02, wheel_radius, 0, 20), "Wheel", 5e4), 0.0);
  rig.add(named(ring_part(10.5, 16, 0, 9.9), "Washer", 500), 20.05);
  rig.add(named(ring_part(kBore, 14, 0, 13), "Nut", 2e3), 30.2);
  Adjust nut;
  nut.part = "Nut";
  nut.thread = "M16";
  rig.job.adjust.push_back(nut);
  return rig;
}
Product shouldered() {
  return turned_part({{0, -10}, {20, -10}, {20, 0}, {10, 0}, {10, 30}, {8, 30}, {8, 55}, {0, 55}});
}
Product grooved() {
  return turned_part({{0, -10},
                      {20, -10},
                      {20, 0},
                      {10, 0},
                      {10, 30},
                      {6.5, 30},
                      {6.5, 34},
                      {8, 34},
                      {8, 55},
                      {0, 55}});
}

// 29.9 + 0.05 + 0.004 would be 29.954: there the nut would stand in the shank, which may be 30.002.
TEST(SettingRoom, OfANutEndsAtTheShankThatItWouldMeet) {
  Rig rig = nut_before_shank(shouldered());
  rig.want(0.05, 0.2);
  const Finding finding = setting_of(rig);
  EXPECT_NEAR(number(finding.found, "range_min_mm"), 30.002, kNear);
  EXPECT_NEAR(number(finding.found, "window_min_mm"), 30.002, kNear);
  EXPECT_NEAR(number(finding.found, "window_max_mm"), 30.096, kNear);
  EXPECT_THAT(worded(finding.found, "metal"), HasSubstr("Nut meets Stud at 30"));
}

TEST(SettingRoom, IsToldWhereverTheModelLies) {
  for (const double angle : {0.7, 1.0, 1.4}) {
    Rig rig = nut_before_shank(shouldered());
    for (Occurrence& part : rig.look.model.occurrences) {
      part.frame = compose(test::rotated({1, 0, 0}, angle * std::numbers::pi), part.frame);
      part.box = place_box(part.frame, rig.look.model.products[part.product].box);
    }
    rig.want(0.05, 0.2);
    const Finding finding = setting_of(rig);
    EXPECT_NEAR(number(finding.found, "window_min_mm"), 30.002, kNear) << angle;
    EXPECT_NEAR(number(finding.found, "window_max_mm"), 30.096, kNear) << angle;
  }
}

// The last turn of a thread before larger metal is not cut full.
TEST(SettingRoom, WithinAPitchOfTheShankIsUndecidedByTheRunOut) {
  Rig rig = nut_before_shank(shouldered());
  rig.want(0.05, 0.2);
  const Finding near = setting_of(rig);
  EXPECT_EQ(near.outcome, Outcome::undecided);
  EXPECT_THAT(text_of(near.advice), HasSubstr("cut full"));

  Rig with_groove = nut_before_shank(grooved());
  with_groove.want(0.05, 0.2);
  const Finding grooved_one = setting_of(with_groove);
  EXPECT_EQ(grooved_one.outcome, Outcome::conforming) << text_of(grooved_one.advice);
  EXPECT_NEAR(number(grooved_one.found, "window_min_mm"), 30.002, kNear);
}

TEST(SettingRoom, WithoutAWindowSaysWhatTheNutMeets) {
  Rig rig = nut_before_shank(shouldered());
  rig.want(0.0, 0.05);
  const Finding finding = setting_of(rig);
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_EQ(worded(finding.found, "window"), "none");
  EXPECT_THAT(text_of(finding.advice), HasSubstr("goes no further: Nut meets Stud at 30"));
}

// The shank ends in a cone from 20 to 16 over 2. The nut meets it at 32, two lengths off the flange
// that are known to 0.002 each.
TEST(SettingRoom, EndsAtAConeToo) {
  Rig rig = nut_before_shank(
      turned_part({{0, -10}, {20, -10}, {20, 0}, {10, 0}, {10, 30}, {8, 32}, {8, 55}, {0, 55}}));
  rig.look.model.occurrences[OccurrenceId(3)].frame = test::shifted(0, 0, 32.5);
  rig.want(1.0, 2.4);
  const Finding finding = setting_of(rig);
  EXPECT_NEAR(number(finding.found, "range_min_mm"), 32.004, 1e-3);
  EXPECT_THAT(worded(finding.found, "metal"), HasSubstr("Nut meets Stud at 32"));
}

TEST(SettingRoom, OfARangeThatTheJobGivesEndsAtMetalToo) {
  Rig rig = nut_before_shank(shouldered());
  rig.job.adjust[0].thread.reset();
  rig.job.adjust[0].range = Limits{Length::mm(29.5), Length::mm(30.5)};
  rig.want(0.05, 0.2);
  EXPECT_NEAR(number(setting_of(rig).found, "range_min_mm"), 30.002, kNear);
  rig.job.adjust[0].range = Limits{Length::mm(29.0), Length::mm(29.5)};
  const Finding beyond = setting_of(rig);
  EXPECT_EQ(beyond.outcome, Outcome::undecided);
  EXPECT_EQ(worded(beyond.found, "window"), "none");
  EXPECT_THAT(text_of(beyond.advice), HasSubstr("nothing is left"));
}

// A ring that is pinned to the stud is metal as the stud is: its far face stands at 30.1.
TEST(SettingRoom, EndsAtAnotherPartThatIsHeldToTheSameBody) {
  Rig rig = nut_before_shank(shouldered());
  rig.add(named(ring_part(10, 14, 0, 0.05), "Shoulder ring", 100), 30.05);
  rig.job.fixed.push_back({"Shoulder ring", "Stud", "weld", 0});
  rig.want(0.05, 0.5);
  const Finding finding = setting_of(rig);
  EXPECT_THAT(worded(finding.found, "metal"), HasSubstr("Nut meets Shoulder ring at 30.1"));
  EXPECT_GT(number(finding.found, "range_min_mm"), 30.1);
}

TEST(Setting, ByTheNameOfAnotherThreadIsRefusedByLine) {
  Rig rig = nut_before_shank(shouldered());
  rig.job.adjust[0].thread = "M14x1.5";
  rig.job.adjust[0].line = 40;
  rig.want(0.05, 0.2);
  const Error error = test::error_of([&] { (void)setting_of(rig); });
  EXPECT_THAT(error.what(), HasSubstr("line 40"));
  EXPECT_THAT(error.what(), HasSubstr("the screw of \"Nut\" is 16"));
  EXPECT_THAT(error.cure(), HasSubstr("M16"));
}

// The screw's tip stands 0.1 off the bottom of its hole: its head goes no nearer than 29.9.
TEST(SettingRoom, OfAScrewEndsAtTheBottomOfItsHole) {
  Rig rig;
  rig.add(named(turned_part({{0, -20}, {30, -20}, {30, 0}, {kBore, 0}, {kBore, -15}, {0, -15}}),
                "Base", 9e4),
          0.0);
  rig.add(named(turned_part({{0, -14.9}, {8, -14.9}, {8, 30}, {12, 30}, {12, 40}, {0, 40}}),
                "Screw", 1e4),
          0.0);
  rig.add(named(ring_part(8.2, 25, 0, 29.8), "Wheel", 5e4), 0.0);
  Adjust screw;
  screw.part = "Screw";
  screw.thread = "M16";
  rig.job.adjust.push_back(screw);
  rig.want(0.02, 0.2);
  const Finding finding = setting_of(rig);
  // 30 - 0.1, either part's length 0.002 off.
  EXPECT_NEAR(number(finding.found, "range_min_mm"), 29.904, kNear);
  EXPECT_THAT(worded(finding.found, "metal"), HasSubstr("Screw meets Base at 29.9"));
}

// A hub that is fixed to the nut goes with it: it stands 0.15 before the stud's flange.
TEST(SettingRoom, CountsWhatThePartCarriesAlong) {
  Rig rig = nut_before_shank(shouldered(), 16.5);
  rig.look.model.occurrences[OccurrenceId(3)].frame = test::shifted(0, 0, 31);
  rig.add(named(ring_part(17, 19, 0, 44), "Hub", 1e4), 0.15);
  rig.job.fixed.push_back({"Hub", "Nut", "set screw", 0});
  rig.want(0.05, 2.0);
  EXPECT_THAT(worded(setting_of(rig).found, "metal"), HasSubstr("Hub meets Stud at 30.85"));
}

}  // namespace spotblue::setting_room_test
