#include "group/joints/groups.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <map>
#include <numeric>
#include <set>
#include <utility>

#include "base/disjoint_sets.hpp"
#include "group/joints/clamps.hpp"
#include "group/joints/pressing.hpp"
#include "group/words/size_text.hpp"

namespace spotblue {
namespace {

std::optional<Hold> press_hold(const DeclaredJob& declared, std::size_t number) {
  const RadialSeat& seat = declared.look->seats.radial[number];
  const SeatSizes sizes = seat_sizes(declared, number);
  if (pressing_of(sizes) != Pressing::always) {
    return std::nullopt;
  }
  return Hold{
      seat.hole.occurrence,
      seat.shaft.occurrence,
      HeldBy::press,
      true,
      true,
      sizes.wanted ? "pressed, " + sizes.wanted->text : "pressed by their sizes, no fit declared"};
}

// The slots that one key or tongue lies in, tightest first.
using SlotsOfKey = std::map<OccurrenceId, std::vector<const WidthSeat*>>;

SlotsOfKey slots_of_keys(const Seats& seats) {
  SlotsOfKey slots;
  for (const WidthSeat& seat : seats.width) {
    slots[seat.key.occurrence].push_back(&seat);
  }
  for (auto& [key, list] : slots) {
    std::stable_sort(list.begin(), list.end(), [](const WidthSeat* a, const WidthSeat* b) {
      return a->clearance < b->clearance;
    });
  }
  return slots;
}

void add_key_holds(const DeclaredJob& declared, std::vector<Hold>& holds) {
  const Seats& seats = declared.look->seats;
  const SlotsOfKey slots = slots_of_keys(seats);
  if (slots.empty()) {
    return;
  }
  std::vector<std::set<CentreLineId>> lines_of(declared.look->model.occurrences.size());
  for (CentreLineId line; line < seats.centre_lines.size(); ++line) {
    for (const OccurrenceId occurrence : seats.centre_lines[line].occurrences) {
      lines_of[occurrence].insert(line);
    }
  }
  const auto on_one_line = [&lines_of](OccurrenceId a, OccurrenceId b) {
    return std::any_of(lines_of[a].begin(), lines_of[a].end(),
                       [&](CentreLineId line) { return lines_of[b].contains(line); });
  };
  for (const auto& [key, list] : slots) {
    const bool loose_part = lines_of[key].empty();  // a key proper: on no axis itself
    for (const WidthSeat* seat : list) {
      const OccurrenceId slotted = seat->slot.occurrence;
      if (!loose_part && !on_one_line(key, slotted)) {
        continue;
      }
      const bool rides = loose_part && slotted == list.front()->slot.occurrence;
      holds.push_back({slotted, key, HeldBy::key, rides, true,
                       loose_part ? "key in its keyseat" : "tongue in a slot"});
    }
  }
}

void add_declared_holds(const DeclaredJob& declared, std::vector<Hold>& holds) {
  for (const Join& join : declared.job->joins) {
    const Entry entry{"joins", "between", join.line};
    const auto [a, b] = declared.names.two_parts(join.a, join.b, entry);
    for (const OccurrenceId first : a.occurrences) {
      for (const OccurrenceId second : b.occurrences) {
        if (first != second) {
          holds.push_back(
              {first, second, HeldBy::declared, true, true, join.by + from_line(join.line)});
        }
      }
    }
  }
}

}  // namespace

bool touches(const DeclaredJob& declared, std::size_t axial_seat) {
  const Length same = Length::mm(declared.look->settings.seats.same_length_mm);
  const Length gap = Length::mm(declared.look->seats.axial[axial_seat].gap);
  const AxialWant* want = declared.axial_wants.at(axial_seat);
  if (want != nullptr && want->kind == AxialWantKind::touch) {
    return gap >= want->least - same && gap <= want->greatest + same;
  }
  return gap >= -same && gap <= same;
}

Groups find_groups(const DeclaredJob& declared) {
  const Look& look = *declared.look;
  Groups groups;
  for (std::size_t i = 0; i < look.seats.radial.size(); ++i) {
    if (auto hold = press_hold(declared, i)) {
      groups.holds.push_back(std::move(*hold));
    }
  }
  add_key_holds(declared, groups.holds);
  for (const Thread& thread : look.seats.threads) {
    groups.holds.push_back({thread.hole.occurrence, thread.screw.occurrence, HeldBy::thread, true,
                            true, "screwed, " + thread.size});
  }
  for (const auto& more : {clamp_holds(declared), side_screw_holds(declared)}) {
    groups.holds.insert(groups.holds.end(), more.begin(), more.end());
  }
  add_declared_holds(declared, groups.holds);
  DisjointSets turning(look.model.occurrences.size());
  DisjointSets along(look.model.occurrences.size());
  for (const Hold& hold : groups.holds) {
    if (hold.turning) {
      turning.join(hold.a, hold.b);
    }
    if (hold.along) {
      along.join(hold.a, hold.b);
    }
  }
  groups.turns_with = turning.numbers();
  groups.moves_with = along.numbers();
  return groups;
}

}  // namespace spotblue
