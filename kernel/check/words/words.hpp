#pragma once
// The numbers of findings, and the usual cautions.

#include <string>
#include <string_view>

#include "spotblue/base/length.hpp"
#include "spotblue/base/unit.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// "<key>_min_mm" and "<key>_max_mm" appended.
void add_range(std::vector<Quantity>& quantities, const std::string& key, Limits range);
[[nodiscard]] Quantity millimetres(std::string key, Length length);
[[nodiscard]] Quantity degrees(std::string key, double radians);

/// The usual caution of pressing, heating and chilling.
inline constexpr std::string_view kPressCaution =
    "Pressing, heating or chilling parts can crack them, throw splinters and burn: guard the "
    "press, "
    "wear eye and hand protection, air the room when chilling, and follow your local rules and "
    "licensed practice; they come before this advice.";

inline constexpr std::string_view kIso14253 = "ISO 14253-1";
/// By what sizes are held against limits: the standard, which needs an uncertainty; where none is
/// known that is said, and the standard is not.
[[nodiscard]] constexpr std::string_view judged_by(bool uncertainty_known) {
  return uncertainty_known ? kIso14253 : "the uncertainty of measurement is not known";
}

}  // namespace spotblue
