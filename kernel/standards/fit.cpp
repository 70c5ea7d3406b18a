#include "spotblue/standards/fit.hpp"

#include <fmt/format.h>

#include "base/require.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {

std::string_view fit_kind_name(FitKind kind) { return word_of(kind); }

FitKind fit_kind(Length least_clearance, Length greatest_clearance) {
  require_finite(least_clearance.in_mm(), "least_clearance_mm", "mm");
  require_finite(greatest_clearance.in_mm(), "greatest_clearance_mm", "mm");
  if (least_clearance > greatest_clearance) {
    throw Error(ErrorCode::bad_input, {"", "least_clearance_mm"},
                fmt::format("need no more than the greatest ({} mm), got {} mm",
                            greatest_clearance.in_mm(), least_clearance.in_mm()),
                "swap the two");
  }
  if (greatest_clearance <= Length()) {
    return FitKind::interference;
  }
  return least_clearance >= Length() ? FitKind::clearance : FitKind::transition;
}

}  // namespace spotblue
