#pragma once
// The reasons behind a fit's outcome, each with the one line of advice that goes with it.

#include <string>

#include "check/fits/judge_fit.hpp"
#include "group/sizes/found_fit.hpp"
#include "group/sizes/wanted_fit.hpp"

namespace spotblue {

struct Verdict {
  Outcome outcome = Outcome::conforming;
  Saying advice;
};
/// Nonconforming before undecided before conforming.
[[nodiscard]] Outcome worse(Outcome a, Outcome b);
/// The worse of the two outcomes; advice of both where both are of that outcome.
[[nodiscard]] Verdict worse(const Verdict& a, const Verdict& b);

/// Which of the two is made to suit the other: the one still to make; of two, the one that pressing
/// moves, since its class says nothing of the size it must be made to.
enum class Suited { neither, hole, shaft };
[[nodiscard]] Suited made_to_suit(const FoundFit& found);
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
