#include "geometry/surfaces/chart_boundary.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <utility>

#include "geometry/surfaces/boundary_loops.hpp"
#include "geometry/surfaces/edge_integral.hpp"

namespace spotblue {
namespace {

constexpr double kOnSurface = 0.1;  // mm: an edge farther off its surface is not followed

double off(const SurfaceChart& chart, Point p, const Parameters& where) {
  return norm(chart.at(where).at - p);
}

// By whole periods nearest to a place.
Parameters shifted(const SurfaceChart& chart, Parameters place, const Parameters& to) {
  for (std::size_t i = 0; i < 2; ++i) {
    const double period = chart.period(i);
    place.at(i) += period > 0.0 ? period * std::round((to.at(i) - place.at(i)) / period) : 0.0;
  }
  return place;
}

// The place of a point, followed from the one before; false when the point is not on the surface.
bool set_place(const SurfaceChart& chart, Point p, const Parameters& before, Parameters& place,
               double& most_off) {
  place = chart.near(p, before);
  double here = off(chart, p, place);
  if (!(here < kOnSurface)) {
    place = shifted(chart, chart.find(p), before);
    here = off(chart, p, place);
  }
  most_off = std::max(most_off, here);
  return here < kOnSurface;
}

// Followed from the middle both ways: an end may lie in a pole, where one parameter is any.
std::optional<ChartLeg> follow(const SurfaceChart& chart, const EdgeCurve& edge) {
  constexpr int kFewest = 16;
  ChartLeg leg{&edge, {}, {}, 0.0};
  const std::vector<double> ends = smooth_stretches(edge);
  const int each = std::max(1, kFewest / static_cast<int>(ends.size() - 1));
  for (std::size_t i = 0; i + 1 < ends.size(); ++i) {
    for (int k = 0; k < each; ++k) {
      leg.fractions.push_back(ends[i] + (ends[i + 1] - ends[i]) * k / each);
    }
  }
  leg.fractions.push_back(1.0);
  leg.places.resize(leg.fractions.size());
  const std::size_t middle = leg.fractions.size() / 2;
  const auto point = [&](std::size_t i) { return point_along(edge, leg.fractions[i]).at; };
  leg.places[middle] = chart.find(point(middle));
  leg.off = off(chart, point(middle), leg.places[middle]);
  bool found = leg.off < kOnSurface;
  for (std::size_t i = middle + 1; found && i < leg.fractions.size(); ++i) {
    found = set_place(chart, point(i), leg.places[i - 1], leg.places[i], leg.off);
  }
  for (std::size_t i = middle; found && i-- > 0;) {
    found = set_place(chart, point(i), leg.places[i + 1], leg.places[i], leg.off);
  }
  if (!found) {
    return std::nullopt;
  }
  return leg;
}

void move_by_periods(const SurfaceChart& chart, ChartLeg& leg, const Parameters& to) {
  const Parameters begin = shifted(chart, leg.places.front(), to);
  const Parameters by{begin[0] - leg.places.front()[0], begin[1] - leg.places.front()[1]};
  for (Parameters& place : leg.places) {
    place = {place[0] + by[0], place[1] + by[1]};
  }
}

void add_straight(const Parameters& from, const Parameters& to, ChartBoundary& boundary) {
  if (from != to) {
    boundary.legs.push_back({nullptr, {0.0, 1.0}, {from, to}, 0.0});
  }
}

bool add_loop(const SurfaceChart& chart, const EdgeLoop& loop, ChartBoundary& boundary) {
  Parameters begin{};
  Parameters last{};
  for (const EdgeCurve* edge : loop) {
    auto leg = follow(chart, *edge);
    if (!leg) {
      return false;
    }
    if (edge == loop.front()) {
      begin = leg->places.front();
    } else {
      move_by_periods(chart, *leg, last);
      add_straight(last, leg->places.front(), boundary);
    }
    last = leg->places.back();
    boundary.legs.push_back(std::move(*leg));
  }
  const Parameters end = shifted(chart, begin, last);
  add_straight(last, end, boundary);
  for (std::size_t i = 0; i < 2; ++i) {
    const double period = chart.period(i);
    const double turns = period > 0.0 ? std::round((end.at(i) - begin.at(i)) / period) : 0.0;
    boundary.turns.at(i) += turns;
    boundary.most.at(i) = std::max(boundary.most.at(i), std::abs(turns));
  }
  return true;
}

}  // namespace

std::optional<ChartBoundary> chart_boundary(const SurfaceChart& chart,
                                            std::span<const EdgeCurve> edges) {
  const EdgeLoops loops = boundary_loops(edges);
  if (!loops.complete) {
    return std::nullopt;
  }
  ChartBoundary boundary;
  boundary.empty = loops.loops.empty();
  for (const EdgeLoop& loop : loops.loops) {
    if (!add_loop(chart, loop, boundary)) {
      return std::nullopt;
    }
  }
  return boundary;
}

Parameters place_at(const SurfaceChart& chart, const ChartLeg& leg, double s) {
  const auto next = std::upper_bound(leg.fractions.begin(), leg.fractions.end() - 1, s);
  const auto i =
      static_cast<std::size_t>(std::max<std::ptrdiff_t>(1, next - leg.fractions.begin()));
  const double share = (s - leg.fractions[i - 1]) / (leg.fractions[i] - leg.fractions[i - 1]);
  const Parameters& a = leg.places[i - 1];
  const Parameters& b = leg.places[i];
  const Parameters between{a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])};
  return leg.edge == nullptr ? between : chart.near(point_along(*leg.edge, s).at, between);
}

}  // namespace spotblue
