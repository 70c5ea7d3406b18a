#include "geometry/candidates/ring_gap.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <type_traits>

#include "geometry/faces/worn.hpp"
#include "geometry/model/coaxial.hpp"
#include "geometry/model/tolerances.hpp"
#include "spotblue/base/angle.hpp"
#include "spotblue/geometry/seat_limits.hpp"

namespace spotblue {
namespace {

constexpr double kAllRound = 2.0 * std::numbers::pi;
constexpr double kAngleStep = 2.0 * kDegree;  // between angles at which an odd face is looked for
constexpr double kLevel = 1e-6;  // mm of height that a face square to the axis may have

struct BaseAxis {
  Line axis;
  Direction zero;
};

// The angles of a rectangle seen from the origin; all round where it holds it.
Arc angles_of(Interval x, Interval y) {
  if (x.low <= 0.0 && x.high >= 0.0 && y.low <= 0.0 && y.high >= 0.0) {
    return {0.0, kAllRound};
  }
  const double middle = std::atan2(0.5 * (y.low + y.high), 0.5 * (x.low + x.high));
  double least = 0.0;
  double most = 0.0;
  for (const double u : {x.low, x.high}) {
    for (const double v : {y.low, y.high}) {
      const double off = std::remainder(std::atan2(v, u) - middle, kAllRound);
      least = std::min(least, off);
      most = std::max(most, off);
    }
  }
  return {middle + least - kNoLength, most - least + 2.0 * kNoLength};
}

Interval reach_of(Interval x, Interval y) {
  const double dx = std::max({0.0, x.low, -x.high});
  const double dy = std::max({0.0, y.low, -y.high});
  return {std::hypot(dx, dy), std::hypot(std::max(std::abs(x.low), std::abs(x.high)),
                                         std::max(std::abs(y.low), std::abs(y.high)))};
}

bool holds(const Arc& arc, double angle) { return proof::in_arcs(angle, {&arc, 1}); }

}  // namespace

RingGap::RingGap(const RadialCandidate& c, const NearPart& part, Part which,
                 const SeatSettings& settings)
    : c_(c),
      part_(part),
      which_(which),
      own_(which == Part::third                 ? proof::Medium::unknown
           : c.shaft_diameter > c.hole_diameter ? proof::Medium::metal
                                                : proof::Medium::air),
      same_(settings.same_length_mm),
      near_(most_offset(settings, c.hole_diameter) + settings.same_length_mm),
      tilt_(most_tilt(settings.coaxial_tilt_deg, settings)),
      inner_(0.5 * std::min(c.shaft_diameter, c.hole_diameter)),
      outer_(0.5 * std::max(c.shaft_diameter, c.hole_diameter)),
      low_(c.stretches.front().low),
      high_(c.stretches.back().high),
      to_part_(inverse(part.frame)) {
  const auto along = [&](Direction d) {
    const Interval span = proof::extent(part.product->box, place_direction(to_part_, d));
    const double base = dot(place_point(to_part_, c_.axis.at), place_direction(to_part_, d));
    return Interval{span.low - base, span.high - base};
  };
  const Interval z = along(c_.axis.along);
  away_ =
      z.high < low_ || z.low > high_ || reach_of(along(c_.zero), along(c_.quarter)).low > outer_;
  if (!away_) {
    for (const double end : {low_, high_}) {
      const Point centre = place_point(to_part_, at_station(c_.axis, end));
      const Direction d = place_direction(to_part_, c_.axis.along);
      const auto reach = [&](double lean) {
        return outer_ * std::sqrt(std::max(0.0, 1.0 - lean * lean)) + kOnePlace;
      };
      const Point by{reach(d.x()), reach(d.y()), reach(d.z())};
      extend(box_, centre - by);
      extend(box_, centre + by);
    }
    add_coaxial();
    add_odd();
  }
}

bool RingGap::is_coaxial(const Line& axis) const {
  return parallel_within(axis.along, c_.axis.along, tilt_) && distance(c_.axis, axis.at) <= near_;
}

template <typename Feature>
void RingGap::add(const Feature& feature, double radius, double slope) {
  const AxisTransfer transfer(BaseAxis{c_.axis, c_.zero}, Frame{}, feature, part_.frame);
  const Line axis = place_line(part_.frame, feature.axis);
  const double along = dot(axis.along, c_.axis.along) > 0.0 ? 1.0 : -1.0;
  // The candidate may count its angles the other way round, where its hole is mirrored.
  const bool turned = dot(cross(c_.axis.along, c_.zero), c_.quarter) < 0.0;
  for (const Patch& patch : feature.patches) {
    Coaxial one{radius, station(c_.axis, axis.at), along * slope, 0.0, 0.0, {}};
    const Interval stretch = transfer.stretch(patch.from, patch.to);
    one.from = stretch.low;
    one.to = stretch.high;
    const double from = std::max(one.from, low_);
    const double to = std::min(one.to, high_);
    const auto [least, most] = std::minmax({one.radius_at(from), one.radius_at(to)});
    if (to - from <= kNoLength || most <= inner_ + same_ || least >= outer_ - same_) {
      continue;
    }
    one.arcs = transfer.arcs(patch.arcs);
    if (turned) {
      one.arcs = recounted_arcs(one.arcs, 0.0, -1);
    }
    coaxial_.push_back(std::move(one));
  }
}

void RingGap::add_coaxial() {
  for (const Cylinder& cylinder : part_.product->cylinders) {
    if (!is_out_of_form(cylinder) && is_coaxial(place_line(part_.frame, cylinder.axis))) {
      add(cylinder, 0.5 * diameters_at(cylinder, 0.0).low, taper_of(cylinder));
    }
  }
  for (const Cone& cone : part_.product->cones) {
    if (is_coaxial(place_line(part_.frame, cone.axis))) {
      add(cone, cone.radius, std::tan(cone.half_angle));
    }
  }
}

template <typename Face>
void RingGap::add_if_odd(const Face& face, const proof::Turned* turned, const proof::Flat* flat) {
  const auto along = [&](Direction d) {
    const Direction own = place_direction(to_part_, d);
    const Interval span = proof::extent(face, own);
    const double base = dot(place_point(to_part_, c_.axis.at), own);
    return Interval{span.low - base, span.high - base};
  };
  if constexpr (!std::is_same_v<Face, Box>) {
    if (!overlap(face.box, box_)) {
      return;
    }
  }
  const Interval z = along(c_.axis.along);
  if (z.high <= low_ + kNoLength || z.low >= high_ - kNoLength) {
    return;
  }
  const Interval x = along(c_.zero);
  const Interval y = along(c_.quarter);
  const Interval reach = reach_of(x, y);
  if (reach.low >= outer_ - same_ || reach.high <= inner_ + same_) {
    return;
  }
  levels_.insert(levels_.end(), {z.low, z.high});
  if (z.high - z.low > kLevel) {
    odd_.push_back({turned, flat, z.low, z.high, angles_of(x, y)});
  }
}

// What of a rounded face about the seat's axis comes into the ring is known by its radii.
void RingGap::add_other(const OtherFace& face) {
  const Line axis = place_line(part_.frame, face.axis);
  if (!face.revolved || !is_coaxial(axis)) {
    add_if_odd(face.box, nullptr, nullptr);
    return;
  }
  const double start = station(c_.axis, axis.at);
  const double sense = dot(axis.along, c_.axis.along) > 0.0 ? 1.0 : -1.0;
  const auto add_ring = [&](double inner, double outer, double from, double to) {
    const auto [low, high] = std::minmax({start + sense * from, start + sense * to});
    if (low < high_ - kNoLength && high > low_ + kNoLength && inner < outer_ - same_ &&
        outer > inner_ + same_) {
      levels_.insert(levels_.end(), {low, high});
      odd_.push_back({nullptr, nullptr, low, high, {0.0, kAllRound}});
    }
  };
  for (const RingPiece& piece : face.pieces) {
    add_ring(piece.inner, piece.outer, piece.from, piece.to);
  }
  if (face.pieces.empty()) {
    add_ring(face.inner, face.outer, face.from, face.to);
  }
}

void RingGap::add_odd() {
  for (const proof::Turned& turned : part_.faces->patches) {
    if (!is_coaxial(place_line(part_.frame, turned.axis))) {
      add_if_odd(turned, &turned, nullptr);
    }
  }
  for (const proof::Flat& flat : part_.faces->flats) {
    add_if_odd(flat, nullptr, &flat);
  }
  for (const OtherFace& face : part_.faces->others) {
    add_other(face);
  }
}

bool RingGap::is_free() const {
  return away_ || (which_ != Part::third && coaxial_.empty() && odd_.empty());
}

void RingGap::add_cuts(std::vector<double>& cuts) const {
  for (const Coaxial& one : coaxial_) {
    cuts.insert(cuts.end(), {one.from, one.to});
    for (const double radius : {inner_ + same_, outer_ - same_}) {
      if (one.slope != 0.0) {
        cuts.push_back(one.zero + (radius - one.radius) / one.slope);
      }
    }
  }
  cuts.insert(cuts.end(), levels_.begin(), levels_.end());
}

Point RingGap::point(double r, double angle, double z) const {
  return place_point(to_part_, at_station(c_.axis, z) + r * std::cos(angle) * c_.zero +
                                   r * std::sin(angle) * c_.quarter);
}

proof::Medium RingGap::medium(double r, double angle, double z) const {
  return proof::medium_at(*part_.faces, point(r, angle, z));
}

bool RingGap::differs(double angle, double z, const std::vector<const Odd*>& near) const {
  // From the part's own surface: the hole's lies outside where there is a gap, inside where the two
  // overlap.
  const bool inwards = (which_ == Part::hole) == (own_ == proof::Medium::air);
  const double from = inwards ? outer_ - same_ : inner_ + same_;
  const double to = inwards ? inner_ + same_ : outer_ - same_;
  bool rounded = false;
  for (const Odd* one : near) {
    if (!holds(one->angles, angle)) {
      continue;
    }
    const Point start = point(from, angle, z);
    const Point end = point(to, angle, z);
    if (one->turned != nullptr ? proof::may_meet(*one->turned, start, end, own_)
        : one->flat != nullptr ? proof::may_meet(*one->flat, start, end, own_)
                               : false) {
      return true;
    }
    rounded = rounded || (one->turned == nullptr && one->flat == nullptr);
  }
  const proof::Medium other =
      own_ == proof::Medium::metal ? proof::Medium::air : proof::Medium::metal;
  const double middle = 0.5 * (from + to);
  if (which_ == Part::third && medium(middle, angle, z) == other) {
    return true;
  }
  // A rounded face may lie anywhere in its ring: points tell.
  constexpr std::array<double, 3> kDeep{0.02, 0.5, 0.98};
  return rounded && std::ranges::any_of(kDeep, [&](double share) {
           return medium(from + share * (to - from), angle, z) == other;
         });
}

void RingGap::add_sampled(std::vector<Arc>& found, const Arc& cell, double z,
                          const std::vector<const Odd*>& near) const {
  constexpr int kHalvings = 12;
  const int steps = std::max(3, static_cast<int>(std::ceil(cell.sweep / kAngleStep)));
  const double step = cell.sweep / steps;
  double begun = cell.from;
  bool was = differs(cell.from + 0.5 * step, z, near);
  for (int i = 1; i < steps; ++i) {
    const double here = cell.from + (i + 0.5) * step;
    const bool is = differs(here, z, near);
    if (is == was) {
      continue;
    }
    double low = here - step;
    double high = here;
    for (int n = 0; n < kHalvings; ++n) {
      const double middle = 0.5 * (low + high);
      (differs(middle, z, near) == was ? low : high) = middle;
    }
    if (was) {
      found.push_back({begun, high - begun});
    }
    begun = high;
    was = is;
  }
  if (was) {
    found.push_back({begun, cell.from + cell.sweep - begun});
  }
}

std::vector<Arc> RingGap::taken(double z, const std::vector<Arc>& angles) const {
  std::vector<Arc> found;
  for (const Coaxial& one : coaxial_) {
    const double radius = one.radius_at(z);
    if (z > one.from && z < one.to && radius > inner_ + same_ && radius < outer_ - same_) {
      found.insert(found.end(), one.arcs.begin(), one.arcs.end());
    }
  }
  std::vector<const Odd*> near;
  std::vector<Arc> where;
  for (const Odd& one : odd_) {
    if (z > one.from && z < one.to) {
      near.push_back(&one);
      where.push_back(one.angles);
    }
  }
  if (near.empty() && which_ != Part::third) {
    return found;
  }
  const std::vector<Arc> open = found.empty() ? angles : arcs_without(angles, found);
  // Away from odd faces an unbroken stretch of angles is all metal or all air.
  for (const Arc& cell : where.empty() ? open : arcs_without(open, where)) {
    if (which_ == Part::third && differs(cell.from + 0.5 * cell.sweep, z, {})) {
      found.push_back(cell);
    }
  }
  if (!where.empty()) {
    for (const Arc& cell : common_arcs(open, where)) {
      add_sampled(found, cell, z, near);
    }
  }
  return found;
}

}  // namespace spotblue
