// look() against assemblies with known truth: all that is there found, nothing else, every value
// within 1e-6 mm, 1e-4 mm where a part's surfaces are written as B-splines (issue 2, acceptance 3).

#include <gtest/gtest.h>

#include <filesystem>

#include "geometry/truth/truth_match.hpp"

namespace spotblue::test::random_assemblies_test {

constexpr std::uint64_t kSeeds = 200;
constexpr std::uint64_t kSeedsInOneProcess = 20;

class RandomAssemblies : public testing::TestWithParam<std::uint64_t> {};

TEST_P(RandomAssemblies, AreSeenAsTheyAre) {
  const auto file = temp_step("random-" + std::to_string(GetParam()));
  for (std::uint64_t seed = GetParam(); seed < GetParam() + kSeedsInOneProcess; ++seed) {
    const Wrapping wrapping = wrapping_of(seed);
    const Assembly assembly = generate_assembly(seed, wrapping);
    SCOPED_TRACE(assembly.description());
    write_step(assembly.nodes, wrapping.schema, wrapping.unit, file);
    const Look seen = look(file, {});
    for (const std::string& line : disagreements(seen, assembly, {})) {
      ADD_FAILURE() << line;
    }
  }
  std::filesystem::remove(file);
}

INSTANTIATE_TEST_SUITE_P(FromSeed, RandomAssemblies,
                         testing::Range<std::uint64_t>(1, kSeeds + 1, kSeedsInOneProcess));

struct Change {
  const char* name;
  void (*apply)(Wrapping&);
};
void PrintTo(const Change& change, std::ostream* out) { *out << change.name; }

class Wrapped : public testing::TestWithParam<Change> {};

// The same stations, plain and then wrapped otherwise, measure the same to 1e-9 mm: each wrapping
// is held against the truth, which knows nothing of it.
TEST_P(Wrapped, StationsMeasureTheSame) {
  const auto file = temp_step(std::string("wrapped-") + GetParam().name);
  for (std::uint64_t seed = 1001; seed < 1009; ++seed) {
    Wrapping wrapping;
    wrapping.seed = seed;
    wrapping.posed = false;
    wrapping.nested = false;
    wrapping.faces = FaceStyle::plain;
    GetParam().apply(wrapping);
    const Assembly assembly = generate_assembly(seed, wrapping);
    SCOPED_TRACE(assembly.description());
    write_step(assembly.nodes, wrapping.schema, wrapping.unit, file);
    const Look seen = look(file, {});
    for (const std::string& line : disagreements(seen, assembly, {1e-9, 1e-9})) {
      ADD_FAILURE() << line;
    }
  }
  std::filesystem::remove(file);
}

INSTANTIATE_TEST_SUITE_P(
    Otherwise, Wrapped,
    testing::Values(Change{"plain", [](Wrapping&) {}},
                    Change{"posed", [](Wrapping& w) { w.posed = true; }},
                    Change{"inch", [](Wrapping& w) { w.unit = FileUnit::inch; }},
                    Change{"metre", [](Wrapping& w) { w.unit = FileUnit::metre; }},
                    Change{"nested", [](Wrapping& w) { w.nested = true; }},
                    Change{"mirrored", [](Wrapping& w) { w.mirrored = true; }},
                    Change{"split", [](Wrapping& w) { w.faces = FaceStyle::split; }},
                    Change{"AP203", [](Wrapping& w) { w.schema = Schema::ap203; }},
                    Change{"AP242", [](Wrapping& w) { w.schema = Schema::ap242; }}),
    [](const testing::TestParamInfo<Change>& one) { return std::string(one.param.name); });

}  // namespace spotblue::test::random_assemblies_test
