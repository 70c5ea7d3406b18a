// look() against every family of the generator, however the assembly is wrapped: a kilometre off,
// in the looking-glass, as solids of one product, with curves in surface parameters and without.

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <ostream>
#include <string>
#include <vector>

#include "geometry/truth/truth_match.hpp"
#include "support/families/family.hpp"

namespace spotblue::test {

void PrintTo(const Family& family, std::ostream* out) { *out << family.name; }

namespace random_families_test {

/// How many seeds of each suite: few at every build, more by SPOTBLUE_RANDOM_SEEDS.
std::uint64_t seed_count(std::uint64_t usual) {
  const char* wanted = std::getenv("SPOTBLUE_RANDOM_SEEDS");
  return wanted != nullptr ? std::strtoull(wanted, nullptr, 10) : usual;
}

/// A kilometre away a file's digits end at 1e-7 mm, and several are added up.
Tolerance tolerance_of(const Wrapping& wrapping) {
  return wrapping.far == Far::no ? Tolerance{} : Tolerance{1e-5, 2e-4};
}

std::vector<std::string> wrong_calls(const Assembly& assembly, const std::string& name) {
  const char* keep = std::getenv("SPOTBLUE_RANDOM_KEEP");
  const std::string stem = name + "-" + std::to_string(assembly.seed);
  const auto file =
      keep != nullptr ? std::filesystem::path(keep) / (stem + ".step") : temp_step(stem);
  write_assembly(assembly, file);
  const Look seen = look(file, {});
  if (keep == nullptr) {
    std::filesystem::remove(file);
  }
  return disagreements(seen, assembly, tolerance_of(assembly.wrapping));
}

void expect_seen_as_it_is(const Assembly& assembly, const std::string& name) {
  SCOPED_TRACE(assembly.description());
  for (const std::string& line : wrong_calls(assembly, name)) {
    ADD_FAILURE() << line;
  }
}

Assembly four_of(const Family& family, std::uint64_t seed, const Wrapping& wrapping) {
  Shop shop{Chance(seed), Chance(seed + 1'000'003), FaceStyle::mixed};
  std::vector<Station> stations;
  for (int i = 0; i < 4; ++i) {
    stations.push_back(family.make(shop));
  }
  return assemble(seed, stations, wrapping);
}

class EachFamily : public testing::TestWithParam<Family> {};

TEST_P(EachFamily, IsSeenAsItIs) {
  const std::uint64_t count = seed_count(2);
  for (std::uint64_t seed = 5001; seed < 5001 + count; ++seed) {
    expect_seen_as_it_is(four_of(GetParam(), seed, any_wrapping_of(seed)), GetParam().name);
  }
}

INSTANTIATE_TEST_SUITE_P(Of, EachFamily, testing::ValuesIn(families()),
                         [](const auto& one) { return std::string(one.param.name); });

class InEachUnit : public testing::TestWithParam<FileUnit> {};

TEST_P(InEachUnit, PartsDrawnAKilometreFromTheirOwnOriginAreSeenAsTheyAre) {
  for (const Family& family : {Family{"shoulder", shoulder}, Family{"screwed", screwed}}) {
    Wrapping wrapping = any_wrapping_of(5004);
    wrapping.far = Far::drawn;
    wrapping.unit = GetParam();
    expect_seen_as_it_is(four_of(family, 5004, wrapping), "drawn");
  }
}

INSTANTIATE_TEST_SUITE_P(OfLength, InEachUnit,
                         testing::Values(FileUnit::mm, FileUnit::inch, FileUnit::metre));

constexpr std::uint64_t kAtOnce = 10;

class RandomFamilies : public testing::TestWithParam<std::uint64_t> {};

TEST_P(RandomFamilies, AreSeenAsTheyAre) {
  for (std::uint64_t seed = GetParam(); seed < GetParam() + kAtOnce; ++seed) {
    const Wrapping wrapping = any_wrapping_of(seed);
    expect_seen_as_it_is(
        assemble(seed, generate_families(seed, wrapping.faces, families()), wrapping),
        "families-" + std::to_string(GetParam()));
  }
}

INSTANTIATE_TEST_SUITE_P(FromSeed, RandomFamilies,
                         testing::Range<std::uint64_t>(3001, 3001 + seed_count(30), kAtOnce));

}  // namespace random_families_test
}  // namespace spotblue::test
