#include "check/gears/gear_pairs.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "spotblue/mechanics/tooth_thickness.hpp"

namespace spotblue {
namespace {

ToothForm form_of(const Mesh& mesh) {
  return {mesh.module.in_mm(), mesh.pressure_angle_deg, mesh.helix_angle_deg};
}

std::pair<double, ThicknessFrom> thickness_of(const ToothForm& form, const MeshGear& gear) {
  if (gear.thickness) {
    return {gear.thickness->in_mm(), ThicknessFrom::given};
  }
  if (gear.span) {
    return {thickness_from_span_mm(form, gear.teeth, gear.span->teeth, gear.span->over.in_mm()),
            ThicknessFrom::span};
  }
  if (gear.pins) {
    const Pins pins = gear.teeth % 2 == 0 ? Pins::two : Pins::three;
    return {thickness_from_pins_mm(form, gear.teeth, gear.pins->pin.in_mm(),
                                   gear.pins->over.in_mm(), pins),
            ThicknessFrom::pins};
  }
  return {standard_thickness_mm(form), ThicknessFrom::assumed};
}

// A measured size that no such gear can have is a mistake in the job file: say where.
template <typename Work>
auto at_entry(const Job& job, const std::optional<JobLine>& line, const Work& work) {
  try {
    return work();
  } catch (const Error& error) {
    throw Error(error.code(), entry_place(job, "meshes", line), error.rule(), error.cure());
  }
}

std::optional<PairedGear> gear_of(const DeclaredJob& declared, const Mesh& mesh,
                                  const MeshGear& job, OccurrenceId occurrence) {
  const ToothForm form = form_of(mesh);
  const auto [thickness, from] =
      at_entry(*declared.job, mesh.line, [&] { return thickness_of(form, job); });
  PairedGear gear{&job, occurrence, {}, standard_gear(form, job.teeth, thickness), from};
  if (job.tip_diameter) {
    gear.teeth.tip_mm = job.tip_diameter->in_mm();
  }
  const auto blank = find_gear_blank(declared, occurrence, gear.teeth.tip_mm, form.module_mm);
  if (!blank) {
    return std::nullopt;
  }
  gear.blank = *blank;
  if (!job.tip_diameter && blank->teeth) {
    gear.teeth.tip_mm = blank->tip_mm;
  }
  if (job.root_diameter) {
    gear.teeth.root_mm = job.root_diameter->in_mm();
  }
  return gear;
}

// By the play of the one on the other, all that it may be: what tolerances add to the play as
// modelled may be on either side.
std::optional<Interval> drift_of(const WorkedGroup& worked, const PairedGear& a,
                                 const PairedGear& b) {
  const std::size_t first = worked.joints.moves_with[a.occurrence];
  const std::size_t second = worked.joints.moves_with[b.occurrence];
  if (first == second) {
    return Interval{0.0, 0.0};
  }
  for (const BodyPlay& play : worked.plays.captured) {
    const bool same = play.of == first && play.on == second;
    if ((!same && (play.of != second || play.on != first)) || !play.closed || !play.play.worst) {
      continue;
    }
    const double ahead = travel_mm(play.ahead);
    const double back = travel_mm(play.back);
    const double more = std::max(0.0, play.play.worst->upper.in_mm() - ahead - back);
    const Direction along = play.net->stops.front().line.along;
    const bool forward = (dot(along, a.blank.line.along) > 0.0) == same;
    return forward ? Interval{-back - more, ahead + more} : Interval{-ahead - more, back + more};
  }
  return std::nullopt;
}

// Shared by two stretches while the first goes anywhere in the drift: least at one of its ends,
// most where the middles come together.
Interval shared_in(Interval first, Interval second, Interval drift) {
  const auto shared = [&](double by) {
    return std::max(0.0,
                    std::min(first.high + by, second.high) - std::max(first.low + by, second.low));
  };
  const double lined_up = 0.5 * (second.low + second.high - first.low - first.high);
  return {std::min(shared(drift.low), shared(drift.high)),
          shared(std::clamp(lined_up, drift.low, drift.high))};
}

GearPair pair_of(const WorkedGroup& worked, const Mesh& mesh, const PairedGear& a,
                 const PairedGear& b) {
  GearPair pair{&mesh, form_of(mesh), a, b, 0.0, 0.0, 0.0, drift_of(worked, a, b), {}, {}, {}};
  pair.tilt = angle_between_lines(a.blank.line.along, b.blank.line.along);
  Point middle = a.blank.line.at;
  if (pair.faces_known()) {
    const Interval other =
        ordered(station(a.blank.line, at_station(b.blank.line, b.blank.face.low)),
                station(a.blank.line, at_station(b.blank.line, b.blank.face.high)));
    const double from = std::max(a.blank.face.low, other.low);
    const double to = std::min(a.blank.face.high, other.high);
    pair.face_mm = std::max(0.0, to - from);
    pair.face_in_play = shared_in(a.blank.face, other, pair.drift.value_or(Interval{0.0, 0.0}));
    middle = at_station(a.blank.line, 0.5 * (from + to));
  }
  pair.centre_mm = distance(b.blank.line, middle);
  pair.play_a = bearing_play(worked, a.occurrence, a.blank, b.blank.centre_line);
  pair.play_b = bearing_play(worked, b.occurrence, b.blank, a.blank.centre_line);
  return pair;
}

}  // namespace

std::vector<GearPair> gear_pairs(const WorkedGroup& worked, const Mesh& mesh) {
  const DeclaredJob& declared = worked.declared;
  const auto gears = [&](const MeshGear& job) {
    std::vector<PairedGear> found;
    for (const OccurrenceId occurrence :
         declared.names.part(job.part, {"meshes", "part", mesh.line}).occurrences) {
      if (const auto gear = gear_of(declared, mesh, job, occurrence)) {
        found.push_back(*gear);
      }
    }
    return found;
  };
  const std::vector<PairedGear> all_a = gears(mesh.a);
  const std::vector<PairedGear> all_b = gears(mesh.b);
  const double reference =
      0.5 * transverse_form(form_of(mesh)).module_mm * (mesh.a.teeth + mesh.b.teeth);
  std::vector<GearPair> pairs;
  const bool many_a = all_a.size() >= all_b.size();
  for (const PairedGear& one : many_a ? all_a : all_b) {
    std::optional<GearPair> nearest;
    for (const PairedGear& other : many_a ? all_b : all_a) {
      if (other.occurrence == one.occurrence) {
        continue;
      }
      const GearPair pair = pair_of(worked, mesh, many_a ? one : other, many_a ? other : one);
      if (!nearest ||
          std::abs(pair.centre_mm - reference) < std::abs(nearest->centre_mm - reference)) {
        nearest = pair;
      }
    }
    if (nearest) {
      pairs.push_back(*nearest);
    }
  }
  return pairs;
}

std::optional<MeshPositions> mesh_positions(const GearPair& pair) {
  const double closest = pair.centre_mm - pair.shift_mm();
  if (closest <= least_centre_mm(pair.form, pair.a.teeth.teeth, pair.b.teeth.teeth)) {
    return std::nullopt;
  }
  const auto at = [&pair](double centre) {
    return gear_mesh(pair.form, pair.a.teeth, pair.b.teeth, centre, pair.face_mm);
  };
  return MeshPositions{at(closest), at(pair.centre_mm), at(pair.centre_mm + pair.shift_mm())};
}

}  // namespace spotblue
