#include "geometry/tree/usage_placement.hpp"

#include <Interface_EntityIterator.hxx>
#include <StepBasic_ProductDefinition.hxx>
#include <StepGeom_Axis2Placement3d.hxx>
#include <StepRepr_ItemDefinedTransformation.hxx>
#include <StepRepr_ProductDefinitionShape.hxx>
#include <StepRepr_PropertyDefinition.hxx>
#include <StepRepr_RepresentationRelationshipWithTransformation.hxx>
#include <StepRepr_ShapeRepresentationRelationship.hxx>
#include <StepShape_ContextDependentShapeRepresentation.hxx>
#include <StepShape_ShapeDefinitionRepresentation.hxx>

#include "geometry/tree/step_operator.hpp"

namespace spotblue {
namespace {

using Axes = Handle(StepGeom_Axis2Placement3d);
using Relation = Handle(StepRepr_RepresentationRelationshipWithTransformation);

// Whether the representation is the definition's own.
bool is_of(const Handle(StepRepr_Representation) & representation,
           const Handle(StepBasic_ProductDefinition) & definition, const Interface_Graph& graph) {
  for (Interface_EntityIterator user = graph.Sharings(representation); user.More(); user.Next()) {
    const auto shape = Handle(StepShape_ShapeDefinitionRepresentation)::DownCast(user.Value());
    const auto property = shape.IsNull() ? Handle(StepRepr_PropertyDefinition)()
                                         : shape->Definition().PropertyDefinition();
    if (!property.IsNull() && property->Definition().ProductDefinition() == definition) {
      return true;
    }
  }
  return false;
}

Relation relation_of(const Handle(StepRepr_NextAssemblyUsageOccurrence) & usage,
                     const Interface_Graph& graph) {
  for (Interface_EntityIterator user = graph.Sharings(usage); user.More(); user.Next()) {
    const auto shape = Handle(StepRepr_ProductDefinitionShape)::DownCast(user.Value());
    if (shape.IsNull()) {
      continue;
    }
    for (Interface_EntityIterator placing = graph.Sharings(shape); placing.More(); placing.Next()) {
      const auto placed =
          Handle(StepShape_ContextDependentShapeRepresentation)::DownCast(placing.Value());
      if (!placed.IsNull()) {
        return Relation::DownCast(placed->RepresentationRelation());
      }
    }
  }
  return {};
}

}  // namespace

gp_Trsf usage_placement(const Handle(StepRepr_NextAssemblyUsageOccurrence) & usage,
                        const Interface_Graph& graph) {
  const Relation relation = relation_of(usage, graph);
  const auto pair = relation.IsNull()
                        ? Handle(StepRepr_ItemDefinedTransformation)()
                        : relation->TransformationOperator().ItemDefinedTransformation();
  if (pair.IsNull()) {
    return {};
  }
  Axes own = Axes::DownCast(pair->TransformItem1());
  Axes target = Axes::DownCast(pair->TransformItem2());
  Handle(StepRepr_Representation) own_in = relation->Rep1();
  Handle(StepRepr_Representation) target_in = relation->Rep2();
  if (own.IsNull() || target.IsNull() || own_in.IsNull() || target_in.IsNull()) {
    return {};
  }
  if (is_of(own_in, usage->RelatingProductDefinition(), graph) &&
      !is_of(target_in, usage->RelatingProductDefinition(), graph)) {
    std::swap(own, target);  // the assembly's representation comes first in some files
    std::swap(own_in, target_in);
  }
  return axes_placement(target, mm_per_unit(target_in)) *
         axes_placement(own, mm_per_unit(own_in)).Inverted();
}

}  // namespace spotblue
