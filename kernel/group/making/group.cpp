#include "spotblue/group/group.hpp"

#include <fmt/format.h>

#include <map>
#include <utility>

#include "group/making/worked_group.hpp"

namespace spotblue {
namespace {

std::vector<Body> bodies_of(const WorkedGroup& worked) {
  const DeclaredJob& declared = worked.declared;
  const Groups& groups = worked.joints;
  const Turns& turns = worked.turns;
  std::vector<Body> bodies;
  std::map<std::size_t, std::size_t> number_of;  // of the group that turns together
  for (OccurrenceId i; i < groups.turns_with.size(); ++i) {
    const auto [known, fresh] = number_of.try_emplace(groups.turns_with[i], bodies.size());
    if (fresh) {
      bodies.emplace_back();
    }
    Body& body = bodies[known->second];
    body.parts.push_back(i);
    if (const auto& turn = turns.of.at(i)) {
      body.rpm = turn->rpm;
    }
  }
  for (const Hold& hold : groups.holds) {
    if (hold.turning) {
      bodies[number_of.at(groups.turns_with[hold.a])].held_by.push_back(fmt::format(
          "{} and {}: {}", declared.names.id_of(hold.a), declared.names.id_of(hold.b), hold.why));
    }
  }
  return bodies;
}

}  // namespace

WorkedGroup work_out(DeclaredJob declared) {
  WorkedGroup worked{std::move(declared), {}, {}, {}};
  worked.joints = find_groups(worked.declared);
  worked.turns = find_turns(worked.declared, worked.joints);
  worked.surfaces = surface_sizes(worked.declared);
  return worked;
}

Group group_of(const WorkedGroup& worked) {
  Group group;
  group.bodies = bodies_of(worked);
  const std::vector<RadialSeat>& seats = worked.declared.look->seats.radial;
  for (std::size_t i = 0; i < seats.size(); ++i) {
    const SurfaceSizes& sizes = worked.surfaces[i];
    group.seats.push_back({seats[i].hole, seats[i].shaft, sizes.pressing, sizes.hole, sizes.shaft});
  }
  return group;
}

Group make_group(const Job& job, const Look& look) {
  return group_of(work_out(declare(job, look)));
}

}  // namespace spotblue
