#pragma once
// What processes have of the machine's memory, and what it has left; sources only.

#include <sys/types.h>

#include "spotblue/base/export.hpp"

namespace spotblue {

/// Of a process, bytes; 0 where they are not known.
[[nodiscard]] SPOTBLUE_EXPORT double address_space(pid_t process);
[[nodiscard]] SPOTBLUE_EXPORT double resident_memory(pid_t process);

/// What the machine has left without taking it from others, 10^6 bytes; infinity where not known.
[[nodiscard]] SPOTBLUE_EXPORT double machine_memory_left_mb();

/// That, or what a limit that was set for this process leaves it, if less.
[[nodiscard]] SPOTBLUE_EXPORT double memory_to_be_had_mb();

}  // namespace spotblue
