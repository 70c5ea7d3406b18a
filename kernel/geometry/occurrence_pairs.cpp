#include "geometry/occurrence_pairs.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <numeric>
#include <unordered_map>

namespace spotblue {
namespace {

// Placements nearer than this are the same one: file digits are true to about 1e-9 of the extent.
constexpr double kSamePlace = 1e-7;  // mm
constexpr double kSameTurn = 1e-9;   // rad

struct Key {
  std::array<std::int64_t, 14> parts{};
  bool operator==(const Key&) const = default;
};

struct KeyHash {
  std::size_t operator()(const Key& key) const {
    std::uint64_t h = 1469598103934665603ULL;
    for (const std::int64_t part : key.parts) {
      h = (h ^ static_cast<std::uint64_t>(part)) * 0x9E3779B97F4A7C15ULL;
      h ^= h >> 29;
    }
    return static_cast<std::size_t>(h);
  }
};

Key key_of(const Model& model, std::size_t a, std::size_t b) {
  const Occurrence& first = model.occurrences[a];
  const Occurrence& second = model.occurrences[b];
  const Frame frame = relative_frame(first, second);
  Key key;
  key.parts[0] = static_cast<std::int64_t>(first.product);
  key.parts[1] = static_cast<std::int64_t>(second.product);
  std::size_t at = 2;
  for (const auto& row : frame.rows) {
    for (std::size_t j = 0; j < 3; ++j) {
      key.parts[at++] = std::llround(row[j] / kSameTurn);
    }
    key.parts[at++] = std::llround(row[3] / kSamePlace);
  }
  return key;
}

}  // namespace

Frame relative_frame(const Occurrence& a, const Occurrence& b) {
  return compose(inverse(a.frame), b.frame);
}

std::vector<std::pair<std::size_t, std::size_t>> near_pairs(const Model& model, double reach) {
  const auto& all = model.occurrences;
  std::vector<std::size_t> order(all.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::erase_if(order, [&](std::size_t i) { return is_empty(all[i].box); });
  std::sort(order.begin(), order.end(),
            [&](std::size_t a, std::size_t b) { return all[a].box.low.x < all[b].box.low.x; });
  std::vector<std::pair<std::size_t, std::size_t>> pairs;
  std::vector<std::size_t> open;
  for (const std::size_t i : order) {
    const Box box = grown(all[i].box, reach);
    std::erase_if(open, [&](std::size_t j) { return all[j].box.high.x < box.low.x; });
    for (const std::size_t j : open) {
      if (overlap(box, all[j].box)) {
        pairs.emplace_back(std::min(i, j), std::max(i, j));
      }
    }
    open.push_back(i);
  }
  std::sort(pairs.begin(), pairs.end());
  return pairs;
}

PairKinds pair_kinds(const Model& model,
                     const std::vector<std::pair<std::size_t, std::size_t>>& pairs) {
  PairKinds kinds;
  kinds.kind_of.reserve(pairs.size());
  std::unordered_map<Key, std::size_t, KeyHash> known;
  known.reserve(pairs.size() / 4 + 16);
  for (std::size_t p = 0; p < pairs.size(); ++p) {
    const auto [entry, is_new] =
        known.try_emplace(key_of(model, pairs[p].first, pairs[p].second), kinds.first_pair.size());
    if (is_new) {
      kinds.first_pair.push_back(p);
    }
    kinds.kind_of.push_back(entry->second);
  }
  return kinds;
}

}  // namespace spotblue
