#pragma once
// How near two parts may come that must stay off each other.

#include <optional>
#include <vector>

#include "group/making/worked_group.hpp"

namespace spotblue {

/// A place where the two come near, and how near at all that sizes, lengths and plays may be.
struct NearPlace {
  Interval gap;  ///< mm, of the least there may be; below 0 they share space
  Saying where;
  Saying how;             ///< "measured", "as drawn", "when all play is taken up"
  bool measured = false;  ///< how far it is off is what a measurement leaves open
};

struct KeptOff {
  OccurrenceId a{}, b{};  ///< the first of each
  std::vector<NearPlace> places;
  std::optional<double> drawn;  ///< true least distance of the two as drawn, mm
  Saying not_measured;          ///< why that is not known; empty where it is
  bool solids = false;          ///< whether there are solids to measure it on
  double boxes_apart = 0.0;     ///< mm; as far as they are apart at least, as drawn

  /// The place that may come nearest; null where none is known.
  [[nodiscard]] const NearPlace* nearest() const;
};

/// @throws Error bad_input, naming job file and line, for names that mean no part.
[[nodiscard]] KeptOff kept_off(const WorkedGroup& worked, const KeepOff& entry);

}  // namespace spotblue
