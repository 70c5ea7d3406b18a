#pragma once
// What stands open of each pair's candidates among all that is near both parts.

#include <cstddef>
#include <optional>
#include <unordered_map>
#include <vector>

#include "geometry/seats/near_parts.hpp"
#include "geometry/seats/occurrence_pairs.hpp"
#include "geometry/seats/open_seats.hpp"

namespace spotblue {

// Pairs that are alike among neighbours that are alike are measured once.
class OpenPairs {
 public:
  // All must outlive this.
  OpenPairs(const Model& model, const PairKinds& kinds, const Adjacency& near,
            const SeatSettings& settings);

  // Told by the kinds of pairs that the two make with each other and with what is near both.
  const OpenSeats& of(std::size_t pair, OccurrenceId a, OccurrenceId b, const PairCandidates& c);

 private:
  struct SignatureHash {
    std::size_t operator()(const std::vector<std::size_t>& parts) const;
  };
  NearPart near_part(OccurrenceId to, OccurrenceId occurrence);

  const Model& model_;
  const PairKinds& kinds_;
  const Adjacency& near_;
  const SeatSettings& settings_;
  // The bounds of each product's faces, made when first asked for.
  std::vector<std::optional<proof::FaceBounds>> faces_;
  std::unordered_map<std::vector<std::size_t>, OpenSeats, SignatureHash> known_;
};

}  // namespace spotblue
