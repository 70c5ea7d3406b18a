#pragma once
// All sizes a feature may have, and where they come from.

#include <optional>

#include "group/match/declared.hpp"

namespace spotblue {

/// Sums of limits in binary miss the limits of the same sums by rounding; a nanometre is no size.
inline constexpr Length kSizeRounding = Length::mm(1e-7);

enum class SizeSource { measured, modelled, class_limits };

struct SizeRange {
  Limits limits;
  SizeSource source = SizeSource::modelled;
  Length centre;                ///< measured or modelled value, without its uncertainty
  bool to_make = false;         ///< still to be cut: its limits are a promise, not a measurement
  std::optional<Length> basic;  ///< nominal that the model's size should be at and is not
};

/// Limits and nominal that a basic size without a measured value gets from the fit it is in.
struct ClassLimits {
  Limits limits;
  std::optional<Length> nominal;
};

/// Measured value +- uncertainty; else the limits the model states, where it is drawn at the
/// nominal of these and the job neither lists the part nor sizes the feature; else for an actual
/// size the model's +- the default uncertainty; else the limits of the feature's own wanted size,
/// or of `from_fit`; else the model's size.
[[nodiscard]] SizeRange size_range(const DeclaredJob& declared, const FeatureRef& feature,
                                   Length modelled, const std::optional<ClassLimits>& from_fit);

/// Whether it is known how far off the size may have been measured; limits still to be made are no
/// measurement.
[[nodiscard]] bool has_uncertainty(const SizeRange& range);
/// The range without its measurement uncertainty; limits still to be made stay as wide.
[[nodiscard]] Limits without_uncertainty(const SizeRange& range);

/// "measured", "as modelled", "to its limits".
[[nodiscard]] const Said& source_said(SizeSource source);

}  // namespace spotblue
