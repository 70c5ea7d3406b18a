#pragma once
// Kinds of entities that draw a part by something else than solids.

#include <string_view>

namespace spotblue {

// "TRIANGULATED_FACE" and all that is tessellated, of ISO 10303-42; also one that holds it.
[[nodiscard]] bool is_tessellated(std::string_view kind);

// Curves, sets of them and wireframes.
[[nodiscard]] bool is_curves(std::string_view kind);

}  // namespace spotblue
