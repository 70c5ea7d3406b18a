#pragma once
// The sizes of a hole and its shaft, and all clearances that they allow.

#include "group/sizes/size_range.hpp"

namespace spotblue {

/// The two sizes of a case and all clearances they allow.
struct FoundFit {
  SizeRange hole, shaft;
  Limits clearance;
  Limits without_uncertainty;  ///< clearances if every measurement were exact
};
[[nodiscard]] FoundFit found_fit(const SizeRange& hole, const SizeRange& shaft);

/// Sizes the one part still to make may have so that the fit comes out with any size its mate may
/// have. Reversed when the mate's range is wider than the fit.
[[nodiscard]] Limits window_of_hole(const FoundFit& found, Limits wanted);
[[nodiscard]] Limits window_of_shaft(const FoundFit& found, Limits wanted);

}  // namespace spotblue
