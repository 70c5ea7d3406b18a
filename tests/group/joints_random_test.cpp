// Joints of random groups: order and names change nothing.

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <numeric>
#include <random>
#include <set>
#include <utility>

#include "group/joints/groups.hpp"
#include "group/seat_on.hpp"

namespace spotblue::joints_random_test {

using test::Bench;
using test::kX;
using test::kZ;
using test::seat_on;

/// Parts that stand one in another at random, pressed, loose, declared and pinned.
struct RandomGroup {
  struct Fit {
    std::size_t hole, shaft, line;
    double clearance;
  };
  std::vector<Fit> fits;
  std::vector<std::pair<std::size_t, std::size_t>> joins;
  std::size_t parts = 0;

  explicit RandomGroup(std::mt19937_64& draw) {
    parts = 3 + draw() % 8;
    for (std::size_t i = 0; i < 2 * parts; ++i) {
      const std::size_t hole = draw() % parts;
      const std::size_t shaft = draw() % parts;
      if (hole != shaft) {
        fits.push_back({hole, shaft, draw() % 3, draw() % 3 == 0 ? -0.03 : 0.03});
      }
    }
    const std::size_t a = draw() % parts;
    if (a + 1 < parts && draw() % 2 == 0) {
      joins.emplace_back(a, a + 1);
    }
  }

  // Every pair that turns as one, by the parts' numbers before they were shuffled.
  [[nodiscard]] std::set<std::pair<std::size_t, std::size_t>> together(
      const std::vector<std::size_t>& part_at, const std::vector<std::size_t>& fit_at,
      const std::string& name) const {
    Bench bench;
    std::vector<OccurrenceId> number(parts);
    for (const std::size_t part : part_at) {
      number[part] = bench.part(name + std::to_string(part * 7 % 11) + "x" + std::to_string(part));
      bench.product(number[part]).volume = 100.0 + static_cast<double>(part % 3);
    }
    constexpr std::array<Point, 3> kAt{{{0, 0, 0}, {30, 0, 0}, {0, 0, 5}}};
    const std::array<Direction, 3> along{kZ, kZ, kX};
    for (const std::size_t i : fit_at) {
      const Fit& fit = fits[i];
      const double size = 10.0 + 2.0 * static_cast<double>(fit.line);
      const std::string tag = std::to_string(i);
      seat_on(bench, bench.bore(number[fit.hole], "bore " + tag, size + fit.clearance),
              bench.outside(number[fit.shaft], "outside " + tag, size), fit.line, kAt[fit.line],
              along[fit.line]);
    }
    for (const auto& [a, b] : joins) {
      bench.job.fixed.push_back(
          {bench.product(number[a]).id, bench.product(number[b]).id, "pin", {}});
    }
    const Groups groups = find_groups(declare(bench.job, bench.look));
    std::set<std::pair<std::size_t, std::size_t>> pairs;
    for (std::size_t a = 0; a < parts; ++a) {
      for (std::size_t b = a + 1; b < parts; ++b) {
        if (groups.turns_with[number[a]] == groups.turns_with[number[b]]) {
          pairs.emplace(a, b);
        }
      }
    }
    return pairs;
  }
};

TEST(Joints, DoNotGoByTheOrderOfPartsAndSeatsNorByNames) {
  std::mt19937_64 draw(20261201);
  for (int round = 0; round < 300; ++round) {
    SCOPED_TRACE(round);
    const RandomGroup group(draw);
    std::vector<std::size_t> part_at(group.parts);
    std::vector<std::size_t> fit_at(group.fits.size());
    std::iota(part_at.begin(), part_at.end(), std::size_t{0});
    std::iota(fit_at.begin(), fit_at.end(), std::size_t{0});
    const auto expected = group.together(part_at, fit_at, "Part");
    std::shuffle(part_at.begin(), part_at.end(), draw);
    std::shuffle(fit_at.begin(), fit_at.end(), draw);
    EXPECT_EQ(group.together(part_at, fit_at, "A"), expected);
  }
}

}  // namespace spotblue::joints_random_test
