#pragma once
/// @file
/// The kernel's enumerations as Python sees them: words, in the order of the values.

#include <array>

namespace spotblue::python {

inline constexpr std::array kSides{"internal", "external"};
inline constexpr std::array kSources{"cylinder", "cone",       "plane",
                                     "bspline",  "revolution", "extrusion"};
inline constexpr std::array kFeatureKinds{"cylinder", "cone", "plane", "width"};
inline constexpr std::array kUnits{"mm", "inch"};
inline constexpr std::array kOutcomes{"conforming", "nonconforming", "undecided"};
inline constexpr std::array kCompleteness{"all or error", "accept partial"};
inline constexpr std::array kWayHows{"slide", "press", "screw", "spring in", "drop in"};

}  // namespace spotblue::python
