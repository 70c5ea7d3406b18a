#include "group/joints/clamps.hpp"

#include <fmt/format.h>

#include <cmath>
#include <map>
#include <set>

#include "group/joints/crosswise.hpp"
#include "group/joints/joints.hpp"
#include "group/joints/tapers.hpp"
#include "spotblue/geometry/seat_limits.hpp"

namespace spotblue {
namespace {

// A screw's end that is as near as this to the shaft bears on it: point or dog end, as drawn.
constexpr double kScrewEnd_mm = 0.05;

// `from` bears on `to`, which lies in this direction.
struct Contact {
  OccurrenceId to{};
  Direction towards;
};
using Contacts = std::vector<std::vector<Contact>>;

void add_contact(Contacts& contacts, OccurrenceId from, OccurrenceId to, Direction towards) {
  contacts[from].push_back({to, towards});
  contacts[to].push_back({from, -towards});
}

Contacts contacts_of(const DeclaredJob& declared) {
  const Look& look = *declared.look;
  Contacts contacts(look.model.occurrences.size());
  for (std::size_t i = 0; i < look.seats.axial.size(); ++i) {
    const AxialSeat& seat = look.seats.axial[i];
    if (touches(declared, i)) {
      add_contact(contacts, seat.a.occurrence, seat.b.occurrence, seat.axis.along);
    }
  }
  for (std::size_t i = 0; i < look.seats.taper.size(); ++i) {
    if (!taper_touches(declared, i)) {
      continue;
    }
    const TaperSeat& seat = look.seats.taper[i];
    const Occurrence& hub = look.model.occurrences[seat.hole.occurrence];
    const Cone& cone = look.model.products[hub.product].cones[seat.hole.index];
    // The hub comes to rest where the cone has grown to its bore.
    add_contact(contacts, seat.hole.occurrence, seat.shaft.occurrence,
                place_direction(hub.frame, cone.axis.along));
  }
  return contacts;
}

// All parts in a chain of contacts from `start` along `way`, looking no further than `end`.
std::set<OccurrenceId> reached(const Contacts& contacts, OccurrenceId start, OccurrenceId end,
                               Direction way, double least_cosine) {
  std::set<OccurrenceId> seen{start};
  std::vector<OccurrenceId> open{start};
  while (!open.empty()) {
    const OccurrenceId from = open.back();
    open.pop_back();
    for (const Contact& contact : contacts[from]) {
      if (dot(contact.towards, way) >= least_cosine && seen.insert(contact.to).second &&
          contact.to != end) {
        open.push_back(contact.to);
      }
    }
  }
  return seen;
}

// The parts between screw and tapped part along one sense of the thread, in number order.
std::vector<OccurrenceId> clamped(const Contacts& contacts, const Thread& thread, Direction way,
                                  double least_cosine) {
  const OccurrenceId screw = thread.screw.occurrence;
  const OccurrenceId tapped = thread.hole.occurrence;
  const std::set<OccurrenceId> after = reached(contacts, screw, tapped, way, least_cosine);
  if (!after.contains(tapped)) {
    return {};
  }
  const std::set<OccurrenceId> before = reached(contacts, tapped, screw, -way, least_cosine);
  std::vector<OccurrenceId> between;
  for (const OccurrenceId part : after) {
    if (part != screw && part != tapped && before.contains(part)) {
      between.push_back(part);
    }
  }
  return between;
}

// Whether a face of the screw square to its thread lies on or in the shaft of the seat.
bool end_reaches(const Look& look, const Thread& thread, const RadialSeat& seat) {
  const Occurrence& screw = look.model.occurrences[thread.screw.occurrence];
  for (const Plane& plane : look.model.products[screw.product].planes) {
    const Direction normal = place_direction(screw.frame, plane.normal);
    if (!is_along(normal, thread.axis.along)) {
      continue;
    }
    const Point end =
        at_station(thread.axis, station(thread.axis, place_point(screw.frame, plane.at)));
    const double along = station(seat.axis, end);
    if (along >= seat.from && along <= seat.to &&
        distance(seat.axis, end) <= 0.5 * seat.shaft_diameter + kScrewEnd_mm) {
      return true;
    }
  }
  return false;
}

}  // namespace

void add_clamp_joints(const DeclaredJob& declared, std::vector<Joint>& joints) {
  const Look& look = *declared.look;
  if (look.seats.threads.empty()) {
    return;
  }
  const Contacts contacts = contacts_of(declared);
  const SeatSettings& settings = look.settings.seats;
  const double least_cosine = std::cos(most_tilt(settings.facing_tilt_deg, settings));
  for (std::size_t i = 0; i < look.seats.threads.size(); ++i) {
    const Thread& thread = look.seats.threads[i];
    for (const Direction way : {thread.axis.along, -thread.axis.along}) {
      for (const OccurrenceId part : clamped(contacts, thread, way, least_cosine)) {
        joints.push_back({part,
                          thread.hole.occurrence,
                          JointKind::clamp,
                          Certainty::certain,
                          true,
                          true,
                          {thread.hole, thread.screw},
                          {},
                          fmt::format("clamped by the thread {}", declared.screw_threads[i].size)});
      }
    }
  }
}

void add_side_screw_joints(const DeclaredJob& declared, std::vector<Joint>& joints) {
  const Look& look = *declared.look;
  std::map<std::size_t, std::vector<const RadialSeat*>> seats_of_hub;
  if (!look.seats.threads.empty()) {
    for (const RadialSeat& seat : look.seats.radial) {
      seats_of_hub[seat.hole.occurrence].push_back(&seat);
    }
  }
  for (std::size_t i = 0; i < look.seats.threads.size(); ++i) {
    const Thread& thread = look.seats.threads[i];
    const auto seats = seats_of_hub.find(thread.hole.occurrence);
    if (seats == seats_of_hub.end()) {
      continue;
    }
    for (const RadialSeat* seat : seats->second) {
      if (seat->shaft.occurrence != thread.screw.occurrence &&
          is_across(seat->axis.along, thread.axis.along) && end_reaches(look, thread, *seat)) {
        joints.push_back({thread.hole.occurrence,
                          seat->shaft.occurrence,
                          JointKind::screw,
                          Certainty::certain,
                          true,
                          true,
                          {thread.hole, thread.screw},
                          {},
                          fmt::format("set screw {}", declared.screw_threads[i].size)});
      }
    }
  }
}

}  // namespace spotblue
