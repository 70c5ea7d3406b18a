// What a stranger found on whole jobs: rings that are cut through, and bodies with two loads.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "check/mocked_up.hpp"
#include "spotblue/base/error.hpp"
#include "support/thrown.hpp"

namespace spotblue::test::mocked_slit_test {

using ::testing::HasSubstr;

std::string hub(const std::string& more) {
  return "title = \"Slit\"\nunit = \"mm\"\n"
         "[[part]]\nname = \"Hub\"\nkind = \"turned\"\noutside = [{ diameter = 60, length = 20 }]\n"
         "inside = [{ diameter = 40, through = true }]\n" +
         more +
         "[[part]]\nname = \"Pin\"\nkind = \"turned\"\n"
         "outside = [{ name = \"seat\", diameter = 40.05, length = 30 }]\n"
         "[[place]]\npart = \"Hub\"\nat = 0\n[[place]]\npart = \"Pin\"\nat = -5\n";
}

const std::string kPressed =
    "[[parts]]\npart = \"Hub\"\nmaterial = \"carbon steel 1045\"\n"
    "[[parts]]\npart = \"Pin\"\nmaterial = \"carbon steel 1045\"\n"
    "[[fits]]\nhole = \"Hub: bore 40\"\nshaft = \"Pin: seat\"\ninterference = [0.02, 0.08]\n";

TEST(SlitHub, HoldsNothingThatIsCertain) {
  const auto whole = of_kind(checked(hub(""), kPressed), "press fit");
  ASSERT_EQ(whole.size(), 1U);
  EXPECT_EQ(whole.front().outcome, Outcome::conforming);
  for (const char* cut :
       {"keyways = [{ width = 4, depth = 12 }]\n", "keyways = [{ width = 8, depth = 3 }]\n",
        "cross_holes = [{ at = 10, diameter = 6, through = true }]\n"}) {
    const auto found = of_kind(checked(hub(cut), kPressed), "press fit");
    ASSERT_EQ(found.size(), 1U) << cut;
    EXPECT_EQ(found.front().outcome, Outcome::undecided) << cut;
  }
}

TEST(TwoLoads, OnOneBodyAreRefusedNotDropped) {
  const std::string job =
      kPressed +
      "[[turning]]\npart = \"Hub\"\nrpm = 100\nduty = \"continuous\"\nload_n = 500\n"
      "[[turning]]\npart = \"Pin\"\nrpm = 100\nduty = \"continuous\"\nload_n = 500\n";
  const Error error = error_of([&] { return checked(hub(""), job); });
  EXPECT_THAT(error.rule(), HasSubstr("judged by one load"));
  EXPECT_THAT(error.place(), HasSubstr("turning"));
}

}  // namespace spotblue::test::mocked_slit_test
