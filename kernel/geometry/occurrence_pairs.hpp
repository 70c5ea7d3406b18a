#pragma once
// Which occurrences come near each other, and which of those pairs are alike.

#include <cstdint>
#include <utility>
#include <vector>

#include "spotblue/geometry/model.hpp"

namespace spotblue {

// Pairs i < j whose boxes come within `reach` mm of each other, ascending. Cost grows with parts
// and pairs, however they lie. Throws Error unreadable when there are more pairs than can be looked
// at: many copies in one place.
[[nodiscard]] std::vector<std::pair<std::size_t, std::size_t>> near_pairs(const Model& model,
                                                                          double reach);

// Pairs of the same two products in the same relative placement share a kind; each kind is measured
// once, on its first pair.
struct PairKinds {
  std::vector<std::size_t> kind_of;     // for each pair
  std::vector<std::size_t> first_pair;  // for each kind: index of the pair that stands for it
};
[[nodiscard]] PairKinds pair_kinds(const Model& model,
                                   const std::vector<std::pair<std::size_t, std::size_t>>& pairs);

// Placement of b's product in a's product frame.
[[nodiscard]] Frame relative_frame(const Occurrence& a, const Occurrence& b);

}  // namespace spotblue
