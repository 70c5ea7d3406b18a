#include "group/axial/set_parts.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

#include "group/joints/thread_hold.hpp"
#include "spotblue/base/unit.hpp"
#include "spotblue/standards/threads.hpp"

namespace spotblue {
namespace {

// An end of a thread that is no farther past the other's is at it.
// Choice of this program, no source.
constexpr double kPastEnd_mm = 1e-3;
// A screw so much thinner or thicker than its thread's major diameter is another. Choice of this
// program, no source.
constexpr double kWornThread_mm = 0.6;

const Model& model_of(const DeclaredJob& declared) { return declared.look->model; }

// The one feature of the name that belongs to the part, or to one of those it moves with.
FeatureRef face_of(const DeclaredJob& declared, const Groups& groups, const SetPart& part,
                   const std::string& name, bool own) {
  const Entry entry{"adjust", "between", part.adjust->line};
  const NamedFeature named = declared.names.feature(name, entry);
  const auto found = std::find_if(named.refs.begin(), named.refs.end(), [&](const FeatureRef& ref) {
    return own ? ref.occurrence == part.part
               : groups.moves_with[ref.occurrence] == groups.moves_with[part.part];
  });
  if (found == named.refs.end()) {
    throw Error(ErrorCode::bad_input, entry_place(*declared.job, "adjust", part.adjust->line),
                fmt::format("\"{}\" is no face of what \"{}\" is held to", name, part.adjust->part),
                "name a face of the part itself or of one it is screwed or joined to");
  }
  return *found;
}

// Where a cylinder begins and ends along the line.
Interval ends_of(const Model& model, const FeatureRef& feature, const Line& along) {
  const Occurrence& placed = model.occurrences[feature.occurrence];
  const Cylinder& cylinder = model.products[placed.product].cylinders[feature.index];
  Interval ends;
  bool first = true;
  for (const Interval& stretch : cylinder.intervals) {
    for (const double end : {stretch.low, stretch.high}) {
      const double at = station(along, place_point(placed.frame, at_station(cylinder.axis, end)));
      ends = first ? Interval{at, at} : Interval{std::min(ends.low, at), std::max(ends.high, at)};
      first = false;
    }
  }
  return ends;
}

// A thread by name that neither the screw nor the hole of the model could be.
void refuse_other_thread(const Job& job, const Adjust& adjust, const Thread& modelled) {
  const auto named = adjust.thread ? find_thread(*adjust.thread) : std::nullopt;
  if (!named ||
      std::abs(named->major_diameter.in_mm() - modelled.screw_diameter) <= kWornThread_mm) {
    return;
  }
  throw Error(ErrorCode::bad_input, entry_place(job, "adjust", adjust.line),
              fmt::format("thread = \"{}\" is {} over its crests, the screw of \"{}\" is {}",
                          *adjust.thread, format_size(named->major_diameter, job.unit), adjust.part,
                          format_size(Length::mm(modelled.screw_diameter), job.unit)),
              fmt::format("name its own thread: the model shows \"{}\"", modelled.size));
}

}  // namespace

std::vector<SetPart> find_set_parts(const DeclaredJob& declared, const Groups& groups) {
  const std::vector<Thread>& threads = declared.look->seats.threads;
  std::vector<SetPart> parts;
  std::map<OccurrenceId, const Adjust*> set;
  for (const Adjust& adjust : declared.job->adjust) {
    const Entry entry{"adjust", "part", adjust.line};
    for (const OccurrenceId one : declared.names.part(adjust.part, entry).occurrences) {
      const auto [known, fresh] = set.try_emplace(one, &adjust);
      if (!fresh) {
        refuse_second(*declared.job, "adjust", known->second->line, adjust.line);
      }
      SetPart part{&adjust, one, false, std::nullopt, std::nullopt, std::nullopt};
      part.held = std::any_of(
          groups.joints.begin(), groups.joints.end(),
          [one](const Joint& joint) { return joint.along && (joint.a == one || joint.b == one); });
      if (adjust.from && adjust.to) {
        part.from = face_of(declared, groups, part, *adjust.from, false);
        part.to = face_of(declared, groups, part, *adjust.to, true);
        part.held = part.from->occurrence != one;
      }
      const auto thread = std::find_if(threads.begin(), threads.end(), [one](const Thread& of) {
        return of.hole.occurrence == one || of.screw.occurrence == one;
      });
      if (thread != threads.end()) {
        part.thread = static_cast<std::size_t>(thread - threads.begin());
        refuse_other_thread(*declared.job, adjust, *thread);
      }
      parts.push_back(part);
    }
  }
  return parts;
}

double ThreadReach::engaged(double longer) const {
  const double by = moves * longer;
  return std::max(0.0, std::min(hole.high + by, screw.high) - std::max(hole.low + by, screw.low));
}

double ThreadReach::to_end(double longer, int towards) const {
  const double by = moves * longer;
  const bool up = moves * towards > 0.0;  // the hole, against the screw
  double nearest = std::numeric_limits<double>::infinity();
  for (const double left : {up ? screw.high - hole.high - by : hole.low + by - screw.low,
                            up ? screw.low - hole.low - by : hole.high + by - screw.high}) {
    if (left >= -kPastEnd_mm) {
      nearest = std::min(nearest, left);
    }
  }
  return nearest;
}

Interval ThreadReach::room(double engaged) const {
  const Interval by{engaged + screw.low - hole.high, screw.high - hole.low - engaged};
  return moves > 0.0 ? by : Interval{-by.high, -by.low};
}

ThreadReach reach_of(const DeclaredJob& declared, const SetPart& part, const Line& along,
                     bool outward) {
  const Thread& thread = declared.look->seats.threads[*part.thread];
  const bool hole_moves = thread.hole.occurrence == part.part;
  return {ends_of(model_of(declared), thread.hole, along),
          ends_of(model_of(declared), thread.screw, along), hole_moves == outward ? 1.0 : -1.0,
          thread_hold(declared, *part.thread).least};
}

}  // namespace spotblue
