#pragma once
// Judging one hole and its shaft, or one slot and its key: the sizes they may have against the fit
// that is wanted, and whether being out of line uses the clearance up.

#include <string>
#include <vector>

#include "group/match/declared.hpp"
#include "group/sizes/found_fit.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

struct FitCase {
  std::string kind;  ///< of the finding: "radial fit", "width fit"
  FeatureRef hole, shaft;
  Length hole_size, shaft_size;  ///< as modelled, diametral
  /// What offset and tilt take from the clearance on one side, >= 0: half the clearance less the
  /// least gap.
  Length out_of_line;
  /// Of a worn pair how far its clearance is off that of the two sizes, least and most; else none.
  Limits worn_by{Length(), Length()};
  /// How far pressing moves the two sizes before they meet, and why that is not known.
  FitMoves moves{};
  Saying moves_unknown{};
  const FitWant* want = nullptr;
  std::vector<Quantity> placing;  ///< offset, tilt, engaged length: listed with what was found
};

[[nodiscard]] Finding judge_fit(const DeclaredJob& declared, const FitCase& fit_case);

}  // namespace spotblue
