#include "geometry/seats/seat_collector.hpp"

#include <algorithm>
#include <utility>

#include "base/work_limit.hpp"
#include "geometry/candidates/seat_overlap.hpp"
#include "spotblue/geometry/seat_limits.hpp"

namespace spotblue {
namespace {

Which other(Which which) { return which == Which::first ? Which::second : Which::first; }

}  // namespace

void SeatCollector::add_pair(OccurrenceId a, OccurrenceId b, const PairCandidates& candidates,
                             const OpenSeats& open) {
  first_ = a;
  second_ = b;
  frame_ = model_.occurrences[a].frame;
  promise_memory(kBytesPerRow * static_cast<double>(open.radial.size() + open.tapers.size() +
                                                    open.axial.size() + open.widths.size()));
  for (const OpenRadialSeat& seat : open.radial) {
    add_radial(*seat.candidate, seat.open);
  }
  for (const TaperCandidate* c : open.tapers) {
    add_taper(*c);
  }
  const std::size_t tied = ties_.size();
  for (const CommonAxis& axis : candidates.common_axes) {
    ties_.push_back({ref(Which::first, FeatureKind::cylinder, axis.first),
                     ref(Which::second, FeatureKind::cylinder, axis.second),
                     place_line(frame_, axis.axis), 0.0});
  }
  for (const OpenAxialSeat& seat : open.axial) {
    add_axial(seat, candidates.common_axes, tied);
  }
  for (const auto& [c, open_area] : open.widths) {
    add_width(*c, open_area);
  }
}

void SeatCollector::expect(std::size_t radial, std::size_t axial, std::size_t ties) {
  constexpr std::size_t kMost = 500'000;
  seats_.radial.reserve(std::min(radial, kMost));
  seats_.axial.reserve(std::min(axial, kMost));
  ties_.reserve(std::min(ties, kMost));
}

void SeatCollector::finish() {
  // Memory that was not to be had may have ended the last pair half way.
  seats_.radial.resize(radial_tie_.size());
  seats_.threads.resize(thread_tie_.size());
  seats_.taper.resize(taper_tie_.size());
  seats_.axial.resize(axial_tie_.size());
  CentreLines lines = centre_lines(model_, ties_);
  for (std::size_t i = 0; i < radial_tie_.size(); ++i) {
    seats_.radial[i].centre_line = lines.line_of[radial_tie_[i]];
  }
  for (std::size_t i = 0; i < thread_tie_.size(); ++i) {
    seats_.threads[i].centre_line = lines.line_of[thread_tie_[i]];
  }
  for (std::size_t i = 0; i < taper_tie_.size(); ++i) {
    seats_.taper[i].centre_line = lines.line_of[taper_tie_[i]];
  }
  for (std::size_t i = 0; i < axial_tie_.size(); ++i) {
    if (axial_tie_[i]) {
      seats_.axial[i].centre_line = lines.line_of[*axial_tie_[i]];
    }
  }
  seats_.centre_lines = std::move(lines.lines);
}

FeatureRef SeatCollector::ref(Which which, FeatureKind kind, std::size_t index) const {
  return {which == Which::first ? first_ : second_, kind, index};
}

std::size_t SeatCollector::tie(const FeatureRef& a, const FeatureRef& b, const Line& axis,
                               double weight) {
  ties_.push_back({a, b, axis, weight});
  return ties_.size() - 1;
}

SeatCollector::Engaged SeatCollector::engaged(const RadialCandidate& c, const OpenRadial& open) {
  const double from = open.stretches.front().low;
  const double to = open.stretches.back().high;
  const double middle = 0.5 * (from + to);
  Engaged engaged{.hole = ref(c.hole_of, FeatureKind::cylinder, c.hole),
                  .shaft = ref(other(c.hole_of), FeatureKind::cylinder, c.shaft),
                  .aligned = alignment(c, open.pieces),
                  .axis = place_line(frame_, {at_station(c.axis, middle), c.axis.along}),
                  .length = total_length(open.stretches),
                  .from = from - middle,
                  .to = to - middle};
  engaged.tied = tie(engaged.hole, engaged.shaft, engaged.axis, engaged.length);
  return engaged;
}

void SeatCollector::add_radial(const RadialCandidate& c, const OpenRadial& open) {
  const Engaged at = engaged(c, open);
  if (c.thread.empty()) {
    add_seat(c, open, at);
  } else {
    add_thread(c, at);
  }
}

void SeatCollector::add_thread(const RadialCandidate& c, const Engaged& at) {
  seats_.threads.push_back({.hole = at.hole,
                            .screw = at.shaft,
                            .size = c.thread,
                            .hole_diameter = c.hole_diameter,
                            .screw_diameter = c.shaft_diameter,
                            .engaged = at.length,
                            .offset = at.aligned.offset,
                            .tilt = c.tilt,
                            .axis = at.axis,
                            .from = at.from,
                            .to = at.to});
  thread_tie_.push_back(at.tied);
}

void SeatCollector::add_seat(const RadialCandidate& c, const OpenRadial& open, const Engaged& at) {
  RadialSeat seat;
  seat.hole = at.hole;
  seat.shaft = at.shaft;
  seat.hole_diameter = c.hole_diameter;
  seat.shaft_diameter = c.shaft_diameter;
  if (!c.worn.empty()) {
    const WornOver over = worn_over(c, open.stretches);
    seat.hole_diameter = 0.5 * (over.hole.low + over.hole.high);
    seat.shaft_diameter = 0.5 * (over.shaft.low + over.shaft.high);
    seat.worn = ClearanceRange{over.least_clearance, over.most_clearance};
  }
  seat.clearance = seat.hole_diameter - seat.shaft_diameter;
  seat.offset = at.aligned.offset;
  seat.tilt = c.tilt;
  seat.least_gap = at.aligned.least_gap;
  seat.fouls_by = overlap_past_seat(settings_, seat.hole_diameter,
                                    seat.worn ? seat.worn->least : seat.clearance, seat.least_gap);
  seat.engaged = at.length;
  seat.coverage = coverage(open.arcs);
  seat.axis = at.axis;
  seat.from = at.from;
  seat.to = at.to;
  seats_.radial.push_back(seat);
  radial_tie_.push_back(at.tied);
}

void SeatCollector::add_taper(const TaperCandidate& c) {
  TaperSeat seat;
  seat.hole = ref(c.hole_of, FeatureKind::cone, c.hole);
  seat.shaft = ref(other(c.hole_of), FeatureKind::cone, c.shaft);
  seat.hole_half_angle = cone(seat.hole).half_angle;
  seat.shaft_half_angle = cone(seat.shaft).half_angle;
  seat.gap = c.gap;
  seat.offset = c.offset;
  seat.tilt = c.tilt;
  seat.least_gap = c.least_gap;
  const double past = -c.least_gap - most_overlap(settings_, c.diameter);
  seat.fouls_by = is_past(past, 0.0, settings_) ? past : 0.0;
  seat.engaged = c.engaged;
  seat.diameter = c.diameter;
  seat.axis = place_line(frame_, c.axis);
  taper_tie_.push_back(tie(seat.hole, seat.shaft, seat.axis, c.engaged));
  seats_.taper.push_back(seat);
}

void SeatCollector::add_axial(const OpenAxialSeat& open, const std::vector<CommonAxis>& axes,
                              std::size_t first_tie) {
  const PlaneCandidate& c = *open.candidate;
  AxialSeat seat;
  seat.a = ref(Which::first, FeatureKind::plane, c.first);
  seat.b = ref(Which::second, FeatureKind::plane, c.second);
  seat.gap = c.gap;
  seat.area = open.area;
  const Plane& plane = model_.products[model_.occurrences[first_].product].planes[c.first];
  seat.axis = place_line(frame_, {plane.at, plane.normal});
  std::optional<std::size_t> tied;
  if (c.axis) {
    seat.inner = 2.0 * open.reach->least;
    seat.outer = 2.0 * open.reach->greatest;
    for (std::size_t i = 0; i < axes.size() && !tied; ++i) {
      if (axes[i].axis.at == c.axis->at && axes[i].axis.along == c.axis->along) {
        tied = first_tie + i;
      }
    }
  }
  seats_.axial.push_back(seat);
  axial_tie_.push_back(tied);
}

void SeatCollector::add_width(const WidthCandidate& c, double open_area) {
  WidthSeat seat;
  seat.slot = ref(c.slot_of, FeatureKind::width, c.slot);
  seat.key = ref(other(c.slot_of), FeatureKind::width, c.key);
  seat.slot_width = width(seat.slot).width;
  seat.key_width = width(seat.key).width;
  seat.clearance = c.clearance;
  seat.offset = c.offset;
  seat.tilt = c.tilt;
  seat.least_gap = 0.5 * c.clearance - c.offset;
  seat.ends_apart = c.ends_apart;
  seat.area = open_area;
  seats_.width.push_back(seat);
}

const Cone& SeatCollector::cone(const FeatureRef& r) const {
  return model_.products[model_.occurrences[r.occurrence].product].cones[r.index];
}

const Width& SeatCollector::width(const FeatureRef& r) const {
  return model_.products[model_.occurrences[r.occurrence].product].widths[r.index];
}

}  // namespace spotblue
