#include "spotblue/geometry/seats.hpp"

#include <algorithm>
#include <memory>

#include "base/work_limit.hpp"
#include "geometry/seats/near_parts.hpp"
#include "geometry/seats/occurrence_pairs.hpp"
#include "geometry/seats/open_pairs.hpp"
#include "geometry/seats/seat_collector.hpp"
#include "spotblue/base/stop.hpp"

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

void expect_all(const PairKinds& kinds,
                const std::vector<std::unique_ptr<const PairCandidates>>& candidates,
                SeatCollector& collector) {
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
  SeatCollector collector(model, settings, seats);
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
