#pragma once
/// @file
/// How work ends that INT, TERM or HUP asks to end.

#include <functional>

namespace spotblue::command {

/// What `run` returns. At one of these signals, unless it is ignored, it is stopped (stop_asked),
/// what it threw then is left out, and the process ends by that signal once `run` has put its
/// folders away, after 3 s in any case.
/// @throws what `run` throws of itself.
[[nodiscard]] int run_until_ended(const std::function<int()>& run);

}  // namespace spotblue::command
