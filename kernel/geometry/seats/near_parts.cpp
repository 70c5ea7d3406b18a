#include "geometry/seats/near_parts.hpp"

#include <algorithm>
#include <numeric>

namespace spotblue {

Adjacency adjacency(const Model& model, const std::vector<OccurrencePair>& pairs) {
  Adjacency near(model.occurrences.size());
  for (std::size_t p = 0; p < pairs.size(); ++p) {
    near[pairs[p].first].emplace_back(pairs[p].second, p);
    near[pairs[p].second].emplace_back(pairs[p].first, p);
  }
  for (auto& list : near) {
    std::sort(list.begin(), list.end());
  }
  return near;
}

std::vector<std::size_t> cheap_first(const Adjacency& near,
                                     const std::vector<OccurrencePair>& pairs) {
  constexpr std::size_t kFew = 500;  // choice of this program, no source
  std::vector<std::size_t> order(pairs.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_partition(order.begin(), order.end(), [&](std::size_t p) {
    return std::min(near[pairs[p].first].size(), near[pairs[p].second].size()) <= kFew;
  });
  return order;
}

// A plate with thousands of pins is near them all, and each pin near few; of copies in one place
// each is near all. What the shorter list holds is looked up in the longer, in steps that double.
std::vector<SharedNeighbour> shared_neighbours(const Adjacency& near, OccurrenceId a,
                                               OccurrenceId b) {
  std::vector<SharedNeighbour> shared;
  const bool a_shorter = near[a].size() <= near[b].size();
  const auto& few = a_shorter ? near[a] : near[b];
  const auto& many = a_shorter ? near[b] : near[a];
  std::size_t from = 0;
  for (const auto& one : few) {
    std::size_t step = 1;
    while (from + step < many.size() && many[from + step].first < one.first) {
      step *= 2;
    }
    const auto begin = many.begin() + static_cast<std::ptrdiff_t>(from);
    const auto end =
        many.begin() + static_cast<std::ptrdiff_t>(std::min(from + step + 1, many.size()));
    const auto found =
        std::lower_bound(begin, end, one.first,
                         [](const auto& each, OccurrenceId wanted) { return each.first < wanted; });
    from = static_cast<std::size_t>(found - many.begin());
    if (from == many.size()) {
      break;
    }
    if (found->first == one.first) {
      shared.push_back({one.first, a_shorter ? one.second : found->second});
    }
  }
  return shared;
}

}  // namespace spotblue
