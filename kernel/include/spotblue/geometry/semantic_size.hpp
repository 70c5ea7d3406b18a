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
#include "spotblue/geometry/feature_kind.hpp"
#include "spotblue/geometry/ids.hpp"

namespace spotblue {

/// What of a feature the size is.
enum class SizeCharacteristic { diameter, radius, width, other };

[[nodiscard]] SPOTBLUE_EXPORT std::string_view size_characteristic_name(
    SizeCharacteristic characteristic);

/// Lower and upper end, mm; of a size, or of a deviation (then signed).
struct SizeLimits {
  double lower_mm = 0.0;
  double upper_mm = 0.0;
  bool operator==(const SizeLimits&) const = default;
};

struct SemanticSize {
  int entity = 0;    ///< of the size in the file: 12 for #12; 0 for models not read from a file
  std::string name;  ///< as the file says: "diameter"
  SizeCharacteristic characteristic = SizeCharacteristic::other;
  std::optional<ProductId> product;  ///< index into Model::products; none: on no known face
  /// Features of that product the size is stated for: one, or several alike ("4X").
  std::vector<ProductFeatureRef> features;
  std::optional<double> nominal_mm;
  std::optional<SizeLimits> deviations;  ///< from the nominal, as the file states them
  /// Ends of the size: stated as such, or nominal plus deviations, or by the class; a radius's own.
  std::optional<SizeLimits> limits;
  std::string tolerance_class;  ///< "H7", "s6" (ISO 286-1); empty without one, or without sense
  /// Why nothing is judged by it: no feature, text without sense, contradiction. Empty: sound.
  std::string doubt;
};

/// Whether a fit or a size may be judged by it: on a feature, with limits, without doubt.
[[nodiscard]] SPOTBLUE_EXPORT bool is_usable(const SemanticSize& size);

/// "44 H7", "6.35 +0.0762/-0.0254", "32 to 32.5 radius", as a person reads it, in mm.
[[nodiscard]] SPOTBLUE_EXPORT std::string semantic_size_text(const SemanticSize& size);

}  // namespace spotblue
