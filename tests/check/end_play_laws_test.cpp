// Laws that end plays over nets keep to, on random groups: what is measured never widens a play,
// and neither the order of the parts nor the place of the whole changes a number.

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <utility>

#include "check/end_play_rig.hpp"
#include "support/chance.hpp"

namespace spotblue::end_play_laws_test {

using namespace test;

constexpr int kGroups = 20;
constexpr int kMeasured = 4;
constexpr double kNear = 1e-9;

struct Placed {
  Product part;
  double z = 0.0;
};

// A shaft that floats between two cheeks, and on it a hub and washers that float between a collar
// of its own and one that is pinned on; every length with limits of its own.
struct RandomGroup {
  std::vector<Placed> parts;
  std::vector<PartLength> lengths;

  void limit(Chance& chance, const std::string& from, const std::string& to, double length) {
    PartLength one{from, to, {}, {}, {}, 0};
    const double half = chance.between(0.001, 0.05);
    one.limits = Limits{Length::mm(length - half), Length::mm(length + half)};
    lengths.push_back(one);
  }
};

RandomGroup random_group(unsigned seed) {
  Chance chance(seed);
  RandomGroup group;
  const double wide = std::round(chance.between(80, 140));
  const double shoulder = 10 + wide - chance.between(0.2, 0.9);
  Product frame = ring_part(12, 40, 0, 10);
  join(frame, ring_part(12, 40, 10 + wide, 20 + wide));
  group.parts.push_back({named(frame, "Frame", 9e5), 0.0});
  group.parts.push_back({named(turned_part({{0, -5},
                                            {10, -5},
                                            {10, 10},
                                            {20, 10},
                                            {20, 15},
                                            {15, 15},
                                            {15, shoulder},
                                            {10, shoulder},
                                            {10, 30 + wide},
                                            {0, 30 + wide}}),
                               "Shaft", 8e4),
                         0.0});
  double at = 15.0;
  const std::size_t washers = chance.below(3);
  for (std::size_t i = 0; i <= washers; ++i) {
    const double thick = i == 0 ? 30.0 : chance.between(1.0, 4.0);
    const std::string name = i == 0 ? "Hub" : "Washer " + std::to_string(i);
    const double outer = i == 0 ? 30.0 : 19.0 - static_cast<double>(i);
    group.parts.push_back({named(ring_part(15.02, outer, 0, thick), name, i == 0 ? 5e4 : 500), at});
    const Product& part = group.parts.back().part;
    group.limit(chance, name + ": " + part.planes[0].name, name + ": " + part.planes[1].name,
                thick);
    at += thick + chance.between(0.0, 0.2);
  }
  group.parts.push_back({named(ring_part(15, 22, 0, 10), "Collar", 1e3), at + 0.1});
  group.limit(chance, "Frame: face 80 @ 10",
              "Frame: face 80 @ " + format_size(Length::mm(10 + wide), LengthUnit::mm), wide);
  return group;
}

Rig rig_of(const RandomGroup& group, const std::vector<std::size_t>& order, const Frame& whole) {
  Rig rig;
  for (const std::size_t i : order) {
    rig.add(group.parts[i].part, group.parts[i].z);
    Occurrence& placed = rig.look.model.occurrences.back();
    placed.frame = compose(whole, placed.frame);
    placed.box = place_box(placed.frame, group.parts[i].part.box);
  }
  rig.job.lengths = group.lengths;
  rig.job.fixed.push_back({"Collar", "Shaft", "pin", 0});
  rig.want(0.0, 5.0, "Hub");
  rig.job.end_play.front().on = "Shaft";
  rig.want(0.0, 5.0, "Shaft");
  return rig;
}

std::vector<std::size_t> in_order(const RandomGroup& group) {
  std::vector<std::size_t> order(group.parts.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  return order;
}

// By the part that moves, its least and greatest play; of those that are asked for: of others that
// share a loop any one is told.
std::map<std::string, Interval> plays_of(Rig rig) {
  std::map<std::string, Interval> plays;
  for (const Finding& finding : rig.findings()) {
    if (finding.wanted.empty()) {
      continue;
    }
    const Interval play{number(finding.found, "end_play_min_mm"),
                        number(finding.found, "end_play_max_mm")};
    plays.try_emplace(finding.about.front().name, play);
  }
  return plays;
}

std::vector<std::string> names_in(const std::map<std::string, Interval>& plays) {
  std::vector<std::string> names;
  for (const auto& [name, play] : plays) {
    names.push_back(name);
  }
  return names;
}

TEST(EndPlayLaws, WhatIsMeasuredWithinItsLimitsNeverWidensAPlay) {
  for (unsigned seed = 0; seed < kGroups; ++seed) {
    SCOPED_TRACE(seed);
    const RandomGroup group = random_group(seed);
    const auto before = plays_of(rig_of(group, in_order(group), Frame{}));
    ASSERT_TRUE(before.contains("Hub"));
    ASSERT_TRUE(before.contains("Shaft"));
    Chance chance(1000 + seed);
    for (int i = 0; i < kMeasured; ++i) {
      RandomGroup measured = group;
      PartLength& one = measured.lengths[static_cast<std::size_t>(i) % measured.lengths.size()];
      const Length half = 0.5 * one.limits->width();
      one.measured = one.limits->lower + half + chance.between(-0.5, 0.5) * half;
      one.uncertainty = 0.25 * half;
      one.limits.reset();
      for (const auto& [part, play] : plays_of(rig_of(measured, in_order(group), Frame{}))) {
        EXPECT_GE(play.low, before.at(part).low - kNear) << part;
        EXPECT_LE(play.high, before.at(part).high + kNear) << part;
      }
    }
  }
}

TEST(EndPlayLaws, NeitherOrderNorPlaceChangesAPlay) {
  for (unsigned seed = 0; seed < kGroups; ++seed) {
    SCOPED_TRACE(seed);
    const RandomGroup group = random_group(seed);
    const auto before = plays_of(rig_of(group, in_order(group), Frame{}));
    std::vector<std::size_t> turned = in_order(group);
    std::reverse(turned.begin(), turned.end());
    Frame whole = rotated({1, 0, 0}, 0.1 + 0.3 * seed);
    whole.rows[0][3] = 250.0;
    const auto after = plays_of(rig_of(group, turned, whole));
    ASSERT_EQ(names_in(before), names_in(after));
    for (const auto& [part, play] : after) {
      EXPECT_NEAR(play.low, before.at(part).low, 1e-9) << part;
      EXPECT_NEAR(play.high, before.at(part).high, 1e-9) << part;
    }
  }
}

}  // namespace spotblue::end_play_laws_test
