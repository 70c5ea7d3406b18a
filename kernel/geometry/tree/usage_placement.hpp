#pragma once
// Where an assembly's usage places its component, from the file's entities alone: for components
// whose shape is in another file, which Open CASCADE does not place.

#include <Interface_Graph.hxx>
#include <StepRepr_NextAssemblyUsageOccurrence.hxx>
#include <gp_Trsf.hxx>

namespace spotblue {

// In mm; the assembly's own origin where the file does not place it, as step_placement finds.
[[nodiscard]] gp_Trsf usage_placement(const Handle(StepRepr_NextAssemblyUsageOccurrence) & usage,
                                      const Interface_Graph& graph);

}  // namespace spotblue
