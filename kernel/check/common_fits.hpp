#pragma once
// The usual fits that a pair of sizes would satisfy as it stands, with the duty each serves.

#include <string>
#include <vector>

#include "spotblue/base/length.hpp"
#include "spotblue/base/unit.hpp"

namespace spotblue {

struct ProposedFit {
  std::string text;  ///< "H7/g6"
  std::string duty;  ///< "slides and locates by hand"
};

/// Of sizes about `size`, tightest first; empty outside the standard's sizes.
[[nodiscard]] std::vector<ProposedFit> fits_for(Length size, Length clearance);

/// "would be H7/g6 (slides and locates by hand) or H8/f7 (...): choose by its duty", or that none
/// would do.
[[nodiscard]] std::string fits_that_would_do(Length size, Length clearance);

}  // namespace spotblue
