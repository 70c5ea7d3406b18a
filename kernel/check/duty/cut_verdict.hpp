#pragma once
// What is to be said of a cut, and how it is to be taken.

#include "check/fits/fit_verdict.hpp"
#include "group/cuts/shaft_cut.hpp"

namespace spotblue {

/// The worst corner's stress against yield at which a shaft passes; common practice, no source.
inline constexpr double kOfYieldAllowed = 0.5;

[[nodiscard]] Verdict verdict_on_cut(const DeclaredJob& declared, const ShaftCut& cut);

}  // namespace spotblue
