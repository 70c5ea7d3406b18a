#pragma once
// The gear that a part is, as its model shows it: what it turns about and where its teeth stand.

#include <cstddef>
#include <optional>

#include "group/making/worked_group.hpp"
#include "spotblue/base/interval.hpp"

namespace spotblue {

struct GearBlank {
  Line line;                                ///< that the gear turns about, assembly frame
  std::optional<CentreLineId> centre_line;  ///< of the look, when `line` is one
  std::optional<FeatureRef> teeth;  ///< the outside nearest the tip diameter, within a module
  double tip_mm = 0.0;              ///< diameter of `teeth`, measured or modelled
  Interval face;                    ///< ends of `teeth` along its own axis, as a stretch of `line`
};

/// Nothing when the part has no outside cylinder.
[[nodiscard]] std::optional<GearBlank> find_gear_blank(const DeclaredJob& declared,
                                                       OccurrenceId occurrence, double tip_mm,
                                                       double module_mm);

/// How far a gear's centre can move off its line in its bearings, radial, mm.
struct BearingPlay {
  double least_mm = 0.0, greatest_mm = 0.0;
  std::size_t seats = 0;  ///< that run, between the gear and what carries it
};

/// Along the seats of its centre line to the part that is also on `other_line` (the housing of
/// both gears); where no part is on both, the closest running seat of what is held to the gear.
[[nodiscard]] BearingPlay bearing_play(const WorkedGroup& worked, OccurrenceId occurrence,
                                       const GearBlank& blank,
                                       std::optional<CentreLineId> other_line);

}  // namespace spotblue
