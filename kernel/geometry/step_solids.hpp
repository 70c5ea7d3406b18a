#pragma once
// The solids that the text of a STEP file declares, and which product definition has which.

#include <vector>

#include "geometry/step_declared.hpp"
#include "geometry/step_text.hpp"

namespace spotblue {

[[nodiscard]] std::vector<DeclaredSolid> declared_solids(const StepText& text);

struct DefinitionSolids {
  int definition = 0;   // 12 for #12
  double solids = 0.0;  // copies by mapped items included
  std::vector<int> solid_entities;
  std::vector<int> contexts;  // of the representations it is made of; they name the units
};

// Each product definition that has solids, in the order of their numbers.
[[nodiscard]] std::vector<DefinitionSolids> solids_by_definition(
    const StepText& text, const std::vector<DeclaredSolid>& solids);

}  // namespace spotblue
