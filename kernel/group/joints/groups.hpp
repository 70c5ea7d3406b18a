#pragma once
// Which parts are held to each other, so that they turn or move along their axis as one.

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "group/match/declared.hpp"

namespace spotblue {

enum class HeldBy { press, key, thread, declared };

/// Two occurrences held to each other.
struct Hold {
  OccurrenceId a{}, b{};
  HeldBy by = HeldBy::press;
  bool along = false;    ///< the one cannot be moved along the axis without the other
  bool turning = false;  ///< nor turned
  std::string why;       ///< "pressed, H7/s6", "clamped by the thread M8"
};

/// By occurrence the number of its group, counted from 0 in the order of the first member.
struct Groups {
  std::vector<std::size_t> turns_with;
  std::vector<std::size_t> moves_with;
  std::vector<Hold> holds;
};

/// Finds what holds what.
///
/// - press: a radial seat whose wanted fit, or whose sizes where none is wanted, have interference
///   at every limit. A transition fit may come out loose and holds nothing unless declared.
/// - key: a key turns with the parts whose slots it lies in, along the axis only with the one it
///   fits tightest. A tongue of one part in a slot of another on one centre line turns with it.
/// - thread: a screw or nut holds the part it is screwed to, and clamps what lies in a chain of
///   touching faces (or cones) between the two. A screw from the side whose end reaches the shaft
///   in its part's bore holds that shaft.
/// - declared: [[joins]].
///
/// @throws Error of the standards or of the names, with the job's file and line.
[[nodiscard]] Groups find_groups(const DeclaredJob& declared);

/// Whether the two faces of an axial seat bear on each other as modelled: the same place to
/// rounding, or within what a declared touch allows.
[[nodiscard]] bool touches(const DeclaredJob& declared, std::size_t axial_seat);

}  // namespace spotblue
