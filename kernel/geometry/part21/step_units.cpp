#include "geometry/part21/step_units.hpp"

#include <fmt/format.h>

#include <array>
#include <charconv>
#include <cmath>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>

namespace spotblue {
namespace {

using Entity = StepText::Entity;

struct UnitKind {
  std::string_view keyword;
  std::string_view base;  // of the International System, as files have it
  const char* of;
};
constexpr std::array<UnitKind, 2> kKinds{
    {{"LENGTH_UNIT", ".METRE.", "lengths"}, {"PLANE_ANGLE_UNIT", ".RADIAN.", "angles"}}};

// 25.4 for "LENGTH_MEASURE(25.4)" and for "25.4"; nothing for what is no number.
std::optional<double> measured(std::string_view value) {
  const std::size_t open = value.find('(');
  if (open != std::string_view::npos && value.ends_with(')')) {
    value = value.substr(open + 1, value.size() - open - 2);
  }
  const std::size_t blanks = value.find_first_not_of(" \r\n\t+");
  value.remove_prefix(blanks == std::string_view::npos ? value.size() : blanks);
  double number = 0.0;
  const auto read = std::from_chars(value.data(), value.data() + value.size(), number);
  return read.ec == std::errc{} ? std::optional(number) : std::nullopt;
}

class Units {
 public:
  explicit Units(const StepText& text) : text_(text) {}

  void look_at(int context) {
    const Entity* entity = seen_.insert(context).second ? text_.find(context) : nullptr;
    const auto units =
        entity != nullptr ? text_.arguments(*entity, "GLOBAL_UNIT_ASSIGNED_CONTEXT") : std::nullopt;
    if (!units || units->empty()) {
      return;
    }
    const std::vector<int> named = references(units->front());
    for (const UnitKind& kind : kKinds) {
      std::set<int> of_kind;
      for (const int id : named) {
        if (kind_of(id) == &kind) {
          of_kind.insert(id);
        }
      }
      if (of_kind.size() > 1) {
        tell(*entity, "GLOBAL_UNIT_ASSIGNED_CONTEXT",
             fmt::format("it names {} units of {}: which is meant is not known", of_kind.size(),
                         kind.of));
      }
      for (const int id : of_kind) {
        look_at_unit(*text_.find(id), kind);
      }
    }
  }

  std::vector<Note> faults() { return std::move(faults_); }

 private:
  void tell(const Entity& entity, std::string_view keyword, std::string what) {
    faults_.push_back({fmt::format("#{}, {}", entity.id, keyword), std::move(what)});
  }

  void look_at_unit(const Entity& unit, const UnitKind& kind) {
    if (!seen_.insert(unit.id).second) {
      return;
    }
    const auto conversion = text_.arguments(unit, "CONVERSION_BASED_UNIT");
    const std::string why = conversion ? why_no_conversion(unit, *conversion, kind)
                            : is_base(unit, kind)
                                ? std::string()
                                : fmt::format("it is given as a unit of {} but is none", kind.of);
    if (!why.empty()) {
      tell(unit, conversion ? "CONVERSION_BASED_UNIT" : kind.keyword, why);
    }
  }

  // Null for other units; each is read once, however many contexts share it.
  const UnitKind* kind_of(int id) {
    const auto [entry, is_new] = kinds_.try_emplace(id, nullptr);
    const Entity* unit = is_new ? text_.find(id) : nullptr;
    for (const UnitKind& kind : kKinds) {
      if (unit != nullptr && text_.arguments(*unit, kind.keyword)) {
        entry->second = &kind;
      }
    }
    return entry->second;
  }

  [[nodiscard]] bool is_base(const Entity& unit, const UnitKind& kind) const {
    const auto si = text_.arguments(unit, "SI_UNIT");
    return si && si->size() > 1 && si->back() == kind.base;
  }

  [[nodiscard]] std::string why_no_conversion(const Entity& unit,
                                              const std::vector<std::string_view>& conversion,
                                              const UnitKind& kind) const {
    const auto id = conversion.size() > 1 ? reference(conversion[1]) : std::nullopt;
    const Entity* factor = id ? text_.find(*id) : nullptr;
    auto parts = factor != nullptr ? text_.arguments(*factor) : std::nullopt;
    if (factor != nullptr && !parts) {
      parts = text_.arguments(*factor, "MEASURE_WITH_UNIT");
    }
    if (!parts || parts->size() < 2) {
      return "how long it is can not be read";
    }
    const auto number = measured((*parts)[0]);
    if (!number || !(*number > 0.0) || !std::isfinite(*number)) {
      return fmt::format("#{}, what it is times another unit, is no number above zero", factor->id);
    }
    const auto base = reference((*parts)[1]);
    const Entity* other = base ? text_.find(*base) : nullptr;
    if (other == &unit) {
      return "it is defined by itself";
    }
    return other != nullptr && is_base(*other, kind)
               ? std::string()
               : fmt::format(
                     "it is defined by another unit than one of the International System for {}",
                     kind.of);
  }

  const StepText& text_;
  std::set<int> seen_;  // contexts and units
  std::map<int, const UnitKind*> kinds_;
  std::vector<Note> faults_;
};

}  // namespace

std::vector<Note> unit_faults(const StepText& text, const RepresentationOwners& owners) {
  std::set<int> contexts;
  for (const auto& [representation, owner] : owners) {
    contexts.insert(context_of(text, representation));
  }
  Units units(text);
  for (const int context : contexts) {
    units.look_at(context);
  }
  return units.faults();
}

}  // namespace spotblue
