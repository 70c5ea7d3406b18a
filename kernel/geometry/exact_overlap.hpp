#pragma once
/// @file
/// What two placed solids share, by the kernel's boolean, for the pairs no proof has cleared.

#include <span>
#include <string>
#include <vector>

#include "geometry/accounted.hpp"
#include "spotblue/geometry/settings.hpp"

namespace spotblue::proof {

/// A pair of products, in the first one's frame.
struct OpenPair {
  std::size_t product_a = 0, product_b = 0;
  Frame b_to_a;
  Accounted accounted;                ///< cut away before anything is measured
  std::vector<Direction> directions;  ///< along which the depth may be least
  double same_length = 0.0;
};

/// What is left of the overlap, in the first product's frame.
struct Overlap {
  enum class State { clear, shared, undecided, not_looked_at };
  State state = State::undecided;
  double volume = 0.0;  ///< mm3
  double depth = 0.0;   ///< mm
  Point at;
  std::string why;  ///< one line, when undecided
};

/// Decides each pair in a contained child; a pair that a TimeLimit leaves no time for is not looked
/// at; a pair that crashes or runs out of time is undecided and
/// the rest goes on. `shapes` may be null: then every pair is undecided.
[[nodiscard]] std::vector<Overlap> exact_overlaps(const ShapeStore* shapes,
                                                  std::span<const OpenPair> pairs,
                                                  const ReadLimits& limits);

}  // namespace spotblue::proof
