#include "group/making/way_order.hpp"

#include <algorithm>
#include <cstddef>
#include <utility>

#include "group/joints/part_material.hpp"
#include "spotblue/base/interval.hpp"

namespace spotblue {
namespace {

// What the job presses, and what the model shows with interference, whatever the job says: by these
// shapes no part slides past the other.
bool goes_in_by_force(const WorkedGroup& worked, std::size_t number) {
  const Look& look = *worked.declared.look;
  return look.seats.radial[number].clearance < -look.settings.seats.same_length_mm ||
         worked.surfaces[number].pressing == Pressing::always;
}

// Stations of a cylinder on a line along which its own axis lies.
Interval stations_of(const Cylinder& cylinder, const Line& axis, const Line& line) {
  const double from = station(line, at_station(axis, cylinder.intervals.front().low));
  const double to = station(line, at_station(axis, cylinder.intervals.back().high));
  return ordered(from, to);
}

// Whether a whole bore of one part stands round a shaft of the other.
bool stands_round(const Model& model, std::size_t outer, std::size_t inner) {
  // Choices of this program, no source.
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

}  // namespace

WayInOptions way_options(const WorkedGroup& worked) {
  const DeclaredJob& declared = worked.declared;
  WayInOptions options;
  const Look& look = *declared.look;
  for (OccurrenceId i; i < declared.parts.size(); ++i) {
    if (declared.parts[i] != nullptr && declared.parts[i]->springs) {
      options.springs.push_back(i);
    }
    if (is_soft(declared, i) || (declared.parts[i] != nullptr && declared.parts[i]->split)) {
      options.opens.push_back(i);
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

bool may_come_from_the_side(const Model& model, const Blockage& blockage) {
  return !stands_round(model, blockage.part, blockage.by) &&
         !stands_round(model, blockage.by, blockage.part);
}

void true_blocks_first(std::vector<Blockage>& blocked) {
  const auto both_ways = [&blocked](const Blockage& one) {
    return std::ranges::count_if(blocked, [&one](const Blockage& other) {
      return std::minmax(other.part, other.by) == std::minmax(one.part, one.by);
    });
  };
  std::vector<std::pair<std::pair<std::ptrdiff_t, double>, Blockage>> ranked;
  ranked.reserve(blocked.size());
  for (const Blockage& one : blocked) {
    ranked.push_back({{-both_ways(one), one.needs - one.has.value_or(0.0)}, one});
  }
  std::ranges::stable_sort(ranked, {}, [](const auto& one) { return one.first; });
  std::ranges::transform(ranked, blocked.begin(), [](const auto& one) { return one.second; });
}

std::vector<const WayStep*> steps_across(const std::vector<WayIn>& ways, const WayIn& way) {
  std::vector<const WayStep*> steps;
  for (const WayIn& other : ways) {
    const bool across =
        !other.together.empty() && std::ranges::all_of(other.together, [&way](const auto& pair) {
          return std::ranges::binary_search(way.parts, pair.first) &&
                 std::ranges::binary_search(way.parts, pair.second);
        });
    for (const WayStep& step : other.steps) {
      const bool here = std::ranges::any_of(step.parts, [&way](OccurrenceId part) {
        return std::ranges::binary_search(way.parts, part);
      });
      if (across && !here && &other != &way) {
        steps.push_back(&step);
      }
    }
  }
  return steps;
}

}  // namespace spotblue
