#include "spotblue/geometry/foul.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <optional>
#include <ranges>
#include <span>
#include <tuple>
#include <unordered_map>

#include "base/work_limit.hpp"
#include "geometry/fouls/contact_question.hpp"
#include "geometry/fouls/exact_overlap.hpp"
#include "geometry/fouls/foul_region.hpp"
#include "geometry/fouls/round_ring.hpp"
#include "geometry/fouls/seat_foul.hpp"
#include "geometry/model/tolerances.hpp"
#include "geometry/outline/clear_pair.hpp"
#include "geometry/seats/occurrence_pairs.hpp"
#include "geometry/seats/pair_seats.hpp"
#include "geometry/seats/unnamed_screw.hpp"
#include "spotblue/base/stop.hpp"

namespace spotblue {
namespace {

using proof::Accounted;
using proof::measured;
using proof::OpenPair;
using proof::Overlap;
using proof::OverlapRegion;
using proof::PairSeats;
using proof::shown_by;
using proof::Told;
using proof::ToldFoul;

/// What is known of all pairs that are alike; in the first product's frame.
struct Verdict {
  std::vector<ToldFoul> told;
  bool clear_else = false;  ///< beside what is told nothing is shared
  /// Index of the pair whose solids are asked, if only about contact.
  std::optional<std::size_t> open;
};

std::span<const Line> first_few(const std::vector<Line>& lines, std::size_t most) {
  return std::span(lines).first(std::min(lines.size(), most));
}

class Search {
 public:
  Search(const Model& model, const Seats& seats, const SeatSettings& settings)
      : model_(model), seats_(seats), settings_(settings), index_(seats) {
    bounds_.resize(model.products.size());
  }

  /// Sorts the pairs into kinds and looks at one of each.
  void look() {
    verdict_of_.assign(seats_.near_pairs.size(), kNotLookedAt);
    const PairKinds kinds = pair_kinds(model_, seats_.near_pairs);
    std::unordered_map<std::uint64_t, std::size_t> known;
    auto unknown = seats_.not_looked_at.begin();
    bool over = false;
    for (std::size_t p = 0; p < seats_.near_pairs.size() && !over; ++p) {
      if (unknown != seats_.not_looked_at.end() && *unknown == seats_.near_pairs[p]) {
        // What its seats account for is not known: a press fit would be told as a foul.
        ++unknown;
      } else if (kinds.kind_of[p] != kNoKind) {
        over = !done_within_limits([&] { look_at(p, kinds.kind_of[p], known); });
      }
    }
  }

  [[nodiscard]] const std::vector<OpenPair>& open() const { return open_; }

  [[nodiscard]] FoulReport report(const std::vector<Overlap>& overlaps) const {
    FoulReport report;
    const auto overlaps_asked = std::ranges::count(open_, false, &OpenPair::proved_clear);
    report.effort = {seats_.near_pairs.size(), verdicts_.size(),
                     static_cast<std::size_t>(overlaps_asked)};
    for (std::size_t p = 0; p < verdict_of_.size(); ++p) {
      const auto [a, b] = seats_.near_pairs[p];
      if (verdict_of_[p] == kNotLookedAt || memory_is_up()) {
        report.not_looked_at.emplace_back(a, b);
        continue;
      }
      const Verdict& verdict = verdicts_[verdict_of_[p]];
      if (verdict.open && !open_[*verdict.open].proved_clear) {
        add_open(report, a, b, verdict, overlaps[*verdict.open]);
      } else {
        add_told(report, a, b, verdict, nullptr);
      }
      if (verdict.open && open_[*verdict.open].contact != proof::ContactQuestion::none) {
        add_contact(report, a, b, open_[*verdict.open], overlaps[*verdict.open]);
      }
    }
    std::ranges::stable_sort(report.found, {}, [](const Foul& c) {
      return std::tuple(c.a, c.b, std::string_view(c.cause));
    });
    return report;
  }

 private:
  static constexpr std::size_t kNotLookedAt = static_cast<std::size_t>(-1);

  void look_at(std::size_t p, std::size_t kind,
               std::unordered_map<std::uint64_t, std::size_t>& known) {
    stop_if_asked();
    const auto [a, b] = seats_.near_pairs[p];
    const PairSeats& pair = index_.of(a, b);
    const std::uint64_t key = proof::signature(seats_, pair, a) * 0x9E3779B97F4A7C15ULL + kind;
    const auto entry = known.find(key);
    if (entry != known.end()) {
      verdict_of_[p] = entry->second;
      return;
    }
    verdicts_.push_back(verdict(a, b, pair));
    verdict_of_[p] = verdicts_.size() - 1;
    known.emplace(key, verdict_of_[p]);
  }

  const proof::FaceBounds& bounds(ProductId product) {
    if (!bounds_[product]) {
      bounds_[product] = proof::bounds_of(model_.products[product]);
    }
    return *bounds_[product];
  }

  Verdict verdict(OccurrenceId a, OccurrenceId b, const PairSeats& pair) {
    const Occurrence& first = model_.occurrences[a];
    const Occurrence& second = model_.occurrences[b];
    const Frame to_a = inverse(first.frame);
    const Product& product_a = model_.products[first.product];
    const Product& product_b = model_.products[second.product];
    const double same =
        std::max({settings_.same_length_mm, product_a.uncertainty, product_b.uncertainty});
    const Frame b_to_a = relative_frame(first, second);
    const Accounted explained =
        proof::account_for(model_, seats_, pair, settings_, to_a, Told::too);
    const proof::Pair placed{
        bounds(first.product), bounds(second.product), b_to_a, inverse(b_to_a), explained, same};
    Verdict verdict{.told = told_fouls(pair, to_a, same),
                    .clear_else = proof::proved_clear(placed),
                    .open = {}};
    if (!verdict.clear_else && verdict.told.empty()) {
      if (auto ring = proof::round_ring_fouls(placed)) {
        verdict.told = std::move(*ring);
        verdict.clear_else = true;
      }
    }
    const bool all_certain = std::ranges::all_of(verdict.told, &ToldFoul::certain);
    const bool overlap_open = !verdict.clear_else || (!all_certain && model_.shapes != nullptr);
    // Solids that no shape is there for can not be measured: only free forms are told then.
    const auto contact = verdict.told.empty()
                             ? proof::contact_question(
                                   placed.a, placed.b, b_to_a,
                                   bear_on_each_other(pair) || model_.shapes == nullptr, settings_)
                             : proof::ContactQuestion::none;
    if (overlap_open || contact != proof::ContactQuestion::none) {
      verdict.open = open_.size();
      OpenPair open = open_pair(first.product, second.product, placed);
      open.accounted = proof::account_for(model_, seats_, pair, settings_, to_a, Told::apart);
      open.proved_clear = !overlap_open;
      open.contact = contact;
      for (const ToldFoul& told : verdict.told) {
        if (told.foul.at) {
          open.inside.push_back(*told.foul.at);
        }
      }
      open_.push_back(std::move(open));
    }
    return verdict;
  }

  [[nodiscard]] OpenPair open_pair(ProductId product_a, ProductId product_b,
                                   const proof::Pair& placed) const {
    OpenPair open;
    open.product_a = product_a;
    open.product_b = product_b;
    open.b_to_a = placed.b_to_a;
    open.directions = directions(placed);
    open.axes = axes(placed);
    open.most_shared = std::min(most_volume(product_a), most_volume(product_b));
    open.same_length = placed.same_length;
    open.reach = settings_.radial_gap_mm;
    return open;
  }

  [[nodiscard]] double most_volume(ProductId product) const {
    return model_.products[product].volume + model_.products[product].volume_error;
  }

  /// Whether a seat or thread says how the two bear on each other: faces that stand apart do not.
  [[nodiscard]] bool bear_on_each_other(const PairSeats& pair) const {
    return !pair.radial.empty() || !pair.taper.empty() || !pair.width.empty() ||
           !pair.threads.empty() || std::ranges::any_of(pair.axial, [&](std::size_t i) {
             return seats_.axial[i].gap <= proof::kTouching;
           });
  }

  [[nodiscard]] std::vector<ToldFoul> told_fouls(const PairSeats& pair, const Frame& to_a,
                                                 double same) const {
    const proof::FoulScene scene{model_, seats_, settings_, to_a};
    std::vector<ToldFoul> found;
    for (const std::size_t i : pair.radial) {
      if (seats_.radial[i].fouls_by > same) {
        found.push_back(proof::radial_foul(scene, seats_.radial[i]));
      }
    }
    for (const std::size_t i : pair.taper) {
      if (seats_.taper[i].fouls_by > same) {
        found.push_back(proof::taper_foul(scene, seats_.taper[i]));
      }
    }
    for (const std::size_t i : pair.axial) {
      if (-seats_.axial[i].gap > same) {
        found.push_back(proof::axial_foul(scene, seats_.axial[i]));
      }
    }
    return found;
  }

  /// Lines away from which a part might be moved clear.
  static std::vector<Line> axes(const proof::Pair& pair) {
    constexpr std::size_t kOfEach = 6;
    std::vector<Line> found;
    const auto add = [&](const Line& line) {
      const bool known = std::ranges::any_of(found, [&](const Line& k) {
        return distance(k, line.at) < kOnePlace &&
               norm(cross(k.along, line.along)) < kSameDirection;
      });
      if (!known) {
        found.push_back(line);
      }
    };
    std::ranges::for_each(pair.accounted.axes, add);
    for (const Line& line : first_few(pair.a.axes, kOfEach)) {
      add(line);
    }
    for (const Line& line : first_few(pair.b.axes, kOfEach)) {
      add(place_line(pair.b_to_a, line));
    }
    return found;
  }

  /// Ways a part might be moved clear: square to either's planes, along axes, along coordinates.
  static std::vector<Direction> directions(const proof::Pair& pair) {
    std::vector<Direction> found{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
    const auto add = [&](Direction d) {
      const bool known = std::ranges::any_of(
          found, [&](Direction k) { return angle_between_lines(k, d) < kNoTurn; });
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

  void add(FoulReport& report, OccurrenceId a, OccurrenceId b, Foul foul) const {
    promise_memory(kBytesPerRow);
    foul.a = a;
    foul.b = b;
    if (foul.length && !(*foul.length > 0.0)) {
      foul.length.reset();
    }
    if (foul.at) {
      foul.at = place_point(model_.occurrences[a].frame, *foul.at);
    }
    report.found.push_back(std::move(foul));
  }

  /// Whether what is told by numbers is the row: certain, and no piece of the overlap is it and
  /// something else too. A shaft askew overlaps at both ends of one seat that fouls.
  static bool stands_alone(const ToldFoul& told, const Verdict& verdict, const Overlap& overlap) {
    return told.certain && std::ranges::none_of(overlap.regions, [&](const OverlapRegion& region) {
             const auto shown = shown_by(region, verdict.told);
             return shown.size() > 1 && std::ranges::count(shown, &told) > 0;
           });
  }

  /// What is told by numbers. Where the solids answered, only what is certain without them.
  void add_told(FoulReport& report, OccurrenceId a, OccurrenceId b, const Verdict& verdict,
                const Overlap* overlap) const {
    const bool answered = overlap != nullptr && (overlap->state == Overlap::State::clear ||
                                                 overlap->state == Overlap::State::shared);
    for (const ToldFoul& told : verdict.told) {
      if (answered && !stands_alone(told, verdict, *overlap)) {
        continue;
      }
      Foul foul = told.foul;
      foul.exact = foul.exact && (overlap == nullptr || told.certain);
      add(report, a, b, foul);
    }
  }

  void add_contact(FoulReport& report, OccurrenceId a, OccurrenceId b, const OpenPair& pair,
                   const Overlap& overlap) const {
    promise_memory(kBytesPerRow);
    Contact contact{.a = a, .b = b};
    if (overlap.state == Overlap::State::clear && overlap.contact) {
      contact.gap = overlap.contact->gap;
      contact.at = place_point(model_.occurrences[a].frame, overlap.contact->at);
      contact.a_face = proof::form_name(overlap.contact->a);
      contact.b_face = proof::form_name(overlap.contact->b);
      report.contacts.push_back(std::move(contact));
    } else if (overlap.state == Overlap::State::clear && !overlap.no_contact_why.empty()) {
      contact.why = overlap.no_contact_why;
      report.contacts.push_back(std::move(contact));
    } else if (overlap.state == Overlap::State::undecided && pair.proved_clear) {
      contact.why = overlap.why;
      report.contacts.push_back(std::move(contact));
    } else if (overlap.state == Overlap::State::not_looked_at && pair.proved_clear) {
      report.not_looked_at.emplace_back(a, b);
    }
  }

  void add_open(FoulReport& report, OccurrenceId a, OccurrenceId b, const Verdict& verdict,
                const Overlap& overlap) const {
    add_told(report, a, b, verdict, &overlap);
    for (const OverlapRegion& region : overlap.regions) {
      const auto shown = shown_by(region, verdict.told);
      if (shown.size() != 1 || !stands_alone(*shown.front(), verdict, overlap)) {
        add(report, a, b, measured(region, shown));
      }
    }
    if (overlap.state == Overlap::State::shared) {
      const Occurrence& first = model_.occurrences[a];
      const Occurrence& second = model_.occurrences[b];
      if (auto screw =
              unnamed_thread(model_.products[first.product], model_.products[second.product],
                             relative_frame(first, second), settings_)) {
        report.unnamed_screws.push_back(
            {{screw->hole_first ? a : b, FeatureKind::cylinder, screw->hole},
             {screw->hole_first ? b : a, FeatureKind::cylinder, screw->screw},
             std::move(screw->thread)});
      }
    } else if (overlap.state == Overlap::State::not_looked_at) {
      report.not_looked_at.emplace_back(a, b);
    } else if (overlap.state == Overlap::State::undecided && !verdict.clear_else) {
      report.notes.push_back(
          {fmt::format("{} and {}", model_.occurrences[a].id, model_.occurrences[b].id),
           "whether they share material is undecided: " + overlap.why});
      if (verdict.told.empty()) {  // that they foul is decided otherwise
        add(report, a, b, {.at = {}, .exact = false, .cause = "undecided: " + overlap.why});
      }
    }
  }

  const Model& model_;
  const Seats& seats_;
  const SeatSettings& settings_;
  proof::PairSeatsIndex index_;
  std::vector<std::optional<proof::FaceBounds>> bounds_;
  std::vector<Verdict> verdicts_;
  std::vector<std::size_t> verdict_of_;  ///< for each near pair; kNotLookedAt past a limit
  std::vector<OpenPair> open_;
};

}  // namespace

FoulReport find_fouls(const Model& model, const Seats& seats, const SeatSettings& settings,
                      const ReadLimits& limits) {
  Search search(model, seats, settings);
  search.look();
  return search.report(proof::exact_overlaps(model.shapes.get(), search.open(), limits));
}

}  // namespace spotblue
