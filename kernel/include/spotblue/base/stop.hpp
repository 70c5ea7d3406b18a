#pragma once
/// @file
/// Asking work on another thread to stop: whoever started it sets a flag, the long stages look.

#include <atomic>

#include "spotblue/base/export.hpp"

namespace spotblue {

/// While it lives, work on this thread stops soon after `asked` turns true: a contained child is
/// killed within 0.1 s, other stages end where they next begin something long. `asked` outlives it.
class SPOTBLUE_EXPORT StopWhen {
 public:
  explicit StopWhen(const std::atomic<bool>& asked);
  ~StopWhen();
  StopWhen(const StopWhen&) = delete;
  StopWhen& operator=(const StopWhen&) = delete;
  StopWhen(StopWhen&&) = delete;
  StopWhen& operator=(StopWhen&&) = delete;

 private:
  const std::atomic<bool>* before_;
};

/// Whether this thread's work was asked to stop; false where nobody can ask.
[[nodiscard]] SPOTBLUE_EXPORT bool stop_asked();

/// @throws Error stopped when this thread's work was asked to stop, or the time or memory that a
///         look was given is up; system when the machine's memory is.
SPOTBLUE_EXPORT void stop_if_asked();

}  // namespace spotblue
