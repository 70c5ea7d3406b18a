#pragma once
/// @file
/// A toleranced size that a STEP file states for faces of a product, as a machine can read it
/// (ISO 10303-47 and AP242). Lengths in mm whatever unit the file uses.

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/base/words.hpp"
#include "spotblue/geometry/feature_kind.hpp"
#include "spotblue/geometry/ids.hpp"

namespace spotblue {

/// What of a feature the size is.
enum class SizeCharacteristic { diameter, radius, width, other };
constexpr auto describe(const SizeCharacteristic*) {
  return words("What of a feature a stated size is.", "diameter", "radius", "width", "other");
}

[[nodiscard]] SPOTBLUE_EXPORT std::string_view size_characteristic_name(
    SizeCharacteristic characteristic);

struct SizeLimits {
  double lower_mm = 0.0;
  double upper_mm = 0.0;
  bool operator==(const SizeLimits&) const = default;
};
constexpr void describe(auto& fields, const SizeLimits*) {
  fields.value("SizeLimits", "Lower and upper end of a size, or of a deviation, then signed.")
      .member("lower_mm", &SizeLimits::lower_mm, "mm")
      .member("upper_mm", &SizeLimits::upper_mm, "mm");
}

struct SemanticSize {
  std::optional<int> entity;
  std::string name;
  SizeCharacteristic characteristic = SizeCharacteristic::other;
  std::optional<ProductId> product;
  std::vector<ProductFeatureRef> features;
  std::optional<double> nominal_mm;
  std::optional<SizeLimits> deviations;
  std::optional<SizeLimits> limits;
  std::string tolerance_class;
  std::string doubt;
};

/// Whether a fit or a size may be judged by it: on a feature, with limits, without doubt.
[[nodiscard]] SPOTBLUE_EXPORT bool is_usable(const SemanticSize& size);

/// "44 H7", "6.35 +0.0762/-0.0254", "32 to 32.5 radius", as a person reads it, in mm.
[[nodiscard]] SPOTBLUE_EXPORT std::string semantic_size_text(const SemanticSize& size);
/// " (#120)", where the file states it; empty when no file does.
[[nodiscard]] SPOTBLUE_EXPORT std::string entity_text(const SemanticSize& size);

constexpr void describe(auto& fields, const SemanticSize*) {
  fields.value("SemanticSize", "A toleranced size that the file itself states.")
      .member("entity", &SemanticSize::entity,
              "its number in the file: 12 for #12; 0 of a model not read from a STEP file")
      .member("name", &SemanticSize::name, "as the file says: \"diameter\"")
      .member("characteristic", &SemanticSize::characteristic, "diameter, radius, width or other")
      .member("product", &SemanticSize::product,
              "number of the product, from 0, or None: on no known face")
      .member("features", &SemanticSize::features,
              "of that product, the size is stated for: one, or several alike (\"4X\")")
      .member("nominal_mm", &SemanticSize::nominal_mm, "mm, or None")
      .member("deviations", &SemanticSize::deviations,
              "from the nominal, as the file states them, or None")
      .member("limits", &SemanticSize::limits,
              "ends of the size: stated as such, or nominal plus deviations, or by the class; a "
              "radius's own; or None")
      .member("tolerance_class", &SemanticSize::tolerance_class,
              "\"H7\", \"s6\" (ISO 286-1); empty without one, or without sense")
      .member("doubt", &SemanticSize::doubt,
              "why nothing is judged by it: no feature, text without sense, contradiction; empty: "
              "sound")
      .derived("usable", &is_usable, "whether a size may be judged by it")
      .derived("text", &semantic_size_text, "\"44 H7\", as a person reads it, in mm");
}

}  // namespace spotblue
