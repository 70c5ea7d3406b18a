#include "geometry/candidates/radial_candidates.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "geometry/model/coaxial.hpp"
#include "geometry/model/tolerances.hpp"
#include "spotblue/geometry/seat_limits.hpp"
#include "spotblue/standards/threads.hpp"

namespace spotblue {
namespace {

constexpr double kWholeTurnRad = 2.0 * std::numbers::pi;

// The section of a shaft square to the hole's axis, seen from there: an ellipse, its long half-axis
// `radius / cos(tilt)` along the lean, its short one `radius` across it; `u` of its centre is along
// the lean. Angles count from the lean.
struct LeaningSection {
  Point2 centre;
  double along, across;

  // How far the shaft reaches at an angle; nothing where it does not hold the axis.
  [[nodiscard]] double reach(double angle) const {
    const double c = std::cos(angle);
    const double s = std::sin(angle);
    const double a2 = along * along;
    const double b2 = across * across;
    const double qa = c * c / a2 + s * s / b2;
    const double qb = centre.u * c / a2 + centre.v * s / b2;
    const double qc = centre.u * centre.u / a2 + centre.v * centre.v / b2 - 1.0;
    const double root = qb * qb - qa * qc;
    return root < 0.0 ? 0.0 : (qb + std::sqrt(root)) / qa;
  }
};

// Greatest value of a function over a stretch, by steps and then by thirds.
template <typename Function>
double greatest_over(const Function& of, double low, double high, int steps) {
  const double step = (high - low) / steps;
  double best = low;
  for (int i = 1; i <= steps; ++i) {
    best = of(low + i * step) > of(best) ? low + i * step : best;
  }
  double left = std::max(low, best - step);
  double right = std::min(high, best + step);
  for (int i = 0; i < 60 && right - left > kRounding; ++i) {
    const double l = left + (right - left) / 3.0;
    const double r = right - (right - left) / 3.0;
    (of(l) > of(r) ? right : left) = of(l) > of(r) ? r : l;
  }
  return std::max(of(best), of(0.5 * (left + right)));
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

// Whether a cylinder is the crests of a modelled thread: short rings a pitch apart.
bool ridged(const Stretches& intervals, const std::string& thread) {
  const auto size = find_thread(thread);
  const double pitch = size ? size->pitch.in_mm() : 0.0;
  constexpr double kApart = 1.5;
  return std::adjacent_find(intervals.begin(), intervals.end(), [&](const auto& a, const auto& b) {
           return a.length() < pitch && b.length() < pitch && b.low - a.low < kApart * pitch;
         }) != intervals.end();
}

Interval all_diameters(const Cylinder& cylinder) {
  return diameters_over(cylinder, cylinder.intervals.front().low, cylinder.intervals.back().high);
}

Interval between_sizes(Interval one, Interval two, double share) {
  return {std::lerp(one.low, two.low, share), std::lerp(one.high, two.high, share)};
}

// What both measure along the hole's axis, wherever either's sizes are told.
std::vector<WornAt> worn_along(const Cylinder& hole, const Cylinder& shaft, const Line& axis,
                               const Line& other, const Stretches& shared) {
  const double start = station(axis, other.at);
  const double along = dot(other.along, axis.along);
  const double from = shared.front().low;
  const double to = shared.back().high;
  std::vector<double> stations{from, to};
  const auto take = [&](double at) {
    if (at > from + kNoLength && at < to - kNoLength) {
      stations.push_back(at);
    }
  };
  for (const DiameterAt& size : hole.sizes) {
    take(size.at);
  }
  for (const DiameterAt& size : shaft.sizes) {
    take(start + along * size.at);
  }
  std::sort(stations.begin(), stations.end());
  std::vector<WornAt> worn;
  worn.reserve(stations.size());
  for (const double at : stations) {
    worn.push_back({at, diameters_at(hole, at), diameters_at(shaft, (at - start) / along)});
  }
  return worn;
}

WornAt worn_at(const RadialCandidate& c, double at) {
  if (c.worn.empty()) {
    return {at, {c.hole_diameter, c.hole_diameter}, {c.shaft_diameter, c.shaft_diameter}};
  }
  const auto next = std::find_if(c.worn.begin() + 1, c.worn.end() - 1,
                                 [&](const WornAt& one) { return one.at >= at; });
  const WornAt& one = *(next - 1);
  const double share = next->at > one.at ? (at - one.at) / (next->at - one.at) : 0.0;
  return {at, between_sizes(one.hole, next->hole, share),
          between_sizes(one.shaft, next->shaft, share)};
}

// Greatest reach over the angles of a shaft that does not lean, its axis `offset` off at `towards`:
// it falls off on both sides of that angle.
double parallel_reach(double radius, double offset, double towards, const std::vector<Arc>& arcs) {
  double least = std::numbers::pi;
  for (const Arc& arc : arcs) {
    const double past = std::remainder(towards - arc.from, kWholeTurnRad);
    const double in = past < 0.0 ? past + kWholeTurnRad : past;
    if (in <= arc.sweep) {
      return offset + radius;
    }
    least = std::min({least, in - arc.sweep, kWholeTurnRad - in});
  }
  const double across = offset * std::sin(least);
  return offset * std::cos(least) + std::sqrt(std::max(0.0, radius * radius - across * across));
}

// Radial gap at a station of one that leans, least over the angles.
double leaning_gap(const RadialCandidate& c, const Lean& lean, double middle,
                   const std::vector<Arc>& arcs, double s) {
  const Direction along_lean = unit(lean.slope);
  const Direction across = third(c.axis.along, along_lean);
  const double zero = std::atan2(dot(along_lean, c.quarter), dot(along_lean, c.zero));
  const bool turned = dot(cross(c.axis.along, c.zero), c.quarter) < 0.0;
  const WornAt here = worn_at(c, s);
  const double radius = 0.5 * here.shaft.high;
  const Point centre = lean.offset_at_middle + (s - middle) * lean.slope;
  const LeaningSection section{
      {dot(centre, along_lean), dot(centre, across)}, radius / std::cos(c.tilt), radius};
  double most = 0.0;
  for (const Arc& arc : recounted_arcs(arcs, zero, turned ? -1 : 1)) {
    const int steps = std::max(8, static_cast<int>(72.0 * arc.sweep / kWholeTurnRad));
    most = std::max(most, greatest_over([&](double angle) { return section.reach(angle); },
                                        arc.from, arc.from + arc.sweep, steps));
  }
  return 0.5 * here.hole.low - most;
}

// Least over a piece: of a plain pair that is open all round at one of its ends.
double leaning_gap(const RadialCandidate& c, const Lean& lean, double middle, const Patch& piece) {
  const auto gap = [&](double s) { return leaning_gap(c, lean, middle, piece.arcs, s); };
  double least = std::min(gap(piece.from), gap(piece.to));
  if (!c.worn.empty() || coverage(piece.arcs) < kWholeTurnRad - kTurnSlack) {
    least = std::min(least,
                     -greatest_over([&](double s) { return -gap(s); }, piece.from, piece.to, 16));
  }
  return least;
}

double parallel_gap(const RadialCandidate& c, double offset, double towards, const Patch& piece) {
  const auto gap = [&](double s) {
    const WornAt here = worn_at(c, s);
    return 0.5 * here.hole.low - parallel_reach(0.5 * here.shaft.high, offset, towards, piece.arcs);
  };
  double least = gap(piece.from);
  if (!c.worn.empty()) {
    least = std::min(least, gap(piece.to));
    for (const WornAt& one : c.worn) {
      least = one.at > piece.from && one.at < piece.to ? std::min(least, gap(one.at)) : least;
    }
  }
  return least;
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
      if (piece.to - piece.from > kNoLength) {
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

Alignment alignment(const RadialCandidate& c, const std::vector<Patch>& pieces) {
  double from = pieces.front().from;
  double to = pieces.front().to;
  for (const Patch& piece : pieces) {
    from = std::min(from, piece.from);
    to = std::max(to, piece.to);
  }
  const double middle = 0.5 * (from + to);
  const Lean lean = lean_of(c.axis, c.shaft_axis, middle);
  const double offset = norm(lean.offset_at_middle);
  const double towards =
      std::atan2(dot(lean.offset_at_middle, c.quarter), dot(lean.offset_at_middle, c.zero));
  const bool leans = norm(lean.slope) >= kRounding;
  double least = std::numeric_limits<double>::infinity();
  for (const Patch& piece : pieces) {
    least = std::min(least, leans ? leaning_gap(c, lean, middle, piece)
                                  : parallel_gap(c, offset, towards, piece));
  }
  return {offset, least};
}

WornOver worn_over(const RadialCandidate& c, const Stretches& stretches) {
  constexpr double kInfinity = std::numeric_limits<double>::infinity();
  WornOver over{{kInfinity, -kInfinity}, {kInfinity, -kInfinity}, kInfinity, -kInfinity};
  const auto take = [&](const WornAt& one) {
    over.hole = {std::min(over.hole.low, one.hole.low), std::max(over.hole.high, one.hole.high)};
    over.shaft = {std::min(over.shaft.low, one.shaft.low),
                  std::max(over.shaft.high, one.shaft.high)};
    over.least_clearance = std::min(over.least_clearance, one.hole.low - one.shaft.high);
    over.most_clearance = std::max(over.most_clearance, one.hole.high - one.shaft.low);
  };
  for (const auto& [from, to] : stretches) {
    take(worn_at(c, from));
    take(worn_at(c, to));
    for (const WornAt& one : c.worn) {
      if (one.at > from && one.at < to) {
        take(one);
      }
    }
  }
  return over;
}

std::optional<RadialCandidate> radial_candidate(const Cylinder& hole, const Frame& hole_frame,
                                                const Cylinder& shaft, const Frame& shaft_frame,
                                                const SeatSettings& settings) {
  const double gap = 0.5 * (hole.diameter - shaft.diameter);
  const bool worn = !hole.sizes.empty() || !shaft.sizes.empty();
  const double most_gap = most_radial_gap(settings, hole.diameter);
  const double tightest = worn ? 0.5 * (all_diameters(hole).low - all_diameters(shaft).high) : gap;
  const double loosest = worn ? 0.5 * (all_diameters(hole).high - all_diameters(shaft).low) : gap;
  if (is_past(tightest, most_gap, settings)) {
    return std::nullopt;
  }
  const bool deep = is_past(-loosest, most_overlap(settings, hole.diameter), settings);
  if (deep && -loosest > 0.2 * shaft.diameter) {
    return std::nullopt;  // deeper than any thread of the tables is cut
  }
  const Line axis = place_line(hole_frame, hole.axis);
  const Line other = place_line(shaft_frame, shaft.axis);
  const double tilt_limit = most_tilt(settings.coaxial_tilt_deg, settings);
  if (!parallel_within(axis.along, other.along, tilt_limit)) {
    return std::nullopt;
  }
  // A shaft farther off than that stands in another hole, or in none.
  const double in_this_hole =
      std::max(0.0, loosest) + 0.25 * std::min(hole.diameter, shaft.diameter);
  const double farthest = std::min(in_this_hole, most_offset(settings, hole.diameter));
  // Where they share a length, the shaft's axis is no farther off than at its own middle, tilt
  // aside.
  const double half_length =
      shaft.intervals.empty()
          ? 0.0
          : std::max(std::abs(shaft.intervals.front().low), std::abs(shaft.intervals.back().high));
  if (is_past(distance(axis, other.at), farthest + std::sin(tilt_limit) * half_length, settings)) {
    return std::nullopt;
  }
  const AxisTransfer transfer(hole, hole_frame, shaft, shaft_frame);
  if (!transfer.may_come_within(farthest + settings.same_length_mm)) {
    return std::nullopt;
  }
  RadialCandidate c;
  c.stretches = common_stretches(hole.intervals, transfer.stretches(shaft.intervals));
  if (c.stretches.empty() || total_length(c.stretches) < settings.same_length_mm) {
    return std::nullopt;
  }
  const double middle = 0.5 * (c.stretches.front().low + c.stretches.back().high);
  const Lean lean = lean_of(axis, other, middle);
  const double half = 0.5 * (c.stretches.back().high - c.stretches.front().low);
  if (is_past(std::max(norm(lean.offset_at_middle + half * lean.slope),
                       norm(lean.offset_at_middle - half * lean.slope)),
              farthest, settings)) {
    return std::nullopt;
  }
  c.hole_diameter = hole.diameter;
  c.shaft_diameter = shaft.diameter;
  if (worn) {
    c.worn = worn_along(hole, shaft, axis, other, c.stretches);
    const WornOver over = worn_over(c, c.stretches);
    if (is_past(0.5 * over.least_clearance, most_gap, settings) ||
        is_past(-0.25 * (over.least_clearance + over.most_clearance),
                most_overlap(settings, hole.diameter), settings)) {
      return std::nullopt;
    }
    c.hole_diameter = over.hole.low;
    c.shaft_diameter = over.shaft.high;
  } else if (deep) {
    const auto thread =
        thread_of(Diameter(Length::mm(hole.diameter)), Diameter(Length::mm(shaft.diameter)));
    const auto size = thread ? find_thread(*thread) : std::nullopt;
    if (!size || total_length(c.stretches) < size->pitch.in_mm()) {
      return std::nullopt;  // no thread, or less than a turn of it
    }
    if (ridged(hole.intervals, *thread) && ridged(shaft.intervals, *thread)) {
      return std::nullopt;  // a thread that is modelled overlaps only where it is out of step
    }
    c.thread = *thread;
  }
  c.pieces = shared_pieces(hole, shaft, transfer);
  if (c.pieces.empty()) {
    return std::nullopt;
  }
  Stretches together;
  for (const Patch& piece : c.pieces) {
    together.push_back({piece.from, piece.to});
  }
  c.stretches = merged_stretches(std::move(together));
  c.tilt = angle_between_lines(axis.along, other.along);
  c.axis = axis;
  c.shaft_axis = other;
  c.zero = place_direction(hole_frame, hole.zero);
  c.quarter = place_direction(hole_frame, third(hole.axis.along, hole.zero));
  return c;
}

}  // namespace spotblue
