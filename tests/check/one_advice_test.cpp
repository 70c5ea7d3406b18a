// No two findings of a report let one feature be made to sizes that share none, unless they say
// that what is wanted contradicts itself.

#include <gtest/gtest.h>

#include <array>
#include <string>
#include <vector>

#include "support/advice.hpp"
#include "support/bench.hpp"
#include "support/chance.hpp"

namespace spotblue::one_advice_test {

using test::Advice;
using test::Bench;
using test::Chance;

Finding make(const std::string& id, double lower, double upper) {
  Finding finding;
  finding.id = id;
  finding.about = {"Bush: bore"};
  finding.advice = say(said::kBore, Reference("Bush"), Limits{Length::mm(lower), Length::mm(upper)},
                       DrawnSize{Length::mm(20.0)});
  return finding;
}

TEST(OneAdvice, WindowsApartAreFound) {
  EXPECT_EQ(Advice({make("radial-1", 20.0, 20.1), make("make-1", 20.2, 20.3)}).contradiction(),
            "Bush: bore by radial-1 and by make-1");
}

TEST(OneAdvice, WindowsThatShareASizeAreNone) {
  EXPECT_EQ(Advice({make("radial-1", 20.0, 20.2), make("make-1", 20.2, 20.3)}).contradiction(), "");
}

TEST(OneAdvice, AContradictionThatIsReportedIsNone) {
  Finding told;
  told.id = "make-2";
  told.about = {"Bush: bore"};
  told.advice = say(said::kSuitsNotBoth, Reference("Bush: bore"), "one", "other", Length::mm(0.1));
  EXPECT_EQ(
      Advice({make("radial-1", 20.0, 20.1), make("make-1", 20.2, 20.3), told}).contradiction(), "");
}

// Rings in one another, each surface perhaps in two fits, to make or as found, at sizes about
// their nominals.
Bench random_rings(Chance& chance) {
  Bench bench;
  const std::size_t parts = 3 + chance.below(4);
  std::vector<OccurrenceId> number;
  for (std::size_t i = 0; i < parts; ++i) {
    number.push_back(bench.part("Ring " + std::to_string(i)));
    JobPart& part = bench.declare("Ring " + std::to_string(i),
                                  chance.in(0.5) ? PartState::to_make : PartState::as_found,
                                  chance.in(0.7) ? Drawn::at_the_size_wanted : Drawn::at_nominal);
    part.material = chance.in(0.8) ? "carbon steel 1045" : "";
  }
  const std::array<const char*, 5> classes{"H7/s6", "H7/g6", "H8/f7", "H7/h6", "H7/p6"};
  for (std::size_t i = 0; i + 1 < parts; ++i) {
    const double nominal = 20.0 + 10.0 * static_cast<double>(i);
    const std::string size = std::to_string(static_cast<int>(nominal));
    const FeatureRef shaft =
        bench.outside(number[i], "outside " + size, nominal + chance.size(-0.06, 0.06));
    for (std::size_t j = i + 1; j < parts && (j == i + 1 || chance.in(0.4)); ++j) {
      const std::string name = "bore " + size + " of " + std::to_string(j);
      bench.seat(bench.bore(number[j], name, nominal + chance.size(-0.06, 0.06)), shaft);
      const std::string hole = "Ring " + std::to_string(j) + ": " + name;
      const std::string in = "Ring " + std::to_string(i) + ": outside " + size;
      if (chance.in(0.8)) {
        bench.want(hole, in, test::iso(classes.at(chance.below(classes.size()))));
      } else {
        const double least = chance.size(-0.05, 0.05);
        bench.want(hole, in, ClearanceLimits{Length::mm(least), Length::mm(least + 0.04)});
      }
    }
    if (chance.in(0.2)) {
      bench.job.sizes.push_back({"Ring " + std::to_string(i) + ": outside " + size,
                                 Limits{Length::mm(nominal - 0.02), Length::mm(nominal + 0.02)},
                                 {},
                                 {}});
    }
  }
  return bench;
}

TEST(OneAdvice, HoldsOverRandomRings) {
  Chance chance(41);
  std::size_t windows = 0;
  for (int round = 0; round < 400; ++round) {
    const Bench bench = random_rings(chance);
    const std::vector<Finding> findings = bench.findings();
    const Advice advice(findings);
    windows += advice.windows().size();
    EXPECT_EQ(advice.contradiction(), "") << "round " << round;
  }
  EXPECT_GT(windows, 400U);
}

}  // namespace spotblue::one_advice_test
