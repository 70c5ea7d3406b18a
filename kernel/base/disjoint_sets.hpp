#pragma once
/// @file
/// Sets that only ever join.

#include <cstddef>
#include <map>
#include <numeric>
#include <utility>
#include <vector>

namespace spotblue {

/// The numbers below `size`, each at first a set of its own; the least member stands for its set.
class DisjointSets {
 public:
  explicit DisjointSets(std::size_t size) : parent_(size) {
    std::iota(parent_.begin(), parent_.end(), std::size_t{0});
  }
  /// The least member of the set that `i` is in.
  [[nodiscard]] std::size_t root(std::size_t i) {
    while (parent_[i] != i) {
      i = parent_[i] = parent_[parent_[i]];
    }
    return i;
  }
  void join(std::size_t a, std::size_t b) {
    a = root(a);
    b = root(b);
    if (b < a) {
      std::swap(a, b);
    }
    parent_[b] = a;
  }
  /// The set of each, numbered from 0 in the order of the least members.
  [[nodiscard]] std::vector<std::size_t> numbers() {
    std::map<std::size_t, std::size_t> number_of;
    std::vector<std::size_t> numbers;
    numbers.reserve(parent_.size());
    for (std::size_t i = 0; i < parent_.size(); ++i) {
      numbers.push_back(number_of.try_emplace(root(i), number_of.size()).first->second);
    }
    return numbers;
  }

 private:
  std::vector<std::size_t> parent_;
};

}  // namespace spotblue
