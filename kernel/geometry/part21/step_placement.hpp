#pragma once
// How the text of a STEP file places the components of its assemblies.

#include <string>
#include <vector>

#include "geometry/part21/step_mapped.hpp"
#include "geometry/part21/step_text.hpp"
#include "spotblue/geometry/model.hpp"

namespace spotblue {

struct Placements {
  // A note for each component that the file does not place: it stands at its assembly's origin.
  std::vector<Note> unplaced;
  // For each that it places by what is no placement, twice, or by the shapes of other products than
  // those that it says are used: Open CASCADE puts it at the origin, or another part in its place.
  std::vector<Note> faults;
};

// Linear in the number of entities.
[[nodiscard]] Placements read_placements(const StepText& text, const RepresentationOwners& owners);

}  // namespace spotblue
