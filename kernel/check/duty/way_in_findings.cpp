#include "check/duty/way_in_findings.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

#include "check/findings/unsound.hpp"
#include "check/words/words.hpp"
#include "group/words/said_cautions.hpp"
#include "group/words/size_text.hpp"
#include "spotblue/base/interval.hpp"
#include "spotblue/geometry/way_in.hpp"

namespace spotblue {
namespace {

constexpr std::string_view kBasis =
    "parts moved along their centre line, past each other, as rings about it; own geometry; parts "
    "of other groups taken as not there";

// What the job presses, and what the model shows with interference, whatever the job says: by these
// shapes no part slides past the other.
bool goes_in_by_force(const WorkedGroup& worked, std::size_t number) {
  const Look& look = *worked.declared.look;
  return look.seats.radial[number].clearance < -look.settings.seats.same_length_mm ||
         worked.surfaces[number].pressing == Pressing::always;
}

WayInOptions options_of(const WorkedGroup& worked) {
  const DeclaredJob& declared = worked.declared;
  WayInOptions options;
  const Look& look = *declared.look;
  for (OccurrenceId i; i < declared.parts.size(); ++i) {
    if (declared.parts[i] != nullptr && declared.parts[i]->springs) {
      options.springs.push_back(i);
    }
  }
  for (std::size_t i = 0; i < look.seats.radial.size(); ++i) {
    const RadialSeat& seat = look.seats.radial[i];
    if (goes_in_by_force(worked, i)) {
      options.pressed.emplace_back(seat.hole.occurrence, seat.shaft.occurrence);
    }
  }
  for (const AxialSeat& seat : look.seats.axial) {
    if (seat.gap < 0.0) {
      options.given.push_back({seat.a.occurrence, seat.b.occurrence, -seat.gap});
    }
  }
  for (std::size_t i = 0; i < look.fouls.found.size(); ++i) {
    const Foul& foul = look.fouls.found[i];
    (declared.foul_allowed.at(i) != nullptr ? options.squeezed : options.given)
        .push_back({foul.a, foul.b, foul.depth});
  }
  return options;
}

/// "+z", "-x", or "(0.500, 0.866, 0.000)".
std::string direction_text(Direction d) {
  const std::array<std::pair<double, char>, 3> parts{{{d.x(), 'x'}, {d.y(), 'y'}, {d.z(), 'z'}}};
  for (const auto& [along, name] : parts) {
    if (std::abs(along) > 1.0 - 1e-9) {
      return fmt::format("{}{}", along > 0.0 ? '+' : '-', name);
    }
  }
  return fmt::format("({:.3f}, {:.3f}, {:.3f})", d.x(), d.y(), d.z());
}

std::string names_text(const DeclaredJob& declared, const std::vector<OccurrenceId>& parts) {
  std::string text;
  for (const OccurrenceId part : parts) {
    text += (text.empty() ? "" : ", ") + declared.names.id_of(part);
  }
  return text;
}

/// "into" a bore, "over" a shaft, "to" anything else.
std::string_view preposition(const Seats& seats, const WayStep& step) {
  const auto moves = [&](const FeatureRef& feature) {
    return std::ranges::find(step.parts, feature.occurrence) != step.parts.end();
  };
  const auto among = [&](const auto& pairs, auto hole, auto shaft) -> std::string_view {
    for (const auto& pair : pairs) {
      if (moves(pair.*shaft) && (pair.*hole).occurrence == step.onto) {
        return "into";
      }
      if (moves(pair.*hole) && (pair.*shaft).occurrence == step.onto) {
        return "over";
      }
    }
    return {};
  };
  for (const std::string_view found : {among(seats.threads, &Thread::hole, &Thread::screw),
                                       among(seats.radial, &RadialSeat::hole, &RadialSeat::shaft),
                                       among(seats.taper, &TaperSeat::hole, &TaperSeat::shaft),
                                       among(seats.width, &WidthSeat::slot, &WidthSeat::key)}) {
    if (!found.empty()) {
      return found;
    }
  }
  return "to";
}

std::string step_text(const DeclaredJob& declared, const WayStep& step) {
  const std::string holds =
      step.holds.empty() ? "" : "; holds in " + names_text(declared, step.holds);
  return fmt::format("{} {} {}, {} towards {}{}", names_text(declared, step.parts),
                     preposition(declared.look->seats, step), declared.names.id_of(step.onto),
                     word_of(step.how), direction_text(step.along), holds);
}

std::string blocked_text(const DeclaredJob& declared, const Blockage& blockage) {
  const LengthUnit unit = declared.job->unit;
  const std::string needs = length_text(Length::mm(blockage.needs), unit);
  return fmt::format(
      "{} by {} towards {}: needs {}, has {}", declared.names.id_of(blockage.part),
      declared.names.id_of(blockage.by), direction_text(blockage.leaving), needs,
      blockage.has ? length_text(Length::mm(*blockage.has), unit) : std::string("no hole"));
}

// Stations of a cylinder on a line along which its own axis lies.
Interval stations_of(const Cylinder& cylinder, const Line& axis, const Line& line) {
  const double from = station(line, at_station(axis, cylinder.intervals.front().low));
  const double to = station(line, at_station(axis, cylinder.intervals.back().high));
  return ordered(from, to);
}

// Whether a whole bore of one part stands round a shaft of the other.
bool stands_round(const Model& model, std::size_t outer, std::size_t inner) {
  constexpr double kParallel = 0.02;  // sine of the angle
  constexpr double kWhole = 6.2;      // rad: a saw cut lets nothing out
  constexpr double kShared = 0.1;     // mm of length
  const Occurrence& round = model.occurrences.at(outer);
  const Occurrence& in_it = model.occurrences.at(inner);
  for (const Cylinder& bore : model.products.at(round.product).cylinders) {
    if (bore.side != Side::internal || bore.coverage < kWhole || bore.intervals.empty()) {
      continue;
    }
    const Line axis = place_line(round.frame, bore.axis);
    const Interval wall = stations_of(bore, axis, axis);
    for (const Cylinder& shaft : model.products.at(in_it.product).cylinders) {
      const Line other = place_line(in_it.frame, shaft.axis);
      if (shaft.side != Side::external || shaft.intervals.empty() ||
          norm(cross(axis.along, other.along)) > kParallel ||
          distance(axis, other.at) > 0.5 * bore.diameter) {
        continue;
      }
      if (shared_length(wall, stations_of(shaft, other, axis)) > kShared) {
        return true;
      }
    }
  }
  return false;
}

// Only moves along the line are tried: a part that neither holds the other in a bore nor is held in
// one may come from the side.
bool may_come_from_the_side(const Model& model, const Blockage& blockage) {
  return !stands_round(model, blockage.part, blockage.by) &&
         !stands_round(model, blockage.by, blockage.part);
}

void judge_blocked(const DeclaredJob& declared, const WayIn& way, Finding& finding) {
  const Model& model = declared.look->model;
  const auto held = std::ranges::find_if_not(
      way.blocked, [&](const Blockage& one) { return may_come_from_the_side(model, one); });
  finding.outcome = held != way.blocked.end() ? Outcome::nonconforming : Outcome::undecided;
  double least = 0.0;
  for (std::size_t i = 0; i < way.blocked.size(); ++i) {
    finding.found.push_back(
        {fmt::format("blocked_{}", i + 1), blocked_text(declared, way.blocked[i])});
    least = std::min(least, way.blocked[i].has.value_or(0.0) - way.blocked[i].needs);
  }
  finding.margin = {{"passing", millimetres(least)}};
  const Blockage& first = held != way.blocked.end() ? *held : way.blocked.front();
  if (held == way.blocked.end()) {
    finding.advice = fmt::format(
        "{} has no way along the line past {}; whether it comes in from the side can not be told: "
        "look by eye",
        declared.names.id_of(first.part), declared.names.id_of(first.by));
    return;
  }
  finding.advice = fmt::format(
      "{} cannot be brought to its place past {}: open the bore, turn the shoulder down, split the "
      "part, or make the shoulder a ring of its own",
      declared.names.id_of(first.part), declared.names.id_of(first.by));
}

void judge_untold(const DeclaredJob& declared, const WayIn& way, Finding& finding) {
  finding.outcome = Outcome::undecided;
  for (std::size_t i = 0; i < way.not_told.size(); ++i) {
    const NotTold& pair = way.not_told[i];
    finding.found.push_back(
        {fmt::format("not_told_{}", i + 1),
         fmt::format("{} past {} towards {}", declared.names.id_of(pair.part),
                     declared.names.id_of(pair.by), direction_text(pair.leaving))});
  }
  finding.advice = way.too_many
                       ? "too many parts on one line to try every order: check by hand"
                       : fmt::format(
                             "it cannot be told whether {} passes {}: look by eye; for a ring that "
                             "is sprung in by hand say springs = true in its [[parts]] entry",
                             declared.names.id_of(way.not_told.front().part),
                             declared.names.id_of(way.not_told.front().by));
}

// What stands in the way stands there whatever else is missing.
void leave_unseen_open(const DeclaredJob& declared, const WayIn& way, Finding& finding) {
  if (finding.outcome == Outcome::nonconforming) {
    std::vector<OccurrenceId> in_the_way;
    for (const Blockage& one : way.blocked) {
      in_the_way.insert(in_the_way.end(), {one.part, one.by});
    }
    leave_parts_open(declared, in_the_way, finding);
    return;
  }
  leave_neighbours_open(declared, way.parts, finding);
  leave_missing_open(declared, finding);
}

Finding judge_way(const DeclaredJob& declared, const WayIn& way) {
  Finding finding;
  finding.kind = "way in";
  finding.about = {declared.look->seats.centre_lines.at(way.centre_lines.front()).id,
                   declared.names.reference(way.base)};
  finding.wanted = {{"want", "a way in for every part"}};
  finding.basis = std::string(kBasis);
  for (std::size_t i = 0; i < way.steps.size(); ++i) {
    finding.found.push_back({fmt::format("step_{}", i + 1), step_text(declared, way.steps[i])});
  }
  const bool presses =
      std::ranges::any_of(way.steps, [](const WayStep& step) { return step.how == WayHow::press; });
  finding.caution = presses ? Saying(said::kPressCaution) : Saying();
  if (!way.blocked.empty()) {
    judge_blocked(declared, way, finding);
  } else if (!way.not_told.empty() || way.too_many) {
    judge_untold(declared, way, finding);
  } else {
    finding.outcome = Outcome::conforming;
    finding.advice = fmt::format("put together in this order, starting from {}; apart in reverse",
                                 declared.names.id_of(way.base));
  }
  leave_unseen_open(declared, way, finding);
  return finding;
}

}  // namespace

std::vector<Finding> way_in_findings(const WorkedGroup& worked) {
  const DeclaredJob& declared = worked.declared;
  std::vector<Finding> findings;
  const Look& look = *declared.look;
  for (const WayIn& way : ways_in(look.model, look.seats, options_of(worked))) {
    findings.push_back(judge_way(declared, way));
  }
  return findings;
}

}  // namespace spotblue
