#pragma once
/// @file
/// The materials that jobs may name, as text.

#include <string>

#include "spotblue/base/export.hpp"
#include "spotblue/report/text.hpp"

namespace spotblue {

/// A row a material: what it is, what else it is called, stiffness, expansion, strength, and
/// whether all of that was seen in print; then those that are known by name only.
[[nodiscard]] SPOTBLUE_EXPORT std::string materials_text(const TextStyle& style);

}  // namespace spotblue
