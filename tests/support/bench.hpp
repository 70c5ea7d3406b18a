#pragma once
// Models made of plain values, for tests that need no Open CASCADE: parts with named features, and
// the seats that a test says lie between them.

#include <algorithm>
#include <cstddef>
#include <limits>
#include <numbers>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "spotblue/check/check.hpp"
#include "spotblue/check/judge_job.hpp"
#include "support/findings.hpp"

namespace spotblue::test {

class Bench {
 public:
  Job job;
  Look look;

  /// A product and its only occurrence.
  OccurrenceId part(const std::string& name) {
    look.model.products.push_back({});
    look.model.products.back().id = name;
    look.model.products.back().name = name;
    return occur(look.model.products.size() - 1, "Group/" + name);
  }

  OccurrenceId occur(std::size_t product, const std::string& path) {
    Occurrence occurrence;
    occurrence.id = path;
    occurrence.path = path;
    occurrence.product = ProductId(product);
    look.model.occurrences.push_back(occurrence);
    return OccurrenceId(look.model.occurrences.size() - 1);
  }

  FeatureRef cylinder(OccurrenceId part, const std::string& name, Side side, double diameter) {
    Cylinder feature;
    feature.name = feature.sized_name = name;
    feature.side = side;
    feature.axis = {{0, 0, 0}, {0, 0, 1}};
    feature.diameter = diameter;
    feature.intervals = {{0.0, 20.0}};
    return add(part, FeatureKind::cylinder, product(part).cylinders, feature);
  }
  FeatureRef bore(OccurrenceId part, const std::string& name, double diameter) {
    return cylinder(part, name, Side::internal, diameter);
  }
  FeatureRef outside(OccurrenceId part, const std::string& name, double diameter) {
    return cylinder(part, name, Side::external, diameter);
  }
  FeatureRef face(OccurrenceId part, const std::string& name, double z, double normal) {
    Plane plane;
    plane.name = plane.sized_name = name;
    plane.at = {0, 0, z};
    plane.normal = {0, 0, normal};
    plane.u = {1, 0, 0};
    return add(part, FeatureKind::plane, product(part).planes, plane);
  }
  FeatureRef width(OccurrenceId part, const std::string& name, Side side, double size) {
    const double out = side == Side::external ? 1.0 : -1.0;
    const FeatureRef first = face(part, name + " low", -0.5 * size, -out);
    const FeatureRef second = face(part, name + " high", 0.5 * size, out);
    return add(part, FeatureKind::width, product(part).widths,
               Width{name, side, first.index, second.index, size, name});
  }
  FeatureRef cone(OccurrenceId part, const std::string& name, Side side, double half_angle) {
    Cone feature;
    feature.name = feature.sized_name = name;
    feature.side = side;
    feature.half_angle = half_angle;
    return add(part, FeatureKind::cone, product(part).cones, feature);
  }

  /// A radial seat of the two, `off_axis` mm out of line.
  void seat(const FeatureRef& hole, const FeatureRef& shaft, double off_axis = 0.0) {
    RadialSeat seat;
    seat.hole = hole;
    seat.shaft = shaft;
    seat.hole_diameter = product(hole.occurrence).cylinders[hole.index].diameter;
    seat.shaft_diameter = product(shaft.occurrence).cylinders[shaft.index].diameter;
    seat.clearance = seat.hole_diameter - seat.shaft_diameter;
    seat.offset = off_axis;
    seat.least_gap = 0.5 * seat.clearance - off_axis;
    seat.engaged = 20.0;
    seat.coverage = 2.0 * std::numbers::pi;
    look.seats.radial.push_back(seat);
  }
  void key(const FeatureRef& slot, const FeatureRef& key, double offset = 0.0) {
    WidthSeat seat;
    seat.slot = slot;
    seat.key = key;
    seat.slot_width = product(slot.occurrence).widths[slot.index].width;
    seat.key_width = product(key.occurrence).widths[key.index].width;
    seat.clearance = seat.slot_width - seat.key_width;
    seat.offset = offset;
    look.seats.width.push_back(seat);
  }
  void gap(const FeatureRef& a, const FeatureRef& b, double gap) {
    AxialSeat seat;
    seat.a = a;
    seat.b = b;
    seat.gap = gap;
    seat.area = 100.0;
    look.seats.axial.push_back(seat);
  }
  void foul(OccurrenceId a, OccurrenceId b, double depth, const std::string& cause) {
    Foul foul;
    foul.a = std::min(a, b);
    foul.b = std::max(a, b);
    foul.depth = depth;
    foul.volume = 12.5;
    foul.cause = cause;
    look.fouls.found.push_back(foul);
  }

  JobPart& declare(const std::string& part, PartState state, Drawn sizes) {
    JobPart declared;
    declared.part = part;
    declared.state = state;
    declared.drawn = sizes;
    job.parts.push_back(declared);
    return job.parts.back();
  }
  void measure(const std::string& feature, double value, double uncertainty) {
    job.measured.push_back({feature, Length::mm(value), Length::mm(uncertainty), 0});
  }
  void want(const std::string& hole, const std::string& shaft, FitRule rule,
            std::optional<int> line = {}) {
    job.fits.push_back({hole, shaft, std::move(rule), line});
  }

  [[nodiscard]] std::vector<Finding> findings() const { return judge_job(job, look); }
  [[nodiscard]] Finding only() const { return findings().at(0); }

  Product& product(OccurrenceId part) {
    return look.model.products[look.model.occurrences[part].product];
  }

 private:
  template <typename Feature>
  static FeatureRef add(OccurrenceId part, FeatureKind kind, std::vector<Feature>& list,
                        const Feature& feature) {
    list.push_back(feature);
    return {part, kind, list.size() - 1};
  }
};

inline FitRule iso(const std::string& text) { return ClassFit{FitSystem::iso_286, text, {}}; }

/// Every finding of one kind, in order.
inline std::vector<Finding> of_kind(const Bench& bench, const std::string& kind) {
  std::vector<Finding> found;
  for (const Finding& finding : bench.findings()) {
    if (finding.kind == kind) {
      found.push_back(finding);
    }
  }
  return found;
}

/// A wheel with a 44 bore on a bush with a 44 outside, seated: the pair most tests judge.
inline Bench wheel_on_bush(double bore = 44.0, double outside = 44.0, double off_axis = 0.0) {
  Bench bench;
  const FeatureRef hole = bench.bore(bench.part("Wheel"), "bore 44", bore);
  const FeatureRef shaft = bench.outside(bench.part("Bush"), "outside 44", outside);
  bench.seat(hole, shaft, off_axis);
  return bench;
}

}  // namespace spotblue::test
