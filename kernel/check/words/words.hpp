#pragma once
// The numbers of findings, and by what they are judged.

#include <string>
#include <string_view>

#include "group/words/said_fits.hpp"
#include "spotblue/base/length.hpp"
#include "spotblue/base/unit.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// Its least and its greatest appended.
void add_range(std::vector<Quantity>& quantities, const std::string& name, Limits range);

/// Limits nearer to each other leave nothing that a bench could hold. Choice of this program, no
/// source.
inline constexpr Length kLeastRoom = Length::um(1.0);
[[nodiscard]] inline bool leaves_room(Limits limits) { return limits.width() >= kLeastRoom; }

inline constexpr std::string_view kIso14253 = "ISO 14253-1";
/// By what sizes are held against limits: the standard, which needs an uncertainty; where none is
/// known that is said, and the standard is not.
[[nodiscard]] inline const Said& judged_by(bool uncertainty_known) {
  return uncertainty_known ? said::kJudgedByStandard : said::kUncertaintyNotKnown;
}

}  // namespace spotblue
