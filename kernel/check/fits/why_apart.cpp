#include "check/fits/why_apart.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "check/words/words.hpp"
#include "group/words/said_fits.hpp"
#include "spotblue/base/angle.hpp"
#include "spotblue/base/interval.hpp"
#include "spotblue/geometry/seat_limits.hpp"

namespace spotblue {
namespace {

const Product& product_of(const Model& model, const FeatureRef& feature) {
  return model.products.at(model.occurrences.at(feature.occurrence).product);
}

const Frame& frame_of(const Model& model, const FeatureRef& feature) {
  return model.occurrences.at(feature.occurrence).frame;
}

Interval extent(const Cylinder& cylinder) {
  if (cylinder.intervals.empty()) {
    return {0.0, 0.0};
  }
  return {cylinder.intervals.front().low, cylinder.intervals.back().high};
}

struct Placed {
  Line axis;
  double from = 0.0, to = 0.0, diameter = 0.0;
};

Placed placed(const Model& model, const FeatureRef& feature) {
  const Cylinder& cylinder = product_of(model, feature).cylinders.at(feature.index);
  const auto [from, to] = extent(cylinder);
  return {place_line(frame_of(model, feature), cylinder.axis), from, to, cylinder.diameter};
}

// How far the two lie apart along the hole's axis; negative is the length they share.
double along_gap(const Placed& hole, const Placed& shaft) {
  const double a = station(hole.axis, at_station(shaft.axis, shaft.from));
  const double b = station(hole.axis, at_station(shaft.axis, shaft.to));
  return std::max(std::min(a, b) - hole.to, hole.from - std::max(a, b));
}

Line middle_of(const Model& model, const FeatureRef& feature) {
  const Product& product = product_of(model, feature);
  const Width& width = product.widths.at(feature.index);
  const Plane& first = product.planes.at(width.first);
  const Plane& second = product.planes.at(width.second);
  const Point on_middle = first.at + 0.5 * dot(second.at - first.at, first.normal) * first.normal;
  return place_line(frame_of(model, feature), {on_middle, first.normal});
}

Line face_of(const Model& model, const FeatureRef& feature) {
  const Plane& plane = product_of(model, feature).planes.at(feature.index);
  return place_line(frame_of(model, feature), {plane.at, plane.normal});
}

Apart sizes_apart(double clearance, double gap_most, double overlap_most,
                  const SeatSettings& settings) {
  if (is_past(0.5 * clearance, gap_most, settings)) {
    return {clearance,
            say(said::kTooMuchClearance, millimetres(clearance), millimetres(2.0 * gap_most))};
  }
  if (is_past(-0.5 * clearance, overlap_most, settings)) {
    return {-clearance,
            say(said::kTooMuchOverlap, millimetres(-clearance), millimetres(2.0 * overlap_most))};
  }
  return {0.0, said::kSomethingBetween};
}

}  // namespace

Apart cylinders_apart(const Model& model, const FeatureRef& hole_ref, const FeatureRef& shaft_ref,
                      const SeatSettings& settings) {
  const Placed hole = placed(model, hole_ref);
  const Placed shaft = placed(model, shaft_ref);
  const double diameter = std::max(hole.diameter, shaft.diameter);
  const double tilt = angle_between_lines(hole.axis.along, shaft.axis.along);
  const Point middle = at_station(shaft.axis, 0.5 * (shaft.from + shaft.to));
  const double offset = distance(hole.axis, middle);
  const double along = along_gap(hole, shaft);
  if (tilt > most_tilt(settings.coaxial_tilt_deg, settings)) {
    return {norm(middle - at_station(hole.axis, 0.5 * (hole.from + hole.to))),
            say(said::kAxesTilted, angle(tilt))};
  }
  if (is_past(offset, most_offset(settings, diameter), settings)) {
    return {offset, say(said::kAxesApart, millimetres(offset))};
  }
  if (along >= 0.0) {
    return {along, say(said::kNoSharedLength, millimetres(along))};
  }
  return sizes_apart(hole.diameter - shaft.diameter, most_radial_gap(settings, diameter),
                     most_overlap(settings, diameter), settings);
}

Apart widths_apart(const Model& model, const FeatureRef& slot, const FeatureRef& key,
                   const SeatSettings& settings) {
  const Line slot_middle = middle_of(model, slot);
  const Line key_middle = middle_of(model, key);
  const double tilt = angle_between_lines(slot_middle.along, key_middle.along);
  const double offset = std::abs(station(slot_middle, key_middle.at));
  if (tilt > most_tilt(settings.facing_tilt_deg, settings)) {
    return {norm(key_middle.at - slot_middle.at), say(said::kTilted, angle(tilt))};
  }
  if (is_past(offset, settings.coaxial_offset_mm, settings)) {
    return {offset, say(said::kMiddlesApart, millimetres(offset))};
  }
  const double clearance = product_of(model, slot).widths.at(slot.index).width -
                           product_of(model, key).widths.at(key.index).width;
  return sizes_apart(clearance, settings.radial_gap_mm, settings.radial_overlap_mm, settings);
}

Apart faces_apart(const Model& model, const FeatureRef& a, const FeatureRef& b,
                  const SeatSettings& settings) {
  const Line first = face_of(model, a);
  const Line second = face_of(model, b);
  const double tilt = angle_between_lines(first.along, second.along);
  const double gap = station(first, second.at);
  if (tilt > most_tilt(settings.facing_tilt_deg, settings) ||
      dot(first.along, second.along) > 0.0) {
    return {norm(second.at - first.at), said::kNotFacing};
  }
  if (is_past_facing(gap, settings)) {
    return {std::abs(gap), gap > 0.0 ? say(said::kAreApart, millimetres(gap))
                                     : say(said::kOverlapBy, millimetres(-gap))};
  }
  return {std::abs(gap), say(said::kApartNotOver, millimetres(gap))};
}

}  // namespace spotblue
