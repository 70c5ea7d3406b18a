#pragma once
// The usual fits that a pair of sizes would satisfy as it stands, in words.

#include <vector>

#include "spotblue/base/unit.hpp"
#include "spotblue/group/sentence.hpp"
#include "spotblue/standards/common_fits.hpp"

namespace spotblue {

/// Fits of ISO 286 for metric jobs, of ANSI B4.1 for inch jobs, best centred first; the nominal is
/// the one next to `size`. Empty outside the standard's sizes.
[[nodiscard]] std::vector<CommonFit> fits_for(Length size, Length clearance, LengthUnit unit);

/// "H7/g6 (...) or H8/f7 (...)"; empty where none would do.
[[nodiscard]] Saying fits_that_would_do(Length size, Length clearance, LengthUnit unit);

}  // namespace spotblue
