#pragma once
// Bounds on wall time and memory of the work on this thread; sources only, never a public header.

#include <chrono>
#include <new>
#include <string>

#include "spotblue/base/error.hpp"
#include "spotblue/base/export.hpp"

namespace spotblue {

/// What ended a step; `machine`: memory that it was allowed and that was not to be had.
enum class Bound { none, time, memory, machine };

/// What ends a step that is out of time or memory; whoever set the limit, or can do with less,
/// catches it. stop_if_asked throws it.
class SPOTBLUE_EXPORT LimitReached : public Error {
 public:
  explicit LimitReached(Bound bound);
  [[nodiscard]] Bound bound() const { return bound_; }

 private:
  Bound bound_;
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

/// What a process may still take, and what it was promised.
struct MemoryBound {
  double ceiling = 0.0;     // bytes of resident memory; 0: none
  double promised = 0.0;    // bytes that will be taken though they are not yet
  double start = 0.0;       // bytes, what was promised then counted in
  bool by_machine = false;  // the machine had less than was allowed
  Bound reached = Bound::none;
};

/// While it lives, work on this thread is out of memory once the process has grown by `memory_mb`
/// (10^6 bytes), by what the machine had left when the limit was set, or when a limit set before it
/// says so; also when the machine has next to none left.
///
/// The process is looked at every few milliseconds, so that it may pass the limit by what it takes
/// between. Once reached, a limit stays so, whatever is given back.
class SPOTBLUE_EXPORT MemoryLimit {
 public:
  explicit MemoryLimit(double memory_mb);
  ~MemoryLimit();
  MemoryLimit(const MemoryLimit&) = delete;
  MemoryLimit& operator=(const MemoryLimit&) = delete;
  MemoryLimit(MemoryLimit&&) = delete;
  MemoryLimit& operator=(MemoryLimit&&) = delete;

 private:
  MemoryBound before_;
};

/// About what a seat or a foul takes in a report, and again while that is put together. Choice of
/// this program, no source.
inline constexpr double kBytesPerRow = 1000.0;

/// Counts `bytes` against the memory limit of this thread that are taken only later: what is found
/// is written into a report in the end.
SPOTBLUE_EXPORT void promise_memory(double bytes);

/// Infinity without a limit, less than 0 past it.
[[nodiscard]] SPOTBLUE_EXPORT double seconds_left();

/// Infinity without a limit, less than 0 past it; 10^6 bytes.
[[nodiscard]] SPOTBLUE_EXPORT double memory_mb_left();

/// What was taken and promised since the limit of this thread was set, 10^6 bytes.
[[nodiscard]] SPOTBLUE_EXPORT double memory_mb_taken();

/// Whether memory is past its limit, whatever the time.
[[nodiscard]] SPOTBLUE_EXPORT bool memory_is_up();

/// What the end of memory would be on this thread: machine where that has less than was given.
[[nodiscard]] SPOTBLUE_EXPORT Bound scarce_memory();

/// "the time given was up"; of none as of time, since a limit within may have been what ended it.
[[nodiscard]] SPOTBLUE_EXPORT std::string reason(Bound ended);

/// Why not all was done: memory where that was what lacked, else time.
[[nodiscard]] SPOTBLUE_EXPORT std::string why_not_done();

/// Which limit was reached on this thread first, memory before time; none while all hold.
[[nodiscard]] SPOTBLUE_EXPORT Bound limit_reached();

/// Throws LimitReached past a limit.
SPOTBLUE_EXPORT void throw_past_limits();

/// Memory that was not to be had on this thread counts as the end of its limit.
SPOTBLUE_EXPORT Bound take_memory_as_gone();

/// What ended `step`: none when it came to its end.
Bound ended_by(const auto& step) {
  try {
    step();
    return Bound::none;
  } catch (const LimitReached& reached) {
    return reached.bound();
  } catch (const std::bad_alloc&) {
    return take_memory_as_gone();
  }
}

/// Whether `step` came to its end within the limits.
bool done_within_limits(const auto& step) { return ended_by(step) == Bound::none; }

}  // namespace spotblue
