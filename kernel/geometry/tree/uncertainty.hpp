#pragma once
// How near two surfaces of one file must lie to be one.

#include <algorithm>

#include "geometry/tree/step_reader.hpp"

namespace spotblue {

// What a STEP file states as its distance accuracy (uncertainty_measure_with_unit, ISO 10303-43),
// the largest of its contexts, mm; 0 when it states none.
[[nodiscard]] double stated_uncertainty(const StepReader& reader);

// The stated uncertainty within our bounds. Under 1e-6 mm the digits of files differ for one and
// the same surface. Over 1e-5 mm we do not follow a file: many state 0.01 mm or more by habit, and
// a step of 1e-4 mm (0.1 um), the least that anyone can measure, must never be merged away.
// `far` is how far off its origin a part is drawn, mm: a kilometre away a file's 15 digits end at
// 1e-9 mm, and a short arc of splines tells its radius some thousand times worse.
[[nodiscard]] inline double same_surface_within(double stated, double far) {
  constexpr double kLeast = 1e-6;
  constexpr double kMost = 1e-5;
  constexpr double kOfFar = 1e-11;
  return std::clamp(std::max(stated, kOfFar * far), kLeast, kMost);
}

}  // namespace spotblue
