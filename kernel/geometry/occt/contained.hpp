#pragma once
// Work that may crash, hang or eat all memory, done in a child process with limits.

#include <functional>
#include <optional>
#include <string>

#include "spotblue/base/error.hpp"
#include "spotblue/geometry/settings.hpp"

namespace spotblue {

struct Contained {
  // `lacking`: the machine had less memory than the limits leave to the work.
  enum class End { finished, failed, crashed, out_of_time, out_of_memory, lacking };
  End end = End::crashed;
  std::string bytes;                          // what work() returned, when finished
  std::string detail;                         // exception text or signal, one line
  std::optional<Error> error = std::nullopt;  // what work() threw, when failed with an Error
};

// Runs `work` in a forked child and hands back what it returned, of any size.
//
// The child gets limits.memory_mb of address space beyond what the program has now, or what the
// machine has left, if less (under
// AddressSanitizer, which reserves address space by the terabyte, the resident memory is watched
// instead), limits.seconds of wall time and of CPU time, no core dump, default signals, no open
// files but the pipe, and no stdout or stderr; it leaves without running any destructor or exit
// handler, and dies with the calling thread. What its StageTimers measure counts as measured here.
// An exception ends in End::failed with its type and
// message, an Error also as itself; std::bad_alloc ends in End::out_of_memory.
//
// Throws Error file_access, of no file, when the system lets no process be made, or another program
// ends the child (SIGKILL, SIGTERM, SIGHUP, SIGINT, SIGQUIT). Safe from any thread.
[[nodiscard]] Contained run_contained(const std::function<std::string()>& work,
                                      const ReadLimits& limits);

// Runs `work` in this process, without bounds: an exception ends as it does in a child, a crash
// ends the process.
[[nodiscard]] Contained run_here(const std::function<std::string()>& work);

}  // namespace spotblue
