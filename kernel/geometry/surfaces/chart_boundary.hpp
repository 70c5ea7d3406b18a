#pragma once
// A face's edges in the plane of its surface's parameters, found by their points in space.

#include <array>
#include <optional>
#include <span>
#include <vector>

#include "geometry/surfaces/edge_curve.hpp"
#include "geometry/surfaces/surface_chart.hpp"

namespace spotblue {

// An edge, or a straight way between two places: along a pole, or over the gap of two edges.
struct ChartLeg {
  const EdgeCurve* edge = nullptr;
  std::vector<double> fractions;   // of the edge, ascending from 0 to 1
  std::vector<Parameters> places;  // there; followed without jumps, so perhaps past a period's end
  double off = 0.0;                // mm: how far the edge lies off the surface
};

struct ChartBoundary {
  std::vector<ChartLeg> legs;
  Parameters turns{};  // how often all loops together go round a closed surface, each way
  Parameters most{};   // and the one that does so most
  bool empty = false;  // no boundary: the face is all of the surface
};

// Nothing where edges do not close or lie off the surface. The legs refer to `edges`.
[[nodiscard]] std::optional<ChartBoundary> chart_boundary(const SurfaceChart& chart,
                                                          std::span<const EdgeCurve> edges);

// The place of a leg's fraction.
[[nodiscard]] Parameters place_at(const SurfaceChart& chart, const ChartLeg& leg, double s);

}  // namespace spotblue
