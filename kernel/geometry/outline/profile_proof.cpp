#include "geometry/outline/profile_proof.hpp"

#include <algorithm>
#include <array>

#include "geometry/outline/clear_pair.hpp"
#include "geometry/outline/profile.hpp"
#include "spotblue/base/stop.hpp"

namespace spotblue::proof {
namespace {

constexpr std::size_t kMostAxes = 12;
/// Lines this near are one candidate.
constexpr double kOneLine = 1e-6;

/// A ring or band laid out along the candidate axis: radii between two lines over z.
struct Allowance {
  Interval z;
  double low_first = 0.0, low_last = 0.0, high_first = 0.0, high_last = 0.0;
};

struct Bounds {
  double low, high;
};

double between(double first, double last, double share) { return first + (last - first) * share; }

std::vector<Allowance> allowances_along(const Line& axis, const Accounted& accounted,
                                        double slack) {
  std::vector<Allowance> found;
  for (const Ring& ring : accounted.rings) {
    const double reach = std::abs(station(axis, ring.axis.at)) + ring.to - ring.from;
    if (!same_line(axis, ring.axis, kOneLine, reach)) {
      continue;
    }
    const double from = station(axis, at_station(ring.axis, ring.from));
    const double to = station(axis, at_station(ring.axis, ring.to));
    const bool forward = from <= to;
    Allowance a{{from, to}, ring.inner_from, ring.inner_to, ring.outer_from, ring.outer_to};
    if (!forward) {
      a = {{to, from}, ring.inner_to, ring.inner_from, ring.outer_to, ring.outer_from};
    }
    a.z = {a.z.low - slack, a.z.high + slack};
    a.low_first -= slack + kOneLine;
    a.low_last -= slack + kOneLine;
    a.high_first += slack + kOneLine;
    a.high_last += slack + kOneLine;
    found.push_back(a);
  }
  for (const Band& band : accounted.bands) {
    if (norm(cross(axis.along, band.normal)) < kOneLine) {
      const double at = station(axis, band.at);
      const double sign = dot(axis.along, band.normal) > 0.0 ? 1.0 : -1.0;
      const double one = at + sign * band.low;
      const double other = at + sign * band.high;
      const double far = std::numeric_limits<double>::infinity();
      found.push_back(
          {{std::min(one, other) - slack, std::max(one, other) + slack}, -1.0, -1.0, far, far});
    }
  }
  return found;
}

/// The corner points (share of the slab, least and greatest radius) of what both sectors cover.
struct Corner {
  double share;
  Bounds r;
};

/// Where in the slab (0 to 1) the two lines cross, or -1.
double crossing(double first_a, double last_a, double first_b, double last_b) {
  const double before = first_a - first_b;
  const double after = last_a - last_b;
  return before * after < 0.0 ? before / (before - after) : -1.0;
}

Bounds shared_at(const Sector& a, const Sector& b, double share) {
  return {
      std::max(between(a.low_first, a.low_last, share), between(b.low_first, b.low_last, share)),
      std::min(between(a.high_first, a.high_last, share),
               between(b.high_first, b.high_last, share))};
}

/// Corners of the shared region; empty when it is nowhere thicker than `least`.
std::vector<Corner> shared(const Sector& a, const Sector& b, double least) {
  std::array<double, 6> shares{0.0,
                               1.0,
                               crossing(a.low_first, a.low_last, b.low_first, b.low_last),
                               crossing(a.high_first, a.high_last, b.high_first, b.high_last),
                               crossing(a.low_first, a.low_last, b.high_first, b.high_last),
                               crossing(a.high_first, a.high_last, b.low_first, b.low_last)};
  std::vector<Corner> corners;
  bool thick = false;
  for (const double share : shares) {
    if (share < 0.0) {
      continue;
    }
    const Bounds r = shared_at(a, b, share);
    thick = thick || r.high - r.low > least;
    if (r.high >= r.low - least) {
      corners.push_back({share, r});
    }
  }
  return thick ? corners : std::vector<Corner>{};
}

bool allowed(std::span<const Corner> corners, Interval z, std::span<const Allowance> allowances) {
  return std::ranges::any_of(allowances, [&](const Allowance& a) {
    return std::ranges::all_of(corners, [&](const Corner& corner) {
      const double at = between(z.low, z.high, corner.share);
      const double length = a.z.high - a.z.low;
      const double share = length > 0.0 ? (at - a.z.low) / length : 0.0;
      return share >= 0.0 && share <= 1.0 &&
             corner.r.low >= between(a.low_first, a.low_last, share) &&
             (std::isinf(a.high_first) ||
              corner.r.high <= between(a.high_first, a.high_last, share));
    });
  });
}

bool sectors_apart(std::span<const Sector> a, std::span<const Sector> b, Interval z,
                   std::span<const Allowance> allowances, double same_length) {
  for (const Sector& one : a) {
    for (const Sector& other : b) {
      const auto corners = shared(one, other, same_length);
      if (!corners.empty() && !allowed(corners, z, allowances)) {
        return false;
      }
    }
  }
  return true;
}

Interval z_range(std::span<const Image> images) {
  Interval z{std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};
  for (const Image& image : images) {
    z = {std::min(z.low, image.z.low), std::max(z.high, image.z.high)};
  }
  return z;
}

/// Stations where an allowance begins or ends, too: an overlap is allowed piece by piece.
void add_allowance_ends(std::vector<double>& cuts, std::span<const Allowance> allowances) {
  if (cuts.empty()) {
    return;
  }
  const Interval window{cuts.front(), cuts.back()};
  for (const Allowance& a : allowances) {
    for (const double z : {a.z.low, a.z.high}) {
      if (z > window.low && z < window.high) {
        cuts.push_back(z);
      }
    }
  }
  std::ranges::sort(cuts);
}

/// No point of the box is farther from the axis.
double reach_of(const Box& box, const Line& axis) {
  return distance(axis, 0.5 * (box.low + box.high)) + 0.5 * diagonal(box);
}

bool apart_about(const Pair& pair, const Line& axis) {
  const Line axis_in_b = place_line(pair.a_to_b, axis);
  const auto a = images_about(pair.a, axis, reach_of(pair.b.box, axis_in_b));
  const auto b = images_about(pair.b, axis_in_b, reach_of(pair.a.box, axis));
  const Interval za = z_range(a);
  const Interval zb = z_range(b);
  const Interval window{std::max(za.low, zb.low), std::min(za.high, zb.high)};
  if (window.high - window.low <= pair.same_length) {
    return true;
  }
  const auto allowances = allowances_along(axis, pair.accounted, pair.same_length);
  auto cuts = stations(a, b, window, kMostStations);
  add_allowance_ends(cuts, allowances);
  for (std::size_t i = 1; i < cuts.size(); ++i) {
    const Interval z{cuts[i - 1], cuts[i]};
    if (z.high - z.low > pair.same_length &&
        !sectors_apart(occupied(pair.a, axis, a, z), occupied(pair.b, axis_in_b, b, z), z,
                       allowances, pair.same_length)) {
      return false;
    }
  }
  return true;
}

struct Ranked {
  Line line;
  double rank;
};

/// The lines by their distance from a point, in their order; of a plate with thousands of holes the
/// nearest only, since each is held against each.
std::vector<Ranked> nearest(const std::vector<Line>& lines, Point to) {
  constexpr std::size_t kConsidered = 64;
  std::vector<Ranked> ranked;
  ranked.reserve(lines.size());
  for (const Line& line : lines) {
    ranked.push_back({line, distance(line, to)});
  }
  if (ranked.size() > kConsidered) {
    std::vector<double> ranks;
    ranks.reserve(ranked.size());
    for (const Ranked& r : ranked) {
      ranks.push_back(r.rank);
    }
    std::ranges::nth_element(ranks, ranks.begin() + kConsidered);
    const double most = ranks[kConsidered];
    std::erase_if(ranked, [&](const Ranked& r) { return r.rank > most; });
  }
  return ranked;
}

/// Candidate lines in a's frame: those of seats, then those both parts share, then the nearest.
std::vector<Line> candidates(const Pair& pair) {
  const Point middle_a = 0.5 * (pair.a.box.low + pair.a.box.high);
  const Point middle_b = place_point(pair.b_to_a, 0.5 * (pair.b.box.low + pair.b.box.high));
  const double reach = diagonal(pair.a.box) + diagonal(pair.b.box);
  std::vector<Ranked> found;
  const auto add = [&](const Line& line, double rank) {
    const auto known = std::ranges::find_if(
        found, [&](const Ranked& r) { return same_line(r.line, line, kSame, reach); });
    if (known == found.end()) {
      found.push_back({line, rank});
    } else {
      known->rank = std::min(known->rank, -1.0);
    }
  };
  for (const Line& line : pair.accounted.axes) {
    add(line, -2.0);
  }
  for (const Ranked& r : nearest(pair.a.axes, middle_b)) {
    add(r.line, r.rank);
  }
  std::vector<Line> placed;
  placed.reserve(pair.b.axes.size());
  for (const Line& line : pair.b.axes) {
    placed.push_back(place_line(pair.b_to_a, line));
  }
  for (const Ranked& r : nearest(placed, middle_a)) {
    add(r.line, r.rank);
  }
  std::ranges::stable_sort(found, {}, &Ranked::rank);
  found.resize(std::min(found.size(), kMostAxes));
  std::vector<Line> lines;
  lines.reserve(found.size());
  for (const Ranked& r : found) {
    lines.push_back(r.line);
  }
  return lines;
}

}  // namespace

bool profiles_apart(const Pair& pair) {
  if (!pair.a.closed || !pair.b.closed) {
    return false;
  }
  return std::ranges::any_of(candidates(pair), [&](const Line& axis) {
    stop_if_asked();
    return apart_about(pair, axis);
  });
}

}  // namespace spotblue::proof
