#include "geometry/ways/way_groups.hpp"

#include <algorithm>
#include <iterator>
#include <numeric>
#include <set>

#include "geometry/ways/way_slot.hpp"

namespace spotblue::proof {
namespace {

/// Lines that run the same way and join two or more of the same parts, as sets of line numbers.
std::vector<std::vector<CentreLineId>> line_sets(const Seats& seats) {
  const List<CentreLine>& lines = seats.centre_lines;
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
      if (norm(cross(lines[a].line.along, lines[b].line.along)) > kWayParallel ||
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
    if (set_of[first] != first) {
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
  for (std::vector<CentreLineId>& lines : line_sets(seats)) {
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
      groups.push_back({std::move(lines), {parts.begin(), parts.end()}});
    }
  }
  return groups;
}

}  // namespace spotblue::proof
