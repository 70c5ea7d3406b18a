#pragma once
// What a file's text declares against what arrived of it.

#include <string>
#include <vector>

#include "geometry/part21/step_declared.hpp"
#include "geometry/read/step_transfer.hpp"
#include "spotblue/geometry/model.hpp"

namespace spotblue {

// One note for each thing that is missing, by name; empty when all that was declared arrived.
[[nodiscard]] std::vector<Note> missing_from(const Arrival& arrival, const Declared& declared);

// "3 things are missing: solid #12 of 'Wheel' did not arrive; ...", the first few.
[[nodiscard]] std::string summary_of(const std::vector<Note>& missing);

// Notes what a partial model does not hold, so that no one takes it for compared.
void leave_out(Note what, Model& model);

// Leaves out what is made of entities that can't be read; every part may be, so none is sound.
void note_faults(const std::vector<Note>& faults, Model& model);

// Makes every part unsound that is not yet, for what can't be laid at the door of one.
void distrust_parts(Model& model, const std::string& why);

}  // namespace spotblue
