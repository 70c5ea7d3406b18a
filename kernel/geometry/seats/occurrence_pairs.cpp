#include "geometry/seats/occurrence_pairs.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <functional>
#include <numeric>
#include <optional>
#include <unordered_map>

#include "base/work_limit.hpp"
#include "spotblue/base/stop.hpp"
#include "spotblue/geometry/settings.hpp"

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

Key key_of(const Model& model, OccurrenceId a, OccurrenceId b) {
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

// Boxes halved again and again by where their middles lie, along whichever side is longest: finding
// those near a box costs about the logarithm of their number, however they lie.
class BoxTree {
 public:
  explicit BoxTree(const Model& model) : model_(model) {
    for (OccurrenceId i; i < model.occurrences.size(); ++i) {
      if (!is_empty(model.occurrences[i].box)) {
        order_.push_back(i);
      }
    }
    if (!order_.empty()) {
      build(0, order_.size());
    }
  }

  void find(const Box& near, const auto& use) const {
    if (!nodes_.empty()) {
      find(0, near, use);
    }
  }

 private:
  static constexpr std::size_t kLeaf = 8;
  struct Node {
    Box box;
    std::size_t from = 0, to = 0;
    std::size_t second = 0;  // number of the second half; the first comes next; 0 for a leaf
  };

  [[nodiscard]] const Box& box(std::size_t at) const { return model_.occurrences[order_[at]].box; }

  std::size_t build(std::size_t from, std::size_t to) {
    const std::size_t number = nodes_.size();
    nodes_.push_back({{}, from, to, 0});
    Box whole;
    for (std::size_t i = from; i < to; ++i) {
      extend(whole, box(i).low);
      extend(whole, box(i).high);
    }
    nodes_[number].box = whole;
    if (to - from <= kLeaf) {
      return number;
    }
    const Point size = whole.high - whole.low;
    const auto twice_middle = [&](OccurrenceId i) {
      const Box& one = model_.occurrences[i].box;
      return size.x >= size.y && size.x >= size.z ? one.low.x + one.high.x
             : size.y >= size.z                   ? one.low.y + one.high.y
                                                  : one.low.z + one.high.z;
    };
    const auto half = [&](std::size_t at) {
      return order_.begin() + static_cast<std::ptrdiff_t>(at);
    };
    const std::size_t middle = from + (to - from) / 2;
    std::nth_element(half(from), half(middle), half(to), [&](OccurrenceId a, OccurrenceId b) {
      return std::pair(twice_middle(a), a) < std::pair(twice_middle(b), b);
    });
    build(from, middle);
    const std::size_t second = build(middle, to);
    nodes_[number].second = second;
    return number;
  }

  void find(std::size_t number, const Box& near, const auto& use) const {
    const Node& node = nodes_[number];
    if (!overlap(near, node.box)) {
      return;
    }
    if (node.second != 0) {
      find(number + 1, near, use);
      find(node.second, near, use);
      return;
    }
    for (std::size_t i = node.from; i < node.to; ++i) {
      if (overlap(near, box(i))) {
        use(order_[i]);
      }
    }
  }

  const Model& model_;
  std::vector<OccurrenceId> order_;
  std::vector<Node> nodes_;
};

// What seats and fouls keep of a near pair, whatever is found of it; half of the memory may go
// on that. Choices of this program, no source.
constexpr double kBytesPerPair = 150.0;
constexpr double kShareOfPairs = 0.5;

std::size_t most_pairs() {
  const double left_mb = std::min(memory_mb_left(), ReadLimits{}.memory_mb);
  return static_cast<std::size_t>(std::max(0.0, kShareOfPairs * left_mb * 1e6 / kBytesPerPair));
}

// For each occurrence how many others come near it.
std::vector<std::size_t> neighbour_counts(const Model& model, const BoxTree& tree, double reach) {
  std::vector<std::size_t> counts(model.occurrences.size(), 0);
  for (OccurrenceId i; i < counts.size(); ++i) {
    stop_if_asked();
    const Box& own = model.occurrences[i].box;
    if (!is_empty(own)) {
      tree.find(grown(own, reach), [&](OccurrenceId j) { counts[i] += j != i ? 1U : 0U; });
    }
  }
  return counts;
}

// The parts that most others come near, as many as it takes for the pairs of the others to be few
// enough.
std::vector<bool> crowd_of(const std::vector<std::size_t>& counts, std::size_t most) {
  std::vector<std::size_t> order(counts.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::ranges::stable_sort(order, std::greater{}, [&](std::size_t i) { return counts[i]; });
  std::size_t ends = std::accumulate(counts.begin(), counts.end(), std::size_t{0});
  std::vector<bool> crowd(counts.size(), false);
  for (const std::size_t i : order) {
    if (ends / 2 <= most) {
      break;
    }
    ends -= counts[i];
    crowd[i] = true;
  }
  return crowd;
}

// Nothing when there are more than that.
std::optional<NearPairs> all_pairs(const Model& model, const BoxTree& tree, double reach,
                                   std::size_t most) {
  NearPairs near;
  for (OccurrenceId i; i < model.occurrences.size(); ++i) {
    stop_if_asked();
    const Box& own = model.occurrences[i].box;
    if (is_empty(own)) {
      continue;
    }
    const auto of_this = static_cast<std::ptrdiff_t>(near.pairs.size());
    tree.find(grown(own, reach), [&](OccurrenceId j) {
      if (j > i) {
        near.pairs.emplace_back(i, j);
      }
    });
    std::sort(near.pairs.begin() + of_this, near.pairs.end());
    if (near.pairs.size() > most) {
      return std::nullopt;
    }
  }
  return near;
}

NearPairs pairs_outside_crowd(const Model& model, const BoxTree& tree, double reach,
                              std::size_t most) {
  NearPairs near;
  const std::vector<std::size_t> counts = neighbour_counts(model, tree, reach);
  const std::vector<bool> crowd = crowd_of(counts, most);
  std::vector<bool> beside(crowd.size(), false);
  for (OccurrenceId i; i < crowd.size(); ++i) {
    stop_if_asked();
    if (crowd[i]) {
      near.crowd.push_back(i);
      continue;
    }
    const Box& own = model.occurrences[i].box;
    if (is_empty(own)) {
      continue;
    }
    const auto of_this = static_cast<std::ptrdiff_t>(near.pairs.size());
    tree.find(grown(own, reach), [&](OccurrenceId j) {
      if (crowd[j]) {
        beside[i] = true;
      } else if (j > i) {
        near.pairs.emplace_back(i, j);
      }
    });
    std::sort(near.pairs.begin() + of_this, near.pairs.end());
  }
  for (const auto& [i, j] : near.pairs) {
    near.beside_crowd.push_back(beside[i] && beside[j]);
  }
  return near;
}

}  // namespace

Frame relative_frame(const Occurrence& a, const Occurrence& b) {
  return compose(inverse(a.frame), b.frame);
}

NearPairs near_pairs(const Model& model, double reach) {
  const BoxTree tree(model);
  const std::size_t most = most_pairs();
  std::optional<NearPairs> near = all_pairs(model, tree, reach, most);
  return near ? std::move(*near) : pairs_outside_crowd(model, tree, reach, most);
}

PairKinds pair_kinds(const Model& model, const std::vector<OccurrencePair>& pairs) {
  PairKinds kinds;
  kinds.kind_of.assign(pairs.size(), kNoKind);
  std::unordered_map<Key, std::size_t, KeyHash> known;
  (void)done_within_limits([&] {
    known.reserve(pairs.size() / 4 + 16);
    for (std::size_t p = 0; p < pairs.size(); ++p) {
      stop_if_asked();
      const auto [entry, is_new] = known.try_emplace(key_of(model, pairs[p].first, pairs[p].second),
                                                     kinds.first_pair.size());
      if (is_new) {
        kinds.first_pair.push_back(p);
      }
      kinds.kind_of[p] = entry->second;
    }
  });
  return kinds;
}

}  // namespace spotblue
