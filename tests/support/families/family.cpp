#include "support/families/family.hpp"

#include <array>

namespace spotblue::test {

namespace {

constexpr auto kFamilies = std::to_array<Family>({
    {"running", running},
    {"sleeve", sleeve},
    {"cross_pin", cross_pin},
    {"taper", taper},
    {"flanged", flanged},
    {"shoulder", shoulder},
    {"plates", plates},
    {"ring_in_groove", ring_in_groove},
    {"keyed", keyed},
    {"screwed", screwed},
    {"fork", fork},
    {"tongue", tongue},
    {"decoy", decoy},
    {"block_foul", block_foul},
    {"eccentric_shaft", eccentric_shaft},
    {"many_faced_bore", many_faced_bore},
    {"split_bush", split_bush},
    {"nested_sleeves", nested_sleeves},
    {"three_housings", three_housings},
    {"close_bores", close_bores},
    {"micro_steps", micro_steps},
    {"small_beside_huge", small_beside_huge},
    {"piston_ring", piston_ring},
    {"in_a_hollow", in_a_hollow},
    {"polygon_joint", polygon_joint},
    {"straight_spline", straight_spline},
    {"tapered_key", tapered_key},
    {"dovetail", dovetail},
    {"counterbore", counterbore},
    {"corner_radius", corner_radius},
    {"duplicate", duplicate},
    {"o_ring", o_ring},
    {"ball_bearing", ball_bearing},
    {"sewn_pair", sewn_pair},
    {"oil_grooves", oil_grooves},
    {"pressed_off_axis", pressed_off_axis},
    {"saddle", saddle},
    {"chamfered_plug", chamfered_plug},
    {"labyrinth", labyrinth},
    {"thin_tubes", thin_tubes},
    {"two_journals", two_journals},
    {"lined_slot", lined_slot},
    {"involute_gears", involute_gears},
    {"screw_runs_on", screw_runs_on},
    {"screw_begins", screw_begins},
    {"open_shell", open_shell},
    {"helical_groove", helical_groove},
    {"worn_journal", worn_journal},
    {"woodruff_key", woodruff_key},
    {"true_thread", true_thread},
});

}  // namespace

const std::vector<Family>& families() {
  static const std::vector<Family> kAll(kFamilies.begin(), kFamilies.end());
  return kAll;
}

std::vector<Station> generate_families(std::uint64_t seed, FaceStyle faces,
                                       const std::vector<Family>& of) {
  Shop shop{Chance(seed), Chance(seed + 1'000'003), faces};
  std::vector<Station> stations;
  const std::size_t count = 4 + shop.sizes.below(3);
  for (std::size_t i = 0; i < count; ++i) {
    stations.push_back(of.at(shop.sizes.below(of.size())).make(shop));
  }
  return stations;
}

}  // namespace spotblue::test
