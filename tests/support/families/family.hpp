#pragma once
/// @file
/// Families of stations: each file beside this one makes one kind of joint, or of what looks like
/// one, and works its truth out by hand.

#include <cstdint>
#include <vector>

#include "support/station.hpp"

namespace spotblue::test {

struct Family {
  const char* name;
  Station (*make)(Shop&);
};

/// Every family, those of station.hpp first.
const std::vector<Family>& families();

/// Four to six stations of any of the given families.
std::vector<Station> generate_families(std::uint64_t seed, FaceStyle faces,
                                       const std::vector<Family>& of);

// Round parts in one another.
Station eccentric_shaft(Shop& shop);
Station many_faced_bore(Shop& shop);
Station split_bush(Shop& shop);
Station nested_sleeves(Shop& shop);
Station three_housings(Shop& shop);
Station close_bores(Shop& shop);
Station micro_steps(Shop& shop);
Station small_beside_huge(Shop& shop);
Station piston_ring(Shop& shop);
Station in_a_hollow(Shop& shop);
Station oil_grooves(Shop& shop);
Station helical_groove(Shop& shop);
Station o_ring(Shop& shop);
Station ball_bearing(Shop& shop);
Station sewn_pair(Shop& shop);
Station pressed_off_axis(Shop& shop);
Station saddle(Shop& shop);
Station chamfered_plug(Shop& shop);
Station labyrinth(Shop& shop);
Station thin_tubes(Shop& shop);
Station two_journals(Shop& shop);
Station worn_journal(Shop& shop);
// Flats, flanks and faces.
Station polygon_joint(Shop& shop);
Station straight_spline(Shop& shop);
Station tapered_key(Shop& shop);
Station dovetail(Shop& shop);
Station lined_slot(Shop& shop);
Station woodruff_key(Shop& shop);
Station involute_gears(Shop& shop);
// Screws, corners and slips.
Station counterbore(Shop& shop);
Station screw_runs_on(Shop& shop);
Station screw_begins(Shop& shop);
Station true_thread(Shop& shop);
Station corner_radius(Shop& shop);
Station duplicate(Shop& shop);
Station open_shell(Shop& shop);

}  // namespace spotblue::test
