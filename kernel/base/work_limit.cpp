#include "base/work_limit.hpp"

#include <unistd.h>

#include <algorithm>
#include <limits>

#include "base/machine_memory.hpp"

namespace spotblue {
namespace {

using Clock = std::chrono::steady_clock;

constexpr double kNoLimit = 3e9;  // s, a hundred years

// How often memory is looked at, and how little of the machine's is next to none. Choices of this
// program, no source.
constexpr std::chrono::milliseconds kOwnEvery(5);
constexpr std::chrono::milliseconds kMachineEvery(250);
constexpr double kNextToNone = 50.0;  // 10^6 bytes

thread_local Clock::time_point end_of_time = Clock::time_point::max();

struct Looked {
  double resident = 0.0;  // bytes
  Clock::time_point own, machine;
};
thread_local MemoryBound memory;
thread_local Looked looked;

Clock::time_point after(double seconds) {
  return seconds < kNoLimit
             ? Clock::now() + std::chrono::duration_cast<Clock::duration>(
                                  std::chrono::duration<double>(std::max(0.0, seconds)))
             : Clock::time_point::max();
}

double bytes_left() { return memory.ceiling - looked.resident - memory.promised; }

void look_at_memory(Clock::time_point now) {
  if (now - looked.own >= kOwnEvery) {
    looked.own = now;
    looked.resident = resident_memory(getpid());
  }
  if (bytes_left() < 0.0) {
    memory.reached = scarce_memory();
  } else if (now - looked.machine >= kMachineEvery) {
    looked.machine = now;
    if (machine_memory_left_mb() < kNextToNone) {
      memory.reached = Bound::machine;
      memory.by_machine = true;
    }
  }
}

}  // namespace

LimitReached::LimitReached(Bound bound)
    : Error(bound == Bound::machine ? ErrorCode::system : ErrorCode::stopped, {},
            reason(bound) + " before it was done",
            bound == Bound::time     ? "give it more time"
            : bound == Bound::memory ? "give it more memory"
                                     : "close other programs and try again"),
      bound_(bound) {}

TimeLimit::TimeLimit(double seconds) : before_(end_of_time) {
  end_of_time = std::min(before_, after(seconds));
}

TimeLimit::~TimeLimit() { end_of_time = before_; }

MemoryLimit::MemoryLimit(double memory_mb) : before_(memory) {
  const double room_mb = memory_to_be_had_mb();
  looked.own = Clock::now();
  looked.resident = resident_memory(getpid());
  memory.start = looked.resident + memory.promised;
  const double ceiling = memory.start + std::min(memory_mb, room_mb) * 1e6;
  if (before_.ceiling == 0.0 || ceiling < before_.ceiling) {
    memory.ceiling = ceiling;
    memory.by_machine = room_mb < memory_mb;
    memory.reached = Bound::none;
  }
}

MemoryLimit::~MemoryLimit() {
  const double promised = memory.promised;
  memory = before_;
  memory.promised = memory.ceiling > 0.0 ? promised : 0.0;
}

void promise_memory(double bytes) { memory.promised += bytes; }

double seconds_left() {
  return end_of_time == Clock::time_point::max()
             ? std::numeric_limits<double>::infinity()
             : std::chrono::duration<double>(end_of_time - Clock::now()).count();
}

double memory_mb_left() {
  if (memory.ceiling == 0.0) {
    return std::numeric_limits<double>::infinity();
  }
  looked.resident = resident_memory(getpid());
  return bytes_left() / 1e6;
}

double memory_mb_taken() {
  looked.resident = resident_memory(getpid());
  return std::max(0.0, looked.resident + memory.promised - memory.start) / 1e6;
}

bool memory_is_up() {
  if (memory.ceiling > 0.0 && memory.reached == Bound::none) {
    look_at_memory(Clock::now());
  }
  return memory.reached != Bound::none;
}

Bound limit_reached() {
  if (memory.reached != Bound::none) {
    return memory.reached;
  }
  return seconds_left() < 0.0 ? Bound::time : Bound::none;
}

Bound scarce_memory() { return memory.by_machine ? Bound::machine : Bound::memory; }

std::string reason(Bound ended) {
  switch (ended) {
    case Bound::none:
    case Bound::time:
      return "the time given was up";
    case Bound::memory:
      return "the memory given was used up";
    case Bound::machine:
      return "the machine had no more memory to give";
  }
  return {};
}

std::string why_not_done() { return reason(memory.reached); }

void throw_past_limits() {
  if (end_of_time == Clock::time_point::max() && memory.ceiling == 0.0) {
    return;
  }
  const Clock::time_point now = Clock::now();
  if (now > end_of_time) {
    throw LimitReached(Bound::time);
  }
  if (memory.ceiling > 0.0) {
    if (memory.reached == Bound::none) {
      look_at_memory(now);
    }
    if (memory.reached != Bound::none) {
      throw LimitReached(memory.reached);
    }
  }
}

Bound take_memory_as_gone() {
  if (memory.ceiling > 0.0 && memory.reached == Bound::none) {
    memory.reached = scarce_memory();
  }
  return memory.ceiling > 0.0 ? memory.reached : Bound::machine;
}

}  // namespace spotblue
