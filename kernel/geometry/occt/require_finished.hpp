#pragma once
// What is said of contained work that did not finish: the file's fault, or what the machine lacked.

#include <string>

#include "geometry/occt/contained.hpp"

namespace spotblue {

// Throws unless the work, reading `file`, has finished: the Error that work() threw, with `file`
// where that names none; else unreadable, or file_access without a file for what the machine
// lacked.
void require_finished(const Contained& run, const std::string& file, const ReadLimits& limits);

// The same where only an Error of work() itself is thrown: what it says of cause and cure is truer
// than what can be said of a failure in general.
void throw_own_error(const Contained& run, const std::string& file);

// Error unreadable: the file takes more memory than the limits give.
[[nodiscard]] Error out_of_memory(const std::string& file, const ReadLimits& limits);

// Error file_access that blames no file: `what` the machine lacked, in words that name the file.
[[nodiscard]] Error lacking(const std::string& what);

}  // namespace spotblue
