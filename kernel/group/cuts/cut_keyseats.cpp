#include "group/cuts/cut_keyseats.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace spotblue {
namespace {

constexpr int kArcPieces = 16;
constexpr int kHolePieces = 32;
// A hole nearer to the axis' direction than this is none across. Choice of this program, no source.
constexpr double kAcross_rad = 0.1;

const Product& product_of(const Model& model, OccurrenceId occurrence) {
  return model.products.at(model.occurrences.at(occurrence).product);
}

void take_outline(const Line& axis, const Plane& plane, Stretch& stretch) {
  const Direction v = third(plane.normal, plane.u);
  const auto take = [&](Point2 p) {
    stretch.take(station(axis, plane.at + p.u * plane.u + p.v * v));
  };
  for (const Edge2& edge : plane.outline.edges) {
    take(edge.from);
    take(edge.to);
    const double start = std::atan2(edge.from.v - edge.centre.v, edge.from.u - edge.centre.u);
    for (int i = 1; edge.sweep != 0.0 && i < kArcPieces; ++i) {
      const double angle = start + edge.sweep * i / kArcPieces;
      take({edge.centre.u + edge.radius * std::cos(angle),
            edge.centre.v + edge.radius * std::sin(angle)});
    }
  }
}

// Whether it is the round end of a milled keyseat of that width.
bool rounds_off(const Line& axis, const Product& product, const Width& width,
                const Cylinder& cylinder) {
  const Plane& side = product.planes.at(width.first);
  const double middle = -0.5 * width.width;  // from the side, against its outward normal's sign
  const double from_side = std::abs(dot(cylinder.axis.at - side.at, side.normal));
  return width.side == Side::internal && cylinder.side == Side::internal &&
         std::abs(cylinder.diameter - width.width) < 0.01 * width.width &&
         square_to(cylinder.axis.along, axis.along) &&
         square_to(cylinder.axis.along, side.normal) && std::abs(from_side + middle) < kOnAxis_mm;
}

bool is_round_end(const Line& axis, const Product& product, const Cylinder& cylinder) {
  return std::ranges::any_of(product.widths, [&](const Width& width) {
    return rounds_off(axis, product, width, cylinder);
  });
}

// The sides of a milled keyseat end where its round ends begin.
void take_round_ends(const Line& axis, const Product& product, const Width& width,
                     Stretch& stretch) {
  for (const Cylinder& cylinder : product.cylinders) {
    if (rounds_off(axis, product, width, cylinder)) {
      const double s = station(axis, cylinder.axis.at);
      stretch.take(s - 0.5 * cylinder.diameter);
      stretch.take(s + 0.5 * cylinder.diameter);
    }
  }
}

std::optional<Stretch> keyseat_on(const Line& axis, const Product& product, const Width& width) {
  const Plane& first = product.planes.at(width.first);
  const Plane& second = product.planes.at(width.second);
  const double near = dot(first.at - axis.at, first.normal);
  const double far = dot(second.at - axis.at, first.normal);
  const bool astride = std::abs(near + far) < width.width;
  if (width.side != Side::internal || !square_to(first.normal, axis.along) || !astride) {
    return std::nullopt;
  }
  Stretch stretch;
  take_outline(axis, first, stretch);
  take_outline(axis, second, stretch);
  take_round_ends(axis, product, width, stretch);
  return stretch.from <= stretch.to ? std::optional(stretch) : std::nullopt;
}

// Whether the outline comes nearer to the axis than the surface of the cut.
bool is_flat_on(const Line& axis, const Plane& plane, double radius, const Stretch& stretch) {
  Stretch reach;
  take_outline(axis, plane, reach);
  const double off = dot(plane.at - axis.at, plane.normal);
  return square_to(plane.normal, axis.along) && off > 0.0 && off < radius - kOnAxis_mm &&
         reach.from <= reach.to && stretch.gap_to(reach) < -kOnAxis_mm;
}

// Whether a hole goes from the surface of the cut into the shaft.
bool is_hole_across(const Line& axis, const Cylinder& hole, double radius, const Stretch& stretch) {
  if (hole.side != Side::internal ||
      angle_between_lines(axis.along, hole.axis.along) < kAcross_rad) {
    return false;
  }
  for (const Interval& piece : hole.intervals) {
    for (int i = 0; i <= kHolePieces; ++i) {
      const double s = piece.low + (piece.high - piece.low) * i / kHolePieces;
      const Point at = at_station(hole.axis, s);
      const double along = station(axis, at);
      if (distance(axis, at) <= radius + kOnAxis_mm && along + 0.5 * hole.diameter > stretch.from &&
          along - 0.5 * hole.diameter < stretch.to) {
        return true;
      }
    }
  }
  return false;
}

}  // namespace

std::vector<NearKeyseat> keyseats_near(const DeclaredJob& declared, const FeatureRef& cut,
                                       const Stretch& stretch) {
  const Product& product = product_of(declared.look->model, cut.occurrence);
  const Line& axis = product.cylinders.at(cut.index).axis;
  std::vector<NearKeyseat> keyseats;
  for (std::size_t i = 0; i < product.widths.size(); ++i) {
    if (const auto keyseat = keyseat_on(axis, product, product.widths[i])) {
      keyseats.push_back({declared.names.reference({cut.occurrence, FeatureKind::width, i}),
                          product.widths[i].width, stretch.gap_to(*keyseat)});
    }
  }
  std::sort(keyseats.begin(), keyseats.end(),
            [](const auto& a, const auto& b) { return a.distance_mm < b.distance_mm; });
  return keyseats;
}

std::vector<Reference> broken_by(const DeclaredJob& declared, const FeatureRef& cut,
                                 const Stretch& stretch) {
  const Product& product = product_of(declared.look->model, cut.occurrence);
  const Cylinder& cylinder = product.cylinders.at(cut.index);
  const double radius = 0.5 * cylinder.diameter;
  std::vector<Reference> found;
  for (std::size_t i = 0; i < product.cylinders.size(); ++i) {
    if (is_hole_across(cylinder.axis, product.cylinders[i], radius, stretch) &&
        !is_round_end(cylinder.axis, product, product.cylinders[i])) {
      found.push_back(declared.names.reference({cut.occurrence, FeatureKind::cylinder, i}));
    }
  }
  const auto keyseats = keyseats_near(declared, cut, stretch);
  if (!keyseats.empty() && keyseats.front().distance_mm < 0.0) {
    return found;
  }
  for (std::size_t i = 0; i < product.planes.size(); ++i) {
    if (is_flat_on(cylinder.axis, product.planes[i], radius, stretch)) {
      found.push_back(declared.names.reference({cut.occurrence, FeatureKind::plane, i}));
    }
  }
  return found;
}

}  // namespace spotblue
