#pragma once
// The library's own named logger; sources only, never a public header.

#include <spdlog/logger.h>

#include "spotblue/base/export.hpp"

namespace spotblue {

/// Exported for the one library of ours that stands on the other; no header tells it to others.
[[nodiscard]] SPOTBLUE_EXPORT spdlog::logger& logger();

}  // namespace spotblue
