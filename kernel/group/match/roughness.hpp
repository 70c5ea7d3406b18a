#pragma once
// How rough a surface is, for what pressing flattens of it.

#include "group/match/declared.hpp"

namespace spotblue {

/// Peak-to-valley height of a feature: its own [[surfaces]] entry's, or the job's.
[[nodiscard]] double rz_um_of(const DeclaredJob& declared, const FeatureRef& feature);

}  // namespace spotblue
