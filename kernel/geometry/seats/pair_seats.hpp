#pragma once
/// @file
/// The seats of each pair of occurrences, found once for all.

#include <cstdint>
#include <unordered_map>
#include <utility>

#include "geometry/seats/accounted.hpp"

namespace spotblue::proof {

/// Seats by pair of occurrences; lookup in constant time.
class PairSeatsIndex {
 public:
  explicit PairSeatsIndex(const Seats& seats);
  /// Empty lists for a pair without seats. The order of a and b does not matter.
  [[nodiscard]] const PairSeats& of(OccurrenceId a, OccurrenceId b) const;

 private:
  std::unordered_map<std::uint64_t, PairSeats> seats_;
  PairSeats none_;
};

/// Alike for pairs of the same products whose seats join the same features.
[[nodiscard]] std::uint64_t signature(const Seats& seats, const PairSeats& pair, OccurrenceId a);

}  // namespace spotblue::proof
