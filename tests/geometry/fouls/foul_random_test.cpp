// The foul search against Open CASCADE's own boolean on real solids: what it calls clear must
// share nothing, what it reports must be what the boolean finds.
#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <vector>

#include "geometry/fouls/foul_solids.hpp"
#include "spotblue/geometry/foul.hpp"
#include "support/value_parts.hpp"

namespace spotblue::foul_random_test {

using test::between;
using test::rotated;
using test::shifted;

/// mm3: thinner than 1e-6 mm over all the faces these parts have.
constexpr double kNothing = 0.01;

/// On one axis, a little off it, or anyhow; near enough to meet.
Frame random_pose(std::mt19937& random) {
  const double z = between(random, -45, 45);
  switch (random() % 4) {
    case 0:
      return shifted(0, 0, z);
    case 1:
      return compose(shifted(between(random, -0.4, 0.4), between(random, -0.4, 0.4), z),
                     rotated({1, 0, 0}, between(random, -0.01, 0.01)));
    case 2:
      return compose(shifted(between(random, -50, 50), between(random, -50, 50), z),
                     rotated({0, 0, 1}, between(random, 0, 6)));
    default:
      return compose(shifted(between(random, -40, 40), between(random, -40, 40), z),
                     rotated(unit({between(random, -1, 1), between(random, -1, 1), 0.3}),
                             between(random, 0, 3)));
  }
}

struct SolidPair {
  TopoDS_Shape a, b;
  Frame b_in_a;
};

std::vector<SolidPair> random_pairs(int count) {
  std::mt19937 random(20240611);
  std::vector<SolidPair> pairs;
  for (int i = 0; i < count; ++i) {
    SolidPair pair{test::random_solid(random), test::random_solid(random), {}};
    pair.b_in_a = random_pose(random);
    pairs.push_back(pair);
  }
  return pairs;
}

/// All pairs in one model, each turned its own way.
Model model_of(const std::vector<SolidPair>& pairs) {
  std::mt19937 random(7);
  std::vector<std::pair<TopoDS_Shape, Frame>> parts;
  for (const SolidPair& pair : pairs) {
    const Frame world = compose(shifted(between(random, -200, 200), 30, -70),
                                rotated(unit({1, 2, 3}), between(random, 0, 6)));
    parts.emplace_back(pair.a, world);
    parts.emplace_back(pair.b, compose(world, pair.b_in_a));
  }
  return test::solid_model(parts);
}

TEST(FoulRandom, WhatIsCalledClearSharesNothing) {
  const std::vector<SolidPair> pairs = random_pairs(200);
  const Model model = model_of(pairs);
  Seats seats;
  for (std::size_t i = 0; i < pairs.size(); ++i) {
    seats.near_pairs.emplace_back(OccurrenceId(2 * i), OccurrenceId(2 * i + 1));
  }
  const FoulReport report = find_fouls(model, seats, {}, {});
  for (std::size_t i = 0; i < pairs.size(); ++i) {
    SCOPED_TRACE(i);
    const double truth =
        test::shared_volume(pairs[i].a, test::moved_solid(pairs[i].b, pairs[i].b_in_a));
    auto foul = std::ranges::find(report.found, 2 * i, &Foul::a);
    if (foul == report.found.end()) {
      EXPECT_LT(truth, kNothing) << "called clear";
      continue;
    }
    double volume = 0.0;  // of all its regions
    for (; foul != report.found.end() && foul->a == 2 * i; ++foul) {
      EXPECT_TRUE(foul->exact) << foul->cause;
      EXPECT_GT(foul->depth, 0.0);
      volume += foul->volume;
    }
    EXPECT_NEAR(volume, truth, 1e-4 * truth + 1e-6);
  }
  EXPECT_GT(report.found.size(), 40U);
  EXPECT_LT(report.found.size(), pairs.size() - 40);
  EXPECT_LT(report.effort.exact_pairs, report.found.size() + pairs.size() / 20)
      << "clear pairs that needed Open CASCADE";
}

}  // namespace spotblue::foul_random_test
