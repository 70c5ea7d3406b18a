#pragma once
// The library's own named logger; sources only, never a public header.

#include <spdlog/logger.h>

namespace spotblue {

[[nodiscard]] spdlog::logger& logger();

}  // namespace spotblue
