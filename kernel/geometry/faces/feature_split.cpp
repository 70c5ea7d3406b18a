#include "geometry/faces/feature_split.hpp"

#include <cmath>
#include <numbers>
#include <optional>
#include <utility>
#include <vector>

#include "geometry/faces/air_probe.hpp"
#include "geometry/faces/feature_merge.hpp"
#include "geometry/faces/worn.hpp"
#include "geometry/model/arcs.hpp"

namespace spotblue {
namespace {

constexpr double kProud_mm = 0.01;  // what stands off the surface by less is in nobody's way

bool is_divided(const Cylinder& cylinder, double from, double to, const proof::FaceBounds& part) {
  constexpr int kStations = 7;
  constexpr int kAngles = 16;
  const Direction quarter = third(cylinder.axis.along, cylinder.zero);
  for (int i = 0; i < kStations; ++i) {
    const double at = from + (to - from) * (i + 0.5) / kStations;
    const Point centre = at_station(cylinder.axis, at);
    const Interval here = diameters_at(cylinder, at);
    const double radius =
        cylinder.side == Side::external ? 0.5 * here.high + kProud_mm : 0.5 * here.low - kProud_mm;
    for (int j = 0; j < kAngles; ++j) {
      const double angle = 2.0 * std::numbers::pi * (j + 0.37) / kAngles;
      const Point p =
          centre + radius * std::cos(angle) * cylinder.zero + radius * std::sin(angle) * quarter;
      if (proof::medium_at(part, p) == proof::Medium::metal) {
        return true;
      }
    }
  }
  return false;
}

// The part of a cylinder between two stations.
Cylinder stretch_of(const Cylinder& whole, double from, double to) {
  Cylinder piece = whole;
  std::erase_if(piece.patches, [&](const Patch& p) { return p.to <= from || p.from >= to; });
  std::erase_if(piece.intervals, [&](const auto& s) { return s.high <= from || s.low >= to; });
  std::vector<Arc> arcs;
  for (const Patch& patch : piece.patches) {
    arcs.insert(arcs.end(), patch.arcs.begin(), patch.arcs.end());
  }
  piece.coverage = coverage(arcs);
  centre_stations(piece);
  keep_sizes_on_stretches(piece);
  return piece;
}

}  // namespace

void divide_cylinders(Product& product) {
  std::optional<proof::FaceBounds> part;
  std::vector<Cylinder> all;
  all.reserve(product.cylinders.size());
  for (const Cylinder& cylinder : product.cylinders) {
    std::vector<double> bars;  // stations in the middle of what stands between
    for (std::size_t i = 0; i + 1 < cylinder.intervals.size(); ++i) {
      if (!part) {
        part = proof::bounds_of(product);
      }
      const double from = cylinder.intervals[i].high;
      const double to = cylinder.intervals[i + 1].low;
      if (is_divided(cylinder, from, to, *part)) {
        bars.push_back(0.5 * (from + to));
      }
    }
    double from = cylinder.intervals.front().low - 1.0;
    bars.push_back(cylinder.intervals.back().high + 1.0);
    for (const double to : bars) {
      all.push_back(bars.size() == 1 ? cylinder : stretch_of(cylinder, from, to));
      from = to;
    }
  }
  product.cylinders = std::move(all);
}

}  // namespace spotblue
