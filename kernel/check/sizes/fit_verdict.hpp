#pragma once
// The reasons behind a fit's outcome, each with the one line of advice that goes with it.

#include <string>

#include "check/sizes/judge_fit.hpp"
#include "check/sizes/size_range.hpp"
#include "check/sizes/wanted_fit.hpp"

namespace spotblue {

struct Verdict {
  Outcome outcome = Outcome::conforming;
  std::string advice;
};
/// Nonconforming before undecided before conforming.
[[nodiscard]] Outcome worse(Outcome a, Outcome b);
/// The worse of the two outcomes; advice of both where both are of that outcome.
[[nodiscard]] Verdict worse(const Verdict& a, const Verdict& b);

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

/// The found clearances against the wanted ones.
[[nodiscard]] Verdict verdict_on_clearance(const DeclaredJob& declared, const FitCase& fit_case,
                                           const FoundFit& found, const WantedFit& wanted);
/// A basic size that the model does not show.
[[nodiscard]] Verdict verdict_on_basic_size(const DeclaredJob& declared, const FeatureRef& feature,
                                            Length modelled, const SizeRange& range);
/// Whether the pair has any room left once it is out of line.
[[nodiscard]] Verdict verdict_on_line(const DeclaredJob& declared, const FitCase& fit_case,
                                      const FoundFit& found);
/// Nothing declared: which common fits the sizes would satisfy.
[[nodiscard]] Verdict verdict_without_want(const DeclaredJob& declared, const FitCase& fit_case,
                                           const FoundFit& found);

}  // namespace spotblue
