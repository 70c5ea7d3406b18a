#pragma once
// What looks like a screw in a tapped hole but is no thread of the tables.

#include <string>

#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/settings.hpp"

namespace spotblue {

// "screw 1.7 in a hole of 1.4, no thread of ours" where a cylinder of one part stands on the axis
// of a smaller hole of the other, deeper in its metal than a press fit and no deeper than a thread;
// empty where none does. Lengths in mm.
[[nodiscard]] std::string unnamed_screw(const Product& a, const Product& b, const Frame& b_to_a,
                                        const SeatSettings& settings);

}  // namespace spotblue
