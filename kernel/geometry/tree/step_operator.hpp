#pragma once
// Placements by a cartesian transformation operator, which may mirror and scale (ISO 10303-42):
// Open CASCADE turns instead of mirroring and forgets the scale, without a word.

#include <Interface_Graph.hxx>
#include <StepGeom_Axis2Placement3d.hxx>
#include <StepGeom_CartesianTransformationOperator3d.hxx>
#include <StepRepr_MappedItem.hxx>
#include <StepRepr_Representation.hxx>
#include <gp_Trsf.hxx>
#include <optional>

namespace spotblue {

// Lengths of the file's unit to mm.
[[nodiscard]] double mm_per_unit(const Handle(StepRepr_Representation) & representation);

// From the frame of the axes to the one they are written in, in mm.
[[nodiscard]] gp_Trsf axes_placement(const Handle(StepGeom_Axis2Placement3d) & axes,
                                     double mm_per_unit);

// The operator's transformation, in mm; nothing when its axes are not three independent ones.
[[nodiscard]] std::optional<gp_Trsf> transformation_of(
    const Handle(StepGeom_CartesianTransformationOperator3d) & placing, double mm_per_unit);

// Where a mapped item's copy belongs, when its operator mirrors or scales; nothing for all others,
// which Open CASCADE places right.
[[nodiscard]] std::optional<gp_Trsf> crooked_placement(const Handle(StepRepr_MappedItem) & item,
                                                       const Interface_Graph& graph);

// Where a mapped item's copy belongs that is placed by two pairs of axes, in mm; nothing for
// others.
[[nodiscard]] std::optional<gp_Trsf> plain_placement(const Handle(StepRepr_MappedItem) & item,
                                                     const Interface_Graph& graph);

// Whether it keeps sizes and hands.
[[nodiscard]] bool is_straight(const gp_Trsf& placement);
// Whether it keeps sizes.
[[nodiscard]] bool is_rigid(const gp_Trsf& placement);

}  // namespace spotblue
