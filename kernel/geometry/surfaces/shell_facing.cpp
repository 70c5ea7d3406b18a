#include "geometry/surfaces/shell_facing.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <utility>

namespace spotblue {
namespace {

constexpr double kAsFar = 1e-6;      // mm: two faces that reach equally far
constexpr double kClearlyUp = 0.05;  // sine by which a normal must lean to tell its side

struct Reach {
  double far = -std::numeric_limits<double>::infinity();
  Point at;
};

Reach reach_of(const EdgeCurve& edge, Direction way) {
  constexpr int kSamples = 16;
  Reach reach;
  const int samples = edge.kind == EdgeCurve::Kind::line ? 1 : kSamples;
  for (int i = 0; i <= samples; ++i) {
    const Point p = i == 0         ? edge.from
                    : i == samples ? edge.to
                                   : point_along(edge, static_cast<double>(i) / samples).at;
    if (dot(p, way) > reach.far) {
      reach = {dot(p, way), p};
    }
  }
  return reach;
}

// Planes, cylinders and cones reach farthest on their edges; others may bulge past them.
bool is_ruled(FaceSurface::Kind kind) {
  return kind == FaceSurface::Kind::plane || kind == FaceSurface::Kind::cylinder ||
         kind == FaceSurface::Kind::cone;
}

// The normal out of the material.
// Zero on the axis.
Point normal_at(const FaceSurface& surface, Point p) {
  const Line& axis = surface.axis;
  if (surface.kind == FaceSurface::Kind::plane) {
    return axis.along;
  }
  const Point out = p - at_station(axis, station(axis, p));
  const double r = norm(out);
  if (r == 0.0) {
    return {};
  }
  const double sense = surface.side == Side::external ? 1.0 : -1.0;
  return sense * std::cos(surface.half_angle) * ((1.0 / r) * out) -
         sense * std::sin(surface.half_angle) * axis.along;
}

// How far a face that is not ruled may reach.
double bound_of(const ReadFace& face, Direction way) {
  const FaceSurface& surface = face.surface;
  if (surface.kind == FaceSurface::Kind::sphere) {
    return dot(surface.axis.at, way) + surface.radius;
  }
  if (surface.kind == FaceSurface::Kind::torus) {
    return dot(surface.axis.at, way) + surface.radius * norm(cross(surface.axis.along, way)) +
           surface.minor_radius;
  }
  const auto most = [](double low, double high, double along) {
    return std::max(low * along, high * along);
  };
  return most(face.box.low.x, face.box.high.x, way.x()) +
         most(face.box.low.y, face.box.high.y, way.y()) +
         most(face.box.low.z, face.box.high.z, way.z());
}

// 1 or -1 where the faces that reach farthest this way agree on it, else 0.
int facing_along(std::span<const ReadFace> faces, Direction way) {
  double far = -std::numeric_limits<double>::infinity();
  double bulge = far;
  std::vector<std::pair<double, double>> reaches;  // how far, and the normal's lean
  for (const ReadFace& face : faces) {
    if (!is_ruled(face.surface.kind)) {
      bulge = std::max(bulge, bound_of(face, way));
      continue;
    }
    for (const EdgeCurve& edge : face.edges) {
      const Reach reach = reach_of(edge, way);
      reaches.emplace_back(reach.far, dot(normal_at(face.surface, reach.at), way));
      far = std::max(far, reach.far);
    }
  }
  if (!(far >= bulge - kAsFar)) {
    return 0;
  }
  int said = 0;
  for (const auto& [reach, lean] : reaches) {
    if (reach < far - kAsFar || std::abs(lean) < kClearlyUp) {
      continue;
    }
    const int says = lean > 0.0 ? 1 : -1;
    if (said == -says) {
      return 0;
    }
    said = says;
  }
  return said;
}

}  // namespace

int shell_facing(std::span<const ReadFace> faces) {
  constexpr std::array<Direction, 6> kWays{Direction{1, 0, 0}, {-1, 0, 0}, {0, 1, 0},
                                           {0, -1, 0},         {0, 0, 1},  {0, 0, -1}};
  int votes = 0;
  for (const Direction way : kWays) {
    votes += facing_along(faces, way);
  }
  if (votes != 0) {
    return votes > 0 ? 1 : -1;
  }
  double flux = 0.0;
  for (const ReadFace& face : faces) {
    flux += face.flux.value;
  }
  return flux < 0.0 ? -1 : 1;
}

void turn_over(ReadFace& face) {
  if (face.surface.kind == FaceSurface::Kind::plane) {
    face.surface.axis.along = -face.surface.axis.along;
  }
  face.surface.side = face.surface.side == Side::internal ? Side::external : Side::internal;
  if (face.worn) {
    face.worn->side = face.worn->side == Side::internal ? Side::external : Side::internal;
  }
  std::for_each(face.edges.begin(), face.edges.end(), run_backwards);
  face.flux.value = -face.flux.value;
}

}  // namespace spotblue
