#include "spotblue/geometry/clash.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <set>
#include <tuple>
#include <unordered_map>

#include "base/time_limit.hpp"
#include "geometry/clear_pair.hpp"
#include "geometry/exact_overlap.hpp"
#include "geometry/foul.hpp"
#include "geometry/occurrence_pairs.hpp"
#include "geometry/pair_seats.hpp"
#include "geometry/unnamed_screw.hpp"
#include "spotblue/base/stop.hpp"

namespace spotblue {
namespace {

using proof::Accounted;
using proof::OpenPair;
using proof::Overlap;
using proof::PairSeats;

/// What is known of all pairs that are alike; points in the first product's frame.
struct Verdict {
  std::vector<Clash> clashes;
  bool not_looked_at = false;       ///< the time given was up
  bool not_measured = false;        ///< free-form faces near each other
  std::optional<std::size_t> open;  ///< index of the open pair that decides the rest
  std::string open_cause;           ///< what it is called if the solids do overlap
  std::optional<std::size_t>
      checked;  ///< index of the open pair that measures the only clash whole
};

class Search {
 public:
  Search(const Model& model, const Seats& seats, const SeatSettings& settings)
      : model_(model), seats_(seats), settings_(settings), index_(seats) {
    bounds_.resize(model.products.size());
  }

  /// Sorts the pairs into kinds and looks at one of each.
  void look() {
    const std::set<std::pair<std::size_t, std::size_t>> seats_unknown(seats_.not_looked_at.begin(),
                                                                      seats_.not_looked_at.end());
    const PairKinds kinds = pair_kinds(model_, seats_.near_pairs);
    std::unordered_map<std::uint64_t, std::size_t> known;
    for (std::size_t p = 0; p < seats_.near_pairs.size(); ++p) {
      const auto [a, b] = seats_.near_pairs[p];
      if (seats_unknown.contains({a, b})) {
        // What its seats account for is not known: a press fit would be told as a clash.
        verdicts_.push_back({});
        verdicts_.back().not_looked_at = true;
        verdict_of_.push_back(verdicts_.size() - 1);
        continue;
      }
      const PairSeats& pair = index_.of(a, b);
      const std::uint64_t key =
          proof::signature(seats_, pair, a) * 0x9E3779B97F4A7C15ULL + kinds.kind_of[p];
      const auto [entry, is_new] = known.try_emplace(key, verdicts_.size());
      if (is_new) {
        verdicts_.emplace_back();
        const bool done = done_in_time([&] {
          stop_if_asked();
          verdicts_.back() = verdict(a, b, pair);
        });
        verdicts_.back().not_looked_at = !done;
      }
      verdict_of_.push_back(entry->second);
    }
  }

  [[nodiscard]] const std::vector<OpenPair>& open() const { return open_; }

  [[nodiscard]] ClashReport report(const std::vector<Overlap>& overlaps) const {
    ClashReport report;
    report.effort = {seats_.near_pairs.size(), verdicts_.size(), open_.size()};
    for (std::size_t p = 0; p < verdict_of_.size(); ++p) {
      const auto [a, b] = seats_.near_pairs[p];
      const Verdict& verdict = verdicts_[verdict_of_[p]];
      for (Clash clash : verdict.clashes) {
        if (verdict.checked) {
          const Overlap& whole = overlaps[*verdict.checked];
          clash.exact = whole.state == Overlap::State::shared;
          clash.volume = clash.exact ? whole.volume : clash.volume;
        }
        add(report, a, b, clash);
      }
      if (verdict.not_looked_at) {
        report.not_looked_at.emplace_back(a, b);
      }
      if (verdict.not_measured) {
        report.not_measured.emplace_back(a, b);
      }
      if (verdict.open) {
        add_open(report, a, b, verdict, overlaps[*verdict.open]);
      }
    }
    std::ranges::stable_sort(report.clashes, {}, [](const Clash& c) {
      return std::tuple(c.a, c.b, std::string_view(c.cause));
    });
    return report;
  }

 private:
  const proof::FaceBounds& bounds(std::size_t product) {
    if (!bounds_[product]) {
      bounds_[product] = proof::bounds_of(model_.products[product]);
    }
    return *bounds_[product];
  }

  Verdict verdict(std::size_t a, std::size_t b, const PairSeats& pair) {
    const Occurrence& first = model_.occurrences[a];
    const Occurrence& second = model_.occurrences[b];
    const Frame to_a = inverse(first.frame);
    const Accounted accounted = proof::account_for(model_, seats_, pair, settings_, to_a);
    const Frame b_to_a = relative_frame(first, second);
    Verdict verdict{
        .clashes = fouls(pair, to_a),
        .not_measured = free_form_near(bounds(first.product), bounds(second.product), b_to_a),
        .open = {},
        .open_cause = {},
        .checked = {}};
    const proof::Pair placed{
        bounds(first.product),   bounds(second.product), b_to_a, inverse(b_to_a), accounted,
        settings_.same_length_mm};
    if (!proof::proved_clear(placed)) {
      verdict.open = open_.size();
      verdict.open_cause = open_cause(pair);
      open_.push_back({first.product, second.product, b_to_a, accounted, directions(placed),
                       settings_.same_length_mm});
    }
    measure_whole(verdict, first, second, pair, placed);
    return verdict;
  }

  /// Whether a free-form face of one comes near a round or free-form face of the other, by boxes.
  [[nodiscard]] bool free_form_near(const proof::FaceBounds& a, const proof::FaceBounds& b,
                                    const Frame& b_to_a) const {
    const auto near = [&](const proof::FaceBounds& one, const proof::FaceBounds& other,
                          const Frame& to_one) {
      return std::ranges::any_of(one.others, [&](const OtherFace& face) {
        const Box box = grown(face.box, settings_.radial_gap_mm);
        const auto meets = [&](const auto& with) {
          return overlap(box, place_box(to_one, with.box));
        };
        return !face.revolved && (std::ranges::any_of(other.patches, meets) ||
                                  std::ranges::any_of(other.others, meets));
      });
    };
    return near(a, b, b_to_a) || near(b, a, inverse(b_to_a));
  }

  /// Faces that overlap may have chamfers and roundings beside them that overlap too: the solids
  /// tell the volume, where no other overlap of the pair would be counted with it.
  void measure_whole(Verdict& verdict, const Occurrence& first, const Occurrence& second,
                     const PairSeats& pair, const proof::Pair& placed) {
    if (model_.shapes == nullptr || verdict.clashes.size() != 1 || verdict.open ||
        verdict.clashes.front().cause != "faces overlap") {
      return;
    }
    PairSeats others = pair;
    std::erase_if(others.axial,
                  [&](std::size_t i) { return proof::overlaps(seats_.axial[i], settings_); });
    verdict.checked = open_.size();
    open_.push_back({first.product, second.product, placed.b_to_a,
                     proof::account_for(model_, seats_, others, settings_, inverse(first.frame)),
                     directions(placed), settings_.same_length_mm});
  }

  [[nodiscard]] std::vector<Clash> fouls(const PairSeats& pair, const Frame& to_a) const {
    std::vector<Clash> found;
    const auto add = [&](Clash clash) {
      clash.at = place_point(to_a, clash.at);
      found.push_back(std::move(clash));
    };
    for (const std::size_t i : pair.radial) {
      if (proof::fouls(seats_.radial[i], settings_)) {
        add(proof::radial_foul(model_, seats_.radial[i]));
      }
    }
    for (const std::size_t i : pair.axial) {
      if (proof::overlaps(seats_.axial[i], settings_)) {
        add(proof::axial_foul(model_, seats_, seats_.axial[i]));
      }
    }
    return found;
  }

  /// A seat with surface at some angles only may foul by its numbers; the solids tell whether.
  [[nodiscard]] std::string open_cause(const PairSeats& pair) const {
    const bool off_axis = std::ranges::any_of(pair.radial, [&](std::size_t i) {
      const RadialSeat& seat = seats_.radial[i];
      return seat.clearance >= -settings_.same_length_mm &&
             seat.least_gap < -settings_.same_length_mm && !proof::fouls(seat, settings_);
    });
    return off_axis ? "off axis" : "solids overlap";
  }

  /// Ways a part might be moved clear: square to either's planes, along axes, along coordinates.
  static std::vector<Direction> directions(const proof::Pair& pair) {
    std::vector<Direction> found{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
    const auto add = [&](Direction d) {
      const bool known =
          std::ranges::any_of(found, [&](Direction k) { return angle_between_lines(k, d) < 1e-9; });
      if (!known) {
        found.push_back(d);
      }
    };
    for (const Direction n : pair.a.normals) {
      add(n);
    }
    for (const Direction n : pair.b.normals) {
      add(place_direction(pair.b_to_a, n));
    }
    for (const Line& line : pair.accounted.axes) {
      add(line.along);
    }
    return found;
  }

  void add(ClashReport& report, std::size_t a, std::size_t b, Clash clash) const {
    clash.a = a;
    clash.b = b;
    clash.at = place_point(model_.occurrences[a].frame, clash.at);
    report.clashes.push_back(std::move(clash));
  }

  void add_open(ClashReport& report, std::size_t a, std::size_t b, const Verdict& verdict,
                const Overlap& overlap) const {
    Clash clash{.volume = overlap.volume, .depth = overlap.depth, .at = overlap.at, .cause = {}};
    if (overlap.state == Overlap::State::shared) {
      clash.cause = verdict.open_cause;
      add(report, a, b, clash);
      const Occurrence& first = model_.occurrences[a];
      const Occurrence& second = model_.occurrences[b];
      const std::string screw =
          unnamed_screw(model_.products[first.product], model_.products[second.product],
                        relative_frame(first, second), settings_);
      if (!screw.empty()) {
        report.notes.push_back({fmt::format("{} and {}", first.id, second.id), screw});
      }
    } else if (overlap.state == Overlap::State::not_looked_at) {
      report.not_looked_at.emplace_back(a, b);
    } else if (overlap.state == Overlap::State::undecided) {
      clash.exact = false;
      clash.cause = "undecided: " + overlap.why;
      report.notes.push_back(
          {fmt::format("{} and {}", model_.occurrences[a].id, model_.occurrences[b].id),
           "whether they share material is undecided: " + overlap.why});
      if (verdict.clashes.empty()) {  // that they clash is decided otherwise
        add(report, a, b, clash);
      }
    }
  }

  const Model& model_;
  const Seats& seats_;
  const SeatSettings& settings_;
  proof::PairSeatsIndex index_;
  std::vector<std::optional<proof::FaceBounds>> bounds_;
  std::vector<Verdict> verdicts_;
  std::vector<std::size_t> verdict_of_;  ///< for each near pair
  std::vector<OpenPair> open_;
};

}  // namespace

ClashReport find_clashes(const Model& model, const Seats& seats, const SeatSettings& settings,
                         const ReadLimits& limits) {
  Search search(model, seats, settings);
  search.look();
  return search.report(proof::exact_overlaps(model.shapes.get(), search.open(), limits));
}

}  // namespace spotblue
