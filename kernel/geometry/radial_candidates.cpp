#include <algorithm>
#include <cmath>
#include <numbers>

#include "degree.hpp"
#include "geometry/coaxial.hpp"
#include "geometry/seat_candidates.hpp"
#include "spotblue/standards/threads.hpp"

namespace spotblue {
namespace {

// Greatest distance from the hole's axis of a shaft whose section square to that axis is an
// ellipse: centre at `centre`, long half-axis `radius / cos(tilt)` along `lean`, short one
// `radius`.
double farthest(Point centre, Direction lean, Direction across, double radius, double tilt) {
  const double cu = dot(centre, lean);
  const double cv = dot(centre, across);
  const double a = radius / std::cos(tilt);
  const auto reach = [&](double t) {
    return std::hypot(cu + a * std::cos(t), cv + radius * std::sin(t));
  };
  double best = std::atan2(cv, cu);
  constexpr int kSteps = 72;
  for (int i = 0; i < kSteps; ++i) {
    const double t = 2.0 * std::numbers::pi * i / kSteps;
    best = reach(t) > reach(best) ? t : best;
  }
  double low = best - 2.0 * std::numbers::pi / kSteps;
  double high = best + 2.0 * std::numbers::pi / kSteps;
  for (int i = 0; i < 80; ++i) {
    const double l = low + (high - low) / 3.0;
    const double h = high - (high - low) / 3.0;
    (reach(l) > reach(h) ? high : low) = reach(l) > reach(h) ? h : l;
  }
  return reach(0.5 * (low + high));
}

struct Lean {
  Point offset_at_middle;  // shaft axis from hole axis, square to the hole's axis
  Point slope;             // change of that per mm along the hole's axis
};

Lean lean_of(const Line& hole, const Line& shaft, double middle) {
  const double forward = dot(shaft.along, hole.along);
  const double t = (middle - station(hole, shaft.at)) / forward;
  return {at_station(shaft, t) - at_station(hole, middle),
          (1.0 / forward) * shaft.along - hole.along};
}

// Where both have surface.
std::vector<Patch> shared_pieces(const Cylinder& hole, const Cylinder& shaft,
                                 const AxisTransfer& transfer) {
  std::vector<Patch> pieces;
  for (const Patch& s : shaft.patches) {
    const auto [from, to] = transfer.stretch(s.from, s.to);
    const std::vector<Arc> arcs = transfer.arcs(s.arcs);
    for (const Patch& h : hole.patches) {
      Patch piece{std::max(h.from, from), std::min(h.to, to), {}};
      if (piece.to - piece.from > 1e-9) {
        piece.arcs = common_arcs(h.arcs, arcs);
        if (!piece.arcs.empty()) {
          pieces.push_back(std::move(piece));
        }
      }
    }
  }
  return pieces;
}

}  // namespace

Alignment alignment(const RadialCandidate& c, double from, double to) {
  const double middle = 0.5 * (from + to);
  const Lean lean = lean_of(c.axis, c.shaft_axis, middle);
  const double hole_radius = 0.5 * c.hole_diameter;
  const double shaft_radius = 0.5 * c.shaft_diameter;
  const double offset = norm(lean.offset_at_middle);
  if (norm(lean.slope) < 1e-12) {
    return {offset, hole_radius - shaft_radius - offset};
  }
  const Direction along_lean = unit(lean.slope);
  const Direction across = cross(c.axis.along, along_lean);
  double most = 0.0;
  for (const double end : {from, to}) {
    const Point centre = lean.offset_at_middle + (end - middle) * lean.slope;
    most = std::max(most, farthest(centre, along_lean, across, shaft_radius, c.tilt));
  }
  return {offset, hole_radius - most};
}

std::optional<RadialCandidate> radial_candidate(const Cylinder& hole, const Frame& hole_frame,
                                                const Cylinder& shaft, const Frame& shaft_frame,
                                                const SeatSettings& settings) {
  const double gap = 0.5 * (hole.diameter - shaft.diameter);
  if (gap > std::max(settings.radial_gap_mm, settings.radial_gap_per_diameter * hole.diameter)) {
    return std::nullopt;
  }
  const double most_overlap =
      std::max(settings.radial_overlap_mm, settings.radial_overlap_per_diameter * hole.diameter);
  const bool deep = -gap > most_overlap;
  if (deep && -gap > 0.2 * shaft.diameter) {
    return std::nullopt;  // deeper than any thread of the tables is cut
  }
  const Line axis = place_line(hole_frame, hole.axis);
  const Line other = place_line(shaft_frame, shaft.axis);
  if (!parallel_within(axis.along, other.along, settings.coaxial_tilt_deg * kDegree)) {
    return std::nullopt;
  }
  // A shaft farther off than that stands in another hole, or in none.
  const double in_this_hole = std::max(0.0, gap) + 0.25 * std::min(hole.diameter, shaft.diameter);
  const double most_offset = std::min(
      in_this_hole,
      std::max(settings.coaxial_offset_mm, settings.coaxial_offset_per_diameter * hole.diameter));
  // Where they share a length, the shaft's axis is no farther off than at its own middle, tilt
  // aside.
  const double half_length = shaft.intervals.empty()
                                 ? 0.0
                                 : std::max(std::abs(shaft.intervals.front().first),
                                            std::abs(shaft.intervals.back().second));
  if (distance(axis, other.at) >
      most_offset + std::sin(settings.coaxial_tilt_deg * kDegree) * half_length + 1e-6) {
    return std::nullopt;
  }
  const AxisTransfer transfer(hole, hole_frame, shaft, shaft_frame);
  if (!transfer.may_come_within(most_offset)) {
    return std::nullopt;
  }
  RadialCandidate c;
  c.stretches = common_stretches(hole.intervals, transfer.stretches(shaft.intervals));
  if (c.stretches.empty() || total_length(c.stretches) < settings.same_length_mm) {
    return std::nullopt;
  }
  const double middle = 0.5 * (c.stretches.front().first + c.stretches.back().second);
  const Lean lean = lean_of(axis, other, middle);
  const double half = 0.5 * (c.stretches.back().second - c.stretches.front().first);
  if (std::max(norm(lean.offset_at_middle + half * lean.slope),
               norm(lean.offset_at_middle - half * lean.slope)) > most_offset) {
    return std::nullopt;
  }
  if (deep) {
    const auto thread = thread_of(Length::mm(hole.diameter), Length::mm(shaft.diameter));
    const auto size = thread ? find_thread(*thread) : std::nullopt;
    if (!size || total_length(c.stretches) < size->pitch.in_mm()) {
      return std::nullopt;  // no thread, or less than a turn of it
    }
    c.thread = *thread;
  }
  c.pieces = shared_pieces(hole, shaft, transfer);
  if (c.pieces.empty()) {
    return std::nullopt;
  }
  Stretches together;
  for (const Patch& piece : c.pieces) {
    together.emplace_back(piece.from, piece.to);
  }
  c.stretches = merged_stretches(std::move(together));
  c.hole_diameter = hole.diameter;
  c.shaft_diameter = shaft.diameter;
  c.tilt = angle_between_lines(axis.along, other.along);
  c.axis = axis;
  c.shaft_axis = other;
  c.zero = place_direction(hole_frame, hole.zero);
  c.quarter = place_direction(hole_frame, cross(hole.axis.along, hole.zero));
  return c;
}

}  // namespace spotblue
