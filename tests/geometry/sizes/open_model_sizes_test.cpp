// Published sizes and fits found in openly licensed models, read where they lie. The part names in
// these files are never printed. Source of every check value: open-models/SOURCES.md.

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <regex>
#include <string>

#include "spotblue/geometry/look.hpp"
#include "support/csv.hpp"
#include "support/open_model.hpp"

namespace spotblue::open_model_sizes_test {

namespace fs = std::filesystem;

std::vector<double> diameters(const Model& model) {
  std::vector<double> all;
  for (const Product& product : model.products) {
    for (const Cylinder& cylinder : product.cylinders) {
      all.push_back(cylinder.diameter);
    }
  }
  return all;
}

bool has(const std::vector<double>& all, double wanted, double within) {
  return std::any_of(all.begin(), all.end(),
                     [&](double one) { return std::abs(one - wanted) <= within; });
}

struct Sizes {
  const char* file;
  std::vector<double> diameters;  // mm
};
void PrintTo(const Sizes& one, std::ostream* out) { *out << one.file; }

class PublishedSizes : public testing::TestWithParam<Sizes> {};

TEST_P(PublishedSizes, AreAmongTheCylinders) {
  const fs::path file = test::open_model(GetParam().file);
  SKIP_WITHOUT_OPEN_MODEL(file);
  const std::vector<double> found = diameters(read_step(file, {}, Completeness::all_or_error));
  for (const double wanted : GetParam().diameters) {
    EXPECT_TRUE(has(found, wanted, 1e-4)) << "diameter " << wanted;
  }
}

INSTANTIATE_TEST_SUITE_P(
    OpenModels, PublishedSizes,
    testing::Values(
        Sizes{"pmi/ftc07-geometry-ap203.stp", {6.350, 7.1374, 22.225, 4.3942, 15.0825}},
        Sizes{"pmi/ftc07-ap242e2.stp", {6.350, 7.1374, 22.225, 4.3942, 15.0825}},
        Sizes{"pmi/ftc09-ap242e1.stp",
              {5.9436, 19.05, 5.6134, 6.35, 9.525, 3.96876, 8.001, 7.1374}},
        Sizes{"pmi/ftc10-ap242e2-class-G6.stp", {6, 2.5, 5.5, 10, 7, 3.5}},
        Sizes{"pmi/ftc10-geometry-ap203.stp", {6, 2.5, 5.5, 10, 7, 3.5}},
        Sizes{"pmi/ctc02-ap242e2.stp", {12, 22, 40, 52, 100}},
        Sizes{"pmi/ctc03-ap242e2.stp", {11.1252, 15.875, 27.051, 38.1, 50.8}},
        Sizes{"pmi/machined-box-part-inch-ap242.stp", {9.525, 6.350, 5.588, 4.7625, 3.810, 3.2512}},
        Sizes{"mating/spindle-d3p99.step", {3.990}},
        Sizes{"mating/toothed-wheel-bore-4H7.step", {4.000}},
        Sizes{"mating/double-wheel-with-journals-d3p99.step", {3.990}},
        Sizes{"parts/ported-block-inch.step", {5.08, 6.35, 6.7564, 11.1125, 25.4}},
        Sizes{"dirty/doubtful-unit-connecting-rod.step", {1.5, 1.03446, 0.79056, 0.43984}}));

class SplineCylinders : public testing::TestWithParam<Sizes> {};

TEST_P(SplineCylinders, AreRecognised) {
  const fs::path file = test::open_model(GetParam().file);
  SKIP_WITHOUT_OPEN_MODEL(file);
  const Model model = read_step(file, {}, Completeness::all_or_error);
  for (const Product& product : model.products) {
    for (const Cylinder& cylinder : product.cylinders) {
      EXPECT_EQ(cylinder.source, SurfaceSource::bspline);
    }
  }
  const std::vector<double> found = diameters(model);
  for (const double wanted : GetParam().diameters) {
    EXPECT_TRUE(has(found, wanted, 1e-4)) << "diameter " << wanted;
  }
}

INSTANTIATE_TEST_SUITE_P(OpenModels, SplineCylinders,
                         testing::Values(Sizes{"dirty/all-cylinders-are-bsplines-ctc03.stp",
                                               {11.1125, 15.875, 27.051, 38.1, 50.8}}));

// Plain "nX diameter +-" lines of the index published with the cases; what stands in parentheses
// is for reference only, and datum targets and spheres are no cylinders.
std::vector<double> published(const std::string& wanted_case) {
  const std::regex size("^(?:[0-9]+X )?(?:Ø|∅) ?([0-9]*\\.[0-9]+|[0-9]+)\\s*(?:±|\\+|mm|$).*");
  std::ifstream csv(test::open_model("pmi/published-dimensions.csv"));
  std::vector<double> all;
  for (std::string line; std::getline(csv, line);) {
    const auto cells = test::csv_cells(line);
    std::smatch parts;
    if (cells.size() >= 6 && cells[0] == wanted_case && std::regex_match(cells[3], parts, size)) {
      all.push_back(std::stod(parts[1]) * (cells[5] == "inch" ? 25.4 : 1.0));
    }
  }
  return all;
}

struct Published {
  const char* name;
  const char* file;
};
void PrintTo(const Published& one, std::ostream* out) { *out << one.name; }

class PublishedIndex : public testing::TestWithParam<Published> {};

TEST_P(PublishedIndex, NamesDiametersThatAreFound) {
  const fs::path file = test::open_model(GetParam().file);
  SKIP_WITHOUT_OPEN_MODEL(file);
  const std::vector<double> wanted = published(GetParam().name);
  ASSERT_FALSE(wanted.empty());
  const std::vector<double> found = diameters(read_step(file, {}, Completeness::all_or_error));
  for (const double one : wanted) {
    // Printed to a thousandth of an inch where the model has sixteenths: half the last digit.
    EXPECT_TRUE(has(found, one, 0.0005 * 25.4 + 1e-4)) << "diameter " << one;
  }
}

INSTANTIATE_TEST_SUITE_P(OpenModels, PublishedIndex,
                         testing::Values(Published{"ftc06", "pmi/ftc06-ap242e2.stp"},
                                         Published{"ftc07", "pmi/ftc07-ap242e2.stp"},
                                         Published{"ftc08", "pmi/ftc08-ap242e1.stp"},
                                         Published{"ftc09", "pmi/ftc09-ap242e1.stp"},
                                         Published{"ftc10", "pmi/ftc10-ap242e2-class-G6.stp"},
                                         Published{"ftc11", "pmi/ftc11-ap242e1.stp"}));

class Bank : public testing::TestWithParam<const char*> {};

TEST_P(Bank, Has720SeatsOfATenMicrometreClearance) {
  const fs::path file = test::open_model(GetParam());
  SKIP_WITHOUT_OPEN_MODEL(file);
  const Look seen = look(file, {});
  EXPECT_EQ(seen.model.occurrences.size(), 1080U);
  EXPECT_EQ(seen.seats.radial.size(), 720U);
  for (const RadialSeat& seat : seen.seats.radial) {
    EXPECT_NEAR(seat.clearance, 0.0100, 1e-9);
  }
}

INSTANTIATE_TEST_SUITE_P(OpenModels, Bank,
                         testing::Values("mating/bank-1080-occurrences-nested.step",
                                         "mating/bank-1080-occurrences-flat.step"));

TEST(OpenModels, FastenedModuleHasItsMeasuredFits) {
  const fs::path file = test::open_model("mating/fastened-module-heat-set-inserts.step");
  SKIP_WITHOUT_OPEN_MODEL(file);
  // Booleans of knurled inserts take minutes; some of them are done long before.
  LookSettings settings;
  settings.seconds = 40.0;
  const Look seen = look(file, settings);
  const auto has_seat = [&](double hole, double shaft) {
    return std::any_of(seen.seats.radial.begin(), seen.seats.radial.end(), [&](const auto& seat) {
      return std::abs(seat.hole_diameter - hole) < 1e-3 &&
             std::abs(seat.shaft_diameter - shaft) < 1e-3;
    });
  };
  EXPECT_TRUE(has_seat(3.40, 3.00));  // screw in its clearance hole
  EXPECT_TRUE(has_seat(10.2, 10.0));  // collet
  // Inserts of 5.00 in holes of 4.70 are beyond a press fit by the seat limits: overlaps.
  EXPECT_FALSE(has_seat(4.70, 5.00));
  EXPECT_FALSE(seen.fouls.found.empty());
}

TEST(OpenModels, FingerJointedBoxHasNoRoundSeat) {
  const fs::path file = test::open_model("mating/panel-box-10-occurrences-inch.step");
  SKIP_WITHOUT_OPEN_MODEL(file);
  const Look seen = look(file, {});
  EXPECT_TRUE(seen.seats.radial.empty());
  EXPECT_TRUE(seen.seats.threads.empty());
}

}  // namespace spotblue::open_model_sizes_test
