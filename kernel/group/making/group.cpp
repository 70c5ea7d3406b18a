#include "spotblue/group/group.hpp"

#include <map>
#include <utility>

#include "group/making/meeting.hpp"
#include "group/making/worked_group.hpp"

namespace spotblue {
namespace {

std::vector<Body> bodies_of(const WorkedGroup& worked) {
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
  return bodies;
}

Interval in_mm(const Limits& limits) { return {limits.lower.in_mm(), limits.upper.in_mm()}; }

std::vector<GroupStop> stops_of(const WorkedGroup& worked) {
  std::map<std::pair<Subject, Subject>, const BodyPlay*> ended;  // by the faces that end it
  for (const BodyPlay& play : worked.plays.captured) {
    if (play.of_mesh) {
      continue;
    }
    for (const auto* way : {&play.back, &play.ahead}) {
      for (const AxialStop& stop : *way) {
        ended.try_emplace({subject_of(stop.a), subject_of(stop.b)}, &play);
      }
    }
  }
  std::vector<GroupStop> stops;
  for (const LineStop& one : worked.plays.stops) {
    GroupStop stop{one.stop.a, one.stop.b, one.centre_line, one.stop.gap, {}, {}};
    const auto play = ended.find({subject_of(stop.a), subject_of(stop.b)});
    if (play != ended.end() && play->second->closed && play->second->play.worst) {
      stop.play = in_mm(*play->second->play.worst);
      stop.running = play->second->warm ? std::optional(in_mm(*play->second->warm)) : std::nullopt;
    }
    stops.push_back(stop);
  }
  return stops;
}

}  // namespace

WorkedGroup work_out(DeclaredJob declared) {
  WorkedGroup worked{std::move(declared), {}, {}, {}, {}, {}, {}};
  worked.joints = find_groups(worked.declared);
  worked.turns = find_turns(worked.declared, worked.joints);
  worked.surfaces = surface_sizes(worked.declared);
  worked.running = find_running(worked.declared, worked.joints, worked.turns, worked.surfaces);
  // What was not looked at may be what stops a part.
  if (worked.declared.look->not_looked_at.empty()) {
    worked.plays = find_body_plays(worked.declared, worked.joints, worked.turns);
  }
  worked.thrust_faces = faces_that_meet(
      find_thrust_faces(worked.declared, worked.joints, worked.turns), worked.plays);
  return worked;
}

Group group_of(const WorkedGroup& worked) {
  Group group;
  group.bodies = bodies_of(worked);
  group.joints = worked.joints.joints;
  group.turning = worked.running.bodies;
  group.bearings = worked.running.bearings;
  group.thrust_faces = worked.thrust_faces;
  const std::vector<RadialSeat>& seats = worked.declared.look->seats.radial;
  for (std::size_t i = 0; i < seats.size(); ++i) {
    const SurfaceSizes& sizes = worked.surfaces[i];
    group.seats.push_back({seats[i].hole, seats[i].shaft, sizes.pressing, sizes.hole, sizes.shaft});
  }
  group.stops = stops_of(worked);
  return group;
}

Group make_group(const Job& job, const Look& look) {
  return group_of(work_out(declare(job, look)));
}

}  // namespace spotblue
