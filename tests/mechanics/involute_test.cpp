#include "spotblue/mechanics/involute.hpp"

#include <gtest/gtest.h>

#include <numbers>
#include <ostream>

#include "spotblue/base/error.hpp"

namespace spotblue::involute_test {

constexpr double kRadians = std::numbers::pi / 180.0;

struct Printed {
  double angle_deg;
  double involute;
  double within;  // half a unit of the last digit printed
  const char* source;
};

void PrintTo(const Printed& row, std::ostream* out) { *out << row.angle_deg << " deg"; }

class InvoluteTable : public testing::TestWithParam<Printed> {};

TEST_P(InvoluteTable, FunctionAgreesWithThePrint) {
  EXPECT_NEAR(involute(GetParam().angle_deg * kRadians), GetParam().involute, GetParam().within)
      << GetParam().source;
}

TEST_P(InvoluteTable, InverseComesBackToTheAngle) {
  // An error of the last digit of the print moves the angle by that over tan^2.
  EXPECT_NEAR(involute_inverse(GetParam().involute) / kRadians, GetParam().angle_deg, 2e-3);
}

INSTANTIATE_TEST_SUITE_P(Print, InvoluteTable,
                         testing::Values(
                             // Involute tables of the handbooks; 20 degrees also tan 20 - 20 pi/180
                             // = 0.3639702343 - 0.3490658504.
                             Printed{10.0, 0.0017941, 5.1e-8, "from memory"},
                             Printed{14.5, 0.0055448, 5.1e-8, "from memory"},
                             Printed{15.0, 0.0061498, 5.1e-8, "from memory"},
                             Printed{20.0, 0.0149044, 5.1e-8, "from memory"},
                             Printed{20.0, 0.0149043839, 5.1e-11, "by hand"},
                             Printed{25.0, 0.0299753, 5.1e-8, "from memory"},
                             Printed{30.0, 0.0537515, 5.1e-8, "from memory"},
                             Printed{45.0, 0.2146018, 5.1e-8, "1 - pi/4, exact"}));

TEST(Involute, InverseUndoesTheFunctionFromNearZeroToSteepAngles) {
  for (const double angle : {1e-6, 1e-3, 0.0299, 0.0301, 0.1, 0.35, 0.8, 1.2, 1.4}) {
    SCOPED_TRACE(angle);
    EXPECT_NEAR(involute_inverse(involute(angle)), angle, 1e-12 * angle + 1e-15);
  }
}

TEST(Involute, OfNothingIsNothing) {
  EXPECT_EQ(involute(0.0), 0.0);
  EXPECT_EQ(involute_inverse(0.0), 0.0);
}

TEST(Involute, AnglesItIsNotDefinedForAreRefused) {
  EXPECT_THROW((void)involute(-0.1), Error);
  EXPECT_THROW((void)involute(0.5 * std::numbers::pi + 1e-9), Error);
  EXPECT_THROW((void)involute_inverse(-1e-9), Error);
}

}  // namespace spotblue::involute_test
