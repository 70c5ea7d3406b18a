#include "geometry/faces/air_probe.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <optional>

#include "geometry/model/tolerances.hpp"
#include "geometry/plane/region_edge.hpp"

namespace spotblue::proof {
namespace {

/// A ray that passes a face's edge nearer than this may meet it.
constexpr double kMargin = 1e-6;

/// Sine of the angle under which a ray counts as along a plane.
constexpr double kCrossing = 1e-9;

/// How far along the ray enters the box; nothing where it misses it.
std::optional<double> entry(const Box& box, Point start, Direction d) {
  double enter = 0.0;
  double leave = std::numeric_limits<double>::infinity();
  const std::array<std::array<double, 4>, 3> axes{{{start.x, d.x(), box.low.x, box.high.x},
                                                   {start.y, d.y(), box.low.y, box.high.y},
                                                   {start.z, d.z(), box.low.z, box.high.z}}};
  for (const auto& [from, rate, low, high] : axes) {
    if (std::abs(rate) < kRounding) {
      if (from < low - kMargin || from > high + kMargin) {
        return std::nullopt;
      }
      continue;
    }
    const double one = (low - kMargin - from) / rate;
    const double other = (high + kMargin - from) / rate;
    enter = std::max(enter, std::min(one, other));
    leave = std::min(leave, std::max(one, other));
  }
  return enter > leave ? std::nullopt : std::optional(enter);
}

bool misses(const Box& box, Point start, Direction d) { return !entry(box, start, d); }

double segment_distance(Point2 from, Point2 to, Point2 p) {
  const double du = to.u - from.u;
  const double dv = to.v - from.v;
  const double square = du * du + dv * dv;
  const double along = (p.u - from.u) * du + (p.v - from.v) * dv;
  const double share = square > 0.0 ? std::clamp(along / square, 0.0, 1.0) : 0.0;
  return std::hypot(p.u - from.u - share * du, p.v - from.v - share * dv);
}

/// Distance from the edge, or less: an arc counts as its whole circle.
double edge_distance(const Edge2& edge, Point2 p) {
  return edge.sweep == 0.0
             ? segment_distance(edge.from, edge.to, p)
             : std::abs(std::hypot(p.u - edge.centre.u, p.v - edge.centre.v) - edge.radius);
}

/// Where a ray may first meet a face.
struct Meeting {
  double at = std::numeric_limits<double>::infinity();
  bool sure = false;   ///< it does meet it there
  bool front = false;  ///< and comes from the air side
};

/// Whether a way that comes from the medium can not meet a face on that side.
bool is_barred(Medium coming_from, bool front) {
  return coming_from == (front ? Medium::metal : Medium::air);
}

/// Whether the point lies within `margin` of an edge; most edges are far off at a glance.
bool comes_near(const Edge2& edge, Point2 p, double margin) {
  const auto beyond = [&](double from, double to, double centre, double at) {
    const double low = is_line(edge) ? std::min(from, to) : centre - edge.radius;
    const double high = is_line(edge) ? std::max(from, to) : centre + edge.radius;
    return at < low - margin || at > high + margin;
  };
  return !beyond(edge.from.u, edge.to.u, edge.centre.u, p.u) &&
         !beyond(edge.from.v, edge.to.v, edge.centre.v, p.v) && edge_distance(edge, p) <= margin;
}

Meeting meeting(const Flat& flat, Point start, Direction d) {
  const double rate = dot(d, flat.normal);
  const double height = dot(flat.at - start, flat.normal);
  if (std::abs(rate) < kCrossing) {
    return {.at = std::abs(height) > kMargin + kSameShare * norm(flat.at - start)
                      ? std::numeric_limits<double>::infinity()
                      : 0.0};
  }
  const double at = height / rate;
  if (at < 0.0) {
    return {};
  }
  const Point q = start + at * d - flat.at;
  const Point2 p{dot(q, flat.u), dot(q, flat.v)};
  const bool inside = contains(*flat.outline, p);
  const bool plain = std::ranges::none_of(flat.outline->edges, [&](const Edge2& edge) {
    return comes_near(edge, p, kMargin + flat.slack);
  });
  if (!inside && plain) {
    return {};
  }
  return {.at = at, .sure = inside && plain && std::abs(rate) > 0.01, .front = rate < 0.0};
}

Meeting meeting(const Turned& t, Point start, Direction d) {
  const auto square = [&](Point p) { return p - dot(p, t.axis.along) * t.axis.along; };
  const Point s = square(start - t.axis.at);
  const Point v = square(d);
  const double a = dot(v, v);
  const double b = dot(s, v);
  const double c = dot(s, s) - t.radius_from * t.radius_from;
  const double root = b * b - a * c;
  if (t.radius_from != t.radius_to || a < kRounding || root < kSameShare * std::max(a, b * b)) {
    return {.at = 0.0};  // a cone, along the axis or grazing: the box had its say
  }
  const double margin = kMargin / std::max(t.radius_from, kMargin);
  for (const double sign : {-1.0, 1.0}) {
    const double at = (-b + sign * std::sqrt(root)) / a;
    const Point p = start + at * d - t.axis.at;
    const double along = dot(p, t.axis.along);
    const double angle = std::atan2(dot(p, t.y), dot(p, t.x));
    const bool angles = in_arcs(angle, t.arcs) || in_arcs(angle - margin, t.arcs) ||
                        in_arcs(angle + margin, t.arcs);
    if (at >= 0.0 && along >= t.from - kMargin && along <= t.to + kMargin && angles) {
      return {.at = at};
    }
  }
  return {};
}

Meeting meeting(const OtherFace&, Point, Direction) { return {.at = 0.0}; }

/// What of an angle a turned patch covers, by more than its arcs are good to.
enum class Cover { none, perhaps, sure };

Cover cover_of(const Turned& t, double angle) {
  constexpr double kArcsGoodTo = 0.04;  // rad
  const bool here = in_arcs(angle, t.arcs);
  const bool before = in_arcs(angle - kArcsGoodTo, t.arcs);
  const bool behind = in_arcs(angle + kArcsGoodTo, t.arcs);
  return here && before && behind   ? Cover::sure
         : here || before || behind ? Cover::perhaps
                                    : Cover::none;
}

/// Where the ray first meets a cylinder's or cone's patch from inside or outside.
Meeting first_meeting(const Turned& t, Point start, Direction d,
                      Medium coming_from = Medium::unknown) {
  const double slope = t.to > t.from ? (t.radius_to - t.radius_from) / (t.to - t.from) : 0.0;
  const double s_along = station(t.axis, start);
  const double rate = dot(d, t.axis.along);
  const Point s = start - at_station(t.axis, s_along);
  const Point v = d - rate * t.axis.along;
  const double radius = t.radius_from + slope * (s_along - t.from);
  const double a = dot(v, v) - slope * slope * rate * rate;
  const double b = dot(s, v) - radius * slope * rate;
  const double c = dot(s, s) - radius * radius;
  const double root = b * b - a * c;
  if (root < 0.0) {
    return {};
  }
  const bool along_it = std::abs(a) < kSameDirection;  // as along a cylinder's axis
  if (along_it && std::abs(b) < kSameShare * std::max(1.0, radius)) {
    return std::abs(c) > kMargin * radius ? Meeting{} : Meeting{.at = 0.0};
  }
  const bool grazes = root < kSameShare * b * b;
  Meeting first;
  for (const double sign : {-1.0, 1.0}) {
    const double at = along_it ? -0.5 * c / b : (-b + sign * std::sqrt(root)) / a;
    const double along = s_along + at * rate;
    const double here = t.radius_from + slope * (along - t.from);
    if (at < 0.0 || at >= first.at || here <= 0.0 || along < t.from - kMargin ||
        along > t.to + kMargin) {
      continue;
    }
    const Point p = start + at * d - at_station(t.axis, along);
    const Cover cover = cover_of(t, std::atan2(dot(p, t.y), dot(p, t.x)));
    if (cover == Cover::none) {
      continue;
    }
    const double outwards = dot(d, p) / here - slope * rate;
    const bool front = t.side == Side::external ? outwards < 0.0 : outwards > 0.0;
    if (is_barred(coming_from, front)) {
      continue;
    }
    first = {.at = at,
             .sure = cover == Cover::sure && !grazes && along > t.from + kMargin &&
                     along < t.to - kMargin && std::abs(outwards) > 0.01,
             .front = front};
  }
  return first;
}

Meeting first_meeting(const Flat& flat, Point start, Direction d) {
  return meeting(flat, start, d);
}

Meeting first_meeting(const OtherFace&, Point, Direction) { return {.at = 0.0}; }

const Box& stored_box(const Turned& t) { return t.box; }
const Box& stored_box(const Flat& f) { return f.box; }
const Box& stored_box(const OtherFace& o) { return o.box; }

Medium told_by(const FaceBounds& part, Point start, Direction d) {
  Meeting sure;
  double unsure = std::numeric_limits<double>::infinity();
  const auto look = [&](const auto& faces) {
    for (const auto& face : faces) {
      const std::optional<double> enters = entry(stored_box(face), start, d);
      if (!enters) {
        continue;
      }
      const Meeting m = first_meeting(face, start, d);
      if (m.sure && m.at < sure.at) {
        sure = m;
      } else if (!m.sure) {
        unsure = std::min(unsure, std::max(m.at, *enters));
      }
    }
  };
  look(part.patches);
  look(part.flats);
  look(part.others);
  if (std::isinf(sure.at)) {
    return std::isinf(unsure) ? Medium::air : Medium::unknown;
  }
  if (sure.at + kMargin >= unsure) {
    return Medium::unknown;
  }
  return sure.front ? Medium::air : Medium::metal;
}

bool tells_air(const FaceBounds& part, Point start, Direction d) {
  Meeting sure;
  double unsure = std::numeric_limits<double>::infinity();
  const auto look = [&](const auto& faces) {
    for (const auto& face : faces) {
      const Meeting m = misses(stored_box(face), start, d) ? Meeting{} : meeting(face, start, d);
      if (m.sure && m.at < sure.at) {
        sure = m;
      } else if (!m.sure) {
        unsure = std::min(unsure, m.at);
      }
    }
  };
  look(part.patches);
  look(part.flats);
  look(part.others);
  if (std::isinf(sure.at)) {
    return std::isinf(unsure);
  }
  return sure.front && sure.at + kMargin < unsure;
}

}  // namespace

bool in_air(const FaceBounds& part, Point start, std::span<const Direction> rays) {
  return std::ranges::any_of(rays, [&](Direction d) { return tells_air(part, start, d); });
}

bool may_meet(const Turned& turned, Point from, Point to, Medium coming_from) {
  const double length = norm(to - from);
  return first_meeting(turned, from, unit(to - from), coming_from).at <= length;
}

bool may_meet(const Flat& flat, Point from, Point to, Medium coming_from) {
  const Direction d = unit(to - from);
  const bool crosses = std::abs(dot(d, flat.normal)) >= kCrossing;
  return !(crosses && is_barred(coming_from, dot(d, flat.normal) < 0.0)) &&
         meeting(flat, from, d).at <= norm(to - from);
}

Medium medium_at(const FaceBounds& part, Point start) {
  constexpr int kRays = 24;
  constexpr double kGoldenAngle = 2.399963229728653;
  if (!overlap(grown(part.box, kMargin), Box{start, start})) {
    return Medium::air;
  }
  int metal = 0;
  int air = 0;
  for (int i = 0; i < kRays && std::abs(metal - air) < 2; ++i) {
    const double height = 1.0 - 2.0 * (((7 * i) % kRays) + 0.5) / kRays;
    const double across = std::sqrt(1.0 - height * height);
    const Direction ray{across * std::cos(kGoldenAngle * i), across * std::sin(kGoldenAngle * i),
                        height};
    const Medium told = told_by(part, start, ray);
    metal += told == Medium::metal ? 1 : 0;
    air += told == Medium::air ? 1 : 0;
  }
  return metal == air ? Medium::unknown : metal > air ? Medium::metal : Medium::air;
}

}  // namespace spotblue::proof
