#pragma once
// How much the bore of a bush closes when the bush is pressed into its hub.

#include <cstddef>
#include <optional>

#include "group/making/worked_group.hpp"
#include "spotblue/mechanics/elastic.hpp"

namespace spotblue {

/// Diameters of a bush in a hub; bore < seat < outside.
struct PressedRings {
  Length bore, seat, outside;
};

/// Bore close-in for each unit of effective diametral interference, both elastic: what press_fit
/// gives, which is linear.
/// @throws Error bad_input when the diameters are not in order.
[[nodiscard]] double close_in_ratio(const PressedRings& rings, const Elastic& bush,
                                    const Elastic& hub);

struct CloseIn {
  std::size_t press_seat = 0;
  double least = 0.0, greatest = 0.0;  ///< per interference, where the hub is thinnest and thickest
  Limits flattened;                    ///< interference that roughness takes first
  Saying unknown;                      ///< why there are no numbers; empty when there are
};

/// The press fit that closes the hole of a radial seat; nothing where its part is not pressed into
/// anything over that stretch, or is in place already.
[[nodiscard]] std::optional<CloseIn> close_in_of(const WorkedGroup& worked,
                                                 std::size_t radial_seat);

}  // namespace spotblue
