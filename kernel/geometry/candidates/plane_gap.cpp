#include "geometry/candidates/plane_gap.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

#include "geometry/faces/air_probe.hpp"
#include "geometry/model/coaxial.hpp"
#include "geometry/model/plane_map.hpp"
#include "geometry/model/tolerances.hpp"
#include "spotblue/geometry/region_inner.hpp"
#include "spotblue/geometry/region_overlay.hpp"
#include "spotblue/geometry/seat_limits.hpp"

namespace spotblue {
namespace {

constexpr int kGapCells = 24;
constexpr std::size_t kGapPoints = 12;

Region rectangle(Point2 low, Point2 high) {
  const std::array<Point2, 4> corners{low, Point2{high.u, low.v}, high, Point2{low.u, high.v}};
  Region region;
  for (std::size_t i = 0; i < corners.size(); ++i) {
    region.edges.push_back({corners.at(i), corners.at((i + 1) % corners.size()), 0.0, {}, 0.0});
  }
  return region;
}

class PlaneGap {
 public:
  PlaneGap(const Plane& first, double gap, const NearPart& part, const SeatSettings& settings)
      : first_(first),
        gap_(gap),
        part_(part),
        same_(settings.same_length_mm),
        tilt_(most_tilt(settings.facing_tilt_deg, settings)),
        beyond_(std::min(gap, -settings.axial_gap_least_mm)),
        v_(cross(first.normal, first.u)),
        to_part_(inverse(part.frame)) {}

  [[nodiscard]] Region without(Region open, Whose whose) {
    whose_ = whose;
    if (is_empty(open) || !comes_between(part_.faces->box, open)) {
      return open;
    }
    find_near(open);
    if (flats_.empty() && turned_.empty() && others_.empty()) {
      const bool filled = whose_ == Whose::other && is_mostly_metal(open);
      return filled ? Region{} : open;
    }
    take_level_faces(open);
    take_turned_faces(open);
    if (!is_empty(open) && is_taken_somewhere(open)) {
      take_cells(open);
    }
    return open;
  }

 private:
  void find_near(const Region& open) {
    const auto take = [&](const auto& faces, auto& near) {
      for (const auto& face : faces) {
        if (comes_between(face.box, open) && comes_between(face, open)) {
          near.push_back(&face);
        }
      }
    };
    take(part_.faces->flats, flats_);
    take(part_.faces->patches, turned_);
    for (const OtherFace& face : part_.faces->others) {
      if (comes_between(face.box, open)) {
        others_.push_back(&face);
      }
    }
  }

  // Extent of a face or box along a direction, from a point of the first face.
  [[nodiscard]] Interval along(const auto& face, Direction d) const {
    const Direction own = place_direction(to_part_, d);
    const Interval span = proof::extent(face, own);
    const double base = dot(place_point(to_part_, first_.at), own);
    return {span.low - base, span.high - base};
  }

  [[nodiscard]] bool comes_between(const auto& face, const Region& open) const {
    const Interval height = along(face, first_.normal);
    if (height.high <= same_ || height.low >= gap_ - same_) {
      return false;
    }
    const Extent2 e = extent(open);
    const Interval u = along(face, first_.u);
    const Interval v = along(face, v_);
    return u.high > e.low.u && u.low < e.high.u && v.high > e.low.v && v.low < e.high.v;
  }

  // Of the plane above the middle of a region.
  [[nodiscard]] double height_at(const Plane& plane, const Region& where) const {
    const Extent2 e = extent(where);
    const Point from = on_plane(first_, {0.5 * (e.low.u + e.high.u), 0.5 * (e.low.v + e.high.v)});
    const Direction normal = place_direction(part_.frame, plane.normal);
    return dot(place_point(part_.frame, plane.at) - from, normal) / dot(first_.normal, normal);
  }

  [[nodiscard]] bool is_metal(Point2 p, double share) const {
    const Point at = on_plane(first_, p) + share * gap_ * first_.normal;
    return proof::medium_at(*part_.faces, place_point(to_part_, at)) == proof::Medium::metal;
  }

  void take_level_faces(Region& open) const {
    for (const Plane& plane : part_.product->planes) {
      const double cosine = dot(place_direction(part_.frame, plane.normal), first_.normal);
      if (std::abs(cosine) < std::cos(tilt_) || plane.outline.edges.empty() || is_empty(open)) {
        continue;
      }
      const double rough = dot(place_point(part_.frame, plane.at) - first_.at, first_.normal);
      const double slack = std::sqrt(std::max(0.0, 1.0 - cosine * cosine)) *
                           (diagonal(part_.faces->box) + norm(first_.at));
      if (rough < -beyond_ - slack || rough > gap_ + beyond_ + slack) {
        continue;
      }
      const Region outline = outline_in(first_, plane, part_.frame);
      const Region over = intersect(open, outline);
      if (is_empty(over)) {
        continue;
      }
      const double height = height_at(plane, over);
      const bool inside = height > same_ && height < gap_ - same_;
      // A face towards the first part has its metal beyond it, one towards the second before it.
      const bool may_fill = cosine < 0.0 ? height > -beyond_ && height <= same_
                                         : height < gap_ + beyond_ && height >= gap_ - same_;
      if (inside || (may_fill && is_mostly_metal(over))) {
        open = subtract(open, outline);
      }
    }
  }

  [[nodiscard]] bool is_mostly_metal(const Region& over) const {
    const std::vector<Point2> points = inner_points(over, 5);
    const auto metal = std::ranges::count_if(points, [&](Point2 p) { return is_metal(p, 0.5); });
    return 2 * metal > static_cast<std::ptrdiff_t>(points.size());
  }

  void take_ring(Region& open, Point centre, double inner, double outer) const {
    const Point2 at = in_plane(first_, centre);
    Region ring = disc(at, outer);
    if (inner > same_) {
      ring = subtract(ring, disc(at, inner));
    }
    open = subtract(open, ring);
  }

  // Cones and roundings about a line square to the faces.
  void take_turned_faces(Region& open) const {
    const auto square = [&](const Line& axis) {
      return norm(cross(place_direction(part_.frame, axis.along), first_.normal)) < kOneDirection;
    };
    for (const proof::Turned* one : turned_) {
      const proof::Turned& t = *one;
      if (t.radius_from == t.radius_to || !t.arcs.empty() || !square(t.axis)) {
        continue;
      }
      const Line axis = place_line(part_.frame, t.axis);
      const auto radius_at = [&](double height) {
        const double s =
            (height - dot(axis.at - first_.at, first_.normal)) / dot(axis.along, first_.normal);
        const double share = std::clamp((s - t.from) / (t.to - t.from), 0.0, 1.0);
        return t.radius_from + share * (t.radius_to - t.radius_from);
      };
      const auto [inner, outer] = std::minmax({radius_at(same_), radius_at(gap_ - same_)});
      take_ring(open, axis.at, inner, outer);
    }
    for (const OtherFace* one : others_) {
      const OtherFace& face = *one;
      if (!face.revolved || !square(face.axis)) {
        continue;
      }
      const Line axis = place_line(part_.frame, face.axis);
      const double sense = dot(axis.along, first_.normal);
      const double start = dot(axis.at - first_.at, first_.normal);
      for (const RingPiece& piece : face.pieces) {
        const auto [low, high] =
            std::minmax({start + sense * piece.from, start + sense * piece.to});
        if (high > same_ && low < gap_ - same_) {
          take_ring(open, axis.at, piece.inner, piece.outer);
        }
      }
    }
  }

  [[nodiscard]] bool is_taken(Point2 p) const {
    const Point low = place_point(to_part_, on_plane(first_, p) + same_ * first_.normal);
    const Point high = place_point(to_part_, on_plane(first_, p) + (gap_ - same_) * first_.normal);
    const auto crossed = [&](const auto& faces) {
      return std::ranges::any_of(faces, [&](const auto* face) {
        return whose_ == Whose::other   ? may_meet(*face, low, high, proof::Medium::unknown)
               : whose_ == Whose::first ? may_meet(*face, low, high, proof::Medium::air)
                                        : may_meet(*face, high, low, proof::Medium::air);
      });
    };
    if (crossed(flats_) || crossed(turned_)) {
      return true;
    }
    const bool rounded = !others_.empty();
    return ((rounded || whose_ == Whose::other) && is_metal(p, 0.5)) ||
           (rounded && (is_metal(p, 0.02) || is_metal(p, 0.98)));
  }

  [[nodiscard]] bool is_taken_somewhere(const Region& open) const {
    const std::vector<Point2> points = inner_points(open, kGapPoints);
    return std::ranges::any_of(points, [&](Point2 p) { return is_taken(p); });
  }

  void take_cells(Region& open) const {
    const Extent2 e = extent(open);
    const double du = (e.high.u - e.low.u) / kGapCells;
    const double dv = (e.high.v - e.low.v) / kGapCells;
    for (int j = 0; j < kGapCells; ++j) {
      const double v = e.low.v + j * dv;
      int begun = -1;
      for (int i = 0; i <= kGapCells; ++i) {
        const bool taken = i < kGapCells && is_taken({e.low.u + (i + 0.5) * du, v + 0.5 * dv});
        if (taken && begun < 0) {
          begun = i;
        } else if (!taken && begun >= 0) {
          open = subtract(open, rectangle({e.low.u + begun * du, v}, {e.low.u + i * du, v + dv}));
          begun = -1;
        }
      }
    }
  }

  const Plane& first_;
  double gap_;
  const NearPart& part_;
  double same_, tilt_, beyond_;
  Direction v_;
  Frame to_part_;
  Whose whose_ = Whose::other;
  std::vector<const proof::Flat*> flats_;  // what comes into the gap
  std::vector<const proof::Turned*> turned_;
  std::vector<const OtherFace*> others_;
};

}  // namespace

Region without_part(Region open, const Plane& first, double gap, const NearPart& part, Whose whose,
                    const SeatSettings& settings) {
  return PlaneGap(first, gap, part, settings).without(std::move(open), whose);
}

bool is_metal_between(const PlaneCandidate& candidate, const Plane& first, const NearPart& part) {
  const Frame to_part = inverse(part.frame);
  const std::vector<Point2> points = inner_points(candidate.shared, 5);
  constexpr std::array<double, 3> kDeep{0.1, 0.5, 0.9};
  // What no ray can tell, as under a domed face, is no metal; nor is it air.
  int metal = 0;
  int air = 0;
  for (const Point2 p : points) {
    int solid = 0;
    int open = 0;
    for (const double share : kDeep) {
      const Point at = on_plane(first, p) + share * candidate.gap * first.normal;
      const proof::Medium medium = proof::medium_at(*part.faces, place_point(to_part, at));
      solid += medium == proof::Medium::metal ? 1 : 0;
      open += medium == proof::Medium::air ? 1 : 0;
    }
    metal += open == 0 && solid > 0 ? 1 : 0;
    air += open > 0 ? 1 : 0;
  }
  return metal > air;
}

}  // namespace spotblue
