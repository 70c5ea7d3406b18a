#pragma once
// The sizes of a hole and its shaft, and all clearances that they allow.

#include "group/sizes/size_range.hpp"

namespace spotblue {

/// How far pressing moves the two sizes before they meet; nothing where no part is pressed.
struct FitMoves {
  Limits hole{Length(), Length()}, shaft{Length(), Length()};
  auto operator<=>(const FitMoves&) const = default;
};

/// The two sizes of a case, as made, and all clearances they allow once they meet.
struct FoundFit {
  SizeRange hole, shaft;
  FitMoves moves{};
  Limits clearance;
  Limits without_uncertainty;  ///< clearances if every measurement were exact
};
[[nodiscard]] FoundFit found_fit(const SizeRange& hole, const SizeRange& shaft,
                                 const FitMoves& moves = {});

/// Sizes that the one part still to make must be made to so that the fit comes out with any size
/// its mate may have and however far pressing moves either. Reversed where there are none.
[[nodiscard]] Limits window_of_hole(const FoundFit& found, Limits wanted);
[[nodiscard]] Limits window_of_shaft(const FoundFit& found, Limits wanted);

}  // namespace spotblue
