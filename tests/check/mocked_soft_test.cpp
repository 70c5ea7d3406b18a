// End play over a soft washer, by hand: journal 50 less wheel 45 less what is left of the washer.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>

#include "check/mocked_up.hpp"
#include "spotblue/report/sentence_text.hpp"
#include "support/findings.hpp"

namespace spotblue::mocked_soft_test {

using test::number;
using ::testing::HasSubstr;

constexpr const char* kWheel = R"(
title = "Wheel over a felt washer"
[[part]]
name = "Stud"
kind = "turned"
outside = [
  { diameter = 60, length = 10 },
  { name = "journal", diameter = 30, length = 50 },
  { name = "end", diameter = 20, length = 20 },
]
[[part]]
name = "Felt washer"
kind = "ring"
outside = 50
inside = 30.6
thickness = 4
[[part]]
name = "Wheel"
kind = "ring"
outside = 100
inside = 30.1
thickness = 45
[[part]]
name = "Keeper"
kind = "ring"
outside = 60
inside = 20.05
thickness = 8
[[place]]
part = "Stud"
at = 0
[[place]]
part = "Felt washer"
at = 10
[[place]]
part = "Wheel"
at = 14
[[place]]
part = "Keeper"
at = 60
)";

Finding play(const std::string& felt) {
  const CheckResult result = test::checked(kWheel, R"(
[settings]
default_uncertainty = 0.002
[conditions]
running_c = 60
[[parts]]
part = "Stud"
material = "carbon steel 1045"
[[parts]]
part = "Wheel"
material = "carbon steel 1045"
[[parts]]
part = "Keeper"
material = "carbon steel 1045"
[[fixed]]
parts = ["Keeper", "Stud"]
by = "screw"
[[turning]]
part = "Wheel"
rpm = 50
duty = "no load, slow"
[[wants]]
of = "Wheel"
kind = "end play"
gap = [1.9, 2.6]
[[parts]]
part = "Felt washer"
material = "felt"
)" + felt);
  for (const Finding& finding : test::of_kind(result, "end play")) {
    if (!finding.about.empty() && finding.about[0] == "Wheel") {
      return finding;
    }
  }
  ADD_FAILURE() << "no end play of the wheel";
  return {};
}

// 4 less 1 to 1.5 leaves 2.5 to 3: 2 to 2.5 of play.
TEST(SoftPart, WithThicknessAndSqueezeThePlayIsDecided) {
  const Finding finding = play("thickness = 4\nsqueeze = [1, 1.5]\n");
  EXPECT_EQ(finding.outcome, Outcome::conforming) << text_of(finding.advice);
  EXPECT_NEAR(number(finding.found, "end_play_min_mm"), 2.0, 0.02);
  EXPECT_NEAR(number(finding.found, "end_play_max_mm"), 2.5, 0.02);
}

TEST(SoftPart, SqueezedTooLittleForThePlayDoesNotConform) {
  EXPECT_EQ(play("thickness = 4\nsqueeze = [0, 0.1]\n").outcome, Outcome::nonconforming);
}

TEST(SoftPart, WithoutThemThePlayIsUndecidedAndWhatIsMissingIsTold) {
  const Finding finding = play("");
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("thickness and squeeze of Felt washer"));
}

TEST(SoftPart, WithItsThicknessAloneTheSqueezeIsAskedFor) {
  EXPECT_THAT(text_of(play("thickness = 4\n").advice), HasSubstr("say squeeze of Felt washer"));
}

}  // namespace spotblue::mocked_soft_test
