#pragma once
/// @file
/// Where the library's log goes. Silent until a sink is set; nothing is ever written to stdout or
/// stderr by the library itself.

#include <functional>
#include <string_view>

#include "spotblue/base/export.hpp"

namespace spotblue {

enum class LogLevel { debug, info, warning };

/// Hands every log message to `sink` from now on; an empty function silences the log again.
/// Not thread-safe against messages being written at the same moment: set it at start-up.
SPOTBLUE_EXPORT void set_log_sink(std::function<void(LogLevel, std::string_view)> sink);

}  // namespace spotblue
