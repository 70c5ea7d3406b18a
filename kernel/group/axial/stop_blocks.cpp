#include "group/axial/stop_blocks.hpp"

#include <algorithm>
#include <limits>

namespace spotblue {
namespace {

constexpr std::size_t kNone = std::numeric_limits<std::size_t>::max();

// Depth first, without recursion: a line may have very many bodies.
class Search {
 public:
  Search(std::size_t bodies, std::span<const BodyPair> pairs)
      : pairs_(pairs),
        at_(bodies),
        depth_(bodies, kNone),
        low_(bodies, 0),
        next_(bodies, 0),
        by_(bodies, kNone),
        block_(pairs.size(), kNone) {
    for (std::size_t i = 0; i < pairs.size(); ++i) {
      at_[pairs[i].a].push_back(i);
      at_[pairs[i].b].push_back(i);
    }
  }

  std::vector<std::size_t> blocks() && {
    for (std::size_t body = 0; body < at_.size(); ++body) {
      if (depth_[body] == kNone) {
        from(body);
      }
    }
    return std::move(block_);
  }

 private:
  void from(std::size_t root) {
    enter(root, kNone);
    while (!way_.empty()) {
      const std::size_t body = way_.back();
      if (next_[body] == at_[body].size()) {
        leave(body);
        continue;
      }
      const std::size_t pair = at_[body][next_[body]++];
      const std::size_t other = pairs_[pair].a == body ? pairs_[pair].b : pairs_[pair].a;
      if (depth_[other] == kNone) {
        open_.push_back(pair);
        enter(other, pair);
      } else if (pair != by_[body] && depth_[other] < depth_[body]) {
        open_.push_back(pair);
        low_[body] = std::min(low_[body], depth_[other]);
      }
    }
  }

  void enter(std::size_t body, std::size_t by) {
    depth_[body] = low_[body] = way_.size();
    by_[body] = by;
    way_.push_back(body);
  }

  void leave(std::size_t body) {
    way_.pop_back();
    if (way_.empty()) {
      return;
    }
    const std::size_t before = way_.back();
    low_[before] = std::min(low_[before], low_[body]);
    if (low_[body] < depth_[before]) {
      return;
    }
    std::size_t pair = kNone;
    do {
      pair = open_.back();
      open_.pop_back();
      block_[pair] = found_;
    } while (pair != by_[body]);
    ++found_;
  }

  std::span<const BodyPair> pairs_;
  std::vector<std::vector<std::size_t>> at_;  // pairs by body
  std::vector<std::size_t> depth_, low_, next_, by_, block_;
  std::vector<std::size_t> way_, open_;
  std::size_t found_ = 0;
};

}  // namespace

StopBlocks::StopBlocks(std::size_t bodies, std::span<const BodyPair> pairs)
    : of_pair_(Search(bodies, pairs).blocks()), blocks_of_(bodies) {
  for (std::size_t i = 0; i < pairs.size(); ++i) {
    bodies_in_.resize(std::max(bodies_in_.size(), of_pair_[i] + 1));
    for (const std::size_t body : {pairs[i].a, pairs[i].b}) {
      blocks_of_[body].push_back(of_pair_[i]);
    }
  }
  for (std::size_t body = 0; body < bodies; ++body) {
    std::vector<std::size_t>& blocks = blocks_of_[body];
    std::sort(blocks.begin(), blocks.end());
    blocks.erase(std::unique(blocks.begin(), blocks.end()), blocks.end());
    for (const std::size_t block : blocks) {
      bodies_in_[block].push_back(body);
    }
  }
}

std::vector<std::size_t> StopBlocks::between(std::size_t a, std::size_t b) const {
  const bool fewer = blocks_of_[a].size() < blocks_of_[b].size();
  const std::vector<std::size_t>& all = blocks_of_[fewer ? b : a];
  for (const std::size_t block : blocks_of_[fewer ? a : b]) {
    if (std::binary_search(all.begin(), all.end(), block)) {
      return {block};
    }
  }
  // Blocks and the bodies they share are a tree: the first way found is the only one.
  std::vector<std::size_t> by(bodies_in_.size(), kNone);  // block it was come from, or itself
  std::vector<std::size_t> found = blocks_of_[a];
  for (const std::size_t block : found) {
    by[block] = block;
  }
  for (std::size_t i = 0; i < found.size(); ++i) {
    for (const std::size_t body : bodies_in_[found[i]]) {
      if (body == b) {
        std::vector<std::size_t> way{found[i]};
        while (by[way.back()] != way.back()) {
          way.push_back(by[way.back()]);
        }
        std::sort(way.begin(), way.end());
        return way;
      }
      for (const std::size_t block : blocks_of_[body]) {
        if (by[block] == kNone) {
          by[block] = found[i];
          found.push_back(block);
        }
      }
    }
  }
  return {};
}

}  // namespace spotblue
