#include "geometry/faces/face_bounds.hpp"

#include <algorithm>
#include <numbers>

#include "geometry/faces/worn.hpp"
#include "geometry/model/tolerances.hpp"

namespace spotblue::proof {
namespace {

constexpr double kTurn = 2.0 * std::numbers::pi;
/// Arcs count as this much longer at each end, rad: their ends come from edges by projection.
constexpr double kArcSlack = 1e-9;
/// Products may have thousands of fillets; proofs look at the greatest axes and planes only.
constexpr std::size_t kMostAxes = 64;
constexpr std::size_t kMostNormals = 16;

Box box_of(const auto& face) {
  const Interval x = extent(face, Direction{1, 0, 0});
  const Interval y = extent(face, Direction{0, 1, 0});
  const Interval z = extent(face, Direction{0, 0, 1});
  return {{x.low, y.low, z.low}, {x.high, y.high, z.high}};
}

bool all_round(std::span<const Arc> arcs) {
  return std::ranges::any_of(arcs, [](const Arc& a) { return a.sweep >= kTurn - kNoTurn; });
}

struct Shape {
  Line axis;
  Direction zero;
  double radius;
  double slope;
  Side side;
};

Turned turned(const Shape& shape, double from, double to, std::vector<Arc> arcs) {
  Turned t{.axis = shape.axis,
           .x = shape.zero,
           .y = third(shape.axis.along, shape.zero),
           .from = from,
           .to = to,
           .radius_from = std::max(0.0, shape.radius + from * shape.slope),
           .radius_to = std::max(0.0, shape.radius + to * shape.slope),
           .arcs = all_round(arcs) ? std::vector<Arc>{} : std::move(arcs),
           .side = shape.side,
           .box = {}};
  t.box = box_of(t);
  return t;
}

void add_turned(FaceBounds& bounds, const Shape& shape, const auto& feature) {
  for (const Patch& patch : feature.patches) {
    bounds.patches.push_back(turned(shape, patch.from, patch.to, patch.arcs));
  }
  for (const auto& [from, to] : feature.intervals) {
    std::vector<Arc> arcs;
    for (const Patch& patch : feature.patches) {
      if (patch.to > from - kSame && patch.from < to + kSame) {
        arcs.insert(arcs.end(), patch.arcs.begin(), patch.arcs.end());
      }
    }
    bounds.stretches.push_back(turned(shape, from, to, std::move(arcs)));
  }
}

/// How far a face may reach beyond an outline in which other curves stand as arcs through three of
/// their points: a piece errs by less than it bulges. Pieces turn by a quarter circle at most;
/// straight edges and longer arcs are what they are.
double piece_slack(const Region& outline) {
  if (outline.exact) {
    return 0.0;
  }
  double bulge = 0.0;
  for (const Edge2& edge : outline.edges) {
    const double turn = std::abs(edge.sweep);
    if (turn <= 0.5 * std::numbers::pi) {
      bulge = std::max(bulge, edge.radius * (1.0 - std::cos(0.5 * turn)));
    }
  }
  return bulge;
}

Flat flat_of(const Plane& plane) {
  Flat flat{.at = plane.at,
            .normal = plane.normal,
            .u = plane.u,
            .v = third(plane.normal, plane.u),
            .outline = &plane.outline,
            .slack = piece_slack(plane.outline),
            .box = {}};
  flat.box = box_of(flat);
  return flat;
}

std::vector<Line> distinct_axes(const FaceBounds& bounds) {
  struct Sized {
    Line line;
    double size;
  };
  std::vector<Sized> found;
  const double reach = diagonal(bounds.box);
  for (const Turned& t : bounds.stretches) {
    const double size = std::max(t.radius_from, t.radius_to) * (t.to - t.from);
    const auto same = std::ranges::find_if(
        found, [&](const Sized& s) { return same_line(s.line, t.axis, kSame, reach); });
    if (same != found.end()) {
      same->size += size;
    } else if (found.size() < 4 * kMostAxes) {
      found.push_back({t.axis, size});
    }
  }
  std::ranges::stable_sort(found, std::greater{}, &Sized::size);
  found.resize(std::min(found.size(), kMostAxes));
  std::vector<Line> axes;
  axes.reserve(found.size());
  for (const Sized& s : found) {
    axes.push_back(s.line);
  }
  return axes;
}

std::vector<Direction> distinct_normals(const FaceBounds& bounds) {
  std::vector<const Flat*> flats;
  flats.reserve(bounds.flats.size());
  for (const Flat& flat : bounds.flats) {
    flats.push_back(&flat);
  }
  std::ranges::stable_sort(flats, std::greater{},
                           [](const Flat* flat) { return diagonal(flat->box); });
  std::vector<Direction> normals;
  for (const Flat* flat : flats) {
    const bool known = std::ranges::any_of(normals, [&](Direction n) {
      return angle_between_lines(n, flat->normal) < kTriedDirection;
    });
    if (!known && normals.size() < kMostNormals) {
      normals.push_back(flat->normal);
    }
  }
  return normals;
}

}  // namespace

bool in_arcs(double angle, std::span<const Arc> arcs) {
  return arcs.empty() || std::ranges::any_of(arcs, [&](const Arc& arc) {
           const double turned = angle - arc.from + kArcSlack;
           return turned - kTurn * std::floor(turned / kTurn) <= arc.sweep + 2.0 * kArcSlack;
         });
}

Interval wave(double a, double b, std::span<const Arc> arcs) {
  const double most = std::hypot(a, b);
  if (arcs.empty() || most == 0.0) {
    return {-most, most};
  }
  const double phase = std::atan2(b, a);
  Interval span{most, -most};
  if (in_arcs(phase, arcs)) {
    span.high = most;
  }
  if (in_arcs(phase + std::numbers::pi, arcs)) {
    span.low = -most;
  }
  for (const Arc& arc : arcs) {
    for (const double end : {arc.from, arc.from + arc.sweep}) {
      const double value = most * std::cos(end - phase);
      span = united(span, {value, value});
    }
  }
  return span;
}

Interval extent(const Turned& t, std::span<const Arc> arcs, Direction d) {
  const Interval round = wave(dot(d, t.x), dot(d, t.y), arcs);
  const double base = dot(d, t.axis.at);
  const double slope = dot(d, t.axis.along);
  const auto end = [&](double at, double radius) {
    const double middle = base + slope * at;
    return Interval{middle + radius * round.low, middle + radius * round.high};
  };
  return united(end(t.from, t.radius_from), end(t.to, t.radius_to));
}

Interval extent(const Turned& t, Direction d) { return extent(t, t.arcs, d); }

Interval extent(const Flat& flat, Direction d) {
  const double du = dot(d, flat.u);
  const double dv = dot(d, flat.v);
  const double base = dot(d, flat.at);
  Interval span{std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};
  for (const Edge2& edge : flat.outline->edges) {
    const double from = base + du * edge.from.u + dv * edge.from.v;
    span = united(span, {from, from});
  }
  const double steepest = std::hypot(du, dv);
  for (const Edge2& edge : flat.outline->edges) {
    if (edge.sweep == 0.0) {
      continue;
    }
    const double middle = base + du * edge.centre.u + dv * edge.centre.v;
    const double reach = edge.radius * steepest;
    if (middle - reach < span.low || middle + reach > span.high) {
      const double start = std::atan2(edge.from.v - edge.centre.v, edge.from.u - edge.centre.u);
      const Arc arc{edge.sweep > 0.0 ? start : start + edge.sweep, std::abs(edge.sweep)};
      const Interval round = wave(du, dv, {&arc, 1});
      span = united(span, {middle + edge.radius * round.low, middle + edge.radius * round.high});
    }
  }
  const double slack = flat.slack * steepest;
  return {span.low - slack, span.high + slack};
}

Interval extent(const Box& box, Direction d) {
  const Point middle = 0.5 * (box.low + box.high);
  const Point half = 0.5 * (box.high - box.low);
  const double reach =
      std::abs(d.x()) * half.x + std::abs(d.y()) * half.y + std::abs(d.z()) * half.z;
  return {dot(d, middle) - reach, dot(d, middle) + reach};
}

Interval extent(const FaceBounds& bounds, Direction d) {
  Interval span{std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};
  // Most faces of a plate with thousands of holes change nothing, as their boxes tell.
  const auto take = [&](const auto& face) {
    const Interval rough = extent(face.box, d);
    if (rough.low < span.low || rough.high > span.high) {
      span = united(span, extent(face, d));
    }
  };
  std::ranges::for_each(bounds.flats, take);
  std::ranges::for_each(bounds.patches, take);
  for (const OtherFace& other : bounds.others) {
    span = united(span, extent(other.box, d));
  }
  return span;
}

bool same_line(const Line& a, const Line& b, double offset, double reach) {
  const double tilt = norm(cross(a.along, b.along));
  return tilt * reach <= offset && distance(a, b.at) <= offset;
}

FaceBounds bounds_of(const Product& product) {
  FaceBounds bounds;
  bounds.box = product.box;
  bounds.solid = product.solids > 0;
  bounds.closed = product.closed;
  for (const Cylinder& c : product.cylinders) {
    if (!is_out_of_form(c)) {
      add_turned(bounds, {c.axis, c.zero, 0.5 * diameters_at(c, 0.0).low, taper_of(c), c.side}, c);
    }
  }
  for (const Cone& c : product.cones) {
    add_turned(bounds, {c.axis, c.zero, c.radius, std::tan(c.half_angle), c.side}, c);
  }
  bounds.others = product.others;
  for (const Plane& plane : product.planes) {
    if (plane.outline.edges.empty()) {
      bounds.others.push_back({.box = product.box, .axis = {}});
    } else {
      bounds.flats.push_back(flat_of(plane));
    }
  }
  bounds.axes = distinct_axes(bounds);
  bounds.normals = distinct_normals(bounds);
  return bounds;
}

}  // namespace spotblue::proof
