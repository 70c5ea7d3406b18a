#pragma once
// Which parts [[turning]] names.

#include <set>

#include "group/match/declared.hpp"

namespace spotblue {

/// The occurrences that an entry names, not those that turn with them.
[[nodiscard]] std::set<OccurrenceId> named_turning(const DeclaredJob& declared);

}  // namespace spotblue
