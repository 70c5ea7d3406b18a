#pragma once
// What Open CASCADE could not read of entities that shapes, places and units are made of: a radius
// written as a text is not refused by it, but is whatever lay in memory.

#include <StepData_StepModel.hxx>
#include <string>
#include <vector>

#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/settings.hpp"

namespace spotblue {

// About each such entity of a file that has been parsed ("#12, CYLINDRICAL_SURFACE"): what of it
// can not be read. Names and descriptions do not count.
[[nodiscard]] std::vector<Note> entity_faults(const StepData_StepModel& entities);

// Throws Error unreadable that names the first, unless there is none or a partial model is
// accepted.
void refuse_faults(const std::vector<Note>& faults, const std::string& file,
                   Completeness completeness);

}  // namespace spotblue
