#pragma once
// Stops of a net that others make needless: what lies between is always met first.

#include <vector>

#include "group/axial/stop_net.hpp"

namespace spotblue {

/// By stop whether one other between the same two bodies, or two over a third, are never wider
/// together, whatever the lengths are within their limits.
[[nodiscard]] std::vector<bool> implied_stops(const PlayNet& net);

/// Takes them out, where they are so at bench and warm: fewer ways are left to look at.
void leave_out_implied(StopNet& net);

}  // namespace spotblue
