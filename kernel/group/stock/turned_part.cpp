#include "group/stock/turned_part.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "group/sizes/size_range.hpp"
#include "spotblue/geometry/region.hpp"

namespace spotblue {
namespace {

constexpr double kSameAxis_mm = 1e-3;
constexpr double kSameDirection = 1e-6;  // rad
constexpr double kCrosses = 1e-6;        // cosine: a face along the axis does not cross it

// Whether the axis, endless, goes through the box.
bool passes_through(const Line& axis, const Box& box) {
  double from = -std::numeric_limits<double>::infinity();
  double to = std::numeric_limits<double>::infinity();
  const auto cut = [&](double at, double along, double low, double high) {
    if (std::abs(along) < kCrosses) {
      to = at < low || at > high ? from - 1.0 : to;
      return;
    }
    const double one = (low - at) / along;
    const double other = (high - at) / along;
    from = std::max(from, std::min(one, other));
    to = std::min(to, std::max(one, other));
  };
  cut(axis.at.x, axis.along.x(), box.low.x, box.high.x);
  cut(axis.at.y, axis.along.y(), box.low.y, box.high.y);
  cut(axis.at.z, axis.along.z(), box.low.z, box.high.z);
  return from <= to;
}

bool on_axis(const Line& axis, const Line& other) {
  return angle_between_lines(axis.along, other.along) < kSameDirection &&
         distance(axis, other.at) < kSameAxis_mm;
}

// All that a size may be, by itself and by every fit it is in.
Interval limits_of(const WorkedSizes& sizes, const FeatureRef& feature) {
  const Model& model = sizes.declared.look->model;
  const Product& product = model.products.at(model.occurrences.at(feature.occurrence).product);
  const Length modelled = Length::mm(product.cylinders.at(feature.index).diameter);
  const auto in_mm = [](const Limits& limits) {
    return Interval{limits.lower.in_mm(), limits.upper.in_mm()};
  };
  Interval all = in_mm(size_range(sizes.declared, feature, modelled, std::nullopt).limits);
  const auto take = [&](const FeatureRef& one, const SizeRange& range) {
    if (one.occurrence == feature.occurrence && one.kind == feature.kind &&
        one.index == feature.index) {
      const Interval more = in_mm(range.limits);
      all = {std::min(all.low, more.low), std::max(all.high, more.high)};
    }
  };
  const std::vector<RadialSeat>& seats = sizes.declared.look->seats.radial;
  for (std::size_t i = 0; i < seats.size(); ++i) {
    take(seats[i].hole, sizes.surfaces[i].sizes.found.hole);
    take(seats[i].shaft, sizes.surfaces[i].sizes.found.shaft);
  }
  return all;
}

std::optional<Line> main_axis(const Product& product) {
  const Cylinder* largest = nullptr;
  for (const Cylinder& cylinder : product.cylinders) {
    if (cylinder.side == Side::external && cylinder.coverage > std::numbers::pi &&
        (largest == nullptr || cylinder.diameter > largest->diameter)) {
      largest = &cylinder;
    }
  }
  return largest == nullptr ? std::nullopt : std::optional(largest->axis);
}

// The farthest point from the axis, and the ends along it, of everything that is added.
class Envelope {
 public:
  explicit Envelope(const Line& axis) : axis_(axis) {}

  void add(Point p, double around = 0.0) {
    radius_ = std::max(radius_, distance(axis_, p) + around);
    const double s = station(axis_, p);
    from_ = std::min(from_, s);
    to_ = std::max(to_, s);
  }
  // An arc is taken with its whole circle: the stock must hold what is round about it anyway.
  void add(const Plane& plane) {
    const Direction v = third(plane.normal, plane.u);
    for (const Edge2& edge : plane.outline.edges) {
      add(plane.at + edge.from.u * plane.u + edge.from.v * v);
      if (edge.sweep != 0.0 && angle_between_lines(plane.normal, axis_.along) < kSameDirection) {
        add(plane.at + edge.centre.u * plane.u + edge.centre.v * v, edge.radius);
      }
    }
  }
  [[nodiscard]] double diameter() const { return 2.0 * radius_; }
  [[nodiscard]] bool holds(const Box& box) const {
    constexpr double same = 1e-6;
    for (int corner = 0; corner < 8; ++corner) {
      const Point p{(corner & 1) != 0 ? box.high.x : box.low.x,
                    (corner & 2) != 0 ? box.high.y : box.low.y,
                    (corner & 4) != 0 ? box.high.z : box.low.z};
      const double s = station(axis_, p);
      if (distance(axis_, p) > radius_ + same || s < from_ - same || s > to_ + same) {
        return false;
      }
    }
    return true;
  }
  [[nodiscard]] double length() const { return std::max(0.0, to_ - from_); }

 private:
  Line axis_;
  double radius_ = 0.0;
  double from_ = std::numeric_limits<double>::infinity();
  double to_ = -std::numeric_limits<double>::infinity();
};

// What is least or greatest of a cylinder, worn or not.
double least_diameter(const Cylinder& cylinder) {
  double least = cylinder.diameter;
  for (const DiameterAt& size : cylinder.sizes) {
    least = std::min(least, size.least);
  }
  return least;
}

double greatest_diameter(const Cylinder& cylinder) {
  double greatest = cylinder.diameter;
  for (const DiameterAt& size : cylinder.sizes) {
    greatest = std::max(greatest, size.greatest);
  }
  return greatest;
}

// Metal on the axis: a face square to it that covers it, a tip that ends on it, or a face that no
// ring about the axis describes and whose box has the axis in it.
bool closed_on(const Product& product, const Line& axis) {
  constexpr double kTip_mm = 1e-3;
  const bool plane = std::ranges::any_of(product.planes, [&](const Plane& face) {
    const double square = dot(face.normal, axis.along);
    if (std::abs(square) < kCrosses) {
      return false;
    }
    const Point at =
        at_station(axis, station(axis, axis.at) + dot(face.at - axis.at, face.normal) / square);
    const Direction v = third(face.normal, face.u);
    return contains(face.outline, {dot(at - face.at, face.u), dot(at - face.at, v)});
  });
  const bool cone = std::ranges::any_of(product.cones, [&](const Cone& tip) {
    return on_axis(axis, tip.axis) && std::ranges::any_of(tip.intervals, [&](const auto& piece) {
             return tip.radius + piece.low * std::tan(tip.half_angle) < kTip_mm;
           });
  });
  const bool other = std::ranges::any_of(product.others, [&](const OtherFace& face) {
    return face.revolved && on_axis(axis, face.axis) ? face.inner < kTip_mm
                                                     : passes_through(axis, face.box);
  });
  return plane || cone || other;
}

// The least hole about the axis that is open right through, else 0.
double open_bore(const Product& product, const Line& axis, const auto& least) {
  double bore = 0.0;
  const auto take = [&](double diameter) {
    bore = bore == 0.0 ? diameter : std::min(bore, diameter);
  };
  for (std::size_t i = 0; i < product.cylinders.size(); ++i) {
    if (product.cylinders[i].side == Side::internal && on_axis(axis, product.cylinders[i].axis)) {
      take(least(i));
    }
  }
  for (const Cone& cone : product.cones) {
    for (const auto& [from, to] : cone.intervals) {
      if (cone.side == Side::internal && on_axis(axis, cone.axis)) {
        take(2.0 * (cone.radius + from * std::tan(cone.half_angle)));
      }
    }
  }
  return bore > 0.0 && !closed_on(product, axis) ? bore : 0.0;
}

}  // namespace

std::optional<TurnedPart> turned_part(const WorkedSizes& sizes, OccurrenceId part) {
  const Model& model = sizes.declared.look->model;
  const Product& product = model.products.at(model.occurrences.at(part).product);
  const auto axis = main_axis(product);
  if (!axis) {
    return std::nullopt;
  }
  Envelope envelope(*axis);
  TurnedPart turned;
  for (std::size_t i = 0; i < product.cylinders.size(); ++i) {
    const Cylinder& cylinder = product.cylinders[i];
    for (const auto& [from, to] : cylinder.intervals) {
      if (cylinder.side == Side::external && on_axis(*axis, cylinder.axis)) {
        const double radius =
            0.5 * std::max(greatest_diameter(cylinder),
                           limits_of(sizes, {part, FeatureKind::cylinder, i}).high);
        envelope.add(at_station(cylinder.axis, from), radius);
        envelope.add(at_station(cylinder.axis, to), radius);
      }
    }
  }
  for (const Cone& cone : product.cones) {
    for (const auto& [from, to] : cone.intervals) {
      if (cone.side == Side::external && on_axis(*axis, cone.axis)) {
        envelope.add(at_station(cone.axis, to), cone.radius + to * std::tan(cone.half_angle));
      }
    }
  }
  for (const Plane& plane : product.planes) {
    envelope.add(plane);
  }
  for (const OtherFace& face : product.others) {
    if (face.revolved && on_axis(*axis, face.axis)) {
      envelope.add(at_station(face.axis, face.from), face.outer);
      envelope.add(at_station(face.axis, face.to), face.outer);
    }
  }
  for (const OtherFace& face : product.others) {
    const bool ring = face.revolved && on_axis(*axis, face.axis);
    turned.measured_whole = turned.measured_whole && (ring || envelope.holds(face.box));
  }
  const double length = envelope.length();
  const auto least = [&](std::size_t i) {
    return std::min(least_diameter(product.cylinders[i]),
                    limits_of(sizes, {part, FeatureKind::cylinder, i}).low);
  };
  turned.size = {envelope.diameter(), open_bore(product, *axis, least), length};
  return turned;
}

}  // namespace spotblue
