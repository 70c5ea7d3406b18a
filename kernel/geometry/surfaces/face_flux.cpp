#include "geometry/surfaces/face_flux.hpp"

#include <array>
#include <cmath>

#include "geometry/surfaces/edge_integral.hpp"
#include "geometry/surfaces/round_flux.hpp"

namespace spotblue {
namespace {

// Edges end off their vertices by what the file was rounded to; joined to them, the boundaries of
// all the faces close, and no arm to a far origin makes a volume of the gaps.
template <typename Joint>
void at_gaps(const EdgeCurve& edge, const Joint& joint) {
  joint(edge.from_vertex, edge.from);
  joint(edge.to, edge.to_vertex);
}

// Area of the triangle or sector between `from` and the edge, seen along the normal, by lines
// exactly.
Flux swept_area(const EdgeCurve& edge, Point from, Direction normal) {
  if (edge.kind == EdgeCurve::Kind::line) {
    return {0.5 * dot(cross(edge.from - from, edge.to - from), normal), 0.0};
  }
  return along_edge<1>(edge, [&](const CurvePoint& p) {
    return std::array{0.5 * dot(cross(p.at - from, p.derivative), normal)};
  })[0];
}

Flux plane_flux(const FaceSurface& surface, std::span<const EdgeCurve> edges, Point origin) {
  if (edges.empty()) {
    return {};
  }
  const Flux area = plane_area(edges, edges.front().from, surface.axis.along);
  const double height = dot(edges.front().from - origin, surface.axis.along);
  return {height * area.value, std::abs(height) * area.error};
}

// Integral of f(p) dtheta along a short chord, theta the angle about the axis.
template <typename Integrand>
double chord_turn(const Line& axis, Point from, Point to, const Integrand& f) {
  const Point middle = 0.5 * (from + to);
  const Point radial = middle - at_station(axis, station(axis, middle));
  const double square = dot(radial, radial);
  const double turning = square > 0.0 ? dot(cross(axis.along, radial), to - from) / square : 0.0;
  return turning == 0.0 ? 0.0 : turning * f(middle, Direction((1.0 / std::sqrt(square)) * radial));
}

// Integral of f(p) dtheta along the edges, theta the angle about the axis.
template <typename Integrand>
Flux turn_integral(std::span<const EdgeCurve> edges, const Line& axis, const Integrand& f) {
  Flux sum;
  for (const EdgeCurve& edge : edges) {
    at_gaps(edge, [&](Point a, Point b) { sum.value += chord_turn(axis, a, b, f); });
    if (edge.kind == EdgeCurve::Kind::line) {
      continue;  // a generator, along which the angle stays
    }
    sum = sum + along_edge<1>(edge, [&](const CurvePoint& p) {
            const Point radial = p.at - at_station(axis, station(axis, p.at));
            const double square = dot(radial, radial);
            const double turning =
                square > 0.0 ? dot(cross(axis.along, radial), p.derivative) / square : 0.0;
            return std::array{
                turning == 0.0 ? 0.0
                               : turning * f(p.at, Direction((1.0 / std::sqrt(square)) * radial))};
          })[0];
  }
  return sum;
}

Flux cylinder_flux(const FaceSurface& surface, std::span<const EdgeCurve> edges, Point origin) {
  const Point w = surface.axis.at - origin;
  const Flux sum = turn_integral(edges, surface.axis, [&](Point p, Direction radial) {
    return station(surface.axis, p) * (surface.radius + dot(w, radial));
  });
  return {-surface.radius * sum.value, surface.radius * sum.error};
}

Flux cone_flux(const FaceSurface& surface, std::span<const EdgeCurve> edges, Point origin) {
  const double slope = std::tan(surface.half_angle);
  const Point apex = surface.axis.at - (surface.radius / slope) * surface.axis.along;
  const Point w = apex - origin;
  const Flux sum = turn_integral(edges, surface.axis, [&](Point p, Direction radial) {
    const double r = distance(surface.axis, p);
    return r * r / (2.0 * slope) * (dot(w, radial) - slope * dot(w, surface.axis.along));
  });
  return {-sum.value, sum.error};
}

}  // namespace

Flux plane_area(std::span<const EdgeCurve> edges, Point from, Direction normal) {
  Flux area;
  for (const EdgeCurve& edge : edges) {
    area = area + swept_area(edge, from, normal);
    at_gaps(edge,
            [&](Point a, Point b) { area.value += 0.5 * dot(cross(a - from, b - from), normal); });
  }
  return area;
}

std::optional<Flux> face_flux(const FaceSurface& surface, std::span<const EdgeCurve> edges,
                              Point origin) {
  switch (surface.kind) {
    case FaceSurface::Kind::plane:
      return plane_flux(surface, edges, origin);
    case FaceSurface::Kind::cylinder:
      return cylinder_flux(surface, edges, origin);
    case FaceSurface::Kind::cone:
      return cone_flux(surface, edges, origin);
    case FaceSurface::Kind::torus:
      return torus_flux(surface, edges, origin);
    case FaceSurface::Kind::sphere:
      return sphere_flux(surface, edges, origin);
    case FaceSurface::Kind::other:
      break;
  }
  return std::nullopt;
}

}  // namespace spotblue
