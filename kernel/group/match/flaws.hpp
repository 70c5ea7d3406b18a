#pragma once
// Which parts of a model can't be relied on.

#include <string>
#include <vector>

#include "spotblue/geometry/model.hpp"

namespace spotblue {

/// By product: why not all of it may be known; empty where it is. What makes it unsound, or the
/// note of what did not arrive of a part of that name, whose rest may go by another's.
[[nodiscard]] std::vector<std::string> flaws_of(const Model& model);

}  // namespace spotblue
