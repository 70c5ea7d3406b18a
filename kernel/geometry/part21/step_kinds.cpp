#include "geometry/part21/step_kinds.hpp"

#include <algorithm>
#include <array>

namespace spotblue {

bool is_tessellated(std::string_view kind) {
  return kind.find("TESSELLATED_") != std::string_view::npos ||
         kind.find("TRIANGULATED_") != std::string_view::npos;
}

bool is_curves(std::string_view kind) {
  constexpr std::array<std::string_view, 10> kKinds{"GEOMETRIC_CURVE_SET",
                                                    "GEOMETRIC_SET",
                                                    "EDGE_BASED_WIREFRAME_MODEL",
                                                    "SHELL_BASED_WIREFRAME_MODEL",
                                                    "TRIMMED_CURVE",
                                                    "COMPOSITE_CURVE",
                                                    "POLYLINE",
                                                    "B_SPLINE_CURVE_WITH_KNOTS",
                                                    "EDGE_CURVE",
                                                    "CIRCLE"};
  return std::find(kKinds.begin(), kKinds.end(), kind) != kKinds.end();
}

}  // namespace spotblue
