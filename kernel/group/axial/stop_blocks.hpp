#pragma once
// Which bodies stop each other in rings: what hangs on one body alone moves on it whatever stops
// the rest.

#include <cstddef>
#include <span>
#include <vector>

namespace spotblue {

/// Two bodies between which something is, either way round.
struct BodyPair {
  std::size_t a = 0, b = 0;
};

/// The blocks (biconnected components) of a graph of bodies, found by Tarjan's depth-first search
/// (Hopcroft and Tarjan 1973, remembered).
class StopBlocks {
 public:
  /// @param bodies  how many there are; every pair names two of them.
  StopBlocks(std::size_t bodies, std::span<const BodyPair> pairs);

  /// By pair the block it is in; counted from 0.
  [[nodiscard]] const std::vector<std::size_t>& of_pair() const { return of_pair_; }

  /// The blocks on the way from one body to another, ascending: no loop through both leaves them.
  /// Empty where no way leads there.
  [[nodiscard]] std::vector<std::size_t> between(std::size_t a, std::size_t b) const;

 private:
  std::vector<std::size_t> of_pair_;
  std::vector<std::vector<std::size_t>> blocks_of_;  // by body
  std::vector<std::vector<std::size_t>> bodies_in_;  // by block
};

}  // namespace spotblue
