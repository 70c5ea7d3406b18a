#pragma once
// What a STEP file's text declares: protocol, unit, the solids of each part and how often each
// part occurs. Counted from the text alone, to be held against what Open CASCADE makes of it.

#include <memory>
#include <string>
#include <vector>

#include "geometry/part21/step_outside.hpp"
#include "geometry/part21/step_text.hpp"
#include "spotblue/geometry/settings.hpp"

namespace spotblue {

struct DeclaredSolid {
  int entity = 0;  // 12 for #12
  int faces = 0;   // of its shells; 0 where the text does not list them
  std::string kind;
  bool of_shells = true;  // Open CASCADE makes no others
};

// A product definition that has solids of its own.
struct DeclaredPart {
  int entity = 0;
  std::string name;          // of its product
  double solids = 0.0;       // copies by mapped items included
  double occurrences = 0.0;  // after unfolding the assemblies
  bool has_components = false;
  std::shared_ptr<const std::vector<int>> solid_entities;  // parts whose shapes are linked share it
};

struct Declared {
  std::string protocol;  // "AP203", "AP214", "AP242", else the schema's name
  std::string unit;  // of the parts: "mm", "inch", ...; "inch, mm" where they differ; may be empty
  std::vector<DeclaredPart> parts;
  std::vector<DeclaredSolid> solids;
  std::vector<OutsidePart> outside;  // whose shapes are in other files
  std::string instead;  // of solids, where there are none: "tessellated shapes only", ...
};

// Linear in the number of entities.
// Throws Error unreadable for assemblies that contain themselves, are nested deeper than
// limits.nesting_depth or unfold to more than limits.occurrences.
[[nodiscard]] Declared read_declared(const StepText& text, const std::string& file,
                                     const ReadLimits& limits);

}  // namespace spotblue
