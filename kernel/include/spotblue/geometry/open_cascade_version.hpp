#pragma once
/// @file
/// Which Open CASCADE the library was built on.

#include <string>

#include "spotblue/base/export.hpp"

namespace spotblue {

/// Version of Open CASCADE as its headers state it: "7.6.3".
[[nodiscard]] SPOTBLUE_EXPORT std::string open_cascade_version();

}  // namespace spotblue
