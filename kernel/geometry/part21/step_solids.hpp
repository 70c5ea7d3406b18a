#pragma once
// The solids that the text of a STEP file declares, and which product definition has which.

#include <memory>
#include <string>
#include <vector>

#include "geometry/part21/step_declared.hpp"
#include "geometry/part21/step_text.hpp"

namespace spotblue {

[[nodiscard]] std::vector<DeclaredSolid> declared_solids(const StepText& text);

struct DefinitionSolids {
  int definition = 0;   // 12 for #12
  double solids = 0.0;  // copies by mapped items included
  // Shared by definitions whose representations are linked, as thousands may be.
  std::shared_ptr<const std::vector<int>> solid_entities;
  std::shared_ptr<const std::vector<int>> contexts;  // of its representations; they name the units
};

// Each product definition that has solids, in the order of their numbers. `file` is for messages.
// Throws Error unreadable for shapes that are linked and copied without measure.
[[nodiscard]] std::vector<DefinitionSolids> solids_by_definition(
    const StepText& text, const std::string& file, const std::vector<DeclaredSolid>& solids);

}  // namespace spotblue
