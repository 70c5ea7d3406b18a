#include "geometry/ways/faces_over.hpp"

#include <algorithm>
#include <array>
#include <limits>
#include <numbers>
#include <optional>

#include "geometry/faces/worn.hpp"
#include "geometry/model/tolerances.hpp"
#include "geometry/outline/profile.hpp"
#include "spotblue/geometry/region_overlay.hpp"

namespace spotblue::proof {
namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();
constexpr double kWholeTurn = 2.0 * std::numbers::pi;
/// A surface counts as laid along the axis up to this tilt, and a plane as square to it.
constexpr double kAlongTilt = 0.03;
constexpr double kSquareTilt = 1e-6;
constexpr int kTaperSteps = 8;
/// Angles at which a cylinder across the axis is looked at; quarter turns are among them.
constexpr int kAngles = 128;

/// Nearest and farthest so far, of each way of looking.
class Seen {
 public:
  void add(Looks looks, double distance) {
    Interval& span = looks == Looks::outward ? outward_ : inward_;
    span = {std::min(span.low, distance), std::max(span.high, distance)};
  }
  void report(std::vector<FaceOver>& over, const std::string& name, bool ring, double loose) const {
    for (const auto& [looks, span] :
         {std::pair{Looks::outward, outward_}, std::pair{Looks::inward, inward_}}) {
      if (span.low <= span.high) {
        over.push_back({looks, std::max(0.0, span.low - loose), span.high + loose, ring, name});
      }
    }
  }

 private:
  Interval outward_{kInfinity, -kInfinity};
  Interval inward_{kInfinity, -kInfinity};
};

Looks looks_of(double outward) { return outward > kSame ? Looks::outward : Looks::inward; }

/// A cylinder or cone laid along the axis. Its points are at d2 + r2 + 2 d r c, c the cosine of
/// the angle from the direction away from the axis; where c < -r / d they turn their backs.
void lay_along(std::vector<FaceOver>& over, const Turned& t, const Line& axis, Interval stretch,
               double tilt, const std::string& name) {
  const double sense = dot(t.axis.along, axis.along) > 0.0 ? 1.0 : -1.0;
  const double zero = station(axis, t.axis.at);
  const double shear = std::max(t.radius_from, t.radius_to) * tilt;
  const double one = sense * (stretch.low - shear - zero);
  const double other = sense * (stretch.high + shear - zero);
  const Interval v{std::max(t.from, std::min(one, other)), std::min(t.to, std::max(one, other))};
  if (v.low >= v.high - kSame) {
    return;
  }
  const double length = std::max(t.to - t.from, kRounding);
  const double slope = (t.radius_to - t.radius_from) / length;
  Seen seen;
  bool ring = t.arcs.empty();
  for (const double at : {v.low, v.high}) {
    const double radius = t.radius_from + slope * (at - t.from);
    const Point off = at_station(t.axis, at) - axis.at;
    const Point away = off - dot(off, axis.along) * axis.along;
    const double d = norm(away);
    const Interval c =
        d > kRounding ? wave(dot(away, t.x) / d, dot(away, t.y) / d, t.arcs) : Interval{-1, 1};
    const double turning = d > radius ? -radius / d : -1.0;
    const auto reach = [&](double cosine) {
      return std::sqrt(std::max(0.0, d * d + radius * radius + 2.0 * d * radius * cosine));
    };
    const double outside = t.side == Side::external ? 1.0 : -1.0;
    if (c.high > turning) {
      seen.add(looks_of(outside), reach(std::max(c.low, turning)));
      seen.add(looks_of(outside), reach(c.high));
    }
    if (d > radius && c.low < turning) {
      seen.add(looks_of(-outside), reach(c.low));
      seen.add(looks_of(-outside), reach(std::min(c.high, turning)));
    }
    ring = ring && d < radius;
  }
  seen.report(over, name, ring, std::max(t.radius_from, t.radius_to) * tilt * tilt);
}

/// Angles of the generators to look at: all round, and where they cross the stretch's ends. The
/// generator at `angle` stands at middle + height sin(angle).
std::vector<double> angles_of(Interval stretch, double middle, double height) {
  std::vector<double> angles;
  angles.reserve(kAngles + 4);
  for (int i = 0; i < kAngles; ++i) {
    angles.push_back(kWholeTurn * i / kAngles);
  }
  for (const double limit : {stretch.low, stretch.high}) {
    const double sine = (limit - middle) / height;
    if (std::abs(sine) < 1.0) {
      angles.push_back(std::asin(sine));
      angles.push_back(std::numbers::pi - std::asin(sine));
    }
  }
  return angles;
}

/// A cylinder across the axis, generator by generator.
void lay_across(std::vector<FaceOver>& over, const Turned& t, const Line& axis, Interval stretch,
                const std::string& name) {
  const Interval height = extent(t, axis.along);
  const double zero = dot(axis.at, axis.along);
  if (height.low - zero > stretch.high - kSame || height.high - zero < stretch.low + kSame) {
    return;
  }
  const Direction level = unit(cross(axis.along, t.axis.along));
  const Direction square = third(level, axis.along);
  const Direction rise = third(t.axis.along, level);
  const double radius = t.radius_from;
  const double rising = dot(rise, axis.along);
  const double climb = dot(t.axis.along, axis.along);
  const Point off = t.axis.at - axis.at;
  const auto flat_angle = [&](double angle) {
    const Direction n = turned(level, rise, angle);
    return std::atan2(dot(n, t.y), dot(n, t.x));
  };
  const double middle = dot(off, axis.along);
  const std::vector<double> angles = angles_of(stretch, middle, radius * rising);
  Seen seen;
  for (const double angle : angles) {
    if (!in_arcs(flat_angle(angle), t.arcs)) {
      continue;
    }
    const Direction n = turned(level, rise, angle);
    const Point base = off + radius * n;
    Interval v{t.from, t.to};
    const double at_zero = dot(base, axis.along);
    if (std::abs(climb) > kNoLength) {
      const double one = (stretch.low - at_zero) / climb;
      const double other = (stretch.high - at_zero) / climb;
      v = {std::max(v.low, std::min(one, other)), std::min(v.high, std::max(one, other))};
    } else if (at_zero < stretch.low - kSame || at_zero > stretch.high + kSame) {
      continue;
    }
    if (v.low > v.high) {
      continue;
    }
    const double run = dot(t.axis.along, square);
    const double nearest = std::clamp(-dot(base, square) / run, v.low, v.high);
    for (const double at : {v.low, nearest, v.high}) {
      const double x = dot(base, square) + at * run;
      const double y = dot(base, level);
      const double facing = x * dot(n, square) + y * dot(n, level);
      seen.add(looks_of(t.side == Side::external ? facing : -facing), std::hypot(x, y));
    }
  }
  seen.report(over, name, false, 0.0);
}

/// The region cut to the strip low <= gradient . (u, v) <= high.
Region strip_of(const Region& region, Point2 gradient, Interval z) {
  const double steep = std::hypot(gradient.u, gradient.v);
  const Point2 g{gradient.u / steep, gradient.v / steep};
  const Extent2 box = extent(region);
  const double far = std::hypot(std::max(std::abs(box.low.u), std::abs(box.high.u)),
                                std::max(std::abs(box.low.v), std::abs(box.high.v))) +
                     1.0;
  const auto corner = [&](double along, double aside) {
    return Point2{along * g.u - aside * g.v, along * g.v + aside * g.u};
  };
  const double low = z.low / steep;
  const double high = z.high / steep;
  const std::array<Point2, 4> corners{corner(low, -far), corner(high, -far), corner(high, far),
                                      corner(low, far)};
  Region strip;
  for (std::size_t i = 0; i < corners.size(); ++i) {
    strip.edges.push_back({corners.at(i), corners.at((i + 1) % corners.size()), 0.0, {}, 0.0});
  }
  return intersect(region, strip);
}

double nearest_to_zero(Interval span) { return std::max({0.0, span.low, -span.high}); }
double farthest_from_zero(Interval span) {
  return std::max(std::abs(span.low), std::abs(span.high));
}

/// Least and greatest of the face along `level` over the stretch; nothing where it is not there. A
/// rectangle with sides along the axis reaches as far over any stretch.
std::optional<Interval> reach_over(const Flat& flat, const Line& axis, Interval stretch, Interval z,
                                   Direction level) {
  const Interval whole = extent(flat, level);
  const double rise = std::hypot(dot(flat.u, axis.along), dot(flat.v, axis.along));
  const double full = (z.high - z.low) / rise * (whole.high - whole.low);
  const bool cut = z.low < stretch.low - kSame || z.high > stretch.high + kSame;
  if (!cut || std::abs(area(*flat.outline) - full) < kSameShare * full) {
    return whole;
  }
  const double start = station(axis, flat.at);
  const Region part = strip_of(*flat.outline, {dot(flat.u, axis.along), dot(flat.v, axis.along)},
                               {stretch.low - start, stretch.high - start});
  if (is_empty(part)) {
    return {};
  }
  Flat trimmed = flat;
  trimmed.outline = &part;
  return extent(trimmed, level);
}

void lay_flat(std::vector<FaceOver>& over, const Flat& flat, const Line& axis, Interval stretch,
              const std::string& name) {
  const double nz = dot(flat.normal, axis.along);
  const Point radial = flat.normal - nz * axis.along;
  const double slant = norm(radial);
  if (slant < kSquareTilt) {
    return;
  }
  const Direction out((1.0 / slant) * radial);
  const Direction level = third(axis.along, out);
  const double base = dot(axis.at, axis.along);
  Interval z = extent(flat, axis.along);
  z = {z.low - base, z.high - base};
  if (z.low > stretch.high - kSame || z.high < stretch.low + kSame) {
    return;
  }
  const std::optional<Interval> level_reach = reach_over(flat, axis, stretch, z, level);
  if (!level_reach) {
    return;
  }
  z = {std::max(z.low, stretch.low), std::min(z.high, stretch.high)};
  const double middle = dot(axis.at, level);
  const Interval side{level_reach->low - middle, level_reach->high - middle};
  // On the plane out . p = (normal . at - z nz) / slant.
  const double level_at = dot(flat.normal, flat.at - axis.at);
  const double one = (level_at - z.low * nz) / slant;
  const double other = (level_at - z.high * nz) / slant;
  const Interval away{std::min(one, other), std::max(one, other)};
  Seen seen;
  if (away.high > 0.0) {
    seen.add(Looks::outward, std::hypot(std::max(0.0, away.low), nearest_to_zero(side)));
    seen.add(Looks::outward, std::hypot(away.high, farthest_from_zero(side)));
  }
  if (away.low < 0.0) {
    seen.add(Looks::inward, std::hypot(std::max(0.0, -away.high), nearest_to_zero(side)));
    seen.add(Looks::inward, std::hypot(-away.low, farthest_from_zero(side)));
  }
  seen.report(over, name, false, flat.slack);
}

/// A face of which only its image is known.
void lay_image(std::vector<FaceOver>& over, const FaceBounds& one, const Line& axis,
               Interval stretch, const std::string& name) {
  for (const Image& image : images_about(one, axis)) {
    if (image.z.low < stretch.high - kSame && image.z.high > stretch.low + kSame) {
      over.push_back({Looks::unknown, std::min(image.low_first, image.low_last),
                      std::max(image.high_first, image.high_last), false, name});
    }
  }
}

}  // namespace

NamedBounds named_bounds_of(const Product& product) {
  NamedBounds named{bounds_of(product), {}, {}};
  for (const Cylinder& cylinder : product.cylinders) {
    if (!is_out_of_form(cylinder)) {
      named.patch_names.insert(named.patch_names.end(), cylinder.patches.size(), cylinder.name);
    }
  }
  for (const Cone& cone : product.cones) {
    named.patch_names.insert(named.patch_names.end(), cone.patches.size(), cone.name);
  }
  for (const Plane& plane : product.planes) {
    if (!plane.outline.edges.empty()) {
      named.flat_names.push_back(plane.name);
    }
  }
  return named;
}

std::vector<FaceOver> faces_over(const NamedBounds& part, const Line& axis, Interval stretch) {
  std::vector<FaceOver> over;
  for (std::size_t i = 0; i < part.bounds.patches.size(); ++i) {
    const Turned& t = part.bounds.patches[i];
    const double tilt = norm(cross(t.axis.along, axis.along));
    if (tilt < kAlongTilt) {
      lay_along(over, t, axis, stretch, tilt, part.patch_names[i]);
    } else if (t.radius_from == t.radius_to) {
      lay_across(over, t, axis, stretch, part.patch_names[i]);
    } else {
      FaceBounds one;
      one.stretches.push_back(t);
      lay_image(over, one, axis, stretch, part.patch_names[i]);
    }
  }
  for (std::size_t i = 0; i < part.bounds.flats.size(); ++i) {
    lay_flat(over, part.bounds.flats[i], axis, stretch, part.flat_names[i]);
  }
  for (const OtherFace& other : part.bounds.others) {
    FaceBounds one;
    one.others.push_back(other);
    lay_image(over, one, axis, stretch, "a rounded face");
  }
  return over;
}

std::vector<double> face_stations(const NamedBounds& part, const Line& axis, Interval window) {
  std::vector<Image> images = images_about(part.bounds, axis);
  std::vector<Image> steps;
  for (const Image& image : images) {
    const bool taper = std::abs(image.low_last - image.low_first) > 0.01 * image.low_first;
    for (int i = 1; taper && i < kTaperSteps; ++i) {
      const double z = image.z.low + (image.z.high - image.z.low) * i / kTaperSteps;
      steps.push_back({{z, z}});
    }
  }
  return stations(images, steps, window, kMostStations);
}

}  // namespace spotblue::proof
