#pragma once
// Which occurrences come near each other, and which of those pairs are alike.

#include <cstdint>
#include <utility>
#include <vector>

#include "spotblue/geometry/model.hpp"

namespace spotblue {

struct NearPairs {
  std::vector<OccurrencePair> pairs;  // i < j, ascending
  std::vector<OccurrenceId> crowd;    // parts that have too many, ascending: theirs are left out
  // For each pair whether a part of the crowd comes near both, so that what lies between is not
  // known; empty without a crowd.
  std::vector<bool> beside_crowd;
};

// Pairs whose boxes come within `reach` mm of each other. Cost grows with parts and pairs, however
// they lie. Where the memory of this thread's limit holds no list of them, the most crowded parts
// are left out: many copies in one place. Throws LimitReached.
[[nodiscard]] NearPairs near_pairs(const Model& model, double reach);

inline constexpr std::size_t kNoKind = static_cast<std::size_t>(-1);

// Pairs of the same two products in the same relative placement share a kind; each kind is measured
// once, on its first pair.
struct PairKinds {
  std::vector<std::size_t> kind_of;     // for each pair; kNoKind where a limit was reached before
  std::vector<std::size_t> first_pair;  // for each kind: index of the pair that stands for it
};
[[nodiscard]] PairKinds pair_kinds(const Model& model, const std::vector<OccurrencePair>& pairs);

// Placement of b's product in a's product frame.
[[nodiscard]] Frame relative_frame(const Occurrence& a, const Occurrence& b);

}  // namespace spotblue
