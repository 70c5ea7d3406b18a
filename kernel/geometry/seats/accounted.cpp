#include "geometry/seats/accounted.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "geometry/faces/worn.hpp"
#include "geometry/model/coaxial.hpp"
#include "spotblue/geometry/seat_limits.hpp"
#include "spotblue/standards/threads.hpp"

namespace spotblue::proof {
namespace {

/// A lead-in of 6 degrees or more, or rounded by 10 mm or less, carries an interference so far past
/// the cylinders' shared length. Choices of this program, no source.
double run_out_of(double overlap) {
  constexpr double kLeast_mm = 1e-3;
  return kLeast_mm + std::max(10.0 * overlap, std::sqrt(2.0 * 10.0 * overlap));
}
/// Cosine of the greatest angle at which a key's side still faces a keyseat's wall.
constexpr double kFacing = 0.999;

struct Scene {
  const Model& model;
  const Seats& seats;
  const SeatSettings& settings;
  const Frame& to_a;

  [[nodiscard]] const Product& product(const FeatureRef& f) const {
    return model.products[model.occurrences[f.occurrence].product];
  }
  [[nodiscard]] Line placed(const FeatureRef& f, const Line& line) const {
    return place_line(to_a, place_line(model.occurrences[f.occurrence].frame, line));
  }
  [[nodiscard]] Frame frame(const FeatureRef& f) const {
    return compose(to_a, model.occurrences[f.occurrence].frame);
  }
  [[nodiscard]] double most(double diameter) const { return most_overlap(settings, diameter); }
};

/// A cylinder in a smaller hole: from the hole's surface out to the farthest of the shaft's, but no
/// deeper than `deepest`, past which it is a foul on whichever side it comes.
Ring ring_of(const Scene& scene, const FeatureRef& hole, const FeatureRef& shaft, double from,
             double to, const Line& axis, double run_out, double deepest) {
  const Cylinder& bore = scene.product(hole).cylinders[hole.index];
  const Cylinder& journal = scene.product(shaft).cylinders[shaft.index];
  Ring ring{.axis = place_line(scene.to_a, axis), .from = from - run_out, .to = to + run_out};
  const Line other = scene.placed(shaft, journal.axis);
  const double tilt = angle_between_lines(ring.axis.along, other.along);
  const double loose = 2.0 * journal.diameter * tilt * tilt;
  const Line own = scene.placed(hole, bore.axis);
  // Out of form the hole's surface is anywhere between; a taper's is on a line.
  const bool odd = is_out_of_form(bore) || is_out_of_form(journal);
  const auto inner = [&](double s) {
    const Interval here =
        odd ? diameters_over(bore, bore.intervals.front().low, bore.intervals.back().high)
            : diameters_at(bore, station(own, at_station(ring.axis, s)));
    return 0.5 * here.low;
  };
  const auto reach = [&](double s) {
    const Point p = at_station(ring.axis, s);
    const Interval here =
        odd ? diameters_over(journal, journal.intervals.front().low, journal.intervals.back().high)
            : diameters_at(journal, station(other, p));
    return std::max(inner(s),
                    std::min(inner(s) + deepest, 0.5 * here.high + loose + distance(other, p)));
  };
  ring.inner_from = inner(ring.from);
  ring.inner_to = inner(ring.to);
  ring.outer_from = reach(ring.from);
  ring.outer_to = reach(ring.to);
  return ring;
}

double cone_radius(const Cone& cone, double at) {
  return std::max(0.0, cone.radius + at * std::tan(cone.half_angle));
}

/// A cone in a cone: from the hole's surface out to the farthest of the shaft's, where they share a
/// stretch, no deeper than a seat may.
void add_taper(Accounted& accounted, const Scene& scene, const TaperSeat& seat, Told told) {
  const Cone& hole = scene.product(seat.hole).cones[seat.hole.index];
  const Cone& shaft = scene.product(seat.shaft).cones[seat.shaft.index];
  Ring ring{.axis = scene.placed(seat.hole, hole.axis)};
  accounted.axes.push_back(ring.axis);
  const AxisTransfer transfer(hole, scene.frame(seat.hole), shaft, scene.frame(seat.shaft));
  const Stretches shared = common_stretches(hole.intervals, transfer.stretches(shaft.intervals));
  if (shared.empty() || seat.least_gap >= 0.0) {
    return;
  }
  // Cones that only touch have no overlap that is meant: off their axis all of it is told.
  if (told == Told::apart && seat.fouls_by > 0.0 && !is_pressed(seat, scene.settings)) {
    return;
  }
  const double slope = std::tan(hole.half_angle);
  const double deepest = told == Told::too ? std::numeric_limits<double>::infinity()
                                           : scene.most(seat.diameter) / std::cos(hole.half_angle);
  const double run_out = run_out_of(std::min(-seat.least_gap, scene.most(seat.diameter)));
  ring.from = shared.front().low - run_out;
  ring.to = shared.back().high + run_out;
  const Line other = scene.placed(seat.shaft, shaft.axis);
  const double loose = 2.0 * seat.diameter * seat.tilt * (seat.tilt + slope);
  const auto reach = [&](double s) {
    const Point p = at_station(ring.axis, s);
    const double inner = hole.radius + s * slope;
    const double outer = cone_radius(shaft, station(other, p)) + distance(other, p) + loose;
    return std::clamp(outer, inner, inner + deepest);
  };
  ring.inner_from = cone_radius(hole, ring.from);
  ring.inner_to = cone_radius(hole, ring.to);
  ring.outer_from = std::max(reach(ring.from), ring.inner_from);
  ring.outer_to = std::max(reach(ring.to), ring.inner_to);
  accounted.rings.push_back(ring);
}

/// Where a key is wider than its keyseat: what lies between each wall and the side that faces it.
void add_width(Accounted& accounted, const Scene& scene, const WidthSeat& seat) {
  if (seat.clearance >= 0.0 || -0.5 * seat.clearance > scene.most(seat.slot_width)) {
    return;
  }
  const Product& slot = scene.product(seat.slot);
  const Product& key = scene.product(seat.key);
  const Width& between = slot.widths[seat.slot.index];
  const Width& across = key.widths[seat.key.index];
  for (const std::size_t side : {across.first, across.second}) {
    const Plane& face = key.planes[side];
    const Line out = scene.placed(seat.key, {face.at, face.normal});
    for (const std::size_t wall : {between.first, between.second}) {
      const Plane& plane = slot.planes[wall];
      const Line in = scene.placed(seat.slot, {plane.at, plane.normal});
      const double depth = -station(out, in.at);
      if (dot(out.along, in.along) < -kFacing && depth > 0.0 && depth < 0.5 * seat.slot_width) {
        const double high = std::min(0.0, scene.most(seat.slot_width) - depth);
        accounted.bands.push_back({out.at, out.along, -depth, high});
      }
    }
  }
}

}  // namespace

bool is_pressed(const TaperSeat& seat, const SeatSettings& settings) {
  return seat.gap < -settings.same_length_mm;
}

bool overlaps(const AxialSeat& seat, const SeatSettings& settings) {
  return seat.gap < -settings.same_length_mm;
}

Accounted account_for(const Model& model, const Seats& seats, const PairSeats& pair,
                      const SeatSettings& settings, const Frame& to_a, Told told) {
  const Scene scene{model, seats, settings, to_a};
  Accounted accounted;
  for (const std::size_t i : pair.radial) {
    const RadialSeat& seat = seats.radial[i];
    accounted.axes.push_back(place_line(to_a, seat.axis));
    const double tightest = seat.worn ? seat.worn->least : seat.clearance;
    const bool pressed = tightest < 0.0;
    const bool told_by_itself = seat.fouls_by > 0.0 && told == Told::too;
    if (pressed || told_by_itself) {
      const double overlap = std::max(0.0, -0.5 * tightest);
      const double deepest =
          told_by_itself ? std::numeric_limits<double>::infinity() : scene.most(seat.hole_diameter);
      accounted.rings.push_back(ring_of(scene, seat.hole, seat.shaft, seat.from, seat.to, seat.axis,
                                        run_out_of(overlap), deepest));
    }
  }
  for (const std::size_t i : pair.threads) {
    const Thread& thread = seats.threads[i];
    accounted.axes.push_back(place_line(to_a, thread.axis));
    const double depth = 0.5 * (thread.screw_diameter - thread.hole_diameter);
    // One pitch of run-out, and the flanks' play sideways.
    const auto size = find_thread(thread.size);
    const double pitch = size ? size->pitch.in_mm() : 2.0 * depth;
    accounted.rings.push_back(ring_of(scene, thread.hole, thread.screw, thread.from, thread.to,
                                      thread.axis, pitch,
                                      depth + scene.most(thread.screw_diameter)));
  }
  for (const std::size_t i : pair.taper) {
    add_taper(accounted, scene, seats.taper[i], told);
  }
  for (const std::size_t i : pair.width) {
    add_width(accounted, scene, seats.width[i]);
  }
  for (const std::size_t i : pair.axial) {
    const AxialSeat& seat = seats.axial[i];
    if (told == Told::too && overlaps(seat, settings)) {
      const Line axis = place_line(to_a, seat.axis);
      accounted.bands.push_back({axis.at, axis.along, seat.gap, 0.0});
    }
  }
  return accounted;
}

namespace {

bool holds(const Ring& ring, Point p, double grown) {
  const double z = station(ring.axis, p);
  const double length = ring.to - ring.from;
  const double share = length > 0.0 ? std::clamp((z - ring.from) / length, 0.0, 1.0) : 0.0;
  const double r = distance(ring.axis, p);
  return z >= ring.from - grown && z <= ring.to + grown &&
         r >= std::lerp(ring.inner_from, ring.inner_to, share) - grown &&
         r <= std::lerp(ring.outer_from, ring.outer_to, share) + grown;
}

bool holds(const Band& band, Point p, double grown) {
  const double height = dot(band.normal, p - band.at);
  return height >= band.low - grown && height <= band.high + grown;
}

}  // namespace

bool one_holds_all(const Accounted& accounted, std::span<const Point> points, double grown) {
  const auto all = [&](const auto& one) {
    return std::ranges::all_of(points, [&](Point p) { return holds(one, p, grown); });
  };
  return std::ranges::any_of(accounted.rings, all) || std::ranges::any_of(accounted.bands, all);
}

}  // namespace spotblue::proof
