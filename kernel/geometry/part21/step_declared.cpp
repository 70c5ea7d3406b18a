#include "geometry/part21/step_declared.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <set>
#include <unordered_map>
#include <unordered_set>
#include <utility>

#include "geometry/part21/step_kinds.hpp"
#include "geometry/part21/step_outside.hpp"
#include "geometry/part21/step_solids.hpp"
#include "geometry/part21/step_usage.hpp"
#include "spotblue/base/ascii.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

std::string protocol_of(const std::string& schema) {
  const auto has = [&](std::string_view word) { return schema.find(word) != std::string::npos; };
  if (has("AP242") || has("10303 442") || has("10303 242")) {
    return "AP242";
  }
  if (has("AUTOMOTIVE_DESIGN") || has("AP214")) {
    return "AP214";
  }
  if (has("CONFIG_CONTROL_DESIGN") || has("AP203") || has("CONFIGURATION_CONTROL")) {
    return "AP203";
  }
  return schema.substr(0, schema.find_first_of(" {"));
}

// The name of a length unit, empty for units of other kinds.
std::string length_unit(const StepText& text, const StepText::Entity& entity) {
  if (!text.arguments(entity, "LENGTH_UNIT")) {
    return {};
  }
  if (const auto conversion = text.arguments(entity, "CONVERSION_BASED_UNIT")) {
    const std::string name =
        conversion->empty() ? std::string() : ascii_lower(quoted((*conversion)[0]));
    return name == "in" || name == "inches" ? "inch" : name == "millimetre" ? "mm" : name;
  }
  const auto si = text.arguments(entity, "SI_UNIT");
  if (!si || si->empty()) {
    return {};
  }
  constexpr std::array<std::pair<std::string_view, std::string_view>, 6> kNames{{{"$", "metre"},
                                                                                 {".MILLI.", "mm"},
                                                                                 {".CENTI.", "cm"},
                                                                                 {".DECI.", "dm"},
                                                                                 {".MICRO.", "um"},
                                                                                 {".KILO.", "km"}}};
  for (const auto& [prefix, name] : kNames) {
    if ((*si)[0] == prefix) {
      return std::string(name);
    }
  }
  return ascii_lower(std::string((*si)[0])) + "metre";
}

void add_units(const StepText& text, int context, std::set<std::string>& names) {
  const StepText::Entity* entity = text.find(context);
  const auto units =
      entity != nullptr ? text.arguments(*entity, "GLOBAL_UNIT_ASSIGNED_CONTEXT") : std::nullopt;
  for (const int id : units && !units->empty() ? references(units->front()) : std::vector<int>()) {
    const StepText::Entity* unit = text.find(id);
    const std::string name = unit != nullptr ? length_unit(text, *unit) : std::string();
    if (!name.empty()) {
      names.insert(name);
    }
  }
}

std::string instead_of_solids(const StepText& text) {
  bool tessellated = false;
  bool faces = false;
  bool curves = false;
  for (const StepText::Entity& entity : text.entities()) {
    const std::string_view word = text.keyword(entity);
    tessellated = tessellated || is_tessellated(word);
    faces = faces || word == "ADVANCED_FACE" || word == "FACE_SURFACE" || word == "OPEN_SHELL" ||
            word == "CLOSED_SHELL" || word == "GEOMETRIC_SET";
    curves = curves || is_curves(word);
  }
  return faces         ? "surfaces only"
         : tessellated ? "tessellated shapes only"
         : curves      ? "curves only"
                       : "no shapes at all";
}

}  // namespace

Declared read_declared(const StepText& text, const std::string& file, const ReadLimits& limits) {
  Declared declared;
  declared.protocol = protocol_of(text.schema());
  const auto usage = read_usage(text, file, limits);
  declared.solids = declared_solids(text);
  std::set<std::string> units;
  std::set<const void*> lists;
  for (DefinitionSolids& one : solids_by_definition(text, file, declared.solids)) {
    const auto used = usage.find(one.definition);
    const Usage how = used == usage.end() ? Usage{} : used->second;
    if (lists.insert(one.contexts.get()).second) {
      for (const int context : *one.contexts) {
        add_units(text, context, units);
      }
    }
    declared.parts.push_back({one.definition, product_name(text, one.definition), one.solids,
                              how.occurrences, how.has_components, std::move(one.solid_entities)});
  }
  declared.unit = fmt::format("{}", fmt::join(units, ", "));
  double placed = 0.0;
  for (const DeclaredPart& part : declared.parts) {
    placed += part.solids * part.occurrences;
  }
  if (!(placed <= limits.occurrences)) {
    throw Error(ErrorCode::unreadable, {file, ""},
                fmt::format("the model unfolds to more than {:.0f} solids", limits.occurrences),
                "export a part of it, or raise the limit");
  }
  declared.outside = outside_parts(text);
  if (declared.solids.empty()) {
    declared.instead = instead_of_solids(text);
  }
  return declared;
}

}  // namespace spotblue
