#pragma once
/// @file
/// Whether a radial seat is pressed.

#include "spotblue/base/words.hpp"

namespace spotblue {

/// Clearance at every limit, a fit that may come out either way, or interference at every limit.
enum class Pressing { none, perhaps, always };
constexpr auto describe(const Pressing*) {
  return words(
      "Whether a seat is pressed: not, perhaps (it may come out either way), or at every "
      "limit.",
      "not pressed", "may be pressed", "pressed");
}

}  // namespace spotblue
