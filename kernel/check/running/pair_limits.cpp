#include "check/running/pair_limits.hpp"

#include <fmt/format.h>

#include <utility>

#include "group/joints/part_material.hpp"
#include "group/words/said_running.hpp"
#include "group/words/said_sizes.hpp"
#include "group/words/said_turning.hpp"

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

Saying why_unknown(const DeclaredJob& declared, OccurrenceId occurrence, const OneMaterial& one) {
  const Reference part = declared.names.reference(occurrence);
  if (one.name.empty()) {
    return say(said::kNoMaterial, part);
  }
  return one.row == nullptr && !one.journal ? say(said::kNoLimitsKnown, one.name, part) : Saying();
}

}  // namespace

PairLimits pair_limits(const DeclaredJob& declared, OccurrenceId a, OccurrenceId b) {
  const OneMaterial first = one_material(declared, a);
  const OneMaterial second = one_material(declared, b);
  PairLimits pair;
  for (const auto& [occurrence, one] : {std::pair{a, &first}, {b, &second}}) {
    pair.unknown += why_unknown(declared, occurrence, *one);
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
    pair.unknown = said::kSteelOnSteel;
  }
  return pair;
}

Saying limits_told(const PairLimits& pair) {
  if (pair.basis.empty()) {
    return said::kNoMaterialLimits;
  }
  return pair.note.empty() ? say(said::kMaterialLimits, pair.basis)
                           : say(said::kMaterialLimitsNote, pair.basis, pair.note);
}

}  // namespace spotblue
