#include "support/value_parts.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace spotblue::test {
namespace {

constexpr double kPi = std::numbers::pi;

Edge2 circle(Point2 centre, double radius, double sweep) {
  const Point2 start{centre.u + radius, centre.v};
  return {start, start, sweep, centre, radius};
}

Edge2 straight(Point2 from, Point2 to) { return {from, to, 0.0, {}, 0.0}; }

void take_box(Product& part) {
  for (const Cylinder& c : part.cylinders) {
    const double r = 0.5 * c.diameter;
    for (const auto& [from, to] : c.intervals) {
      extend(part.box, Box{{c.axis.at.x - r, c.axis.at.y - r, c.axis.at.z + from},
                           {c.axis.at.x + r, c.axis.at.y + r, c.axis.at.z + to}});
    }
  }
  for (const Plane& plane : part.planes) {
    const Direction v = third(plane.normal, plane.u);
    for (const Edge2& edge : plane.outline.edges) {
      extend(part.box, plane.at + edge.from.u * plane.u + edge.from.v * v);
      const double r = edge.sweep != 0.0 ? edge.radius : 0.0;
      const Point2 centre = edge.sweep != 0.0 ? edge.centre : edge.from;
      for (const double s : {-r, r}) {
        extend(part.box, plane.at + (centre.u + s) * plane.u + centre.v * v);
        extend(part.box, plane.at + centre.u * plane.u + (centre.v + s) * v);
      }
    }
  }
}

Cylinder cylinder(Point at, double radius, double from, double to, Side side) {
  return {.name = "",
          .side = side,
          .axis = {at, {0, 0, 1}},
          .zero = {1, 0, 0},
          .diameter = 2.0 * radius,
          .patches = {{from, to, {{0.0, 2.0 * kPi}}}},
          .intervals = {{from, to}},
          .coverage = 2.0 * kPi};
}

Cone cone(SectionCorner low, SectionCorner high, Side side) {
  const bool grows = high.r > low.r;
  const double angle = std::atan2(std::abs(high.r - low.r), high.z - low.z);
  const double length = high.z - low.z;
  return {.name = "",
          .side = side,
          .axis = {{0, 0, grows ? low.z : high.z}, {0, 0, grows ? 1.0 : -1.0}},
          .zero = {1, 0, 0},
          .radius = std::min(low.r, high.r),
          .half_angle = angle,
          .patches = {{0.0, length, {{0.0, 2.0 * kPi}}}},
          .intervals = {{0.0, length}},
          .coverage = 2.0 * kPi};
}

Plane annulus(double inner, double outer, double z, double sense) {
  Plane plane{.name = "", .at = {0, 0, z}, .normal = {0, 0, sense}, .u = {1, 0, 0}, .outline = {}};
  plane.outline.edges.push_back(circle({}, outer, 2.0 * kPi));
  if (inner > 0.0) {
    plane.outline.edges.push_back(circle({}, inner, -2.0 * kPi));
  }
  return plane;
}

/// A plane face with the given corners, counter-clockwise seen against the normal.
Plane polygon(const std::vector<Point>& corners, Direction normal) {
  Plane plane{.name = "",
              .at = corners[0],
              .normal = normal,
              .u = unit(corners[1] - corners[0]),
              .outline = {}};
  const Direction v = third(normal, plane.u);
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const auto flat = [&](Point p) {
      return Point2{dot(p - plane.at, plane.u), dot(p - plane.at, v)};
    };
    plane.outline.edges.push_back(
        straight(flat(corners[i]), flat(corners[(i + 1) % corners.size()])));
  }
  return plane;
}

/// An upright prism over a convex polygon given counter-clockwise.
Product prism(const std::vector<Point2>& base, double from, double to) {
  Product part;
  part.solids = 1;
  std::vector<Point> low;
  std::vector<Point> high;
  for (const Point2 p : base) {
    low.insert(low.begin(), Point{p.u, p.v, from});
    high.push_back({p.u, p.v, to});
  }
  part.planes.push_back(polygon(high, {0, 0, 1}));
  part.planes.push_back(polygon(low, {0, 0, -1}));
  for (std::size_t i = 0; i < base.size(); ++i) {
    const Point2 a = base[i];
    const Point2 b = base[(i + 1) % base.size()];
    part.planes.push_back(
        polygon({{a.u, a.v, from}, {b.u, b.v, from}, {b.u, b.v, to}, {a.u, a.v, to}},
                unit(Point{b.v - a.v, a.u - b.u, 0.0})));
  }
  take_box(part);
  return part;
}

}  // namespace

Product turned_part(const std::vector<SectionCorner>& section) {
  Product part;
  part.solids = 1;
  for (std::size_t i = 0; i < section.size(); ++i) {
    const SectionCorner a = section[i];
    const SectionCorner b = section[(i + 1) % section.size()];
    const Side side = b.z > a.z ? Side::external : Side::internal;
    if (a.r == 0.0 && b.r == 0.0) {
      continue;
    }
    if (a.z == b.z) {
      part.planes.push_back(
          annulus(std::min(a.r, b.r), std::max(a.r, b.r), a.z, b.r > a.r ? -1.0 : 1.0));
    } else if (a.r == b.r) {
      part.cylinders.push_back(cylinder({}, a.r, std::min(a.z, b.z), std::max(a.z, b.z), side));
    } else {
      part.cones.push_back(a.z < b.z ? cone(a, b, side) : cone(b, a, side));
    }
    const double r = std::max(a.r, b.r);
    extend(part.box, Box{{-r, -r, std::min(a.z, b.z)}, {r, r, std::max(a.z, b.z)}});
  }
  return part;
}

Product ring_part(double inner, double outer, double from, double to) {
  return turned_part({{inner, from}, {outer, from}, {outer, to}, {inner, to}});
}

Product block_part(Point low, Point high, const std::vector<BlockHole>& holes) {
  Product part =
      prism({{low.x, low.y}, {high.x, low.y}, {high.x, high.y}, {low.x, high.y}}, low.z, high.z);
  for (const BlockHole& hole : holes) {
    part.cylinders.push_back(
        cylinder({hole.x, hole.y, 0.0}, 0.5 * hole.diameter, low.z, high.z, Side::internal));
    for (std::size_t end = 0; end < 2; ++end) {
      Plane& plane = part.planes[end];
      const Point d = Point{hole.x, hole.y, plane.at.z} - plane.at;
      const Direction v = third(plane.normal, plane.u);
      plane.outline.edges.push_back(
          circle({dot(d, plane.u), dot(d, v)}, 0.5 * hole.diameter, -2.0 * kPi));
    }
  }
  return part;
}

Product hexagon_part(double flats, double from, double to) {
  std::vector<Point2> base;
  const double radius = flats / std::sqrt(3.0);
  for (int i = 0; i < 6; ++i) {
    const double angle = kPi / 3.0 * i;
    base.push_back({radius * std::cos(angle), radius * std::sin(angle)});
  }
  return prism(base, from, to);
}

void join(Product& part, const Product& other) {
  const auto append = [](auto& to, const auto& from) {
    to.insert(to.end(), from.begin(), from.end());
  };
  append(part.cylinders, other.cylinders);
  append(part.cones, other.cones);
  append(part.planes, other.planes);
  extend(part.box, other.box);
}

Frame shifted(double x, double y, double z) {
  return {{{{1, 0, 0, x}, {0, 1, 0, y}, {0, 0, 1, z}}}};
}

Frame rotated(Direction axis, double angle) {
  const double c = std::cos(angle);
  const double s = std::sin(angle);
  const double k = 1.0 - c;
  const auto [x, y, z] = Point(axis);
  return {{{{c + k * x * x, k * x * y - s * z, k * x * z + s * y, 0.0},
            {k * x * y + s * z, c + k * y * y, k * y * z - s * x, 0.0},
            {k * x * z - s * y, k * y * z + s * x, c + k * z * z, 0.0}}}};
}

Model placed_model(const std::vector<std::pair<Product, Frame>>& parts) {
  Model model;
  for (const auto& [product, frame] : parts) {
    const std::string id = "part " + std::to_string(model.products.size() + 1);
    Product named = product;
    named.id = named.name = id;
    model.occurrences.push_back({.id = id,
                                 .path = id,
                                 .product = ProductId(model.products.size()),
                                 .frame = frame,
                                 .mirrored = is_mirror(frame),
                                 .box = place_box(frame, named.box)});
    model.products.push_back(std::move(named));
  }
  return model;
}

}  // namespace spotblue::test
