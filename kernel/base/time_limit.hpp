#pragma once
// A bound on the wall time of the work on this thread; sources only, never a public header.

#include <chrono>

#include "spotblue/base/error.hpp"
#include "spotblue/base/export.hpp"

namespace spotblue {

/// What ends a step that is out of time; whoever set the limit, or can do with less, catches it.
/// stop_if_asked throws it.
class SPOTBLUE_EXPORT TimeUp : public Error {
 public:
  TimeUp()
      : Error(ErrorCode::kernel_failure, {}, "the time given was up before it was done",
              "give it more time") {}
};

/// While it lives, work on this thread is out of time once `seconds` have passed, or when a limit
/// set before it says so; more than a hundred years is no limit.
class SPOTBLUE_EXPORT TimeLimit {
 public:
  explicit TimeLimit(double seconds);
  ~TimeLimit();
  TimeLimit(const TimeLimit&) = delete;
  TimeLimit& operator=(const TimeLimit&) = delete;
  TimeLimit(TimeLimit&&) = delete;
  TimeLimit& operator=(TimeLimit&&) = delete;

 private:
  std::chrono::steady_clock::time_point before_;
};

/// Infinity without a limit, less than 0 past it.
[[nodiscard]] SPOTBLUE_EXPORT double seconds_left();

/// Whether `step` came to its end within the limit.
bool done_in_time(const auto& step) {
  try {
    step();
    return true;
  } catch (const TimeUp&) {
    return false;
  }
}

}  // namespace spotblue
