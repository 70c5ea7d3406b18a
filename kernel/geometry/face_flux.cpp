#include "geometry/face_flux.hpp"

#include <cmath>

#include "geometry/edge_integral.hpp"
#include "geometry/plane_outline.hpp"
#include "geometry/round_flux.hpp"

namespace spotblue {
namespace {

double plane_flux(const FaceSurface& surface, std::span<const EdgeCurve> edges, Point origin) {
  Plane plane;
  plane.at = edges.empty() ? surface.axis.at : edges.front().from;
  plane.normal = surface.axis.along;
  plane.u = any_square(plane.normal);
  add_outline(plane, edges);
  return dot(plane.at - origin, plane.normal) * area(plane.outline);
}

// Integral of f(p) dtheta along the edge, theta the angle about the axis.
template <typename Integrand>
double turn_integral(const EdgeCurve& edge, const Line& axis, const Integrand& f) {
  double sum = 0.0;
  along_edge(edge, [&](const CurvePoint& p, double weight) {
    const Point radial = p.at - at_station(axis, station(axis, p.at));
    const double square = dot(radial, radial);
    if (square > 0.0) {
      const double turning = dot(cross(axis.along, radial), p.derivative) / square;
      sum += weight * turning * f(p.at, (1.0 / std::sqrt(square)) * radial);
    }
  });
  return sum;
}

double cylinder_flux(const FaceSurface& surface, std::span<const EdgeCurve> edges, Point origin) {
  const Point w = surface.axis.at - origin;
  double sum = 0.0;
  for (const EdgeCurve& edge : edges) {
    if (edge.kind != EdgeCurve::Kind::line) {
      sum += turn_integral(edge, surface.axis, [&](Point p, Direction radial) {
        return station(surface.axis, p) * (surface.radius + dot(w, radial));
      });
    }
  }
  return -surface.radius * sum;
}

double cone_flux(const FaceSurface& surface, std::span<const EdgeCurve> edges, Point origin) {
  const double slope = std::tan(surface.half_angle);
  const Point apex = surface.axis.at - (surface.radius / slope) * surface.axis.along;
  const Point w = apex - origin;
  double sum = 0.0;
  for (const EdgeCurve& edge : edges) {
    if (edge.kind != EdgeCurve::Kind::line) {
      sum += turn_integral(edge, surface.axis, [&](Point p, Direction radial) {
        const double r = distance(surface.axis, p);
        return r * r / (2.0 * slope) * (dot(w, radial) - slope * dot(w, surface.axis.along));
      });
    }
  }
  return -sum;
}

}  // namespace

std::optional<double> face_flux(const FaceSurface& surface, std::span<const EdgeCurve> edges,
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
