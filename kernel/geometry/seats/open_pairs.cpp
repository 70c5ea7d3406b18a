#include "geometry/seats/open_pairs.hpp"

#include <algorithm>
#include <utility>

namespace spotblue {

OpenPairs::OpenPairs(const Model& model, const PairKinds& kinds, const Adjacency& near,
                     const SeatSettings& settings)
    : model_(model),
      kinds_(kinds),
      near_(near),
      settings_(settings),
      faces_(model.products.size()) {}

std::size_t OpenPairs::SignatureHash::operator()(const std::vector<std::size_t>& parts) const {
  std::size_t h = 1469598103934665603ULL;
  for (const std::size_t part : parts) {
    h = (h ^ part) * 0x9E3779B97F4A7C15ULL;
    h ^= h >> 29;
  }
  return h;
}

NearPart OpenPairs::near_part(OccurrenceId to, OccurrenceId occurrence) {
  const Occurrence& part = model_.occurrences[occurrence];
  std::optional<proof::FaceBounds>& faces = faces_[part.product];
  if (!faces) {
    faces = proof::bounds_of(model_.products[part.product]);
  }
  return {&model_.products[part.product], &*faces,
          to == occurrence ? Frame{} : relative_frame(model_.occurrences[to], part)};
}

const OpenSeats& OpenPairs::of(std::size_t pair, OccurrenceId a, OccurrenceId b,
                               const PairCandidates& c) {
  const std::vector<SharedNeighbour> shared = shared_neighbours(near_, a, b);
  std::vector<std::size_t> signature{kinds_.kind_of[pair]};
  for (const SharedNeighbour& n : shared) {
    signature.push_back(2 * kinds_.kind_of[n.pair_with_first] + (n.occurrence < a ? 1U : 0U));
  }
  std::sort(signature.begin() + 1, signature.end());
  const auto found = known_.find(signature);
  if (found != known_.end()) {
    return found->second;
  }
  std::vector<NearPart> others;
  others.reserve(shared.size());
  for (const SharedNeighbour& n : shared) {
    others.push_back(near_part(a, n.occurrence));
  }
  const Surroundings around{near_part(a, a), near_part(a, b), others};
  return known_.emplace(std::move(signature), open_seats(c, around, settings_)).first->second;
}

}  // namespace spotblue
