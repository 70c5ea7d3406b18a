#pragma once
// What is found of parts whose solids can't be relied on.

#include <span>
#include <vector>

#include "group/match/declared.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

// Makes each finding about such a part undecided and says why among what is found.
void leave_unsound_open(const DeclaredJob& declared, std::vector<Finding>& findings);

// The same for a finding that hangs on all of these occurrences, whichever it names.
void leave_parts_open(const DeclaredJob& declared, std::span<const OccurrenceId> occurrences,
                      Finding& finding);

// The same, and also for parts whose boxes overlap theirs: an unsound one may belong to them and
// have lost the features that would tell.
void leave_neighbours_open(const DeclaredJob& declared, std::span<const OccurrenceId> occurrences,
                           Finding& finding);

// Makes a finding that hangs on there being no more parts than are seen undecided where some did
// not arrive.
void leave_missing_open(const DeclaredJob& declared, Finding& finding);

}  // namespace spotblue
