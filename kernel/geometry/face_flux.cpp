#include "geometry/face_flux.hpp"

#include <array>
#include <cmath>

#include "geometry/plane_outline.hpp"

namespace spotblue {
namespace {

// Gauss-Legendre, five points on [0, 1]; nodes and weights: Abramowitz and Stegun, table 25.4.
constexpr std::array<double, 5> kNode{0.046910077030668, 0.230765344947158, 0.5, 0.769234655052842,
                                      0.953089922969332};
constexpr std::array<double, 5> kWeight{0.118463442528095, 0.239314335249683, 0.284444444444444,
                                        0.239314335249683, 0.118463442528095};
constexpr int kPanels = 24;

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
  for (int panel = 0; panel < kPanels; ++panel) {
    for (std::size_t k = 0; k < kNode.size(); ++k) {
      const CurvePoint p = point_along(edge, (panel + kNode[k]) / kPanels);
      const Point radial = p.at - at_station(axis, station(axis, p.at));
      const double square = dot(radial, radial);
      if (square > 0.0) {
        const double turning = dot(cross(axis.along, radial), p.derivative) / square;
        sum += kWeight[k] / kPanels * turning * f(p.at, (1.0 / std::sqrt(square)) * radial);
      }
    }
  }
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
    default:
      return std::nullopt;
  }
}

}  // namespace spotblue
