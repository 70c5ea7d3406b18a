// Sizes with classes and limits in openly licensed AP242 files, read where they lie, against the
// figures their makers published. The names of parts in these files are never printed. Source of
// every check value: open-models/SOURCES.md and open-models/pmi/published-dimensions.csv.

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <string>
#include <vector>

#include "spotblue/geometry/read.hpp"
#include "support/csv.hpp"
#include "support/open_model.hpp"

namespace spotblue::semantic_open_models_test {

namespace fs = std::filesystem;

struct Published {
  double nominal, lower, upper;  // of a diameter, in the unit below
  int features;                  // at least so many
};
struct PublishedFile {
  const char* file;
  double unit_mm;
  std::vector<Published> sizes;
};
void PrintTo(const PublishedFile& one, std::ostream* out) { *out << one.file; }

std::size_t features_with(const Model& model, const Published& wanted, double unit) {
  std::size_t features = 0;
  for (const SemanticSize& size : model.semantic_sizes) {
    const auto near = [&](double found, double published) {
      return std::abs(found - published * unit) < 1e-6;
    };
    if (size.limits && size.nominal_mm && near(*size.nominal_mm, wanted.nominal) &&
        near(size.limits->lower_mm, wanted.nominal + wanted.lower) &&
        near(size.limits->upper_mm, wanted.nominal + wanted.upper)) {
      features += size.features.size();
    }
  }
  return features;
}

class PublishedLimits : public testing::TestWithParam<PublishedFile> {};

TEST_P(PublishedLimits, AreReadOnTheirFaces) {
  const fs::path file = test::open_model(GetParam().file);
  SKIP_WITHOUT_OPEN_MODEL(file);
  const Model model = read_step(file, {}, Completeness::accept_partial);
  for (const Published& wanted : GetParam().sizes) {
    EXPECT_GE(features_with(model, wanted, GetParam().unit_mm),
              static_cast<std::size_t>(wanted.features))
        << wanted.nominal << " +" << wanted.upper << " " << wanted.lower;
  }
}

INSTANTIATE_TEST_SUITE_P(
    OpenModels, PublishedLimits,
    testing::Values(
        PublishedFile{"pmi/ctc02-ap242e2.stp",
                      1.0,
                      {{.nominal = 12, .lower = -0.05, .upper = 0.05, .features = 1},
                       {.nominal = 22, .lower = -0.1, .upper = 0.1, .features = 1},
                       {.nominal = 40, .lower = -0.15, .upper = 0.15, .features = 1},
                       {.nominal = 52, .lower = -0.15, .upper = 0.15, .features = 1},
                       {.nominal = 100, .lower = -0.15, .upper = 0.15, .features = 1}}},
        PublishedFile{"pmi/ctc03-ap242e2.stp",
                      25.4,
                      {{.nominal = 0.438, .lower = -0.005, .upper = 0.005, .features = 1},
                       {.nominal = 0.625, .lower = -0.005, .upper = 0.005, .features = 1},
                       {.nominal = 1.065, .lower = -0.003, .upper = 0.003, .features = 1},
                       {.nominal = 1.5, .lower = -0.005, .upper = 0.005, .features = 1},
                       {.nominal = 2.0, .lower = -0.010, .upper = 0.010, .features = 1}}},
        PublishedFile{"pmi/ctc04-ap242e1.stp",
                      1.0,
                      {{.nominal = 6.65, .lower = -0.12, .upper = 0.12, .features = 1},
                       {.nominal = 20, .lower = -0.2, .upper = 0.2, .features = 1}}},
        PublishedFile{
            "pmi/ftc07-ap242e2.stp",
            25.4,
            {{.nominal = 0.250, .lower = 0.0, .upper = 0.003, .features = 4},
             {.nominal = 0.250, .lower = -0.001, .upper = 0.003, .features = 4},
             {.nominal = 0.281, .lower = -0.001, .upper = 0.006, .features = 4},
             // +-.010, published for the same holes, is stated for edges of them in the file.
             {.nominal = 0.875, .lower = -0.020, .upper = 0.020, .features = 3},
             {.nominal = 0.173, .lower = -0.001, .upper = 0.005, .features = 4},
             {.nominal = 0.594, .lower = -0.002, .upper = 0.012, .features = 2}}},
        PublishedFile{"pmi/ftc08-ap242e1.stp",
                      25.4,
                      {{.nominal = 0.213, .lower = -0.001, .upper = 0.005, .features = 10}}},
        PublishedFile{"pmi/ftc09-ap242e1.stp",
                      25.4,
                      {{.nominal = 0.250, .lower = 0.0, .upper = 0.003, .features = 3},
                       {.nominal = 0.281, .lower = -0.008, .upper = 0.008, .features = 1}}},
        // G6 at 3.5 mm is +0.012/+0.004: reference/iso286_hole_deviations.csv and iso286_it.csv.
        PublishedFile{"pmi/ftc10-ap242e2-class-G6.stp",
                      1.0,
                      {{.nominal = 3.5, .lower = 0.004, .upper = 0.012, .features = 3},
                       {.nominal = 6, .lower = -0.15, .upper = 0.15, .features = 1},
                       {.nominal = 2.5, .lower = -0.15, .upper = 0.15, .features = 1}}},
        PublishedFile{"pmi/derived-ftc10-class-G-grade-6-conforming.stp",
                      1.0,
                      {{.nominal = 3.5, .lower = 0.004, .upper = 0.012, .features = 3}}},
        PublishedFile{"dirty/derived-ftc10-grade-written-IT6.stp",
                      1.0,
                      {{.nominal = 3.5, .lower = 0.004, .upper = 0.012, .features = 3}}},
        PublishedFile{"pmi/machined-box-part-inch-ap242.stp",
                      25.4,
                      {{.nominal = 0.375, .lower = -0.005, .upper = 0.005, .features = 1},
                       {.nominal = 0.250, .lower = -0.005, .upper = 0.005, .features = 1},
                       {.nominal = 0.220, .lower = -0.005, .upper = 0.005, .features = 1},
                       {.nominal = 0.150, .lower = -0.005, .upper = 0.005, .features = 1},
                       {.nominal = 0.128, .lower = -0.005, .upper = 0.005, .features = 1}}}));

TEST(OddClassesInOpenModels, AreReadWithANoteOnEachSize) {
  const fs::path file = test::open_model("pmi/ftc10-ap242e2-class-G6.stp");
  SKIP_WITHOUT_OPEN_MODEL(file);
  const Model model = read_step(file, {}, Completeness::accept_partial);
  const auto notes = std::count_if(model.notes.begin(), model.notes.end(), [](const Note& note) {
    return note.text.find("can only mean G6") != std::string::npos;
  });
  EXPECT_EQ(notes, 3);
}

}  // namespace spotblue::semantic_open_models_test
