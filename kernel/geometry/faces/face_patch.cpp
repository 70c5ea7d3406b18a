#include "geometry/faces/face_patch.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <numbers>
#include <optional>

#include "geometry/model/arcs.hpp"
#include "geometry/model/tolerances.hpp"

namespace spotblue {
namespace {

constexpr double kSquareSine = 1e-9;  // rad
constexpr int kSamples = 32;          // of an edge that is neither line nor circle, before refining

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
  return edge.kind == EdgeCurve::Kind::circle && norm(cross(edge.axis, axis.along)) < kSquareSine &&
         distance(axis, edge.centre) < kOnePlace;
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

// Where the boundary goes through a station, and whether the face lies at greater or lesser angles.
struct Crossing {
  double angle;
  bool begins;  // going round counter-clockwise the face begins here
};

// Crossings of one edge with a station; each is found between two samples and then halved down.
void add_crossings(const EdgeCurve& edge, const Angles& angle, double level, Side side,
                   std::vector<Crossing>& crossings) {
  // Material lies on the left seen from outside: an edge going up has it at lesser angles on a
  // shaft.
  const auto add = [&](bool up, Point at) {
    crossings.push_back({angle(at), up == (side == Side::internal)});
  };
  const auto height = [&](Point p) { return station(angle.axis, p) - level; };
  if (edge.kind == EdgeCurve::Kind::line) {
    const double a = height(edge.from);
    const double b = height(edge.to);
    if ((a < 0.0) != (b < 0.0)) {
      add(b > a, edge.from + (a / (a - b)) * (edge.to - edge.from));
    }
    return;
  }
  double before = height(edge.from);
  for (int i = 1; i <= kSamples; ++i) {
    double low = (i - 1.0) / kSamples;
    double high = static_cast<double>(i) / kSamples;
    const double after = height(i == kSamples ? edge.to : point_along(edge, high).at);
    if ((before < 0.0) != (after < 0.0)) {
      for (int k = 0; k < 50; ++k) {
        const double middle = 0.5 * (low + high);
        ((height(point_along(edge, middle).at) < 0.0) == (before < 0.0) ? low : high) = middle;
      }
      add(after > before, point_along(edge, 0.5 * (low + high)).at);
    }
    before = after;
  }
}

// A seam goes up and down at one angle: neither end nor beginning. Leaves the rest in order.
void drop_seams(std::vector<Crossing>& crossings) {
  std::sort(crossings.begin(), crossings.end(),
            [](const Crossing& a, const Crossing& b) { return a.angle < b.angle; });
  for (std::size_t i = 0; i < crossings.size() && crossings.size() > 1;) {
    const std::size_t next = (i + 1) % crossings.size();
    const double apart =
        std::remainder(crossings[next].angle - crossings[i].angle, 2.0 * std::numbers::pi);
    if (std::abs(apart) < kNoTurn && crossings[i].begins != crossings[next].begins) {
      crossings.erase(crossings.begin() + static_cast<std::ptrdiff_t>(std::max(i, next)));
      crossings.erase(crossings.begin() + static_cast<std::ptrdiff_t>(std::min(i, next)));
      i = 0;
    } else {
      ++i;
    }
  }
}

// The face's angles at a station; nothing when its crossings do not pair up, as on a damaged face.
std::optional<std::vector<Arc>> arcs_at(std::span<const EdgeCurve> edges, const Angles& angle,
                                        double level, Side side) {
  std::vector<Crossing> crossings;
  for (const EdgeCurve& edge : edges) {
    if (!turns_about(edge, angle.axis)) {
      add_crossings(edge, angle, level, side, crossings);
    }
  }
  drop_seams(crossings);
  if (crossings.empty()) {
    return std::vector<Arc>{{0.0, 2.0 * std::numbers::pi}};
  }
  std::vector<Arc> arcs;
  std::size_t begins = 0;
  for (std::size_t i = 0; i < crossings.size(); ++i) {
    if (!crossings[i].begins) {
      continue;
    }
    ++begins;
    for (std::size_t step = 1; step <= crossings.size(); ++step) {
      const Crossing& next = crossings[(i + step) % crossings.size()];
      double sweep = next.angle - crossings[i].angle;
      sweep += sweep < kNoTurn ? 2.0 * std::numbers::pi : 0.0;
      if (!next.begins) {
        arcs.push_back({crossings[i].angle, sweep});
        break;
      }
    }
  }
  if (2 * begins != crossings.size()) {
    return std::nullopt;
  }
  return merged_arcs(std::move(arcs));
}

// Stations between which the face's angles can change only gradually.
std::vector<double> break_stations(std::span<const EdgeCurve> edges, const Line& axis) {
  std::vector<double> stations;
  for (const EdgeCurve& edge : edges) {
    double low = std::numeric_limits<double>::infinity();
    double high = -low;
    add_stations(edge, axis, low, high);
    stations.insert(stations.end(), {low, high, station(axis, edge.from), station(axis, edge.to)});
  }
  std::sort(stations.begin(), stations.end());
  stations.erase(std::unique(stations.begin(), stations.end(),
                             [](double a, double b) { return std::abs(a - b) < kConfusion; }),
                 stations.end());
  return stations;
}

// One patch of all the boundary's angles. The boundary is enough: along a generator the face is
// bounded, so each angle it covers is met by an edge.
Patch whole_patch(std::span<const EdgeCurve> edges, const Angles& angle) {
  Patch patch{
      std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity(), {}};
  for (const EdgeCurve& edge : edges) {
    add_stations(edge, angle.axis, patch.from, patch.to);
    if (edge.kind != EdgeCurve::Kind::line) {
      patch.arcs.push_back(edge_arc(edge, angle));
    }
  }
  patch.arcs = merged_arcs(std::move(patch.arcs));
  return patch;
}

}  // namespace

std::vector<Patch> face_patches(std::span<const EdgeCurve> edges, const Line& axis, Direction zero,
                                Side side) {
  const Angles angle{axis, zero};
  const std::vector<double> stations = break_stations(edges, axis);
  std::vector<Patch> patches;
  if (stations.size() <= 2) {
    patches.push_back(whole_patch(edges, angle));
    return patches;
  }
  constexpr int kGradual = 12;  // stretches for one over which the angles change gradually
  for (std::size_t i = 0; i + 1 < stations.size(); ++i) {
    const double from = stations[i];
    const double to = stations[i + 1];
    const auto level = [&](double share) { return from + share * (to - from); };
    const auto low = arcs_at(edges, angle, level(kTurnSlack), side);
    const auto high = arcs_at(edges, angle, level(1.0 - kTurnSlack), side);
    const auto middle = arcs_at(edges, angle, level(0.5), side);
    if (!low || !high || !middle) {
      return {whole_patch(edges, angle)};
    }
    const bool steady = std::abs(coverage(*low) - coverage(*high)) < kTurnSlack &&
                        std::abs(coverage(*low) - coverage(*middle)) < kTurnSlack &&
                        std::abs(coverage(common_arcs(*low, *high)) - coverage(*low)) < kTurnSlack;
    if (steady) {
      patches.push_back({from, to, *middle});
      continue;
    }
    for (int k = 0; k < kGradual; ++k) {
      const auto here = arcs_at(edges, angle, level((k + 0.5) / kGradual), side);
      if (!here) {
        return {whole_patch(edges, angle)};
      }
      patches.push_back(
          {level(k / static_cast<double>(kGradual)), level((k + 1.0) / kGradual), *here});
    }
  }
  std::erase_if(patches, [](const Patch& patch) { return patch.arcs.empty(); });
  return patches;
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
