#include "geometry/fouls/metal_depth.hpp"

#include <IntCurvesFace_ShapeIntersector.hxx>
#include <algorithm>
#include <array>
#include <cmath>
#include <gp_Lin.hxx>
#include <limits>
#include <numbers>
#include <optional>
#include <span>

#include "geometry/fouls/solid_probe.hpp"
#include "geometry/model/tolerances.hpp"
#include "geometry/occt/occt_values.hpp"

namespace spotblue::proof {
namespace {

constexpr std::size_t kMostPoints = 64;
/// A way is given up once it is that much longer than another's.
constexpr double kClearlyLonger = 1.25;
constexpr double kFinest = 1e-6;  // of the length
constexpr int kMostTries = 300;

/// Either all along one direction or away from a line.
struct WayThrough {
  Direction along;
  std::optional<Line> from;

  /// Nothing on the line itself, where no way is away from it.
  [[nodiscard]] std::optional<Direction> at(Point p) const {
    if (!from) {
      return along;
    }
    const Point away = p - at_station(*from, station(*from, p));
    return norm(away) > kNoLength ? std::optional(unit(away)) : std::nullopt;
  }
};

struct Tried {
  WayThrough way;
  Point best;
  double length = 0.0;
  bool improved = false;
};

class Chords {
 public:
  Chords(const TopoDS_Shape& solid, std::span<const Point> points) : probe_(solid) {
    intersector_.Load(solid, kProbeSlack);
    const std::size_t stride =
        std::max<std::size_t>(1, (points.size() + kMostPoints - 1) / kMostPoints);
    Box box;
    for (std::size_t i = 0; i < points.size(); ++i) {
      extend(box, points[i]);
      if (i % stride == 0) {
        points_.push_back(points[i]);
      }
    }
    extent_ = points.empty() ? 0.0 : norm(box.high - box.low);
  }

  /// The longest piece at the points; stops early once it exceeds `enough`.
  [[nodiscard]] Tried tried(const WayThrough& way, double enough) {
    Tried tried{way, {}, 0.0, false};
    for (const Point p : points_) {
      const double length = longest(way, p, tried.length);
      if (length > tried.length) {
        tried.length = length;
        tried.best = p;
      }
      if (tried.length > enough) {
        break;
      }
    }
    return tried;
  }

  void improve(Tried& tried) {
    tried.improved = true;
    double step = extent_ / 8.0;
    for (int i = 0; i < kMostTries && step > kFinest * tried.length; ++i) {
      const std::optional<Direction> d = tried.way.at(tried.best);
      if (!d) {
        return;
      }
      // Overlaps end square to the line they are looked at about: along it and across it.
      const Direction u = tried.way.from ? tried.way.from->along : any_square(*d);
      const Direction v = third(*d, u);
      bool better = false;
      constexpr std::array<std::array<double, 2>, 8> kAside{
          {{1, 0}, {-1, 0}, {0, 1}, {0, -1}, {1, 1}, {1, -1}, {-1, 1}, {-1, -1}}};
      for (const auto& [along, across] : kAside) {
        const Point p = tried.best + along * step * u + across * step * v;
        const double length = longest(tried.way, p, tried.length);
        if (length > tried.length) {
          tried.length = length;
          tried.best = p;
          better = true;
          break;
        }
      }
      step = better ? step : 0.5 * step;
    }
  }

 private:
  /// The longest piece within the solid of the way through `p`, where it exceeds `least`.
  double longest(const WayThrough& way, Point p, double least) {
    const std::optional<Direction> d = way.at(p);
    if (!d) {
      return 0.0;
    }
    const double from = way.from ? -distance(*way.from, p) : -2.0 * extent_;
    intersector_.Perform(gp_Lin(to_pnt(p), to_dir(*d)), std::max(from, -2.0 * extent_),
                         2.0 * extent_);
    if (!intersector_.IsDone()) {
      return 0.0;
    }
    std::vector<double> cuts;
    for (int i = 1; i <= intersector_.NbPnt(); ++i) {
      cuts.push_back(intersector_.WParameter(i));
    }
    std::ranges::sort(cuts);
    double best = 0.0;
    for (std::size_t i = 1; i < cuts.size(); ++i) {
      const double length = cuts[i] - cuts[i - 1];
      if (length > std::max(best, least) &&
          probe_.inside(p + 0.5 * (cuts[i] + cuts[i - 1]) * *d, kProbeSlack)) {
        best = length;
      }
    }
    return best;
  }

  IntCurvesFace_ShapeIntersector intersector_;
  SolidProbe probe_;
  std::vector<Point> points_;
  double extent_ = 0.0;
};

/// The two of the points that lie farthest apart along a direction.
struct Ends {
  Point low, high;
};
Ends ends_along(std::span<const Point> points, Direction d) {
  const auto [low, high] = std::ranges::minmax(points, {}, [&](Point p) { return dot(p, d); });
  return {low, high};
}

/// How far the points go square to the way, or along the line that it leads away from.
double length_beside(std::span<const Point> points, const WayThrough& way) {
  if (way.from) {
    const Ends ends = ends_along(points, way.from->along);
    return dot(ends.high - ends.low, way.from->along);
  }
  constexpr int kTurns = 12;
  constexpr int kMostSteps = 20;
  const Direction u = any_square(way.along);
  const Direction v = third(way.along, u);
  double most = 0.0;
  for (int i = 0; i < kTurns; ++i) {
    const double angle = std::numbers::pi * i / kTurns;
    Direction d = turned(u, v, angle);
    // From the two ends along a direction to those along the line through them, while it helps.
    for (int step = 0; step < kMostSteps; ++step) {
      const Ends ends = ends_along(points, d);
      const Point across = ends.high - ends.low - dot(ends.high - ends.low, way.along) * way.along;
      const double length = norm(across);
      if (length <= most + kRounding) {
        break;
      }
      most = length;
      d = unit(across);
    }
  }
  return most;
}

}  // namespace

MetalDepth metal_depth(const TopoDS_Shape& solid, const SolidPoints& points,
                       const WaysThrough& ways) {
  Chords chords(solid, points.spread);
  std::vector<Tried> all;
  double least = std::numeric_limits<double>::infinity();
  const auto take = [&](const WayThrough& way) {
    Tried one = chords.tried(way, kClearlyLonger * least);
    if (one.length > 0.0) {
      least = std::min(least, one.length);
      all.push_back(one);
    }
  };
  for (const Line& line : ways.away_from) {
    take({{}, line});
  }
  for (const Direction d : ways.straight) {
    take({d, {}});
  }
  while (!all.empty()) {
    Tried& shortest = *std::ranges::min_element(all, {}, &Tried::length);
    if (shortest.improved) {
      return {shortest.length, length_beside(points.corners, shortest.way)};
    }
    chords.improve(shortest);
  }
  return {};
}

}  // namespace spotblue::proof
