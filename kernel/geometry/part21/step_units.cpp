#include "geometry/part21/step_units.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <charconv>
#include <cmath>
#include <map>
#include <numbers>
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

// Units whose size is the same wherever they are used, in metres and radians: the inch, foot, yard
// and mile by the yard of 0.9144 m exactly (National Bureau of Standards, notice of 1 July 1959,
// 24 FR 5348; Circular 572, addendum of 1960), degree and gon as shares of a turn. In another
// plural, "s" behind.
struct NamedUnit {
  std::string_view name;
  double size;
};
constexpr std::array<NamedUnit, 24> kNamedUnits{{{"inch", 0.0254},
                                                 {"inches", 0.0254},
                                                 {"foot", 0.3048},
                                                 {"feet", 0.3048},
                                                 {"yard", 0.9144},
                                                 {"mile", 1609.344},
                                                 {"mil", 0.0000254},
                                                 {"thou", 0.0000254},
                                                 {"micrometre", 1e-6},
                                                 {"micrometer", 1e-6},
                                                 {"micron", 1e-6},
                                                 {"millimetre", 1e-3},
                                                 {"millimeter", 1e-3},
                                                 {"centimetre", 1e-2},
                                                 {"centimeter", 1e-2},
                                                 {"decimetre", 0.1},
                                                 {"decimeter", 0.1},
                                                 {"metre", 1.0},
                                                 {"meter", 1.0},
                                                 {"kilometre", 1000.0},
                                                 {"kilometer", 1000.0},
                                                 {"degree", std::numbers::pi / 180.0},
                                                 {"gon", std::numbers::pi / 200.0},
                                                 {"radian", 1.0}}};

// Files round their factors: 0.0174533 for a degree. Choice of this program, no source.
constexpr double kSameUnit = 1e-6;

std::optional<double> size_named(std::string name) {
  std::transform(name.begin(), name.end(), name.begin(),
                 [](unsigned char letter) { return static_cast<char>(std::tolower(letter)); });
  for (const NamedUnit& unit : kNamedUnits) {
    if (name == unit.name || name == std::string(unit.name) + "s") {
      return unit.size;
    }
  }
  return std::nullopt;
}

// Of the International System; nothing for what is no prefix.
std::optional<double> prefix_size(std::string_view prefix) {
  constexpr std::array<std::pair<std::string_view, double>, 17> kPrefixes{{{"$", 1.0},
                                                                           {".EXA.", 1e18},
                                                                           {".PETA.", 1e15},
                                                                           {".TERA.", 1e12},
                                                                           {".GIGA.", 1e9},
                                                                           {".MEGA.", 1e6},
                                                                           {".KILO.", 1e3},
                                                                           {".HECTO.", 1e2},
                                                                           {".DECA.", 1e1},
                                                                           {".DECI.", 1e-1},
                                                                           {".CENTI.", 1e-2},
                                                                           {".MILLI.", 1e-3},
                                                                           {".MICRO.", 1e-6},
                                                                           {".NANO.", 1e-9},
                                                                           {".PICO.", 1e-12},
                                                                           {".FEMTO.", 1e-15},
                                                                           {".ATTO.", 1e-18}}};
  for (const auto& [word, size] : kPrefixes) {
    if (prefix == word) {
      return size;
    }
  }
  return std::nullopt;
}

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

  // In metres or radians; of a unit that is_base.
  [[nodiscard]] std::optional<double> size_of_base(const Entity& unit) const {
    const auto si = text_.arguments(unit, "SI_UNIT");
    return si && si->size() > 1 ? prefix_size((*si)[si->size() - 2]) : std::nullopt;
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
      return "its size can not be read";
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
    if (other == nullptr || !is_base(*other, kind)) {
      return fmt::format(
          "it is defined by another unit than one of the International System for {}", kind.of);
    }
    const std::string name = quoted(conversion.front());
    const auto by_name = size_named(name);
    const auto of_base = size_of_base(*other);
    return by_name && of_base && std::abs(*number * *of_base / *by_name - 1.0) > kSameUnit
               ? fmt::format("it is called {}, but #{} gives it another size", name, factor->id)
               : std::string();
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
