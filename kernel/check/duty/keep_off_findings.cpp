#include "check/duty/keep_off_findings.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <optional>
#include <set>
#include <utility>

#include "check/words/words.hpp"
#include "group/words/at_line.hpp"
#include "group/words/said.hpp"
#include "group/words/said_keep_off.hpp"

namespace spotblue {
namespace {

struct Nearest {
  Length gap;
  Length uncertainty;
  Saying where;
};

class Search {
 public:
  Search(const DeclaredJob& declared, const NamedPart& a, const NamedPart& b)
      : declared_(declared),
        a_(a.occurrences.begin(), a.occurrences.end()),
        b_(b.occurrences.begin(), b.occurrences.end()) {}

  [[nodiscard]] std::optional<Nearest> nearest() {
    const Seats& seats = declared_.look->seats;
    for (std::size_t i = 0; i < seats.axial.size(); ++i) {
      const AxialSeat& seat = seats.axial[i];
      const MeasuredGap* measured = declared_.axial_gaps.at(i);
      take(seat.a, seat.b, measured != nullptr ? measured->value : Length::mm(seat.gap),
           measured != nullptr ? measured->uncertainty : std::nullopt);
    }
    for (const RadialSeat& seat : seats.radial) {
      take(seat.hole, seat.shaft, Length::mm(seat.least_gap), std::nullopt);
    }
    for (const WidthSeat& seat : seats.width) {
      take(seat.slot, seat.key, Length::mm(0.5 * seat.clearance - std::abs(seat.offset)),
           std::nullopt);
    }
    for (const TaperSeat& seat : seats.taper) {
      take(seat.hole, seat.shaft, Length::mm(seat.gap), std::nullopt);
    }
    for (const Foul& foul : declared_.look->fouls.found) {
      if (between(foul.a, foul.b)) {
        take(Length::mm(-foul.depth), Length(),
             say(said::kWhereIn, declared_.names.reference(foul.a),
                 declared_.names.reference(foul.b)));
      }
    }
    return nearest_;
  }

  /// Along the axis on which the boxes of the two stand farthest apart; the least of all pairs.
  [[nodiscard]] Length boxes_apart() const {
    double least = 1e300;
    for (const OccurrenceId a : a_) {
      for (const OccurrenceId b : b_) {
        least = a == b ? least : std::min(least, apart(box(a), box(b)));
      }
    }
    return Length::mm(least);
  }

 private:
  [[nodiscard]] const Box& box(OccurrenceId occurrence) const {
    return declared_.look->model.occurrences.at(occurrence).box;
  }

  static double apart(const Box& a, const Box& b) {
    const double x = std::max(a.low.x - b.high.x, b.low.x - a.high.x);
    const double y = std::max(a.low.y - b.high.y, b.low.y - a.high.y);
    const double z = std::max(a.low.z - b.high.z, b.low.z - a.high.z);
    return std::max({x, y, z});
  }

  [[nodiscard]] bool between(OccurrenceId first, OccurrenceId second) const {
    return (a_.contains(first) && b_.contains(second)) ||
           (a_.contains(second) && b_.contains(first));
  }

  void take(const FeatureRef& first, const FeatureRef& second, Length gap,
            std::optional<Length> uncertainty) {
    if (between(first.occurrence, second.occurrence)) {
      take(gap, uncertainty.value_or(declared_.job->settings.default_uncertainty),
           say(said::kWhereBetween, declared_.names.reference(first),
               declared_.names.reference(second)));
    }
  }

  void take(Length gap, Length uncertainty, Saying where) {
    if (!nearest_ || gap < nearest_->gap) {
      nearest_ = Nearest{gap, uncertainty, std::move(where)};
    }
  }

  const DeclaredJob& declared_;
  std::set<OccurrenceId> a_, b_;
  std::optional<Nearest> nearest_;
};

void judge_nearest(const KeepOff& entry, const Nearest& nearest, Finding& finding) {
  finding.found = {{"gap", measure(nearest.gap)},
                   {"uncertainty", measure(nearest.uncertainty)},
                   {"where", nearest.where}};
  finding.margin = {{"gap", measure(nearest.gap - nearest.uncertainty - entry.least)}};
  if (nearest.gap < entry.least) {
    finding.outcome = Outcome::nonconforming;
    finding.advice =
        nearest.gap <= Length()
            ? say(said::kTheyTouch, nearest.where, entry.least - nearest.gap)
            : say(said::kOnlyApart, nearest.gap, nearest.where, entry.least - nearest.gap);
  } else if (nearest.gap - nearest.uncertainty < entry.least) {
    finding.outcome = Outcome::undecided;
    finding.advice = say(said::kMeasureGap, nearest.where, nearest.uncertainty);
  } else {
    finding.outcome = Outcome::conforming;
    finding.advice = said::kLeaveAsItIs;
  }
}

void judge_far(const DeclaredJob& declared, const KeepOff& entry, Length boxes, Finding& finding) {
  finding.found = {{"gap", said::kNoFacesNear}};
  if (boxes >= entry.least) {
    finding.outcome = Outcome::conforming;
    finding.found.push_back({"boxes_apart", measure(boxes)});
    finding.margin = {{"gap", measure(boxes - entry.least)}};
    finding.advice = said::kLeaveAsItIs;
    return;
  }
  const SeatSettings& settings = declared.look->settings.seats;
  finding.outcome = Outcome::undecided;
  finding.advice = say(said::kTryFeeler, Length::mm(settings.axial_gap_most_mm),
                       Length::mm(settings.radial_gap_mm), entry.least);
}

}  // namespace

std::vector<Finding> keep_off_findings(const WorkedGroup& worked) {
  const DeclaredJob& declared = worked.declared;
  std::vector<Finding> findings;
  for (const KeepOff& entry : declared.job->keep_off) {
    const Entry place{"keep_off", "parts", entry.line};
    const auto [a, b] = declared.names.two_parts(entry.a, entry.b, place);
    Search search(declared, a, b);
    Finding finding;
    finding.kind = "keep off";
    finding.about = {{entry.a, a.occurrences.front()}, {entry.b, b.occurrences.front()}};
    finding.wanted = {{"gap", measure(entry.least), RangeEnd::least}};
    if (const auto nearest = search.nearest()) {
      judge_nearest(entry, *nearest, finding);
    } else {
      judge_far(declared, entry, search.boxes_apart(), finding);
    }
    finding.basis =
        (entry.reason.empty() ? say(said::kMustStayClear, at_line(entry.line))
                              : say(said::kMustStayClearFor, entry.reason, at_line(entry.line))) +
        said::kLeastGap + say(said::kAsItIs, kIso14253);
    findings.push_back(std::move(finding));
  }
  return findings;
}

}  // namespace spotblue
