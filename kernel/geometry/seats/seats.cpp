#include "spotblue/geometry/seats.hpp"

#include <algorithm>
#include <cmath>
#include <memory>
#include <optional>
#include <unordered_map>

#include "base/work_limit.hpp"
#include "geometry/candidates/seat_overlap.hpp"
#include "geometry/seats/centre_lines.hpp"
#include "geometry/seats/near_parts.hpp"
#include "geometry/seats/occurrence_pairs.hpp"
#include "geometry/seats/open_seats.hpp"
#include "spotblue/base/stop.hpp"
#include "spotblue/geometry/seat_limits.hpp"

namespace spotblue {
namespace {

// The candidates of each kind of pair; nothing for those that time or memory did not reach.
std::vector<std::unique_ptr<const PairCandidates>> candidates_of(
    const Model& model, const Seats& seats, const PairKinds& kinds,
    const std::vector<std::size_t>& order, const SeatSettings& settings) {
  constexpr double kShare = 0.5;  // of the time for seats
  const TimeLimit limit(kShare * seconds_left());
  std::vector<std::unique_ptr<const PairCandidates>> candidates(kinds.first_pair.size());
  (void)done_within_limits([&] {
    for (const std::size_t p : order) {
      const std::size_t kind = kinds.kind_of[p];
      if (kind == kNoKind || candidates[kind]) {
        continue;
      }
      stop_if_asked();
      const auto [first, second] = seats.near_pairs[kinds.first_pair[kind]];
      const Occurrence& a = model.occurrences[first];
      const Occurrence& b = model.occurrences[second];
      candidates[kind] = std::make_unique<const PairCandidates>(pair_candidates(
          model.products[a.product], model.products[b.product], relative_frame(a, b), settings));
    }
  });
  return candidates;
}

// The bounds of each product's faces, made when first asked for.
class FacesOfProducts {
 public:
  explicit FacesOfProducts(const Model& model) : model_(model), faces_(model.products.size()) {}

  NearPart near_part(OccurrenceId to, OccurrenceId occurrence) {
    const Occurrence& part = model_.occurrences[occurrence];
    std::optional<proof::FaceBounds>& faces = faces_[part.product];
    if (!faces) {
      faces = proof::bounds_of(model_.products[part.product]);
    }
    return {&model_.products[part.product], &*faces,
            to == occurrence ? Frame{} : relative_frame(model_.occurrences[to], part)};
  }

 private:
  const Model& model_;
  std::vector<std::optional<proof::FaceBounds>> faces_;
};

// Collects seats pair by pair and keeps what is needed to name their centre lines afterwards.
class Collector {
 public:
  Collector(const Model& model, const SeatSettings& settings, Seats& seats)
      : model_(model), settings_(settings), seats_(seats) {}

  void add_pair(OccurrenceId a, OccurrenceId b, const PairCandidates& candidates,
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

  // Room for all there can be at once: growing by doubling would hold half as much again. Of more
  // than this there is most likely no room for all.
  void expect(std::size_t radial, std::size_t axial, std::size_t ties) {
    constexpr std::size_t kMost = 500'000;
    seats_.radial.reserve(std::min(radial, kMost));
    seats_.axial.reserve(std::min(axial, kMost));
    ties_.reserve(std::min(ties, kMost));
  }

  void finish() {
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

 private:
  FeatureRef ref(Which which, FeatureKind kind, std::size_t index) const {
    return {which == Which::first ? first_ : second_, kind, index};
  }
  static Which other(Which which) { return which == Which::first ? Which::second : Which::first; }

  std::size_t tie(const FeatureRef& a, const FeatureRef& b, const Line& axis, double weight) {
    ties_.push_back({a, b, axis, weight});
    return ties_.size() - 1;
  }

  // What a seat and a thread have in common: where two cylinders are engaged.
  struct Engaged {
    FeatureRef hole, shaft;
    Alignment aligned;
    Line axis;  // at the middle
    double length = 0.0;
    double from = 0.0, to = 0.0;  // from there
    std::size_t tied = 0;
  };

  Engaged engaged(const RadialCandidate& c, const OpenRadial& open) {
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

  void add_radial(const RadialCandidate& c, const OpenRadial& open) {
    const Engaged at = engaged(c, open);
    if (c.thread.empty()) {
      add_seat(c, open, at);
    } else {
      add_thread(c, at);
    }
  }

  void add_thread(const RadialCandidate& c, const Engaged& at) {
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

  void add_seat(const RadialCandidate& c, const OpenRadial& open, const Engaged& at) {
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
    seat.fouls_by =
        overlap_past_seat(settings_, seat.hole_diameter,
                          seat.worn ? seat.worn->least : seat.clearance, seat.least_gap);
    seat.engaged = at.length;
    seat.coverage = coverage(open.arcs);
    seat.axis = at.axis;
    seat.from = at.from;
    seat.to = at.to;
    seats_.radial.push_back(seat);
    radial_tie_.push_back(at.tied);
  }

  void add_taper(const TaperCandidate& c) {
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

  void add_axial(const OpenAxialSeat& open, const std::vector<CommonAxis>& axes,
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

  void add_width(const WidthCandidate& c, double open_area) {
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

  const Cone& cone(const FeatureRef& r) const {
    return model_.products[model_.occurrences[r.occurrence].product].cones[r.index];
  }
  const Width& width(const FeatureRef& r) const {
    return model_.products[model_.occurrences[r.occurrence].product].widths[r.index];
  }

  const Model& model_;
  const SeatSettings& settings_;
  Seats& seats_;
  OccurrenceId first_, second_;
  Frame frame_;
  std::vector<AxisTie> ties_;
  std::vector<std::size_t> radial_tie_, thread_tie_, taper_tie_;
  std::vector<std::optional<std::size_t>> axial_tie_;
};

struct SignatureHash {
  std::size_t operator()(const std::vector<std::size_t>& parts) const {
    std::size_t h = 1469598103934665603ULL;
    for (const std::size_t part : parts) {
      h = (h ^ part) * 0x9E3779B97F4A7C15ULL;
      h ^= h >> 29;
    }
    return h;
  }
};

// What stands open of pairs that are alike among neighbours that are alike, measured once each.
class OpenPairs {
 public:
  OpenPairs(const Model& model, const PairKinds& kinds, const Adjacency& near,
            const SeatSettings& settings)
      : kinds_(kinds), near_(near), settings_(settings), faces_(model) {}

  // Told by the kinds of pairs that the two make with each other and with what is near both.
  const OpenSeats& of(std::size_t pair, OccurrenceId a, OccurrenceId b, const PairCandidates& c) {
    const std::vector<SharedNeighbour> shared = shared_neighbours(near_, a, b);
    std::vector<std::size_t> signature{kinds_.kind_of[pair]};
    for (const SharedNeighbour& n : shared) {
      signature.push_back(2 * kinds_.kind_of[n.pair_with_first] + (n.occurrence < a ? 1U : 0U));
    }
    std::sort(signature.begin() + 1, signature.end());
    const auto found = known_.find(signature);
    if (found != known_.end()) {
      return found->second;
    }
    std::vector<NearPart> others;
    others.reserve(shared.size());
    for (const SharedNeighbour& n : shared) {
      others.push_back(faces_.near_part(a, n.occurrence));
    }
    const Surroundings around{faces_.near_part(a, a), faces_.near_part(a, b), others};
    return known_.emplace(std::move(signature), open_seats(c, around, settings_)).first->second;
  }

 private:
  const PairKinds& kinds_;
  const Adjacency& near_;
  const SeatSettings& settings_;
  FacesOfProducts faces_;
  std::unordered_map<std::vector<std::size_t>, OpenSeats, SignatureHash> known_;
};

void expect_all(const PairKinds& kinds,
                const std::vector<std::unique_ptr<const PairCandidates>>& candidates,
                Collector& collector) {
  std::size_t radial = 0;
  std::size_t axial = 0;
  std::size_t ties = 0;
  for (const std::size_t kind : kinds.kind_of) {
    if (kind == kNoKind) {
      continue;
    }
    if (const auto& c = candidates[kind]) {
      radial += c->radial.size();
      axial += c->planes.size();
      ties += c->radial.size() + c->tapers.size() + c->common_axes.size();
    }
  }
  collector.expect(radial, axial, ties);
}

bool has_any(const PairCandidates& c) {
  return !c.radial.empty() || !c.planes.empty() || !c.tapers.empty() || !c.widths.empty() ||
         !c.common_axes.empty();
}

}  // namespace

Seats find_seats(const Model& model, const SeatSettings& settings) {
  Seats seats;
  const double reach_mm =
      std::max({settings.axial_gap_most_mm, settings.radial_gap_mm, 0.0}) + settings.same_length_mm;
  NearPairs found_pairs = near_pairs(model, reach_mm);
  seats.near_pairs = std::move(found_pairs.pairs);
  seats.crowded = std::move(found_pairs.crowd);
  const PairKinds kinds = pair_kinds(model, seats.near_pairs);
  const Adjacency near = adjacency(model, seats.near_pairs);
  const std::vector<std::size_t> order = cheap_first(near, seats.near_pairs);
  const auto candidates = candidates_of(model, seats, kinds, order, settings);
  OpenPairs open(model, kinds, near, settings);
  Collector collector(model, settings, seats);
  expect_all(kinds, candidates, collector);
  bool over = false;
  for (const std::size_t p : order) {
    const auto [a, b] = seats.near_pairs[p];
    if (over || kinds.kind_of[p] == kNoKind || !candidates[kinds.kind_of[p]] ||
        (!found_pairs.beside_crowd.empty() && found_pairs.beside_crowd[p])) {
      seats.not_looked_at.emplace_back(a, b);
      continue;
    }
    const PairCandidates& c = *candidates[kinds.kind_of[p]];
    if (!has_any(c)) {
      continue;
    }
    over = !done_within_limits([&, p, a = a, b = b] {  // clang 14 binds no structured names
      stop_if_asked();
      collector.add_pair(a, b, c, open.of(p, a, b, c));
    });
    if (over) {
      seats.not_looked_at.emplace_back(a, b);
    }
  }
  collector.finish();
  std::sort(seats.not_looked_at.begin(), seats.not_looked_at.end());
  return seats;
}

}  // namespace spotblue
