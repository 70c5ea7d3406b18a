#include "geometry/surfaces/round_flux.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "geometry/surfaces/boundary_loops.hpp"
#include "geometry/surfaces/edge_integral.hpp"

namespace spotblue {
namespace {

constexpr double kWholeTurn = 2.0 * std::numbers::pi;
// Share of the whole surface below which what a boundary encloses is none of it and not all of it.
constexpr double kNoShare = 1e-9;

double outward(const FaceSurface& surface) { return surface.side == Side::external ? 1.0 : -1.0; }

// The area that a boundary is known to enclose but for a number of whole surfaces, and that number.
struct Enclosed {
  double area = 0.0;
  double added = 0.0;  // whole surfaces
};

Enclosed enclosed(double area, double whole, bool bounded) {
  if (!bounded) {
    return {whole, 1.0};
  }
  const double turns = std::floor(area / whole + kNoShare);
  return {area - turns * whole, -turns};
}

// Of the six ways along the axes the one whose opposite lies farthest from the boundary.
Direction far_pole(Point centre, const EdgeLoops& boundary) {
  constexpr std::array<Direction, 6> kWays{Direction{1, 0, 0}, {0, 1, 0},  {0, 0, 1},
                                           {-1, 0, 0},         {0, -1, 0}, {0, 0, -1}};
  constexpr int kSamples = 16;
  const auto clearance = [&](Direction pole) {
    double least = 2.0;
    for (const EdgeLoop& loop : boundary.loops) {
      for (const EdgeCurve* edge : loop) {
        for (int i = 0; i <= kSamples; ++i) {
          const Point q = point_along(*edge, static_cast<double>(i) / kSamples).at - centre;
          least = std::min(least, 1.0 + dot(q, pole) / norm(q));
        }
      }
    }
    return least;
  };
  return *std::max_element(kWays.begin(), kWays.end(),
                           [&](Direction a, Direction b) { return clearance(a) < clearance(b); });
}

// A point of a torus by its two angles, each followed along the boundary without jumps.
struct TorusPoint {
  double about = 0.0;        // round the axis
  double tube = 0.0;         // round the tube, from its outermost point
  double about_speed = 0.0;  // by the edge's fraction
  double tube_speed = 0.0;
  Direction radial;
};

class TorusFrame {
 public:
  explicit TorusFrame(const FaceSurface& surface)
      : surface_(surface),
        zero_(any_square(surface.axis.along)),
        quarter_(cross(surface.axis.along, zero_)) {}

  // The angles nearest to those of the point before.
  [[nodiscard]] TorusPoint at(const CurvePoint& p, const TorusPoint& before) const {
    const Direction along = surface_.axis.along;
    const double z = station(surface_.axis, p.at);
    const Point out = p.at - at_station(surface_.axis, z);
    const double r = norm(out);
    TorusPoint result;
    result.radial = Direction((1.0 / r) * out);
    result.about = near(std::atan2(dot(out, quarter_), dot(out, zero_)), before.about);
    result.tube = near(std::atan2(z, r - surface_.radius), before.tube);
    result.about_speed = dot(cross(along, out), p.derivative) / (r * r);
    result.tube_speed =
        ((r - surface_.radius) * dot(along, p.derivative) - z * dot(result.radial, p.derivative)) /
        (surface_.minor_radius * surface_.minor_radius);
    return result;
  }

  // Integral of the radial direction over the angle about the axis.
  [[nodiscard]] Point radial_sum(double about) const {
    return std::sin(about) * zero_ - std::cos(about) * quarter_;
  }

 private:
  static double near(double angle, double before) {
    return before + std::remainder(angle - before, kWholeTurn);
  }

  const FaceSurface& surface_;
  Direction zero_, quarter_;
};

struct TorusSums {
  double flux = 0.0, area = 0.0;
};

struct TorusTotals {
  Flux flux, area;
};

TorusTotals operator+(const TorusTotals& a, const TorusTotals& b) {
  return {a.flux + b.flux, a.area + b.area};
}

// The flux form F(tube, about) of a torus, integrated over one of the two angles: which one serves
// depends on the way the boundary runs round.
class TorusForm {
 public:
  TorusForm(const FaceSurface& surface, Point origin)
      : frame_(surface),
        big_(surface.radius),
        small_(surface.minor_radius),
        offset_(surface.axis.at - origin),
        lift_(dot(offset_, surface.axis.along)) {}

  [[nodiscard]] const TorusFrame& frame() const { return frame_; }
  [[nodiscard]] double whole_flux() const {
    return -1.5 * kWholeTurn * kWholeTurn * small_ * small_ * big_;
  }
  [[nodiscard]] double whole_area() const { return kWholeTurn * kWholeTurn * small_ * big_; }

  // Over the tube's angle; to be integrated along the boundary by the angle about the axis.
  [[nodiscard]] TorusSums over_tube(const TorusPoint& p) const {
    const double c = std::cos(p.tube);
    const double s = std::sin(p.tube);
    const double m = small_;
    const double even = -1.5 * m * m * big_ * p.tube - 0.5 * m * m * big_ * s * c +
                        m * lift_ * (big_ * c - 0.5 * m * s * s) - m * big_ * big_ * s -
                        m * m * m * s;
    const double leaning = -m * big_ * s - 0.5 * m * m * (p.tube + s * c);
    return {even + leaning * dot(offset_, p.radial), m * (big_ * p.tube + m * s)};
  }

  // Over the angle about the axis; to be integrated by the tube's angle.
  [[nodiscard]] TorusSums over_about(const TorusPoint& p) const {
    const double c = std::cos(p.tube);
    const double s = std::sin(p.tube);
    const double r = big_ + small_ * c;
    const double even = -small_ * r * (s * (small_ * s + lift_) + c * r);
    const double leaning = -small_ * r * c;
    return {-(p.about * even + leaning * dot(offset_, frame_.radial_sum(p.about))),
            -p.about * small_ * r};
  }

 private:
  TorusFrame frame_;
  double big_, small_;
  Point offset_;
  double lift_;
};

// How often a loop goes round each way, and both sums along it.
struct TorusLoop {
  double about_turns = 0.0, tube_turns = 0.0;
  TorusTotals by_about, by_tube;
};

TorusLoop follow_rim(const EdgeLoop& loop, const TorusForm& form) {
  TorusLoop result;
  TorusPoint now = form.frame().at(point_along(*loop.front(), 0.0), {});
  const TorusPoint start = now;
  for (const EdgeCurve* edge : loop) {
    const auto sums = along_edge<4>(*edge, [&](const CurvePoint& p) {
      now = form.frame().at(p, now);
      const TorusSums over_tube = form.over_tube(now);
      const TorusSums over_about = form.over_about(now);
      return std::array{now.about_speed * over_tube.flux, now.about_speed * over_tube.area,
                        now.tube_speed * over_about.flux, now.tube_speed * over_about.area};
    });
    result.by_about = result.by_about + TorusTotals{sums[0], sums[1]};
    result.by_tube = result.by_tube + TorusTotals{sums[2], sums[3]};
  }
  now = form.frame().at(point_along(*loop.back(), 1.0), now);
  result.about_turns = std::round((now.about - start.about) / kWholeTurn);
  result.tube_turns = std::round((now.tube - start.tube) / kWholeTurn);
  return result;
}

}  // namespace

std::optional<Flux> sphere_flux(const FaceSurface& surface, std::span<const EdgeCurve> edges,
                                Point origin) {
  const EdgeLoops boundary = boundary_loops(edges);
  if (!boundary.complete) {
    return std::nullopt;
  }
  const Point centre = surface.axis.at;
  const Direction pole = far_pole(centre, boundary);
  const Point offset = centre - origin;
  const double square = surface.radius * surface.radius;
  Flux area;
  Flux lean;  // integral of offset . normal over the face
  for (const EdgeLoop& loop : boundary.loops) {
    for (const EdgeCurve* edge : loop) {
      const auto sums = along_edge<2>(*edge, [&](const CurvePoint& p) {
        const Point q = p.at - centre;
        return std::array{
            square * dot(cross(pole, q), p.derivative) / (square + surface.radius * dot(pole, q)),
            0.5 * dot(offset, cross(q, p.derivative))};
      });
      area = area + sums[0];
      lean = lean + sums[1];
    }
  }
  const double sense = outward(surface);
  const Enclosed face =
      enclosed(sense * area.value, 2.0 * kWholeTurn * square, !boundary.loops.empty());
  return Flux{sense * surface.radius * face.area + lean.value,
              surface.radius * area.error + lean.error};
}

std::optional<Flux> torus_flux(const FaceSurface& surface, std::span<const EdgeCurve> edges,
                               Point origin) {
  const EdgeLoops boundary = boundary_loops(edges);
  if (!boundary.complete || surface.radius <= surface.minor_radius) {
    return std::nullopt;
  }
  const TorusForm form(surface, origin);
  bool about = false;
  bool tube = false;
  TorusTotals by_about;
  TorusTotals by_tube;
  for (const EdgeLoop& loop : boundary.loops) {
    const TorusLoop one = follow_rim(loop, form);
    about = about || one.about_turns != 0.0;
    tube = tube || one.tube_turns != 0.0;
    by_about = by_about + one.by_about;
    by_tube = by_tube + one.by_tube;
  }
  if (about && tube) {
    return std::nullopt;
  }
  // The form's own normal points into the tube.
  const double sense = -outward(surface);
  const TorusTotals& sums = tube ? by_tube : by_about;
  const Enclosed face =
      enclosed(sense * sums.area.value, form.whole_area(), !boundary.loops.empty());
  return Flux{sums.flux.value + sense * face.added * form.whole_flux(), sums.flux.error};
}

}  // namespace spotblue
