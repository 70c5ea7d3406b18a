#pragma once
// The loop of an end play as numbers: at the bench, and warm.

#include <optional>
#include <string>
#include <vector>

#include "group/axial/end_play.hpp"

namespace spotblue {

/// One length of the stack, told as a person would check it.
struct StackLength {
  StackDimension dimension;
  LengthSource source = LengthSource::as_found;
  std::string how;
  OccurrenceId part{};   ///< occurrence the length belongs to
  bool to_make = false;  ///< whether that part is still to be made
};

struct EndPlayStack {
  std::vector<StackLength> lengths;
  Limits worst;
  Limits root_sum_square;
  std::optional<Limits> warm;  ///< worst case; nothing where all stays at bench temperature ...
  std::string warm_unknown;    ///< ... or where a part's material, named here, is not known
};

/// The loop, or where a gap was taken with a feeler while the group stood against its other stop,
/// that gap.
/// @pre play.closed
[[nodiscard]] EndPlayStack stack_of(const DeclaredJob& declared, const EndPlay& play);

[[nodiscard]] std::vector<StackDimension> dimensions_of(const EndPlayStack& stack);

/// The sizes that one length may have so that the play comes out within the limits whatever the
/// others are; reversed where there are none.
[[nodiscard]] Limits room_for(const EndPlayStack& stack, std::size_t length, Limits wanted);

}  // namespace spotblue
