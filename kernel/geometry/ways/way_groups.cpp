#include "geometry/ways/way_groups.hpp"

#include <algorithm>
#include <iterator>
#include <numeric>
#include <set>

#include "geometry/ways/way_slot.hpp"

namespace spotblue::proof {
namespace {

// Axes as far apart as this are of one line. Choice of this program, no source.
constexpr double kRoundAbout_mm = 0.5;

/// Lines about which a part stands in another, or that some part is round about.
std::set<CentreLineId> lines_to_go_along(const Model& model, const Seats& seats) {
  std::set<CentreLineId> lines;
  for (const RadialSeat& seat : seats.radial) {
    lines.insert(seat.centre_line);
  }
  for (const TaperSeat& seat : seats.taper) {
    lines.insert(seat.centre_line);
  }
  for (const Thread& thread : seats.threads) {
    lines.insert(thread.centre_line);
  }
  for (CentreLineId i; i < seats.centre_lines.size(); ++i) {
    const CentreLine& line = seats.centre_lines[i];
    const auto round_about = [&](OccurrenceId part) {
      const Occurrence& placed = model.occurrences.at(part);
      const auto on_line = [&](const auto& feature) {
        const Line axis = place_line(placed.frame, feature.axis);
        return feature.side == Side::external &&
               norm(cross(axis.along, line.line.along)) <= kWayParallel &&
               distance(line.line, axis.at) <= kRoundAbout_mm;
      };
      const Product& product = model.products.at(placed.product);
      return std::ranges::any_of(product.cylinders, on_line) ||
             std::ranges::any_of(product.cones, on_line);
    };
    if (!lines.contains(i) && std::ranges::any_of(line.occurrences, round_about)) {
      lines.insert(i);
    }
  }
  return lines;
}

/// Pairs of the group that stand in one another along another direction than its own.
std::vector<OccurrencePair> together_before(const Seats& seats, const WayGroup& group) {
  const Direction own = seats.centre_lines[group.lines.front()].line.along;
  std::set<OccurrencePair> along, before;
  const auto take = [&](const FeatureRef& hole, const FeatureRef& shaft, CentreLineId line) {
    const auto [a, b] = std::minmax(hole.occurrence, shaft.occurrence);
    if (std::ranges::binary_search(group.parts, a) && std::ranges::binary_search(group.parts, b) &&
        a != b) {
      const Direction of_seat = seats.centre_lines[line].line.along;
      (norm(cross(own, of_seat)) <= kWayParallel ? along : before).emplace(a, b);
    }
  };
  for (const RadialSeat& seat : seats.radial) {
    take(seat.hole, seat.shaft, seat.centre_line);
  }
  for (const TaperSeat& seat : seats.taper) {
    take(seat.hole, seat.shaft, seat.centre_line);
  }
  for (const Thread& thread : seats.threads) {
    take(thread.hole, thread.screw, thread.centre_line);
  }
  std::vector<OccurrencePair> pairs;
  std::ranges::set_difference(before, along, std::back_inserter(pairs));
  return pairs;
}

/// Lines that run the same way and join two or more of the same parts, as sets of line numbers.
std::vector<std::vector<CentreLineId>> line_sets(const Model& model, const Seats& seats) {
  const List<CentreLine>& lines = seats.centre_lines;
  const std::set<CentreLineId> alive = lines_to_go_along(model, seats);
  std::vector<CentreLineId> set_of(lines.size());
  std::iota(set_of.begin(), set_of.end(), CentreLineId{});
  std::vector<std::vector<OccurrenceId>> members;
  members.reserve(lines.size());
  for (const CentreLine& line : lines) {
    members.push_back(line.occurrences);
    std::ranges::sort(members.back());
  }
  for (CentreLineId a; a < lines.size(); ++a) {
    for (CentreLineId b(a + 1); b < lines.size(); ++b) {
      if (!alive.contains(a) || !alive.contains(b) ||
          norm(cross(lines[a].line.along, lines[b].line.along)) > kWayParallel ||
          set_of[a] == set_of[b]) {
        continue;
      }
      std::vector<OccurrenceId> shared;
      std::ranges::set_intersection(members[a], members[b], std::back_inserter(shared));
      if (shared.size() >= 2) {
        std::ranges::replace(set_of, std::max(set_of[a], set_of[b]),
                             std::min(set_of[a], set_of[b]));
      }
    }
  }
  std::vector<std::vector<CentreLineId>> sets;
  for (CentreLineId first; first < lines.size(); ++first) {
    if (set_of[first] != first || !alive.contains(first)) {
      continue;
    }
    std::vector<CentreLineId> set;
    for (CentreLineId line = first; line < lines.size(); ++line) {
      if (set_of[line] == first) {
        set.push_back(line);
      }
    }
    std::ranges::stable_sort(set, std::greater{},
                             [&](CentreLineId line) { return members[line].size(); });
    sets.push_back(std::move(set));
  }
  return sets;
}

}  // namespace

std::vector<WayGroup> way_groups(const Model& model, const Seats& seats) {
  std::vector<bool> on_line(model.occurrences.size(), false);
  for (const CentreLine& line : seats.centre_lines) {
    for (const OccurrenceId occurrence : line.occurrences) {
      on_line.at(occurrence) = true;
    }
  }
  std::vector<WayGroup> groups;
  for (std::vector<CentreLineId>& lines : line_sets(model, seats)) {
    std::set<OccurrenceId> parts;
    for (const CentreLineId line : lines) {
      const std::vector<OccurrenceId>& on = seats.centre_lines[line].occurrences;
      parts.insert(on.begin(), on.end());
    }
    for (const WidthSeat& seat : seats.width) {
      for (const auto& [key, in] : {std::pair{seat.key.occurrence, seat.slot.occurrence},
                                    std::pair{seat.slot.occurrence, seat.key.occurrence}}) {
        if (!on_line.at(key) && parts.contains(in)) {
          parts.insert(key);
        }
      }
    }
    if (parts.size() >= 2) {
      WayGroup group{std::move(lines), {parts.begin(), parts.end()}, {}};
      group.together = together_before(seats, group);
      groups.push_back(std::move(group));
    }
  }
  return groups;
}

}  // namespace spotblue::proof
