// One feature, one advice, on every family of random parts, each seat with some fit wanted of it.

#include <gtest/gtest.h>
#include <unistd.h>

#include <array>
#include <filesystem>
#include <ostream>
#include <set>
#include <string>
#include <vector>

#include "spotblue/check/judge_job.hpp"
#include "spotblue/geometry/look.hpp"
#include "support/advice.hpp"
#include "support/assembly_generator.hpp"
#include "support/families/family.hpp"

namespace spotblue::test {

void PrintTo(const Family& family, std::ostream* out) { *out << family.name; }

namespace families_advice_test {

Look look_at_family(const Family& family, std::uint64_t seed) {
  Shop shop{Chance(seed), Chance(seed + 1'000'003), FaceStyle::mixed};
  std::vector<Station> stations;
  for (int i = 0; i < 3; ++i) {
    stations.push_back(family.make(shop));
  }
  const auto file =
      std::filesystem::temp_directory_path() /
      ("spotblue-advice-" + std::string(family.name) + "-" + std::to_string(::getpid()) + ".step");
  write_assembly(assemble(seed, stations, Wrapping{.seed = seed}), file);
  Look seen = look(file, {});
  std::filesystem::remove(file);
  return seen;
}

// Every part to make or as found, every pair of bore and shaft a class.
Job some_job(const Look& seen, Chance& chance) {
  constexpr std::array classes{"H7/s6", "H7/g6", "H8/f7", "H7/h6", "H7/p6", "H7/k6"};
  Job job;
  for (const Product& product : seen.model.products) {
    JobPart part;
    part.part = product.id;
    part.state = chance.in(0.7) ? PartState::to_make : PartState::as_found;
    part.drawn = chance.in(0.7) ? Drawn::at_the_size_wanted : Drawn::at_nominal;
    part.material = chance.in(0.8) ? "carbon steel 1045" : "";
    job.parts.push_back(part);
  }
  std::set<std::pair<std::string, std::string>> pairs;
  for (const RadialSeat& seat : seen.seats.radial) {
    const std::string hole = feature_id(seen.model, seat.hole);
    const std::string shaft = feature_id(seen.model, seat.shaft);
    if (pairs.emplace(hole, shaft).second) {
      const ClassFit fit{FitSystem::iso_286, classes.at(chance.below(classes.size())), {}};
      job.fits.push_back({hole, shaft, fit, {}});
    }
  }
  return job;
}

class FamilyAdvice : public testing::TestWithParam<Family> {};

TEST_P(FamilyAdvice, IsOneForEachFeature) {
  for (std::uint64_t seed = 6001; seed < 6003; ++seed) {
    SCOPED_TRACE(seed);
    const Look seen = look_at_family(GetParam(), seed);
    Chance chance(seed);
    for (int round = 0; round < 5; ++round) {
      EXPECT_EQ(Advice(judge_job(some_job(seen, chance), seen)).contradiction(), "");
    }
  }
}

TEST(FamilyAdvices, TellWindowsAtAll) {
  const Look seen = look_at_family({"nested sleeves", nested_sleeves}, 6001);
  std::size_t windows = 0;
  Chance chance(6001);
  for (int round = 0; round < 20; ++round) {
    windows += Advice(judge_job(some_job(seen, chance), seen)).windows().size();
  }
  EXPECT_GT(windows, 20U);
}

INSTANTIATE_TEST_SUITE_P(Of, FamilyAdvice, testing::ValuesIn(families()),
                         [](const auto& one) { return std::string(one.param.name); });

}  // namespace families_advice_test
}  // namespace spotblue::test
