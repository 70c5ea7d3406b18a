#include "check/running/pair_limits.hpp"

#include <fmt/format.h>

#include <utility>

#include "group/joints/part_material.hpp"

namespace spotblue {
namespace {

struct OneMaterial {
  std::string name;
  const BearingMaterial* row = nullptr;
  bool journal = false;
};

OneMaterial one_material(const DeclaredJob& declared, OccurrenceId occurrence) {
  OneMaterial one;
  one.name = material_name(declared, occurrence);
  one.row = find_bearing_material(one.name);
  one.journal = is_journal_material(one.name);
  return one;
}

std::string why_unknown(const DeclaredJob& declared, OccurrenceId occurrence,
                        const OneMaterial& one) {
  const std::string& part = declared.names.id_of(occurrence);
  if (one.name.empty()) {
    return fmt::format("no material is given for {}", part);
  }
  return one.row == nullptr && !one.journal
             ? fmt::format("no limits are known for {} of {}", one.name, part)
             : std::string();
}

}  // namespace

PairLimits pair_limits(const DeclaredJob& declared, OccurrenceId a, OccurrenceId b) {
  const OneMaterial first = one_material(declared, a);
  const OneMaterial second = one_material(declared, b);
  PairLimits pair;
  for (const auto& [occurrence, one] : {std::pair{a, &first}, {b, &second}}) {
    const std::string why = why_unknown(declared, occurrence, *one);
    pair.unknown += (pair.unknown.empty() || why.empty() ? "" : " and ") + why;
    if (one->row != nullptr) {
      pair.limits = weaker(pair.limits, one->row->limits);
      pair.basis +=
          fmt::format("{}{}: {}", pair.basis.empty() ? "" : "; ", one->row->name, one->row->source);
      if (!one->row->note.empty()) {
        pair.note += fmt::format("{}{}", pair.note.empty() ? "" : "; ", one->row->note);
      }
    }
  }
  if (pair.unknown.empty() && first.journal && second.journal) {
    pair.unknown = "steel on steel has no limits to go by: it galls; bush one of the two";
  }
  return pair;
}

}  // namespace spotblue
