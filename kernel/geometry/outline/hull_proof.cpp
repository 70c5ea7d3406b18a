#include "geometry/outline/hull_proof.hpp"

#include <algorithm>
#include <array>
#include <numbers>
#include <optional>

#include "geometry/faces/air_probe.hpp"
#include "geometry/model/tolerances.hpp"
#include "geometry/outline/clear_pair.hpp"

namespace spotblue::proof {
namespace {

constexpr double kOffTheSkin =
    1e-4;  // mm, so that a point asked about is on neither side by chance

/// How often an arc is halved before it counts as entering the hull.
constexpr int kHalvings = 8;

/// dot(normal, x) <= limit
struct HalfSpace {
  Direction normal;
  double limit;
};

/// A convex body round one part, in the other part's frame, drawn in by what does not count.
struct Hull {
  std::vector<HalfSpace> sides;
  std::array<Direction, 3> axes;
  std::array<Point, 8> corners;  ///< of the box that the first six sides make
  Point centre;
};

/// Three square directions, the first two from the greatest plane faces if they have such.
std::array<Direction, 3> box_axes(const FaceBounds& part) {
  if (part.normals.empty()) {
    return {Direction{1, 0, 0}, Direction{0, 1, 0}, Direction{0, 0, 1}};
  }
  const Direction first = part.normals.front();
  Direction second = any_square(first);
  for (const Direction n : part.normals) {
    if (std::abs(dot(n, first)) < kTriedDirection) {
      second = unit(n - dot(n, first) * first);
      break;
    }
  }
  return {first, second, third(first, second)};
}

/// The side moved in past the band it ends in.
void draw_in(HalfSpace& side, const Band& band, double slack) {
  if (norm(cross(side.normal, band.normal)) > kSameDirection) {
    return;
  }
  const double sign = dot(side.normal, band.normal) > 0.0 ? 1.0 : -1.0;
  const double at = dot(side.normal, band.at);
  const Interval span{at + std::min(sign * band.low, sign * band.high),
                      at + std::max(sign * band.low, sign * band.high)};
  if (side.limit > span.low && side.limit <= span.high + slack) {
    side.limit = span.low;
  }
}

struct View {
  const FaceBounds& faces;  ///< of the part the hull may not enter
  const FaceBounds& inside;
  Frame inside_to_faces;
  std::vector<Band> bands;  ///< in the frame of `faces`
  double same_length;
};

void add_sides(Hull& hull, const View& view, Direction d) {
  const Interval span = extent(view.inside, d);
  const Direction n = place_direction(view.inside_to_faces, d);
  const double shift = dot(n, place_point(view.inside_to_faces, {}));
  for (HalfSpace side : {HalfSpace{n, span.high + shift}, HalfSpace{-n, -span.low - shift}}) {
    for (const Band& band : view.bands) {
      draw_in(side, band, view.same_length);
    }
    side.limit -= view.same_length;
    hull.sides.push_back(side);
  }
}

/// Nothing when the part is thinner than what counts.
std::optional<Hull> hull_of(const View& view) {
  Hull hull{};
  const auto axes = box_axes(view.inside);
  for (std::size_t i = 0; i < 3; ++i) {
    add_sides(hull, view, axes[i]);
    hull.axes[i] = place_direction(view.inside_to_faces, axes[i]);
    if (hull.sides[2 * i].limit <= -hull.sides[2 * i + 1].limit) {
      return {};
    }
  }
  for (std::size_t corner = 0; corner < 8; ++corner) {
    for (std::size_t i = 0; i < 3; ++i) {
      const HalfSpace& side = hull.sides[2 * i + ((corner >> i) & 1U)];
      hull.corners[corner] = hull.corners[corner] + side.limit * side.normal;
    }
    hull.centre = hull.centre + 0.125 * hull.corners[corner];
  }
  for (const Direction n : view.inside.normals) {
    const bool known = std::ranges::any_of(
        axes, [&](Direction axis) { return norm(cross(axis, n)) < kTriedDirection; });
    if (!known) {
      add_sides(hull, view, n);
    }
  }
  return hull;
}

/// Whether one side of the hull has all of the piece beyond it.
bool beyond(const Hull& hull, const auto& piece_extent) {
  return std::ranges::any_of(
      hull.sides, [&](const HalfSpace& s) { return piece_extent(s.normal).low >= s.limit; });
}

bool arc_stays_out(const Hull& hull, const Turned& t, const Arc& arc, int halvings) {
  if (beyond(hull, [&](Direction d) { return extent(t, {&arc, 1}, d); })) {
    return true;
  }
  const double half = 0.5 * arc.sweep;
  return halvings > 0 && arc_stays_out(hull, t, {arc.from, half}, halvings - 1) &&
         arc_stays_out(hull, t, {arc.from + half, half}, halvings - 1);
}

bool stays_out(const Hull& hull, const Turned& t) {
  const double radius = std::min(t.radius_from, t.radius_to);
  const bool within =
      std::ranges::all_of(hull.corners, [&](Point p) { return distance(t.axis, p) <= radius; });
  if (within || beyond(hull, [&](Direction d) { return extent(t, d); })) {
    return true;
  }
  const Arc round{0.0, 2.0 * std::numbers::pi};
  const std::span<const Arc> arcs = t.arcs.empty() ? std::span{&round, 1} : std::span{t.arcs};
  return std::ranges::all_of(
      arcs, [&](const Arc& arc) { return arc_stays_out(hull, t, arc, kHalvings); });
}

/// A side of the hull that stands square on a flat, in the flat's coordinates.
struct HalfPlane {
  double u, v, limit;
};

bool edge_stays_out(std::span<const HalfPlane> sides, const Edge2& edge, double from, double sweep,
                    int halvings) {
  const auto least = [&](const HalfPlane& side) {
    if (edge.sweep == 0.0) {
      return std::min(side.u * edge.from.u + side.v * edge.from.v,
                      side.u * edge.to.u + side.v * edge.to.v);
    }
    const Arc arc{from, sweep};
    return side.u * edge.centre.u + side.v * edge.centre.v +
           edge.radius * wave(side.u, side.v, {&arc, 1}).low;
  };
  if (std::ranges::any_of(sides, [&](const HalfPlane& s) { return least(s) >= s.limit; })) {
    return true;
  }
  if (halvings == 0) {
    return false;
  }
  if (edge.sweep != 0.0) {
    return edge_stays_out(sides, edge, from, 0.5 * sweep, halvings - 1) &&
           edge_stays_out(sides, edge, from + 0.5 * sweep, 0.5 * sweep, halvings - 1);
  }
  const Point2 middle{0.5 * (edge.from.u + edge.to.u), 0.5 * (edge.from.v + edge.to.v)};
  const Edge2 first{.from = edge.from, .to = middle, .centre = {}};
  const Edge2 last{.from = middle, .to = edge.to, .centre = {}};
  return edge_stays_out(sides, first, 0.0, 0.0, halvings - 1) &&
         edge_stays_out(sides, last, 0.0, 0.0, halvings - 1);
}

/// The hull cuts the flat's plane: whether it passes beside the outline or through its holes.
bool section_stays_out(const Hull& hull, const Flat& flat) {
  if (flat.slack > 0.0) {
    return false;
  }
  std::vector<HalfPlane> sides;
  for (const HalfSpace& side : hull.sides) {
    if (std::abs(dot(side.normal, flat.normal)) < kTriedDirection) {
      sides.push_back({dot(side.normal, flat.u), dot(side.normal, flat.v),
                       side.limit - dot(side.normal, flat.at)});
    }
  }
  const Point2 middle{dot(hull.centre - flat.at, flat.u), dot(hull.centre - flat.at, flat.v)};
  if (contains(*flat.outline, middle)) {
    return false;
  }
  return std::ranges::all_of(flat.outline->edges, [&](const Edge2& edge) {
    const double start = std::atan2(edge.from.v - edge.centre.v, edge.from.u - edge.centre.u);
    return edge_stays_out(sides, edge, edge.sweep < 0.0 ? start + edge.sweep : start,
                          std::abs(edge.sweep), kHalvings);
  });
}

bool stays_out(const Hull& hull, const Flat& flat) {
  if (beyond(hull, [&](Direction d) { return extent(flat, d); })) {
    return true;
  }
  const double level = dot(flat.normal, flat.at);
  const auto height = [&](Point p) { return dot(flat.normal, p) - level; };
  return std::ranges::all_of(hull.corners, [&](Point p) { return height(p) <= 0.0; }) ||
         std::ranges::all_of(hull.corners, [&](Point p) { return height(p) >= 0.0; }) ||
         section_stays_out(hull, flat);
}

bool stays_out(const Hull& hull, const OtherFace& face) {
  if (beyond(hull, [&](Direction d) { return extent(face.box, d); })) {
    return true;
  }
  return face.revolved && std::ranges::all_of(hull.corners, [&](Point p) {
           return distance(face.axis, p) <= face.inner;
         });
}

bool centred(const Hull& hull, Point p) {
  return std::ranges::all_of(hull.sides,
                             [&](const HalfSpace& s) { return dot(s.normal, p) < s.limit; });
}

std::vector<Direction> rays_of(const Hull& hull) {
  std::vector<Direction> rays;
  for (const Direction d : hull.axes) {
    rays.push_back(d);
    rays.push_back(-d);
  }
  return rays;
}

/// One cylinder may pass through the hull (a keyseat's mouth): its face has no edge in there, but
/// whether it spans the hull is not known. The hull then has a part within the cylinder, which is
/// convex, and a part without; the latter is in one piece where the hull is a box, the axis runs
/// below it and its top lies outside. Each part is uniform; both must be air.
bool split_hull_in_air(const View& view, const Hull& hull, const Turned& t) {
  const double radius = t.radius_from;
  if (hull.sides.size() != 6) {
    return false;
  }
  for (std::size_t i = 0; i < 6; ++i) {
    const Direction up = hull.sides[i].normal;
    const double axis_level = dot(up, t.axis.at);
    const double top = hull.sides[i].limit - axis_level;
    const double bottom = -hull.sides[i ^ 1U].limit - axis_level;
    if (std::abs(dot(up, t.axis.along)) > kSameDirection || bottom <= 0.0 || top <= radius) {
      continue;
    }
    const double middle = dot(up, hull.centre) - axis_level;
    const Point low =
        hull.centre + (bottom + 0.05 * (std::min(radius, top) - bottom) - middle) * up;
    const Point high = hull.centre + (0.5 * (radius + top) - middle) * up;
    const auto rays = rays_of(hull);
    if (centred(hull, low) && centred(hull, high) && distance(t.axis, low) < radius - kOffTheSkin &&
        distance(t.axis, high) > radius + kOffTheSkin && in_air(view.faces, low, rays) &&
        in_air(view.faces, high, rays)) {
      return true;
    }
  }
  return false;
}

bool same_surface(const Turned& a, const Turned& b) {
  return a.radius_from == a.radius_to && a.radius_from == b.radius_from &&
         b.radius_from == b.radius_to && a.axis.at == b.axis.at && a.axis.along == b.axis.along;
}

bool hull_stays_out(const View& view) {
  if (!view.faces.closed) {
    return false;
  }
  const auto hull = hull_of(view);
  if (!hull) {
    return true;
  }
  const auto out = [&](const auto& face) { return stays_out(*hull, face); };
  if (!std::ranges::all_of(view.faces.flats, out) || !std::ranges::all_of(view.faces.others, out)) {
    return false;
  }
  const Turned* through = nullptr;
  for (const Turned& patch : view.faces.patches) {
    if (stays_out(*hull, patch)) {
      continue;
    }
    if (patch.radius_from != patch.radius_to ||
        (through != nullptr && !same_surface(*through, patch))) {
      return false;
    }
    through = &patch;
  }
  if (through != nullptr) {
    return split_hull_in_air(view, *hull, *through);
  }
  // The hull lies wholly in material or wholly in air.
  return centred(*hull, hull->centre) && in_air(view.faces, hull->centre, rays_of(*hull));
}

}  // namespace

bool hull_apart(const Pair& pair) {
  View view{pair.b, pair.a, pair.a_to_b, {}, pair.same_length};
  for (const Band& band : pair.accounted.bands) {
    view.bands.push_back({place_point(pair.a_to_b, band.at),
                          place_direction(pair.a_to_b, band.normal), band.low, band.high});
  }
  return hull_stays_out(view) ||
         hull_stays_out({pair.a, pair.b, pair.b_to_a, pair.accounted.bands, pair.same_length});
}

}  // namespace spotblue::proof
