#pragma once
// A model and what is known of its reading as bytes, from the contained child to its parent.

#include <string>
#include <string_view>

#include "geometry/read/step_transfer.hpp"

namespace spotblue {

[[nodiscard]] std::string to_bytes(const Arrival& arrival);

// Throws Error open_cascade_failed when the bytes are not what to_bytes made or refer to what is
// not there: they come from a process whose memory Open CASCADE may have spoilt. Takes no more
// memory than they can fill.
[[nodiscard]] Arrival arrival_from_bytes(std::string_view bytes);

}  // namespace spotblue
