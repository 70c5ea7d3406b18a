#include "geometry/surfaces/edge_integral.hpp"

#include <GeomAbs_Shape.hxx>
#include <TColStd_Array1OfReal.hxx>
#include <algorithm>
#include <numbers>

#include "geometry/model/tolerances.hpp"

namespace spotblue {
namespace {

std::vector<double> even(int pieces) {
  std::vector<double> ends;
  for (int i = 0; i <= pieces; ++i) {
    ends.push_back(static_cast<double>(i) / pieces);
  }
  return ends;
}

}  // namespace

std::vector<double> smooth_stretches(const EdgeCurve& edge) {
  constexpr double kQuarter = 0.5 * std::numbers::pi;
  constexpr int kFewest = 8;
  constexpr int kMost = 256;
  // By what the curve is, not by what it looks like: a spline on a circle runs unevenly round it.
  if (edge.curve.GetType() == GeomAbs_Line) {
    return even(1);
  }
  if (edge.curve.GetType() == GeomAbs_Circle) {
    return even(std::max(1, static_cast<int>(std::ceil(edge.sweep / kQuarter - kSameShare))));
  }
  const int stretches = edge.curve.NbIntervals(GeomAbs_CN);
  if (stretches > kMost) {
    return even(kMost);
  }
  TColStd_Array1OfReal knots(1, stretches + 1);
  edge.curve.Intervals(knots, GeomAbs_CN);
  const int each = (kFewest + stretches - 1) / stretches;
  std::vector<double> ends{0.0};
  const double low = std::min(edge.first, edge.last);
  const double span = std::abs(edge.last - edge.first);
  for (int i = 1; i <= stretches; ++i) {
    for (int k = 1; k <= each; ++k) {
      const double t = knots(i) + (knots(i + 1) - knots(i)) * k / each;
      ends.push_back(std::clamp((t - low) / span, 0.0, 1.0));
    }
  }
  ends.back() = 1.0;
  if (edge.first > edge.last) {
    std::reverse(ends.begin(), ends.end());
    std::transform(ends.begin(), ends.end(), ends.begin(), [](double s) { return 1.0 - s; });
  }
  return ends;
}

double gap_flux(const EdgeCurve& edge, Point origin) {
  const auto at = [&](Point vertex, Point end) {
    const double gap = norm(vertex - end);
    return gap * gap * norm(vertex - origin);
  };
  return at(edge.from_vertex, edge.from) + at(edge.to_vertex, edge.to);
}

double strip_flux(const EdgeCurve& edge, double width, Point origin) {
  constexpr int kSteps = 8;
  double length = 0.0;
  double reach = norm(edge.from - origin);
  Point last = edge.from;
  for (int i = 1; i <= kSteps && width > 0.0; ++i) {
    const Point p = i == kSteps ? edge.to : point_along(edge, static_cast<double>(i) / kSteps).at;
    reach = std::max(reach, norm(p - origin));
    length += norm(p - last);
    last = p;
  }
  return width * length * reach;
}

}  // namespace spotblue
