#include "geometry/faces/feature_merge.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/faces/face_patch.hpp"
#include "geometry/faces/plane_outline.hpp"
#include "geometry/faces/worn.hpp"
#include "geometry/model/arcs.hpp"
#include "geometry/model/tolerances.hpp"

namespace spotblue {
namespace {

constexpr double kSameEnds = 1e-6;         // mm: ends of two faces on one surface
constexpr double kDirectionWithin = 0.01;  // rad for each mm by which surfaces may differ

bool same_line(const Line& a, const Line& b, double within) {
  return norm(cross(a.along, b.along)) < kDirectionWithin * within && distance(a, b.at) < within;
}

template <typename Feature>
void add_patches(Feature& feature, std::span<const EdgeCurve> edges) {
  for (Patch& patch : face_patches(edges, feature.axis, feature.zero, feature.side)) {
    feature.patches.push_back(std::move(patch));
  }
}

void add_cylinder(Product& product, const FaceSurface& surface, std::span<const EdgeCurve> edges) {
  const auto found = std::find_if(
      product.cylinders.begin(), product.cylinders.end(),
      [&](const Cylinder& c) { return on_surface_of(c, surface, product.uncertainty); });
  if (found != product.cylinders.end()) {
    found->deviation = std::max(found->deviation, surface.deviation);
    add_patches(*found, edges);
    return;
  }
  Cylinder cylinder;
  cylinder.side = surface.side;
  cylinder.axis = {surface.axis.at, canonical(surface.axis.along)};
  cylinder.zero = any_square(cylinder.axis.along);
  cylinder.diameter = 2.0 * surface.radius;
  cylinder.source = surface.source;
  cylinder.deviation = surface.deviation;
  add_patches(cylinder, edges);
  product.cylinders.push_back(std::move(cylinder));
}

void add_cone(Product& product, const FaceSurface& surface, std::span<const EdgeCurve> edges) {
  const Line& axis = surface.axis;
  const auto found = std::find_if(product.cones.begin(), product.cones.end(), [&](const Cone& c) {
    return on_surface_of(c, surface, product.uncertainty);
  });
  if (found != product.cones.end()) {
    found->deviation = std::max(found->deviation, surface.deviation);
    add_patches(*found, edges);
    return;
  }
  Cone cone;
  cone.side = surface.side;
  cone.axis = axis;
  cone.zero = any_square(axis.along);
  cone.radius = surface.radius;
  cone.half_angle = surface.half_angle;
  cone.source = surface.source;
  cone.deviation = surface.deviation;
  add_patches(cone, edges);
  product.cones.push_back(std::move(cone));
}

void add_plane(Product& product, const FaceSurface& surface, std::span<const EdgeCurve> edges) {
  if (edges.empty()) {
    return;
  }
  const auto found =
      std::find_if(product.planes.begin(), product.planes.end(), [&](const Plane& p) {
        return on_surface_of(p, surface, edges.front().from, product.uncertainty);
      });
  if (found != product.planes.end()) {
    found->deviation = std::max(found->deviation, surface.deviation);
    add_outline(*found, edges);
    return;
  }
  Plane plane;
  plane.at = edges.front().from;
  plane.normal = surface.axis.along;
  plane.u = any_square(plane.normal);
  plane.source = surface.source;
  plane.deviation = surface.deviation;
  add_outline(plane, edges);
  product.planes.push_back(std::move(plane));
}

Box box_of_feature(std::span<const EdgeCurve> edges) {
  Box box;
  for (const EdgeCurve& edge : edges) {
    if (edge.kind == EdgeCurve::Kind::circle) {
      const Point a = edge.axis;
      const Point reach = edge.radius * Point{std::sqrt(std::max(0.0, 1.0 - a.x * a.x)),
                                              std::sqrt(std::max(0.0, 1.0 - a.y * a.y)),
                                              std::sqrt(std::max(0.0, 1.0 - a.z * a.z))};
      extend(box, edge.centre - reach);
      extend(box, edge.centre + reach);
    } else {
      extend(box, edge.from);
      extend(box, edge.to);
    }
    if (edge.kind == EdgeCurve::Kind::other) {
      constexpr int kSteps = 32;
      Point last = edge.from;
      double longest = 0.0;
      for (int i = 1; i <= kSteps; ++i) {
        const Point p = point_along(edge, static_cast<double>(i) / kSteps).at;
        longest = std::max(longest, norm(p - last));
        last = p;
        extend(box, p);
      }
      box = grown(box, 0.25 * longest);
    }
  }
  return box;
}

// Box of a ring about an axis.
Box ring_box(const Line& axis, double outer, double from, double to) {
  const Point a = axis.along;
  const Point reach = outer * Point{std::sqrt(std::max(0.0, 1.0 - a.x * a.x)),
                                    std::sqrt(std::max(0.0, 1.0 - a.y * a.y)),
                                    std::sqrt(std::max(0.0, 1.0 - a.z * a.z))};
  Box box;
  for (const double s : {from, to}) {
    extend(box, at_station(axis, s) - reach);
    extend(box, at_station(axis, s) + reach);
  }
  return box;
}

// A barrel bulges past its edges only where it turns: rims in steps, grown by the rise of a step.
Box box_of_feature(const Cylinder& cylinder) {
  if (cylinder.coverage > 2.0 * std::numbers::pi - kTurnSlack) {
    return ring_box(cylinder.axis, 0.5 * cylinder.diameter, cylinder.intervals.front().low,
                    cylinder.intervals.back().high);
  }
  constexpr int kSteps = 16;
  const double radius = 0.5 * cylinder.diameter;
  const Direction v = third(cylinder.axis.along, cylinder.zero);
  Box box;
  for (const Patch& patch : cylinder.patches) {
    for (const Arc& arc : patch.arcs) {
      Box rims;
      for (int i = 0; i <= kSteps; ++i) {
        const double t = arc.from + arc.sweep * i / kSteps;
        const Point radial = radius * (std::cos(t) * cylinder.zero + std::sin(t) * v);
        extend(rims, at_station(cylinder.axis, patch.from) + radial);
        extend(rims, at_station(cylinder.axis, patch.to) + radial);
      }
      extend(box, grown(rims, radius * (1.0 - std::cos(0.5 * arc.sweep / kSteps))));
    }
  }
  return box;
}

// The ring that the arc of a torus's tube fills when it is turned about the axis; the arc stays
// within one quarter.
RingPiece tube_piece(const FaceSurface& surface, double from, double to) {
  const auto [low_r, high_r] = std::minmax({std::cos(from), std::cos(to)});
  const auto [low_z, high_z] = std::minmax({std::sin(from), std::sin(to)});
  const double r = surface.minor_radius;
  return {std::max(0.0, surface.radius + low_r * r), surface.radius + high_r * r, low_z * r,
          high_z * r};
}

// An arc cut at the quarters and in thirds of them.
void add_pieces(OtherFace& face, const FaceSurface& surface, const Arc& arc) {
  constexpr double kPiece = std::numbers::pi / 6.0;
  const double end = arc.from + arc.sweep;
  for (double from = arc.from; from < end - kNoTurn;) {
    const double to = std::min(end, (std::floor(from / kPiece + kSameShare) + 1.0) * kPiece);
    face.pieces.push_back(tube_piece(surface, from, to));
    from = to;
  }
}

void add_torus(Product& product, const FaceSurface& surface, std::span<const EdgeCurve> edges) {
  OtherFace face;
  face.revolved = true;
  face.axis = surface.axis;
  face.inner = std::max(0.0, surface.radius - surface.minor_radius);
  face.outer = surface.radius + surface.minor_radius;
  face.from = -surface.minor_radius;
  face.to = surface.minor_radius;
  const std::vector<Arc> arcs = tube_arcs(edges, surface.axis, surface.radius);
  if (!arcs.empty() && coverage(arcs) < 2.0 * std::numbers::pi - kTurnSlack) {
    double low_r = 1.0;
    double high_r = -1.0;
    double low_z = 1.0;
    double high_z = -1.0;
    for (const Arc& arc : arcs) {
      add_pieces(face, surface, arc);
      const auto reaches = [&](double angle) {
        return std::fmod(angle - arc.from + 4.0 * std::numbers::pi, 2.0 * std::numbers::pi) <=
               arc.sweep;
      };
      for (const double end : {arc.from, arc.from + arc.sweep}) {
        low_r = std::min(low_r, std::cos(end));
        high_r = std::max(high_r, std::cos(end));
        low_z = std::min(low_z, std::sin(end));
        high_z = std::max(high_z, std::sin(end));
      }
      high_r = reaches(0.0) ? 1.0 : high_r;
      low_r = reaches(std::numbers::pi) ? -1.0 : low_r;
      high_z = reaches(0.5 * std::numbers::pi) ? 1.0 : high_z;
      low_z = reaches(1.5 * std::numbers::pi) ? -1.0 : low_z;
    }
    face.inner = std::max(0.0, surface.radius + low_r * surface.minor_radius);
    face.outer = surface.radius + high_r * surface.minor_radius;
    face.from = low_z * surface.minor_radius;
    face.to = high_z * surface.minor_radius;
  }
  face.box = ring_box(face.axis, face.outer, face.from, face.to);
  product.others.push_back(std::move(face));
}

void add_sphere(Product& product, const FaceSurface& surface) {
  OtherFace face;
  face.revolved = true;
  face.axis = surface.axis;
  face.outer = surface.radius;
  face.from = -surface.radius;
  face.to = surface.radius;
  const Point reach{surface.radius, surface.radius, surface.radius};
  extend(face.box, surface.axis.at - reach);
  extend(face.box, surface.axis.at + reach);
  product.others.push_back(std::move(face));
}

template <typename Feature>
void finish_patches(Feature& feature) {
  auto& patches = feature.patches;
  std::erase_if(patches, [](const Patch& p) { return !(p.to > p.from); });
  std::sort(patches.begin(), patches.end(), [](const Patch& a, const Patch& b) {
    return std::pair(a.from, a.to) < std::pair(b.from, b.to);
  });
  std::vector<Patch> merged;
  std::vector<Arc> all;
  Stretches stretches;
  for (Patch& patch : patches) {
    all.insert(all.end(), patch.arcs.begin(), patch.arcs.end());
    stretches.push_back({patch.from, patch.to});
    if (!merged.empty() && std::abs(merged.back().from - patch.from) < kSameEnds &&
        std::abs(merged.back().to - patch.to) < kSameEnds) {
      auto& arcs = merged.back().arcs;
      arcs.insert(arcs.end(), patch.arcs.begin(), patch.arcs.end());
      arcs = merged_arcs(std::move(arcs));
    } else {
      merged.push_back(std::move(patch));
    }
  }
  patches = std::move(merged);
  feature.coverage = coverage(all);
  feature.intervals = merged_stretches(std::move(stretches));
}

template <typename Feature>
void move_stations(Feature& feature, double by) {
  for (Patch& patch : feature.patches) {
    patch.from -= by;
    patch.to -= by;
  }
  for (auto& [from, to] : feature.intervals) {
    from -= by;
    to -= by;
  }
  if constexpr (requires { feature.sizes; }) {
    for (DiameterAt& size : feature.sizes) {
      size.at -= by;
    }
  }
  feature.axis.at = at_station(feature.axis, by);
}

}  // namespace

Direction canonical(Direction d) {
  const double largest = std::abs(d.x()) >= std::abs(d.y()) - kSameShare &&
                                 std::abs(d.x()) >= std::abs(d.z()) - kSameShare
                             ? d.x()
                         : std::abs(d.y()) >= std::abs(d.z()) - kSameShare ? d.y()
                                                                           : d.z();
  return largest < 0.0 ? -d : d;
}

bool on_surface_of(const Cylinder& cylinder, const FaceSurface& surface, double uncertainty) {
  const double within = uncertainty + cylinder.deviation + surface.deviation;
  return surface.kind == FaceSurface::Kind::cylinder && cylinder.side == surface.side &&
         std::abs(cylinder.diameter - 2.0 * surface.radius) < within &&
         same_line(cylinder.axis, surface.axis, within);
}

bool on_surface_of(const Cone& cone, const FaceSurface& surface, double uncertainty) {
  const double within = uncertainty + cone.deviation + surface.deviation;
  const double here =
      surface.radius + station(surface.axis, cone.axis.at) * std::tan(cone.half_angle);
  return surface.kind == FaceSurface::Kind::cone && cone.side == surface.side &&
         std::abs(cone.half_angle - surface.half_angle) < kDirectionWithin * within &&
         dot(cone.axis.along, surface.axis.along) > 0.0 &&
         same_line(cone.axis, surface.axis, within) && std::abs(here - cone.radius) < within;
}

bool on_surface_of(const Plane& plane, const FaceSurface& surface, Point on_face,
                   double uncertainty) {
  const double within = uncertainty + plane.deviation + surface.deviation;
  return surface.kind == FaceSurface::Kind::plane &&
         norm(plane.normal - surface.axis.along) < kDirectionWithin * within &&
         std::abs(dot(on_face - plane.at, plane.normal)) < within;
}

void add_worn(Product& product, const WornSurface& worn, std::span<const EdgeCurve> edges) {
  Cylinder cylinder;
  cylinder.side = worn.side;
  const double sense = dot(canonical(worn.axis.along), worn.axis.along) > 0.0 ? 1.0 : -1.0;
  cylinder.axis = {worn.axis.at, sense > 0 ? worn.axis.along : -worn.axis.along};
  cylinder.zero = any_square(cylinder.axis.along);
  for (const DiameterAt& size : worn.sizes) {
    cylinder.sizes.push_back({sense * size.at, size.least, size.greatest});
  }
  if (sense < 0.0) {
    std::reverse(cylinder.sizes.begin(), cylinder.sizes.end());
  }
  cylinder.source = worn.source;
  add_patches(cylinder, edges);
  product.cylinders.push_back(std::move(cylinder));
}

void add_face(Product& product, const FaceSurface& surface, std::span<const EdgeCurve> edges) {
  switch (surface.kind) {
    case FaceSurface::Kind::plane:
      add_plane(product, surface, edges);
      break;
    case FaceSurface::Kind::cylinder:
      add_cylinder(product, surface, edges);
      break;
    case FaceSurface::Kind::cone:
      add_cone(product, surface, edges);
      break;
    case FaceSurface::Kind::torus:
      add_torus(product, surface, edges);
      break;
    case FaceSurface::Kind::sphere:
      add_sphere(product, surface);
      break;
    case FaceSurface::Kind::other:
      break;  // kept as a box by the caller, who has the surface
  }
  extend(product.box, box_of_feature(edges));
}

void centre_stations(Cylinder& cylinder) {
  move_stations(cylinder, 0.5 * (cylinder.intervals.front().low + cylinder.intervals.back().high));
}

void finish_features(Product& product) {
  for (Cylinder& cylinder : product.cylinders) {
    finish_patches(cylinder);
    if (!cylinder.intervals.empty()) {
      centre_stations(cylinder);
      keep_sizes_on_stretches(cylinder);
      if (cylinder.sizes.empty()) {  // else its faces' boxes hold it
        extend(product.box, box_of_feature(cylinder));
      }
    }
  }
  std::erase_if(product.cylinders, [](const Cylinder& c) { return c.intervals.empty(); });
  for (Cone& cone : product.cones) {
    finish_patches(cone);
    if (!cone.intervals.empty()) {
      const double by = cone.intervals.front().low;
      const double slope = std::tan(cone.half_angle);
      extend(product.box, ring_box(cone.axis, cone.radius + cone.intervals.back().high * slope, by,
                                   cone.intervals.back().high));
      cone.radius = std::max(0.0, cone.radius + by * slope);
      move_stations(cone, by);
    }
  }
  std::erase_if(product.cones, [](const Cone& c) { return c.intervals.empty(); });
  take_slow_cones(product);
  for (Plane& plane : product.planes) {
    drop_seams(plane.outline);
  }
  for (const OtherFace& face : product.others) {
    extend(product.box, face.box);
  }
}

}  // namespace spotblue
