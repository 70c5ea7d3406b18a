// Loads of bearings against print, by hand and by their own law; tests/reference/SOURCES.md has the
// sources. Python holds them against SciPy (mechanics_strength_test.py).
#include "spotblue/mechanics/bearing_loads.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <limits>
#include <ostream>
#include <random>
#include <sstream>

#include "spotblue/base/error.hpp"
#include "support/csv.hpp"
#include "support/thrown.hpp"

namespace spotblue::bearing_loads_test {

using test::CsvRow;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

constexpr double kNear = 1e-9;

std::vector<double> numbers_of(const std::string& text) {
  std::vector<double> numbers;
  std::istringstream all(text);
  for (std::string one; std::getline(all, one, ';');) {
    numbers.push_back(std::stod(one));
  }
  return numbers;
}

struct PrintedBeam {
  std::string name;
  std::vector<StationForce> forces;
  std::vector<Length> bearings;
  std::vector<double> loads;
  double rounding = 0.0;  // half a digit of the print
};

void PrintTo(const PrintedBeam& beam, std::ostream* out) { *out << beam.name; }

// Worked in the units of the print: statics knows none.
std::vector<PrintedBeam> printed() {
  std::vector<PrintedBeam> beams;
  for (const CsvRow& row : test::read_reference("beam_examples.csv")) {
    PrintedBeam beam;
    beam.name = row.at("example");
    std::istringstream all(row.at("forces"));
    for (std::string entry; std::getline(all, entry, ';');) {
      const auto colon = entry.find(':');
      beam.forces.push_back(
          {Length::mm(std::stod(entry.substr(0, colon))), std::stod(entry.substr(colon + 1))});
    }
    for (const double place : numbers_of(row.at("bearings"))) {
      beam.bearings.push_back(Length::mm(place));
    }
    beam.loads = numbers_of(row.at("loads"));
    beam.rounding = 0.5 * std::pow(10.0, -test::number(row, "digits")) + kNear;
    beams.push_back(beam);
  }
  return beams;
}

class PrintedBeams : public testing::TestWithParam<PrintedBeam> {};

TEST_P(PrintedBeams, AreMetWithinTheRoundingOfThePrint) {
  const PrintedBeam& beam = GetParam();
  const BearingLoads got = bearing_loads(beam.forces, beam.bearings, LoadSharing::by_statics);
  ASSERT_EQ(got.loads_n.size(), beam.loads.size());
  for (std::size_t i = 0; i < beam.loads.size(); ++i) {
    EXPECT_NEAR(got.loads_n[i], beam.loads[i], beam.rounding);
  }
  EXPECT_EQ(got.moment_nm, 0.0);
}

INSTANTIATE_TEST_SUITE_P(Printed, PrintedBeams, testing::ValuesIn(printed()));

// 40 N at 30 and 10 N at -20 about 5: 40 x 25 - 10 x 25 = 750 N mm.
TEST(BearingLoads, ALoneBearingTakesAllAndTheMomentAboutIt) {
  const std::array forces{StationForce{Length::mm(30), 40.0}, StationForce{Length::mm(-20), 10.0}};
  const std::array bearings{Length::mm(5)};
  const BearingLoads got = bearing_loads(forces, bearings, LoadSharing::by_statics);
  EXPECT_THAT(got.loads_n, ElementsAre(50.0));
  EXPECT_NEAR(got.moment_nm, 0.750, kNear);
}

TEST(BearingLoads, OfThreeBearingsAreNotKnownByStatics) {
  const std::array forces{StationForce{Length::mm(30), 40.0}};
  const std::array bearings{Length::mm(0), Length::mm(20), Length::mm(60)};
  const BearingLoads got = bearing_loads(forces, bearings, LoadSharing::by_statics);
  EXPECT_THAT(got.loads_n, IsEmpty());
  EXPECT_THAT(got.unknown, HasSubstr("3 bearings"));
}

// 90 N at 30 over bearings at 0, 20, 60: 30 each; 90 x 30 - 30 x (0 + 20 + 60) = 300 N mm.
TEST(BearingLoads, AreSharedEvenlyByDeclarationAndTheMomentThatThisLeavesIsTold) {
  const std::array forces{StationForce{Length::mm(30), 90.0}};
  const std::array bearings{Length::mm(0), Length::mm(20), Length::mm(60)};
  const BearingLoads got = bearing_loads(forces, bearings, LoadSharing::evenly);
  EXPECT_THAT(got.loads_n, ElementsAre(30.0, 30.0, 30.0));
  EXPECT_NEAR(got.moment_nm, 0.300, kNear);
  EXPECT_THAT(got.unknown, IsEmpty());
}

TEST(BearingLoads, NothingCarriedIsNoLoad) {
  const std::array bearings{Length::mm(0), Length::mm(20)};
  EXPECT_THAT(bearing_loads({}, bearings, LoadSharing::by_statics).loads_n, ElementsAre(0.0, 0.0));
}

TEST(BearingLoads, RefuseWhatIsNoNumberByTheNameOfTheArgument) {
  const double none = std::numeric_limits<double>::quiet_NaN();
  const double endless = std::numeric_limits<double>::infinity();
  const auto refused = [](double at, double force, double bearing) {
    return test::error_of([&] {
             const std::array forces{StationForce{Length::mm(1), 1.0},
                                     StationForce{Length::mm(at), force}};
             const std::array bearings{Length::mm(0), Length::mm(bearing)};
             return bearing_loads(forces, bearings, LoadSharing::by_statics);
           })
        .place();
  };
  EXPECT_EQ(refused(none, 1.0, 5.0), "forces[1].at_mm");
  EXPECT_EQ(refused(1.0, endless, 5.0), "forces[1].force_n");
  EXPECT_EQ(refused(1.0, 1.0, none), "bearings[1]");
  EXPECT_EQ(refused(1.0, 1.0, 0.0), "bearings[1]");
}

TEST(BearingLoads, RefuseAPartWithoutABearing) {
  const Error error = test::error_of([] { return bearing_loads({}, {}, LoadSharing::by_statics); });
  EXPECT_THAT(error.what(), HasSubstr("bearings"));
}

// Sum of forces and sum of moments about a point of no bearing, over forces and places of any sign.
TEST(BearingLoads, BalanceForcesAndMomentsWhateverTheForcesAre) {
  std::mt19937_64 draw(20261201);
  std::uniform_real_distribution<double> place(-500.0, 500.0);
  std::uniform_real_distribution<double> size(-1e4, 1e4);
  for (int round = 0; round < 2000; ++round) {
    SCOPED_TRACE(round);
    std::vector<StationForce> forces(1 + round % 6);
    double sum = 0.0;
    double moment = 0.0;
    for (StationForce& force : forces) {
      force = {Length::mm(place(draw)), size(draw)};
      sum += force.force_n;
      moment += force.force_n * force.at.in_mm();
    }
    const std::array bearings{Length::mm(place(draw)), Length::mm(place(draw))};
    const BearingLoads got = bearing_loads(forces, bearings, LoadSharing::by_statics);
    double scale = 1.0;
    for (const double load : got.loads_n) {
      scale += 500.0 * std::abs(load);
    }
    EXPECT_NEAR(got.loads_n[0] + got.loads_n[1], sum, 1e-12 * scale);
    EXPECT_NEAR(got.loads_n[0] * bearings[0].in_mm() + got.loads_n[1] * bearings[1].in_mm(), moment,
                1e-11 * scale);
  }
}

}  // namespace spotblue::bearing_loads_test
