#pragma once
// Keyseats along a shaft, and holes and flats across it.

#include <vector>

#include "group/cuts/cut_surroundings.hpp"

namespace spotblue {

/// All that the axis passes through, nearest to the stretch first.
[[nodiscard]] std::vector<NearKeyseat> keyseats_near(const DeclaredJob& declared,
                                                     const FeatureRef& cut, const Stretch& stretch);

/// Holes that come out through the stretch, and flats on it: the section is less there. Not where
/// a keyseat lies in the stretch, whose own faces they might be.
[[nodiscard]] std::vector<Reference> broken_by(const DeclaredJob& declared, const FeatureRef& cut,
                                               const Stretch& stretch);

}  // namespace spotblue
