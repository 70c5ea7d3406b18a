#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <map>
#include <optional>

#include "spotblue/base/error.hpp"
#include "spotblue/geometry/read.hpp"
#include "support/open_model.hpp"

namespace spotblue::open_models_test {

namespace fs = std::filesystem;

// Source: open-models/figures.csv, which counts with Open CASCADE's own reader as it comes.

std::map<std::string, std::string> row_of(const fs::path& file) {
  std::ifstream csv(test::open_model("figures.csv"));
  const auto fields = [](const std::string& line) {
    std::vector<std::string> all(1);
    bool quoted = false;
    for (const char c : line) {
      quoted = c == '"' ? !quoted : quoted;
      if (c == ',' && !quoted) {
        all.emplace_back();
      } else {
        all.back() += c;
      }
    }
    return all;
  };
  std::string line;
  std::getline(csv, line);
  const auto names = fields(line);
  const std::string wanted =
      file.parent_path().filename().string() + "/" + file.filename().string();
  std::map<std::string, std::string> row;
  while (std::getline(csv, line)) {
    const auto values = fields(line);
    if (values.front() == wanted) {
      for (std::size_t i = 0; i < std::min(names.size(), values.size()); ++i) {
        row[names[i]] = values[i];
      }
    }
  }
  return row;
}

std::vector<fs::path> files_of(const char* folder) {
  std::vector<fs::path> files;
  const fs::path all = test::open_model(folder);
  if (fs::is_directory(all)) {
    for (const auto& entry : fs::directory_iterator(all)) {
      if (entry.path().extension() == ".step" || entry.path().extension() == ".stp") {
        files.push_back(entry.path());
      }
    }
  }
  std::sort(files.begin(), files.end());
  return files;
}

int total(const Model& model, int Product::*figure) {
  int sum = 0;
  for (const Occurrence& occurrence : model.occurrences) {
    sum += model.products[occurrence.product].*figure;
  }
  return sum;
}

// The bodies of one part are placed together.
std::ptrdiff_t placed_parts(const Model& model) {
  return std::count_if(model.occurrences.begin(), model.occurrences.end(),
                       [&](const Occurrence& occurrence) {
                         return model.products[occurrence.product].body.value_or(1) == 1;
                       });
}

class OpenModels : public testing::TestWithParam<const char*> {
 protected:
  void SetUp() override { SKIP_WITHOUT_OPEN_MODEL(test::open_model(GetParam())); }
};

TEST_P(OpenModels, ArriveWithTheCountsTheirSourcesDocument) {
  for (const fs::path& file : files_of(GetParam())) {
    SCOPED_TRACE(file.filename());
    auto row = row_of(file);
    ASSERT_FALSE(row.empty());
    const Model model = read_step(file, {}, Completeness::all_or_error);
    EXPECT_EQ(std::to_string(placed_parts(model)), row["nauo_leaf_occ"]);
    EXPECT_EQ(std::to_string(total(model, &Product::solids)), row["solids"]);
    int loose = 0;  // faces beside solids are documented too, and noted by us
    for (const Note& note : model.notes) {
      if (note.text.find("bound no solid") != std::string::npos) {
        loose += std::stoi(note.text);
      }
    }
    EXPECT_EQ(std::to_string(total(model, &Product::faces) + loose), row["faces"]);
  }
}

INSTANTIATE_TEST_SUITE_P(Folders, OpenModels, testing::Values("units", "mating", "parts", "pmi"));

TEST(DirtyModels, AreReadOrRefusedInOneLine) {
  SKIP_WITHOUT_OPEN_MODEL(test::open_model("dirty"));
  for (const fs::path& file : files_of("dirty")) {
    SCOPED_TRACE(file.filename());
    try {
      const Model model = read_step(file, {}, Completeness::all_or_error);
      EXPECT_FALSE(model.products.empty());
    } catch (const Error& problem) {
      EXPECT_TRUE(problem.code() == ErrorCode::unreadable ||
                  problem.code() == ErrorCode::incomplete);
      EXPECT_EQ(std::string(problem.what()).find('\n'), std::string::npos);
    }
  }
}

struct CopyCase {
  const char* file;
  Box box;
};
void PrintTo(const CopyCase& one, std::ostream* out) { *out << one.file; }

class Copies : public testing::TestWithParam<CopyCase> {};

TEST_P(Copies, AreWhereTheFileSays) {
  const fs::path file = test::open_model("dirty") / GetParam().file;
  SKIP_WITHOUT_OPEN_MODEL(file);
  const Model model = read_step(file, {}, Completeness::all_or_error);
  Box box;
  for (const Product& body : model.products) {
    extend(box, body.box);
  }
  const Box& wanted = GetParam().box;
  EXPECT_LT(norm(box.low - wanted.low), 1e-6);
  EXPECT_LT(norm(box.high - wanted.high), 1e-6);
}

// Source: open-models/SOURCES.md, check values: the second copy spans x -5..5, y 20..30, z 0..10;
// mirrored x -15..-5, y 20..30; scaled by 1.5, so 15 along each edge from the same corner.
INSTANTIATE_TEST_SUITE_P(
    MappedItems, Copies,
    testing::Values(CopyCase{"mapped-items-two-copies.stp", {{-5, 5, 0}, {35, 30, 10}}},
                    CopyCase{"mapped-item-mirrored.stp", {{-15, 5, 0}, {35, 30, 10}}},
                    CopyCase{"mapped-item-scaled.stp", {{-5, 5, 0}, {35, 35, 15}}}));

struct CubeCase {
  const char* file;
  const char* unit;
};
void PrintTo(const CubeCase& one, std::ostream* out) { *out << one.file; }

class Cubes : public testing::TestWithParam<CubeCase> {};

TEST_P(Cubes, AreAMetreLongInEveryUnit) {
  const fs::path file = test::open_model("units") / GetParam().file;
  SKIP_WITHOUT_OPEN_MODEL(file);
  const Model model = read_step(file, {}, Completeness::all_or_error);
  const Box box = model.products.at(0).box;
  EXPECT_EQ(model.file.unit, GetParam().unit);
  EXPECT_NEAR(box.high.x - box.low.x, 1000.0, 1e-6);
  EXPECT_NEAR(box.high.z - box.low.z, 1000.0, 1e-6);
}

INSTANTIATE_TEST_SUITE_P(Units, Cubes,
                         testing::Values(CubeCase{"cube-1m-in-inch.step", "inch"},
                                         CubeCase{"cube-1m-in-metre.step", "metre"},
                                         CubeCase{"cube-1m-in-millimetre.step", "mm"}));

}  // namespace spotblue::open_models_test
