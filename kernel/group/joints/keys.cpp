#include "group/joints/keys.hpp"

#include <algorithm>
#include <map>
#include <set>

namespace spotblue {
namespace {

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

std::vector<std::set<CentreLineId>> lines_of_parts(const Look& look) {
  std::vector<std::set<CentreLineId>> lines_of(look.model.occurrences.size());
  for (CentreLineId line; line < look.seats.centre_lines.size(); ++line) {
    for (const OccurrenceId occurrence : look.seats.centre_lines[line].occurrences) {
      lines_of[occurrence].insert(line);
    }
  }
  return lines_of;
}

}  // namespace

void add_key_joints(const DeclaredJob& declared, std::vector<Joint>& joints) {
  const SlotsOfKey slots = slots_of_keys(declared.look->seats);
  if (slots.empty()) {
    return;
  }
  const std::vector<std::set<CentreLineId>> lines_of = lines_of_parts(*declared.look);
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
      Joint joint{slotted, key, JointKind::key, Certainty::certain, true};
      joint.along = loose_part && slotted == list.front()->slot.occurrence;
      joint.by = {seat->slot, seat->key};
      joint.why = loose_part ? "key in its keyseat" : "tongue in a slot";
      joints.push_back(std::move(joint));
    }
  }
}

}  // namespace spotblue
