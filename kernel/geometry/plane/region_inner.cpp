#include "spotblue/geometry/region_inner.hpp"

#include <limits>

#include "geometry/plane/region_edge.hpp"

namespace spotblue {
namespace {

constexpr double kOnEdge = 1e-9;  // mm

struct Candidate {
  Point2 at;
  double clearance = 0.0;                                  ///< distance from the boundary, mm
  double apart = std::numeric_limits<double>::infinity();  ///< from the points taken so far, mm
};

std::vector<double> level_crossings(const Region& region, double v) {
  const Edge2 level{{0.0, v}, {1.0, v}, 0.0, {}, 0.0};
  std::vector<double> us;
  for (const Edge2& edge : region.edges) {
    for (const Point2 p : carrier_crossings(level, edge, 0.0)) {
      if (parameter_on(edge, p, kOnEdge)) {
        us.push_back(p.u);
      }
    }
  }
  std::sort(us.begin(), us.end());
  return us;
}

std::vector<Candidate> candidates(const Region& region, std::size_t levels) {
  // Steps by the golden ratio spread the levels evenly and meet no vertex of a symmetric outline.
  constexpr double kGolden = 0.6180339887498949;
  const Extent2 box = extent(region);
  std::vector<Candidate> found;
  for (std::size_t i = 0; i < levels; ++i) {
    const double part = std::fmod((static_cast<double>(i) + 0.5) * kGolden, 1.0);
    const double v = box.low.v + part * (box.high.v - box.low.v);
    const std::vector<double> us = level_crossings(region, v);
    for (std::size_t k = 1; k < us.size(); ++k) {
      const Point2 middle{0.5 * (us[k - 1] + us[k]), v};
      if (us[k] > us[k - 1] && contains(region, middle)) {
        found.push_back({middle, boundary_distance(region, middle)});
      }
    }
  }
  return found;
}

}  // namespace

std::vector<Point2> inner_points(const Region& region, std::size_t count) {
  std::vector<Candidate> left = candidates(region, std::max<std::size_t>(16, 2 * count));
  std::vector<Point2> taken;
  while (taken.size() < count && !left.empty()) {
    // Deep inside and far from the points taken already, so that every island gets its share.
    const auto best =
        std::max_element(left.begin(), left.end(), [&](const Candidate& a, const Candidate& b) {
          return taken.empty() ? a.clearance < b.clearance
                               : a.clearance * a.apart < b.clearance * b.apart;
        });
    taken.push_back(best->at);
    left.erase(best);
    for (Candidate& other : left) {
      other.apart = std::min(other.apart, norm(other.at - taken.back()));
    }
  }
  return taken;
}

}  // namespace spotblue
