#include "group/making/kept_off.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <set>
#include <utility>

#include "geometry/fouls/least_distance.hpp"
#include "group/making/meeting.hpp"
#include "group/sizes/seat_sizes.hpp"
#include "group/words/said_keep_off.hpp"

namespace spotblue {
namespace {

// Distances as near to each other as this are of one place. Choice of this program, no source.
constexpr double kOnePlace_mm = 1e-4;

class Search {
 public:
  Search(const WorkedGroup& worked, const NamedPart& a, const NamedPart& b)
      : worked_(worked),
        declared_(worked.declared),
        a_(a.occurrences.begin(), a.occurrences.end()),
        b_(b.occurrences.begin(), b.occurrences.end()) {}

  [[nodiscard]] KeptOff found() {
    found_.a = *a_.begin();
    found_.b = *b_.begin();
    take_faces();
    take_round();
    take_keys_and_cones();
    take_fouls();
    take_solids();
    return std::move(found_);
  }

 private:
  [[nodiscard]] const Seats& seats() const { return declared_.look->seats; }

  [[nodiscard]] bool between(OccurrenceId first, OccurrenceId second) const {
    return (a_.contains(first) && b_.contains(second)) ||
           (a_.contains(second) && b_.contains(first));
  }
  [[nodiscard]] bool between(const FeatureRef& first, const FeatureRef& second) const {
    return between(first.occurrence, second.occurrence);
  }

  [[nodiscard]] Saying where(const FeatureRef& first, const FeatureRef& second) const {
    return say(said::kWhereBetween, declared_.names.reference(first),
               declared_.names.reference(second));
  }

  void take(NearPlace place, double drawn) {
    nearest_drawn_ = std::min(nearest_drawn_, drawn);
    found_.places.push_back(std::move(place));
  }

  [[nodiscard]] Interval about(double gap, std::optional<Length> uncertainty) const {
    const double off = uncertainty.value_or(declared_.job->settings.default_uncertainty).in_mm();
    return {gap - off, gap + off};
  }

  // Parts that play on each other come as near as their other stops let them.
  [[nodiscard]] std::optional<Interval> with_play(std::size_t seat) const {
    std::optional<Interval> nearest;
    for (const BodyPlay& play : worked_.plays.captured) {
      for (std::size_t i = 0; play.net && i < play.net->stops.size(); ++i) {
        const auto left =
            play.net->stops[i].stop.seat == seat ? least_left(*play.net, i) : std::nullopt;
        if (left) {
          nearest = nearest ? Interval{std::min(nearest->low, left->low),
                                       std::min(nearest->high, left->high)}
                            : *left;
        }
      }
    }
    return nearest;
  }

  void take_faces() {
    for (std::size_t i = 0; i < seats().axial.size(); ++i) {
      const AxialSeat& seat = seats().axial[i];
      if (!between(seat.a, seat.b)) {
        continue;
      }
      const MeasuredGap* const measured = declared_.axial_gaps.at(i);
      const double gap = measured != nullptr ? measured->value.in_mm() : seat.gap;
      NearPlace place{about(gap, measured != nullptr ? measured->uncertainty : std::nullopt),
                      where(seat.a, seat.b),
                      measured != nullptr ? said::kGapAsMeasured : said::kGapAsDrawn, true};
      if (const auto left = with_play(i); left && left->low < place.gap.low) {
        place = {*left, where(seat.a, seat.b), said::kGapWithPlay, false};
      }
      take(std::move(place), seat.gap);
    }
  }

  void take_round() {
    for (std::size_t i = 0; i < seats().radial.size(); ++i) {
      const RadialSeat& seat = seats().radial[i];
      if (!between(seat.hole, seat.shaft)) {
        continue;
      }
      const double out_of_line = 0.5 * seat.clearance - seat.least_gap;
      const SurfaceSizes& surface = worked_.surfaces.at(i);
      NearPlace place{{}, where(seat.hole, seat.shaft), said::kGapAsMade, false};
      place.gap = gap_of(surface.hole.free, surface.shaft.free, out_of_line);
      take_state(surface.hole.assembled, surface.shaft.assembled, out_of_line, place);
      take_state(surface.hole.running, surface.shaft.running, out_of_line, place);
      take(std::move(place), seat.least_gap);
    }
  }

  static Interval gap_of(Interval hole, Interval shaft, double out_of_line) {
    return {0.5 * (hole.low - shaft.high) - out_of_line,
            0.5 * (hole.high - shaft.low) - out_of_line};
  }

  static void take_state(const std::optional<Interval>& hole, const std::optional<Interval>& shaft,
                         double out_of_line, NearPlace& place) {
    if (hole && shaft) {
      const Interval gap = gap_of(*hole, *shaft, out_of_line);
      place.gap = {std::min(place.gap.low, gap.low), std::min(place.gap.high, gap.high)};
    }
  }

  void take_keys_and_cones() {
    for (std::size_t i = 0; i < seats().width.size(); ++i) {
      const WidthSeat& seat = seats().width[i];
      if (between(seat.slot, seat.key)) {
        const Limits clearance = width_seat_sizes(declared_, i).found.clearance;
        const double off = std::abs(seat.offset);
        take({{0.5 * clearance.lower.in_mm() - off, 0.5 * clearance.upper.in_mm() - off},
              where(seat.slot, seat.key),
              said::kGapAsMade,
              false},
             0.5 * seat.clearance - off);
      }
    }
    for (const TaperSeat& seat : seats().taper) {
      if (between(seat.hole, seat.shaft)) {
        take({about(seat.gap, std::nullopt), where(seat.hole, seat.shaft), said::kGapAsDrawn, true},
             seat.gap);
      }
    }
  }

  void take_fouls() {
    for (const Foul& foul : declared_.look->fouls.found) {
      if (between(foul.a, foul.b)) {
        take({{-foul.depth, -foul.depth},
              say(said::kWhereIn, declared_.names.reference(foul.a),
                  declared_.names.reference(foul.b)),
              said::kGapAsDrawn,
              false},
             -foul.depth);
      }
    }
  }

  // What no seat tells of: corners, round beside flat, faces far apart.
  void take_solids() {
    const Model& model = declared_.look->model;
    std::vector<OccurrencePair> pairs;
    double boxes = std::numeric_limits<double>::infinity();
    for (const OccurrenceId a : a_) {
      for (const OccurrenceId b : b_) {
        if (a != b) {
          pairs.emplace_back(a, b);
          boxes = std::min(boxes, boxes_apart(model.occurrences[a].box, model.occurrences[b].box));
        }
      }
    }
    found_.boxes_apart = boxes;
    found_.solids = model.shapes != nullptr;
    const auto least = least_distance(model, pairs, declared_.look->settings.limits);
    if (!least || !least->gap) {
      found_.not_measured =
          least ? say(said::kDistanceNotFound, least->why) : Saying(said::kNoSolids);
      return;
    }
    found_.drawn = *least->gap;
    if (*least->gap < nearest_drawn_ - kOnePlace_mm) {
      take({about(*least->gap, std::nullopt),
            say(said::kWhereIn, declared_.names.reference(least->a),
                declared_.names.reference(least->b)),
            said::kGapAsDrawn, true},
           *least->gap);
    }
  }

  const WorkedGroup& worked_;
  const DeclaredJob& declared_;
  std::set<OccurrenceId> a_, b_;
  double nearest_drawn_ = std::numeric_limits<double>::infinity();
  KeptOff found_;
};

}  // namespace

const NearPlace* KeptOff::nearest() const {
  const auto least =
      std::ranges::min_element(places, {}, [](const NearPlace& place) { return place.gap.low; });
  return least == places.end() ? nullptr : &*least;
}

KeptOff kept_off(const WorkedGroup& worked, const KeepOff& entry) {
  const auto [a, b] =
      worked.declared.names.two_parts(entry.a, entry.b, {"keep_off", "parts", entry.line});
  return Search(worked, a, b).found();
}

}  // namespace spotblue
