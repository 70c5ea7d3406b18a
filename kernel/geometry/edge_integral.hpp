#pragma once
// Integrals along an edge by its fraction.

#include <array>
#include <cstddef>

#include "geometry/edge_curve.hpp"

namespace spotblue {

// Calls each(point, weight) along the edge in its order; the weights add up to 1. Gauss-Legendre,
// five points on [0, 1] in each of 24 panels; nodes and weights: Abramowitz and Stegun, table 25.4.
template <typename Each>
void along_edge(const EdgeCurve& edge, const Each& each) {
  constexpr std::array<double, 5> kNode{0.046910077030668, 0.230765344947158, 0.5,
                                        0.769234655052842, 0.953089922969332};
  constexpr std::array<double, 5> kWeight{0.118463442528095, 0.239314335249683, 0.284444444444444,
                                          0.239314335249683, 0.118463442528095};
  constexpr int kPanels = 24;
  for (int panel = 0; panel < kPanels; ++panel) {
    for (std::size_t k = 0; k < kNode.size(); ++k) {
      each(point_along(edge, (panel + kNode[k]) / kPanels), kWeight[k] / kPanels);
    }
  }
}

}  // namespace spotblue
