#pragma once
// Which parts come near each part, from the pairs that do.

#include <cstddef>
#include <utility>
#include <vector>

#include "spotblue/geometry/model.hpp"

namespace spotblue {

// For each occurrence its near occurrences with the index of the pair, ascending.
using Adjacency = std::vector<std::vector<std::pair<OccurrenceId, std::size_t>>>;

[[nodiscard]] Adjacency adjacency(const Model& model, const std::vector<OccurrencePair>& pairs);

// The pairs in the order in which they are best looked at: those whose parts both have hundreds of
// others near, as copies in one place have, come last, since each of them costs as much as hundreds
// of others.
[[nodiscard]] std::vector<std::size_t> cheap_first(const Adjacency& near,
                                                   const std::vector<OccurrencePair>& pairs);

struct SharedNeighbour {
  OccurrenceId occurrence;
  std::size_t pair_with_first;
};

// The occurrences near both, ascending.
[[nodiscard]] std::vector<SharedNeighbour> shared_neighbours(const Adjacency& near, OccurrenceId a,
                                                             OccurrenceId b);

}  // namespace spotblue
