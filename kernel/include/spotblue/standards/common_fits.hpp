#pragma once
/// @file
/// The common fits whose range of clearance a measured clearance falls into, for advice.

#include <string_view>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/base/length.hpp"
#include "spotblue/standards/fit.hpp"

namespace spotblue {

struct CommonFit {
  std::string_view name;
  std::string_view duty;
  Fit fit;
};
constexpr void describe(auto& fields, const CommonFit*) {
  fields.value("CommonFit", "One common fit at a given size.")
      .member("name", &CommonFit::name, "\"H7/g6\" or \"RC4\"; as fit() and b4_1_fit() take it")
      .member("duty", &CommonFit::duty, "what it serves, in a few words")
      .member("fit", &CommonFit::fit, "its limits, mm");
}

/// Hole-basis fits of ISO 286 that allow this clearance at this size.
///
/// The choice is that of ISO 1829 and ANSI B4.2 with H8/e8, H7/js6 and H7/r6, from memory; the
/// limits are those of fit(). The duties are common practice, no source; they are advice and
/// replace no drawing.
///
/// @param nominal    basic size, over 0; outside the tables the answer is empty.
/// @param clearance  hole less shaft on the diameter; negative is interference.
/// @return best centred first: least distance from the middle of the fit's range, in widths of it.
/// @throws Error bad_input when either is not a number or the nominal is not positive.
[[nodiscard]] SPOTBLUE_EXPORT std::vector<CommonFit> common_fits_with_clearance(Length nominal,
                                                                                Length clearance);

/// The same from ANSI B4.1: the RC, LN and FN classes, LC2, LC4, LT3 and LT6; limits of b4_1_fit().
[[nodiscard]] SPOTBLUE_EXPORT std::vector<CommonFit> common_b4_1_fits_with_clearance(
    Length nominal, Length clearance);

}  // namespace spotblue
