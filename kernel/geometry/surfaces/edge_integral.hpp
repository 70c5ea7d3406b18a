#pragma once
// Integrals along an edge by its fraction.

#include <array>
#include <cmath>
#include <cstddef>
#include <vector>

#include "geometry/surfaces/edge_curve.hpp"
#include "geometry/surfaces/flux.hpp"
#include "geometry/surfaces/gauss_kronrod.hpp"

namespace spotblue {

// The fractions, from 0 to 1, between which the edge is smooth enough for one rule: parts of a
// turn, a spline's own stretches (where it has not too many of them).
[[nodiscard]] std::vector<double> smooth_stretches(const EdgeCurve& edge);

// At most what a strip this wide along the edge may add to a flux from the origin.
[[nodiscard]] double strip_flux(const EdgeCurve& edge, double width, Point origin);

// At most what the gaps between the edge and its vertices may add to a flux from the origin, where
// all faces' boundaries are joined to the vertices.
[[nodiscard]] double gap_flux(const EdgeCurve& edge, Point origin);

// Integrals of `kSums` integrands along an edge in its order, each with a bound of its error:
// values(point) gives them as an array, each by the edge's fraction.
template <std::size_t kSums, typename Values>
std::array<Flux, kSums> along_edge(const EdgeCurve& edge, const Values& values) {
  std::array<Flux, kSums> sums;
  const std::vector<double> ends = smooth_stretches(edge);
  for (std::size_t i = 0; i + 1 < ends.size(); ++i) {
    const double half = 0.5 * (ends[i + 1] - ends[i]);
    std::array<KronrodSum, kSums> piece;
    for (std::size_t k = 0; k < kKronrod.size(); ++k) {
      const std::array<double, kSums> found =
          values(point_along(edge, ends[i] + half * (1.0 + kKronrod[k].at)));
      for (std::size_t j = 0; j < kSums; ++j) {
        piece[j].add(k, half, found[j]);
      }
    }
    for (std::size_t j = 0; j < kSums; ++j) {
      sums[j] = sums[j] + Flux{piece[j].value(), piece[j].error()};
    }
  }
  return sums;
}

}  // namespace spotblue
