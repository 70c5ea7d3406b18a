#pragma once
// What kind of trouble stands behind an error; sources only, never a public header.

#include "spotblue/base/error.hpp"
#include "spotblue/base/export.hpp"

namespace spotblue {

/// Of an errno: `system` where the machine lacked room, memory or open files, or a file may grow no
/// more; else file_access.
[[nodiscard]] SPOTBLUE_EXPORT ErrorCode code_of_reason(int reason);

/// Whether an error of this code says nothing of what a file holds: it was not to be had, work was
/// stopped, or the machine lacked something.
[[nodiscard]] SPOTBLUE_EXPORT bool says_nothing_of_content(ErrorCode code);

}  // namespace spotblue
