#pragma once
/// @file
/// Which Open CASCADE the library was built on.

#include <string>

#include "spotblue/base/export.hpp"

namespace spotblue {

/// Version of Open CASCADE as its headers state it: "7.6.3".
[[nodiscard]] SPOTBLUE_EXPORT std::string kernel_version();

}  // namespace spotblue
