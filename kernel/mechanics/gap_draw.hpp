#pragma once
// Many gaps drawn by lot, in blocks that give one answer on any number of threads, and what they
// come to.

#include <functional>
#include <random>
#include <span>
#include <vector>

#include "spotblue/mechanics/stack.hpp"
#include "spotblue/mechanics/stack_draw.hpp"

namespace spotblue {

/// Lengths by lot, mm, one after another.
class LengthDraw {
 public:
  LengthDraw(std::uint64_t seed, std::size_t block);
  /// How far a length is from the middle of its limits.
  [[nodiscard]] double off_middle(const StackDimension& dimension);

 private:
  std::mt19937_64 random_;
  std::normal_distribution<double> normal_;
};

/// Fills its gaps, on any thread.
using DrawBlock = std::function<void(LengthDraw&, std::span<double>)>;

/// @throws Error bad_input for no samples or too many, and whatever a block throws.
[[nodiscard]] std::vector<double> draw_blocks(const StackDraw& draw, const DrawBlock& block);

/// @pre gaps is not empty
[[nodiscard]] StackOutcome outcome_of(std::vector<double> gaps, Limits wanted);

}  // namespace spotblue
