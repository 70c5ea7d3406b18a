#pragma once
// One length of a net of stops: between two faces of a part, or a gap that was measured.

#include <cstddef>
#include <optional>
#include <string>

#include "group/axial/face_path.hpp"
#include "spotblue/geometry/axial_stops.hpp"

namespace spotblue {

/// One length of a net or a loop, told as a person would check it.
struct StackLength {
  StackDimension dimension;
  LengthSource source = LengthSource::as_found;
  Saying how;
  OccurrenceId part{};                    ///< occurrence the length belongs to
  bool to_make = false;                   ///< whether that part is still to be made
  bool of_one_part = true;                ///< false for a gap between two
  std::optional<std::size_t> set_part{};  ///< of SetPart: it is set, and stands as modelled here
  bool outward = true;                    ///< of one that is set: the part goes ahead as it grows
  FeatureRef from{}, to{};                ///< of one that is set: the second is the part's own
  bool warm_unknown = false;              ///< the part is warmer and its material not known
};

/// The length of a step of a path.
[[nodiscard]] StackLength step_length(const DeclaredJob& declared, const PathLength& path);

/// What stands in for a step where no chain of touching faces and joints leads.
[[nodiscard]] StackLength not_closed_length(const DeclaredJob& declared, const FeatureRef& from,
                                            const FeatureRef& to, Length apart);

/// A gap taken with a feeler at a stop.
[[nodiscard]] StackLength gap_length(const DeclaredJob& declared, const AxialStop& stop,
                                     const MeasuredGap& gap);

}  // namespace spotblue
