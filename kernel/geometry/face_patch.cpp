#include "geometry/face_patch.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <numbers>

#include "geometry/arcs.hpp"

namespace spotblue {
namespace {

constexpr double kParallel = 1e-9;  // rad
constexpr int kSamples = 32;        // of an edge that is neither line nor circle, before refining

struct Angles {
  Line axis;
  Direction zero;
  [[nodiscard]] double operator()(Point p) const {
    const Point d = p - axis.at;
    return std::atan2(dot(d, cross(axis.along, zero)), dot(d, zero));
  }
};

// Least value of f near the sampled minimum s, by golden section over one sample step each way.
double refined_least(const std::function<double(double)>& f, double s) {
  double low = std::max(0.0, s - 1.0 / kSamples);
  double high = std::min(1.0, s + 1.0 / kSamples);
  constexpr double kGolden = 0.6180339887498949;
  for (int i = 0; i < 60; ++i) {
    const double a = high - kGolden * (high - low);
    const double b = low + kGolden * (high - low);
    (f(a) < f(b) ? high : low) = f(a) < f(b) ? b : a;
  }
  return f(0.5 * (low + high));
}

// Lowest and highest value of f along the edge.
std::pair<double, double> extremes(const std::function<double(double)>& f) {
  double s_least = 0.0;
  double s_most = 0.0;
  double least = f(0.0);
  double most = least;
  for (int i = 1; i <= kSamples; ++i) {
    const double s = static_cast<double>(i) / kSamples;
    const double value = f(s);
    if (value < least) {
      least = value;
      s_least = s;
    }
    if (value > most) {
      most = value;
      s_most = s;
    }
  }
  least = std::min(least, refined_least(f, s_least));
  most = std::max(most, -refined_least([&f](double s) { return -f(s); }, s_most));
  return {least, most};
}

double circle_extreme(const EdgeCurve& edge, Direction along, int sense) {
  // On a circle the station runs as a sinusoid: its extreme counts when the sweep reaches it.
  const Point radial = edge.from - edge.centre;
  const Point quarter = cross(edge.axis, radial);
  const double a = dot(radial, along);
  const double b = dot(quarter, along);
  double at = std::atan2(sense * b, sense * a);
  at = at < 0.0 ? at + 2.0 * std::numbers::pi : at;
  const double reach =
      at <= edge.sweep ? std::hypot(a, b) : -std::numeric_limits<double>::infinity();
  return std::max(
      {reach, sense * a, sense * (a * std::cos(edge.sweep) + b * std::sin(edge.sweep))});
}

void add_stations(const EdgeCurve& edge, const Line& axis, double& low, double& high) {
  const auto add = [&](double s) {
    low = std::min(low, s);
    high = std::max(high, s);
  };
  if (edge.kind == EdgeCurve::Kind::line) {
    add(station(axis, edge.from));
    add(station(axis, edge.to));
  } else if (edge.kind == EdgeCurve::Kind::circle) {
    const double middle = station(axis, edge.centre);
    add(middle + circle_extreme(edge, axis.along, 1));
    add(middle - circle_extreme(edge, axis.along, -1));
  } else {
    const auto [least, most] =
        extremes([&](double s) { return station(axis, point_along(edge, s).at); });
    add(least);
    add(most);
  }
}

bool turns_about(const EdgeCurve& edge, const Line& axis) {
  return edge.kind == EdgeCurve::Kind::circle && norm(cross(edge.axis, axis.along)) < kParallel &&
         distance(axis, edge.centre) < 1e-6;
}

// An angle followed along the edge without jumps; the arc it sweeps.
Arc swept(const std::function<double(double)>& angle) {
  double low = angle(0.0);
  double high = low;
  double last = low;
  double previous = low;
  for (int i = 1; i <= kSamples; ++i) {
    const double now = angle(static_cast<double>(i) / kSamples);
    last += std::remainder(now - previous, 2.0 * std::numbers::pi);
    previous = now;
    low = std::min(low, last);
    high = std::max(high, last);
  }
  return {low, high - low};
}

Arc edge_arc(const EdgeCurve& edge, const Angles& angle) {
  if (turns_about(edge, angle.axis)) {
    const bool with = dot(edge.axis, angle.axis.along) > 0.0;
    const double from = angle(edge.from);
    return {with ? from : from - edge.sweep, edge.sweep};
  }
  return swept([&](double s) {
    const Point p = s == 0.0 ? edge.from : s == 1.0 ? edge.to : point_along(edge, s).at;
    return angle(p);
  });
}

}  // namespace

Patch face_patch(std::span<const EdgeCurve> edges, const Line& axis, Direction zero) {
  Patch patch{
      std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity(), {}};
  const Angles angle{axis, zero};
  for (const EdgeCurve& edge : edges) {
    add_stations(edge, axis, patch.from, patch.to);
    const bool generator = edge.kind == EdgeCurve::Kind::line;
    if (!generator) {
      patch.arcs.push_back(edge_arc(edge, angle));
    }
  }
  patch.arcs = merged_arcs(std::move(patch.arcs));
  return patch;
}

std::vector<Arc> tube_arcs(std::span<const EdgeCurve> edges, const Line& axis,
                           double centre_radius) {
  const auto tube_angle = [&](Point p) {
    return std::atan2(station(axis, p), distance(axis, p) - centre_radius);
  };
  std::vector<Arc> arcs;
  std::vector<double> latitudes;
  for (const EdgeCurve& edge : edges) {
    if (turns_about(edge, axis)) {
      latitudes.push_back(tube_angle(edge.from));
      continue;
    }
    arcs.push_back(swept([&](double s) { return tube_angle(point_along(edge, s).at); }));
  }
  arcs = merged_arcs(std::move(arcs));
  if (arcs.empty() && latitudes.size() == 2) {
    // Two circles and no seam: a fillet is the shorter way round between them.
    const double step = std::remainder(latitudes[1] - latitudes[0], 2.0 * std::numbers::pi);
    arcs.push_back({step > 0.0 ? latitudes[0] : latitudes[1], std::abs(step)});
  }
  return arcs;
}

}  // namespace spotblue
