#include "group/joints/rings_in_grooves.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <utility>

#include "group/joints/crosswise.hpp"
#include "group/joints/named_turning.hpp"

namespace spotblue {
namespace {

// Retaining rings are 0.03 to 0.14 of their diameter thick (DIN 471 and 472, from memory), plain
// bearings rarely less than 0.3. Choice of this program, no source.
constexpr double kThin = 0.2;

using Pair = std::pair<OccurrenceId, OccurrenceId>;
using FacesOfPair = std::map<Pair, std::vector<const AxialSeat*>>;

Pair pair_of(OccurrenceId a, OccurrenceId b) { return std::minmax(a, b); }

// Whether `ring` stands between two walls of the other part along the axis.
bool stands_between(const std::vector<const AxialSeat*>& faces, OccurrenceId ring,
                    const Line& axis) {
  std::optional<double> back, ahead;  // where its faces against and along the axis are
  for (const AxialSeat* seat : faces) {
    if (!is_along(seat->axis.along, axis.along)) {
      continue;
    }
    const bool looks_ahead = dot(seat->axis.along, axis.along) > 0.0;
    const bool own = seat->a.occurrence == ring;
    (looks_ahead == own ? ahead : back) = station(axis, seat->axis.at);
  }
  return back && ahead && *back < *ahead;
}

// The ring of a seat in a groove, hole or shaft of it.
const FeatureRef* ring_of(const RadialSeat& seat, const std::vector<const AxialSeat*>& faces) {
  if (!(seat.engaged <= kThin * seat.shaft_diameter)) {
    return nullptr;
  }
  if (stands_between(faces, seat.hole.occurrence, seat.axis)) {
    return &seat.hole;
  }
  return stands_between(faces, seat.shaft.occurrence, seat.axis) ? &seat.shaft : nullptr;
}

}  // namespace

void add_ring_joints(const DeclaredJob& declared, std::vector<Joint>& joints) {
  const Seats& seats = declared.look->seats;
  const std::set<OccurrenceId> turning = named_turning(declared);
  FacesOfPair faces_of;
  for (const AxialSeat& seat : seats.axial) {
    faces_of[pair_of(seat.a.occurrence, seat.b.occurrence)].push_back(&seat);
  }
  for (std::size_t i = 0; i < seats.radial.size(); ++i) {
    const RadialSeat& seat = seats.radial[i];
    const auto faces = faces_of.find(pair_of(seat.hole.occurrence, seat.shaft.occurrence));
    if (declared.radial_fits[i] != nullptr || faces == faces_of.end()) {
      continue;
    }
    const FeatureRef* ring = ring_of(seat, faces->second);
    if (ring != nullptr && !turning.contains(ring->occurrence)) {
      joints.push_back({seat.hole.occurrence,
                        seat.shaft.occurrence,
                        JointKind::ring,
                        Certainty::certain,
                        true,
                        true,
                        {seat.hole, seat.shaft},
                        {},
                        "ring in its groove"});
    }
  }
}

}  // namespace spotblue
