#include "spotblue/standards/threads.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <ostream>
#include <random>
#include <string>
#include <vector>

#include "spotblue/standards/iso286.hpp"
#include "support/csv.hpp"

namespace spotblue::threads_test {

using test::CsvRow;
using test::number;
using test::read_reference;

ThreadSize known(const std::string& designation) {
  const auto thread = find_thread(designation);
  EXPECT_TRUE(thread.has_value()) << designation;
  return thread.value_or(ThreadSize{});
}

TEST(Threads, MinorDiametersArePrintedOnes) {
  int checked = 0;
  for (const CsvRow& row : read_reference("threads_minor_diameter.csv")) {
    const Length minor = known(row.at("designation")).minor_diameter;
    const double got = row.at("unit") == "in" ? minor.in_inch() : minor.in_mm();
    EXPECT_NEAR(got, number(row, "minor_diameter"), number(row, "rounding"))
        << row.at("designation") << " " << row.at("source");
    ++checked;
  }
  EXPECT_EQ(checked, 131);
}

TEST(Threads, TapDrillsArePrintedOnes) {
  for (const CsvRow& row : read_reference("threads_tap_drill.csv")) {
    EXPECT_NEAR(known(row.at("designation")).tap_drill.in_mm(), number(row, "tap_drill_mm"), 1e-9)
        << row.at("designation") << " " << row.at("source");
  }
}

TEST(Threads, TapDrillLiesBetweenMinorAndPitchDiameter) {
  for (const ThreadSize& thread : threads()) {
    // A drill is a standard size: up to 0.06 mm or 3 % of the pitch under the basic minor diameter.
    const Length pitch_diameter = thread.major_diameter - thread.pitch * 0.649519;
    EXPECT_GE(thread.tap_drill.in_mm() + 0.06 + 0.03 * thread.pitch.in_mm(),
              thread.minor_diameter.in_mm())
        << thread.designation;
    // A tapping screw displaces the metal of a wider hole.
    const bool tapping = thread.designation.starts_with("ST");
    EXPECT_LT(thread.tap_drill, tapping ? thread.major_diameter : pitch_diameter)
        << thread.designation;
  }
}

TEST(Threads, EachDesignationIsFoundOnceInAnyCase) {
  const std::vector<ThreadSize> all = threads();
  for (std::size_t i = 0; i < all.size(); ++i) {
    EXPECT_EQ(known(all[i].designation).major_diameter, all[i].major_diameter);
    for (std::size_t j = 0; j < i; ++j) {
      EXPECT_NE(all[i].designation, all[j].designation);
    }
  }
  EXPECT_TRUE(find_thread("m10X1").has_value());
  EXPECT_FALSE(find_thread("M10x1.1").has_value());
}

TEST(Threads, ThePitchesOfIso262AreTheUsualOnes) {
  for (const char* usual : {"M6", "M8x1", "M10x1.25", "M20", "M20x1.5", "M20x2", "3/8-24 UNF"}) {
    EXPECT_TRUE(known(usual).usual) << usual;
  }
  for (const char* rare : {"M6x0.75", "M8x0.75", "M20x1", "M25x1.5", "M36x1.5"}) {
    EXPECT_FALSE(known(rare).usual) << rare;
  }
}

TEST(Threads, TheFirstPossibleOneIsTheOneThatIsSaid) {
  for (const double hole : {6.8, 8.5, 8.75, 17.5, 18.95, 30.0}) {
    for (const double screw : {8.0, 9.9, 10.0, 19.95, 20.0}) {
      const auto said = thread_of(Diameter(Length::mm(hole)), Diameter(Length::mm(screw)));
      const auto all = possible_threads(Diameter(Length::mm(hole)), Diameter(Length::mm(screw)));
      EXPECT_EQ(said.has_value(), !all.empty()) << hole << " " << screw;
      EXPECT_EQ(said.value_or(""), all.empty() ? "" : all.front()) << hole << " " << screw;
    }
  }
}

// M10 (tap drill 8.5) and M10x1.25 (8.8): 8.65 lies between and may be either.
TEST(Threads, AHoleBetweenTwoDrillsMayBeEither) {
  const auto all = possible_threads(Diameter(Length::mm(8.65)), Diameter(Length::mm(10.0)));
  EXPECT_NE(std::ranges::find(all, "M10"), all.end());
  EXPECT_NE(std::ranges::find(all, "M10x1.25"), all.end());
}

TEST(Threads, SofterMetalNeedsMoreOfIt) {
  EXPECT_LT(usual_engagement(MaterialKind::steel), usual_engagement(MaterialKind::iron));
  EXPECT_LT(usual_engagement(MaterialKind::iron), usual_engagement(MaterialKind::aluminium));
}

bool is_met_often(const ThreadSize& thread) {
  const std::string& name = thread.designation;
  return name.starts_with('M') || name.ends_with("UNC") || name.ends_with("UNF");
}

TEST(ThreadOf, EveryThreadIsKnownByMajorDiameterAndTapDrill) {
  for (const ThreadSize& thread : threads()) {
    const auto got = thread_of(Diameter(thread.tap_drill), Diameter(thread.major_diameter));
    ASSERT_TRUE(got.has_value()) << thread.designation;
    const ThreadSize found = known(*got);
    if (is_met_often(thread)) {
      // Two pitches may take one drill; then the coarser is said.
      EXPECT_EQ(found.major_diameter, thread.major_diameter) << thread.designation;
      EXPECT_EQ(found.tap_drill, thread.tap_drill) << thread.designation;
      EXPECT_GE(found.pitch, thread.pitch) << thread.designation;
    } else {
      // Cylinders do not tell 1/2 BSW from 1/2-13, ST4.8 from No. 10.
      EXPECT_NEAR(found.major_diameter.in_mm(), thread.major_diameter.in_mm(), 0.04)
          << thread.designation << " " << *got;
    }
  }
}

TEST(ThreadOf, EveryThreadIsKnownByMajorAndMinorDiameter) {
  for (const ThreadSize& thread : threads()) {
    const auto got = thread_of(Diameter(thread.minor_diameter), Diameter(thread.major_diameter));
    ASSERT_TRUE(got.has_value()) << thread.designation;
    if (is_met_often(thread)) {
      EXPECT_EQ(*got, thread.designation);
    } else {
      // Cylinders do not tell 5 BA from No. 5-40, ST3.5 from No. 6-32, 1/4 BSF from 1/4-20.
      const ThreadSize found = known(*got);
      EXPECT_NEAR(found.major_diameter.in_mm(), thread.major_diameter.in_mm(), 0.04)
          << thread.designation << " " << *got;
    }
  }
}

TEST(ThreadOf, ScrewAtEitherLimitOf6gIsStillAScrew) {
  for (const CsvRow& row : read_reference("threads_6g_major.csv")) {
    const ThreadSize thread = known(row.at("designation"));
    for (const std::string column : {"major_max_mm", "major_min_mm"}) {
      EXPECT_TRUE(thread_of(Diameter(thread.tap_drill), Diameter(Length::mm(number(row, column))))
                      .has_value())
          << row.at("designation") << " " << column;
    }
  }
}

TEST(ThreadOf, HoleAtEitherLimitOf6HIsTheSameThread) {
  for (const CsvRow& row : read_reference("threads_6h_minor.csv")) {
    const ThreadSize thread = known(row.at("designation"));
    for (const std::string column : {"minor_min_mm", "minor_max_mm"}) {
      EXPECT_TRUE(
          thread_of(Diameter(Length::mm(number(row, column))), Diameter(thread.major_diameter))
              .has_value())
          << row.at("designation") << " " << column;
    }
  }
}

struct Pair {
  const char* name;
  double hole_mm;
  double screw_mm;
  const char* thread;  // nullptr: none
};
void PrintTo(const Pair& row, std::ostream* out) { *out << row.hole_mm << "/" << row.screw_mm; }

class ThreadOfPair : public testing::TestWithParam<Pair> {};

TEST_P(ThreadOfPair, IsWhatAFitterWouldSay) {
  const auto got = thread_of(Diameter(Length::mm(GetParam().hole_mm)),
                             Diameter(Length::mm(GetParam().screw_mm)));
  EXPECT_EQ(got, GetParam().thread == nullptr ? std::nullopt
                                              : std::optional<std::string>(GetParam().thread));
}

INSTANTIATE_TEST_SUITE_P(
    Pairs, ThreadOfPair,
    testing::Values(
        Pair{"Coarse", 8.5, 10.0, "M10"}, Pair{"Fine", 9.0, 10.0, "M10x1"},
        Pair{"FineOfThree", 8.8, 10.0, "M10x1.25"}, Pair{"ScrewBelowNominal", 6.8, 7.9, "M8"},
        Pair{"InchBesideM8", 6.53, 7.9375, "5/16-18 UNC"},
        Pair{"QuarterInch", 5.105, 6.35, "1/4-20 UNC"}, Pair{"LockNut", 23.5, 25.0, "M25x1.5"},
        Pair{"SameSize", 10.0, 10.0, nullptr}, Pair{"Running", 10.02, 10.0, nullptr},
        Pair{"ClearanceHole", 11.0, 10.0, nullptr}, Pair{"PressFit", 10.0, 10.05, nullptr},
        Pair{"HeavyShrinkFit", 100.0, 100.3, nullptr}, Pair{"DeepOverlap", 6.0, 10.0, nullptr},
        Pair{"Tiny", 0.001, 0.002, nullptr}),
    [](const auto& row) { return row.param.name; });

INSTANTIATE_TEST_SUITE_P(
    OldAndPipe, ThreadOfPair,
    testing::Values(
        Pair{"OldMetric17", 1.35, 1.7, "M1.7"}, Pair{"OldMetric23", 1.9, 2.3, "M2.3"},
        Pair{"OldMetric26", 2.1, 2.6, "M2.6"}, Pair{"TappingScrew", 3.5, 4.22, "ST4.2"},
        Pair{"TappingScrewInPlastic", 3.6, 4.8, "ST4.8"}, Pair{"GasHalf", 18.631, 20.955, "G 1/2"},
        Pair{"GasQuarterDrilled", 11.8, 13.157, "G 1/4"},
        Pair{"TaperHalf", 18.25, 21.336, "1/2-14 NPT"}, Pair{"Whitworth", 10.5, 12.7, "1/2 BSW"},
        Pair{"WhitworthFine", 8.3, 9.525, "3/8 BSF"}, Pair{"TwoBA", 4.0, 4.7, "2 BA"},
        Pair{"M6NotNoughtBA", 5.0, 6.0, "M6"}, Pair{"M4NotThreeBA", 3.35, 4.0, "M4"},
        Pair{"QuarterIsUnified", 5.1, 6.35, "1/4-20 UNC"},
        Pair{"NoThreadOfOurs", 1.0, 1.7, nullptr}, Pair{"ShaftInNoThread", 7.0, 9.6, nullptr}),
    [](const auto& row) { return row.param.name; });

// The heaviest fit a press is used for is about H7/x6; the least overlap taken for a thread is
// beyond it at every size and pitch.
TEST(ThreadOf, NoPressFitIsTakenForAThread) {
  for (const ThreadSize& thread : threads()) {
    const Length heaviest = -fit(thread.major_diameter, "H7/x6").least_clearance;
    for (const double share : {0.5, 0.8, 1.0}) {
      EXPECT_EQ(thread_of(Diameter(thread.major_diameter - heaviest * share),
                          Diameter(thread.major_diameter)),
                std::nullopt)
          << thread.designation;
    }
  }
}

// A thread is said only where hole and screw are its own, whatever else they may be.
TEST(ThreadOf, AnyPairThatIsNamedIsNearThatThread) {
  std::mt19937_64 chance(7);
  int named = 0;
  for (int i = 0; i < 20'000; ++i) {
    const double screw =
        std::exp(std::uniform_real_distribution(std::log(1.0), std::log(80.0))(chance));
    const double hole = screw * std::uniform_real_distribution(0.6, 1.01)(chance);
    const auto got = thread_of(Diameter(Length::mm(hole)), Diameter(Length::mm(screw)));
    if (!got) {
      continue;
    }
    ++named;
    const ThreadSize thread = known(*got);
    const double pitch = thread.pitch.in_mm();
    const double low = std::min(thread.minor_diameter, thread.tap_drill).in_mm();
    const double high = std::max(thread.minor_diameter, thread.tap_drill).in_mm();
    SCOPED_TRACE(std::to_string(hole) + "/" + std::to_string(screw) + " " + *got);
    EXPECT_LE(std::abs(screw - thread.major_diameter.in_mm()), 0.08 + 0.13 * pitch + 1e-9);
    EXPECT_GE(hole, low - 0.08 - 0.15 * pitch - 1e-9);
    EXPECT_LE(hole, high + 0.08 + 0.15 * pitch + 1e-9);
    EXPECT_GE(screw - hole, 0.4 * pitch - 1e-9);
  }
  EXPECT_GT(named, 1000);
  EXPECT_LT(named, 9000);
}

// A press fit of any size is none, whichever thread is of about that diameter.
TEST(ThreadOf, NoPressFitOfAnySizeIsTakenForAThread) {
  std::mt19937_64 chance(11);
  for (int i = 0; i < 5'000; ++i) {
    const double nominal =
        std::exp(std::uniform_real_distribution(std::log(1.0), std::log(130.0))(chance));
    const Length heaviest = -fit(Length::mm(nominal), "H7/x6").least_clearance;
    const double share = std::uniform_real_distribution(0.0, 1.0)(chance);
    const double shaft = nominal + share * heaviest.in_mm();
    EXPECT_EQ(thread_of(Diameter(Length::mm(nominal)), Diameter(Length::mm(shaft))), std::nullopt)
        << nominal << " " << shaft;
  }
}

}  // namespace spotblue::threads_test
