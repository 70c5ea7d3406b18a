#include "geometry/candidates/plane_candidates.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <set>

#include "geometry/candidates/round_ends.hpp"
#include "geometry/model/coaxial.hpp"
#include "geometry/model/plane_map.hpp"
#include "geometry/model/tolerances.hpp"
#include "spotblue/base/stop.hpp"
#include "spotblue/geometry/region_overlay.hpp"
#include "spotblue/geometry/seat_limits.hpp"

namespace spotblue {
namespace {

// Outlines that share less only touch: a strip a micrometre wide on an edge of a few mm.
constexpr double kLeastArea = 1e-3;  // mm2

Plane placed(const Plane& plane, const Frame& frame) {
  Plane result;
  result.at = place_point(frame, plane.at);
  result.normal = place_direction(frame, plane.normal);
  return result;
}

bool extents_meet(const Region& a, const Region& b) {
  const Extent2 ea = extent(a);
  const Extent2 eb = extent(b);
  return ea.low.u < eb.high.u && eb.low.u < ea.high.u && ea.low.v < eb.high.v &&
         eb.low.v < ea.high.v;
}

Point2 middle_of(const Region& region) {
  const Extent2 e = extent(region);
  return {0.5 * (e.low.u + e.high.u), 0.5 * (e.low.v + e.high.v)};
}

// Distance of b's plane from a point of a's, along a's normal.
double gap_at(const Plane& a, const Plane& b, Point2 where) {
  return dot(b.at - on_plane(a, where), b.normal) / dot(a.normal, b.normal);
}

// Whether the part ends again behind its own face before `depth`: then the other part's face lies
// beyond it and the two faces do not look at each other through it.
bool thinner_than(const Product& product, std::size_t face, double depth, const Region& shared,
                  const Plane& target, const Frame& frame) {
  const Plane& own = product.planes[face];
  return std::any_of(product.planes.begin(), product.planes.end(), [&](const Plane& back) {
    const double behind = dot(own.at - back.at, own.normal);
    return behind > kNoLength && behind < depth - kNoLength &&
           norm(back.normal + own.normal) < kOneDirection &&
           std::abs(area(intersect(shared, outline_in(target, back, frame)))) > kLeastArea;
  });
}

// Of several common axes square to the faces, the one the contact lies round.
const CommonAxis* square_axis(const std::vector<CommonAxis>& axes, const Plane& plane,
                              const Region& shared, const SeatSettings& settings) {
  const Point middle = on_plane(plane, middle_of(shared));
  const CommonAxis* best = nullptr;
  for (const CommonAxis& axis : axes) {
    if (parallel_within(axis.axis.along, plane.normal,
                        most_tilt(settings.facing_tilt_deg, settings)) &&
        (best == nullptr ||
         distance(axis.axis, middle) < distance(best->axis, middle) - kOnePlace)) {
      best = &axis;
    }
  }
  return best;
}

// Whether what two faces share is a half moon about the axis: metal up to near its middle, which a
// half ring leaves free. Choice of this program, no source.
bool is_half_moon(const CommonAxis& axis, const Plane& plane, const Region& shared) {
  constexpr double kInward = 0.35;  // of the radius
  if (!axis.part_round) {
    return false;
  }
  const double s = station(axis.axis, plane.at);
  const Point2 middle = in_plane(plane, at_station(axis.axis, s));
  const Reach from_axis = reach(shared, middle);
  return contains(shared, middle) || from_axis.least < kInward * from_axis.greatest;
}

std::optional<PlaneCandidate> facing(const Product& first, std::size_t i, const Product& second,
                                     std::size_t j, const Frame& frame,
                                     const SeatSettings& settings) {
  const Plane& a = first.planes[i];
  const Plane b = placed(second.planes[j], frame);
  const double cosine = dot(a.normal, b.normal);
  if (cosine > -std::cos(most_tilt(settings.facing_tilt_deg, settings))) {
    return std::nullopt;
  }
  const bool parallel = norm(cross(a.normal, b.normal)) < kSameDirection;
  const double rough = dot(b.at - a.at, b.normal) / cosine;
  if (parallel && is_past_facing(rough, settings)) {
    return std::nullopt;
  }
  const Region other = outline_in(a, second.planes[j], frame);
  if (!extents_meet(a.outline, other)) {
    return std::nullopt;
  }
  PlaneCandidate c;
  c.shared = intersect(a.outline, other);
  if (c.shared.edges.empty() || area(c.shared) < kLeastArea) {
    return std::nullopt;
  }
  c.first = i;
  c.second = j;
  c.gap = gap_at(a, b, middle_of(c.shared));
  if (is_past_facing(c.gap, settings)) {
    return std::nullopt;
  }
  if (c.gap < -settings.same_length_mm && (thinner_than(first, i, -c.gap, c.shared, a, Frame{}) ||
                                           thinner_than(second, j, -c.gap, c.shared, a, frame))) {
    return std::nullopt;
  }
  return c;
}

// The candidate for these two faces, whichever of the products each belongs to.
std::vector<PlaneCandidate>::iterator find_pair(std::vector<PlaneCandidate>& planes,
                                                std::size_t of_first, std::size_t of_second) {
  return std::find_if(planes.begin(), planes.end(), [&](const PlaneCandidate& c) {
    return c.first == of_first && c.second == of_second && (!c.axis || c.half_round);
  });
}

}  // namespace

std::vector<PlaneCandidate> plane_candidates(const Product& first, const Product& second,
                                             const Frame& second_in_first,
                                             const std::vector<CommonAxis>& axes,
                                             const SeatSettings& settings) {
  std::vector<PlaneCandidate> found;
  std::vector<Direction> normals;
  for (const Plane& plane : second.planes) {
    normals.push_back(place_direction(second_in_first, plane.normal));
  }
  const double most = -std::cos(most_tilt(settings.facing_tilt_deg, settings));
  for (std::size_t i = 0; i < first.planes.size(); ++i) {
    stop_if_asked();
    for (std::size_t j = 0; j < second.planes.size(); ++j) {
      if (dot(first.planes[i].normal, normals[j]) > most) {
        continue;
      }
      if (auto c = facing(first, i, second, j, second_in_first, settings)) {
        if (const CommonAxis* axis = square_axis(axes, first.planes[i], c->shared, settings)) {
          c->axis = axis->axis;
          c->half_round = is_half_moon(*axis, first.planes[i], c->shared);
        }
        found.push_back(std::move(*c));
      }
    }
  }
  return found;
}

std::vector<WidthCandidate> take_widths(const Product& first, const Product& second,
                                        const Frame& second_in_first,
                                        std::vector<PlaneCandidate>& planes) {
  std::vector<WidthCandidate> found;
  std::set<std::pair<std::size_t, std::size_t>> used;
  const auto try_pair = [&](Which slot_of, std::size_t s, std::size_t k) {
    const bool slot_first = slot_of == Which::first;
    const Width& slot = (slot_first ? first : second).widths[s];
    const Width& key = (slot_first ? second : first).widths[k];
    if (slot.side != Side::internal || key.side != Side::external) {
      return;
    }
    const auto pair_of = [&](std::size_t slot_face, std::size_t key_face) {
      return slot_first ? find_pair(planes, slot_face, key_face)
                        : find_pair(planes, key_face, slot_face);
    };
    auto one = pair_of(slot.first, key.first);
    auto two = pair_of(slot.second, key.second);
    if (one == planes.end() || two == planes.end()) {
      one = pair_of(slot.first, key.second);
      two = pair_of(slot.second, key.first);
    }
    if (one == planes.end() || two == planes.end()) {
      return;
    }
    WidthCandidate w;
    w.slot_of = slot_of;
    w.slot = s;
    w.key = k;
    w.clearance = slot.width - key.width;
    w.offset = 0.5 * std::abs(one->gap - two->gap);
    const Direction n1 = first.planes[one->first].normal;
    const Direction n2 = place_direction(second_in_first, second.planes[one->second].normal);
    w.tilt = angle_between_lines(n1, n2);
    w.area = std::min(area(one->shared), area(two->shared));
    w.ends_apart = round_ends_apart(
        {slot_first ? first : second, slot, slot_first ? Frame{} : second_in_first},
        {slot_first ? second : first, key, slot_first ? second_in_first : Frame{}});
    w.one = *one;
    w.two = *two;
    found.push_back(w);
    used.emplace(one->first, one->second);
    used.emplace(two->first, two->second);
  };
  for (const Which slot_of : {Which::first, Which::second}) {
    const Product& slots = slot_of == Which::first ? first : second;
    const Product& keys = slot_of == Which::first ? second : first;
    for (std::size_t s = 0; s < slots.widths.size(); ++s) {
      for (std::size_t k = 0; k < keys.widths.size(); ++k) {
        try_pair(slot_of, s, k);
      }
    }
  }
  std::erase_if(planes, [&](const PlaneCandidate& c) {
    return used.contains({c.first, c.second});
  });
  return found;
}

}  // namespace spotblue
