#pragma once
// Nuts, collars and shims that the job says are set, as what they are in the model.

#include <cstddef>
#include <optional>
#include <vector>

#include "group/joints/groups.hpp"
#include "group/match/declared.hpp"
#include "spotblue/base/interval.hpp"

namespace spotblue {

/// One occurrence that is set.
struct SetPart {
  const Adjust* adjust = nullptr;
  OccurrenceId part{};
  bool held = false;                    ///< to others, on which it has its place; else a shim
  std::optional<FeatureRef> from, to;   ///< faces that the length lies between, where given
  std::optional<std::size_t> thread{};  ///< of the look's threads, that it is screwed by
};

/// By entry and occurrence.
/// @throws Error bad_input naming job file and line for names that mean nothing or too much, faces
///         of other parts, and a part that two entries set.
[[nodiscard]] std::vector<SetPart> find_set_parts(const DeclaredJob& declared,
                                                  const Groups& groups);

/// How far a thread's two ends reach along its axis, and which of the two moves when it is set.
struct ThreadReach {
  Interval hole, screw;  ///< as modelled, mm along the direction
  double moves = 0.0;    ///< 1: the hole along the direction, -1: the screw, as the length grows
  Length least;          ///< that is enough when engaged

  /// Thread left when the length is longer than modelled by so much; 0 where none is.
  [[nodiscard]] double engaged(double longer) const;
  /// How far the end that leads as the length grows (1) or shrinks (-1) is from the other thread's
  /// end; infinite where it is past it.
  [[nodiscard]] double to_end(double longer, int towards) const;
  /// How much longer or shorter it may be while so much stays engaged.
  [[nodiscard]] Interval room(double engaged) const;
};

/// @param along    direction in which stations are counted.
/// @param outward  whether the part that is set goes along it as the length grows.
/// @pre part.thread
[[nodiscard]] ThreadReach reach_of(const DeclaredJob& declared, const SetPart& part,
                                   const Line& along, bool outward);

}  // namespace spotblue
