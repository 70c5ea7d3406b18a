#include "geometry/tree/step_faults.hpp"

#include <fmt/format.h>

#include <Interface_Check.hxx>
#include <Interface_EntityIterator.hxx>
#include <Interface_ReportEntity.hxx>
#include <StepBasic_MeasureWithUnit.hxx>
#include <StepBasic_NamedUnit.hxx>
#include <StepBasic_Product.hxx>
#include <StepBasic_ProductDefinition.hxx>
#include <StepBasic_ProductDefinitionFormation.hxx>
#include <StepData_UndefinedEntity.hxx>
#include <StepGeom_CartesianPoint.hxx>
#include <StepGeom_GeometricRepresentationItem.hxx>
#include <StepRepr_ItemDefinedTransformation.hxx>
#include <StepRepr_NextAssemblyUsageOccurrence.hxx>
#include <StepRepr_ProductDefinitionShape.hxx>
#include <StepRepr_RepresentationContext.hxx>
#include <StepRepr_RepresentationRelationship.hxx>
#include <StepRepr_ShapeRepresentationRelationship.hxx>
#include <StepShape_ContextDependentShapeRepresentation.hxx>
#include <StepShape_ShapeDefinitionRepresentation.hxx>
#include <StepShape_ShapeRepresentation.hxx>
#include <StepShape_TopologicalRepresentationItem.hxx>
#include <StepShape_VertexPoint.hxx>
#include <algorithm>
#include <array>
#include <cctype>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "geometry/part21/step_kinds.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

bool measures_anything(const Handle(Standard_Transient) & entity) {
  const std::string_view type = entity->DynamicType()->Name();
  return !type.starts_with("StepVisual") &&
         (entity->IsKind(STANDARD_TYPE(StepGeom_GeometricRepresentationItem)) ||
          entity->IsKind(STANDARD_TYPE(StepShape_TopologicalRepresentationItem)) ||
          entity->IsKind(STANDARD_TYPE(StepRepr_ItemDefinedTransformation)) ||
          entity->IsKind(STANDARD_TYPE(StepRepr_RepresentationContext)) ||
          entity->IsKind(STANDARD_TYPE(StepBasic_MeasureWithUnit)) ||
          entity->IsKind(STANDARD_TYPE(StepBasic_NamedUnit)));
}

// What ties names, shapes and places to products.
bool ties_products(const Handle(Standard_Transient) & entity) {
  return entity->IsKind(STANDARD_TYPE(StepBasic_Product)) ||
         entity->IsKind(STANDARD_TYPE(StepBasic_ProductDefinitionFormation)) ||
         entity->IsKind(STANDARD_TYPE(StepBasic_ProductDefinition)) ||
         entity->IsKind(STANDARD_TYPE(StepRepr_ProductDefinitionShape)) ||
         entity->IsKind(STANDARD_TYPE(StepRepr_NextAssemblyUsageOccurrence)) ||
         entity->IsKind(STANDARD_TYPE(StepRepr_ShapeRepresentationRelationship)) ||
         entity->IsKind(STANDARD_TYPE(StepShape_ContextDependentShapeRepresentation)) ||
         entity->IsKind(STANDARD_TYPE(StepShape_ShapeDefinitionRepresentation)) ||
         entity->IsKind(STANDARD_TYPE(StepShape_ShapeRepresentation));
}

// Contexts tell of disciplines and stages of a design, or are missed with their units.
bool is_broken_tie(std::string_view fail) {
  const auto says = [&](std::string_view word) {
    return fail.find(word) != std::string_view::npos;
  };
  return (says("illegal type") || says("illegal parameter type") || says("not an Entity") ||
          says("could not be read") || says("Count of Parameters")) &&
         !says("frame_of_reference") && !says("context_of_items");
}

using Unknown = Handle(StepData_UndefinedEntity);

Interface_EntityIterator named_by(const Unknown& entity) {
  Interface_EntityIterator named;
  entity->FillShared(named);
  return named;
}

// Tessellation is told of by part (see bare_parts): Open CASCADE's versions know more or less of
// it.
bool holds_tessellated(const Unknown& entity) {
  Unknown part = entity;
  while (!part.IsNull()) {
    if (is_tessellated(part->StepType())) {
      return true;
    }
    part = part->IsComplex() ? part->Next() : Unknown();
  }
  return false;
}

// Of those that an entity names and that Open CASCADE does not know.
struct UnknownNamed {
  Unknown first;  // that is not tessellated
  bool tessellated = false;
};

UnknownNamed unknown_in(const StepData_StepModel& entities, int index) {
  UnknownNamed found;
  const Handle(Interface_ReportEntity) report = entities.ReportEntity(index);
  const Unknown raw = report.IsNull() ? Unknown() : Unknown::DownCast(report->Content());
  if (raw.IsNull()) {
    return found;
  }
  for (Interface_EntityIterator each = named_by(raw); each.More(); each.Next()) {
    const Unknown one = Unknown::DownCast(each.Value());
    if (!one.IsNull() && holds_tessellated(one)) {
      found.tessellated = true;
    } else if (!one.IsNull() && found.first.IsNull()) {
      found.first = one;
    }
  }
  return found;
}

std::string type_of(const Unknown& entity) {
  std::string type = entity->StepType();
  return entity->IsComplex() ? type + " and others" : type;
}

// An entity of unknown kind that names what only says which shape a product has, or where a part
// stands; empty for others.
std::string lost_tie(const Unknown& entity) {
  int definitions = 0;
  bool shape = false;
  bool of_shape = false;
  for (Interface_EntityIterator each = named_by(entity); each.More(); each.Next()) {
    const Handle(Standard_Transient)& one = each.Value();
    definitions += one->IsKind(STANDARD_TYPE(StepBasic_ProductDefinition)) ? 1 : 0;
    of_shape = of_shape || one->IsKind(STANDARD_TYPE(StepRepr_ProductDefinitionShape));
    shape = shape || one->IsKind(STANDARD_TYPE(StepShape_ShapeRepresentation)) ||
            one->IsKind(STANDARD_TYPE(StepRepr_ShapeRepresentationRelationship));
  }
  return definitions > 1     ? "of which part is in which assembly"
         : of_shape && shape ? "of which shape a part has, or where it stands"
                             : "";
}

// Open CASCADE's "StepGeom_CylindricalSurface" as files have it; of joined ones the first.
std::string keyword_of(const Handle(Standard_Transient) & entity) {
  std::string_view type = entity->DynamicType()->Name();
  type.remove_prefix(std::min(type.find('_') + 1, type.size()));
  if (const auto joined = type.find("And"); joined != std::string_view::npos && joined > 0) {
    type = type.substr(0, joined);
  }
  std::string word;
  for (std::size_t i = 0; i < type.size(); ++i) {
    const auto letter = static_cast<unsigned char>(type[i]);
    const bool last_number = std::isdigit(letter) != 0 && i + 2 == type.size();
    if (i > 0 && (std::isupper(letter) != 0 || last_number)) {
      word += '_';
    }
    word += static_cast<char>(std::toupper(letter));
  }
  return word;
}

// Of no moment to what is measured, and often missing in files of all kinds.
bool is_about_words(std::string_view fail) {
  constexpr std::array<std::string_view, 3> kWords{"not a quoted String", "(dimensions)",
                                                   "context_identifier"};
  return std::any_of(kWords.begin(), kWords.end(), [&](std::string_view word) {
    return fail.find(word) != std::string_view::npos;
  });
}

// "Parameter n0.3 (radius) not a Real" in words.
std::string in_words(std::string_view fail) {
  const auto open = fail.find('(');
  const auto close = fail.find(')', open == std::string_view::npos ? 0 : open);
  std::string what = "one of its values";
  if (open != std::string_view::npos && close != std::string_view::npos) {
    std::string_view name = fail.substr(open + 1, close - open - 1);
    name.remove_prefix(name.rfind('.') + 1);  // "property_definition.definition"
    what = "its " + std::string(name);
    std::replace(what.begin(), what.end(), '_', ' ');
  }
  const auto says = [&](std::string_view word) {
    return fail.find(word) != std::string_view::npos;
  };
  return says("Count of Parameters")                    ? "has more or fewer values than it must"
         : says("not a Real") || says("not an Integer") ? what + " is no number"
         : says("illegal type") || says("not an Entity")
             ? what + " is not the kind of thing that belongs there"
             : what + " can not be read";
}

// What is wrong with an entity of a kind that is known; nothing where all that matters is there.
std::optional<Note> fault_of(const StepData_StepModel& entities, int index) {
  const Handle(Standard_Transient)& entity = entities.Value(index);
  const Handle(Interface_Check)& check = entities.Check(index, true);
  const bool ties = ties_products(entity);
  if (check.IsNull() || (!ties && !measures_anything(entity))) {
    return std::nullopt;
  }
  for (int fail = 1; fail <= check->NbFails(); ++fail) {
    const std::string_view told = check->CFail(fail);
    if (ties ? !is_broken_tie(told) : is_about_words(told)) {
      continue;
    }
    const UnknownNamed unknown = unknown_in(entities, index);
    const std::string own = fmt::format("#{}, {}", entities.IdentLabel(entity), keyword_of(entity));
    if (!unknown.first.IsNull()) {
      return Note{
          fmt::format("#{}, {}", entities.IdentLabel(unknown.first), type_of(unknown.first)),
          fmt::format("no such kind of entity is known, and {} is made of it", own)};
    }
    if (!ties || !unknown.tessellated) {
      return Note{own, in_words(told)};
    }
  }
  return std::nullopt;
}

// Open CASCADE does not survive a vertex in a plane.
bool is_flat_vertex(const Handle(Standard_Transient) & entity) {
  const auto vertex = Handle(StepShape_VertexPoint)::DownCast(entity);
  const auto point = vertex.IsNull()
                         ? Handle(StepGeom_CartesianPoint)()
                         : Handle(StepGeom_CartesianPoint)::DownCast(vertex->VertexGeometry());
  return !point.IsNull() && point->NbCoordinates() != 3;
}

}  // namespace

std::vector<Note> entity_faults(const StepData_StepModel& entities) {
  std::vector<Note> faults;
  for (int i = 1; i <= entities.NbEntities(); ++i) {
    const Handle(Standard_Transient)& entity = entities.Value(i);
    if (entity.IsNull()) {
      continue;
    }
    if (const Unknown unknown = Unknown::DownCast(entity); !unknown.IsNull()) {
      if (const std::string lost = lost_tie(unknown); !lost.empty()) {
        faults.push_back({fmt::format("#{}, {}", entities.IdentLabel(unknown), type_of(unknown)),
                          "no such kind of entity is known, and it may tell " + lost});
      }
    } else if (auto fault = entities.IsReportEntity(i) ? fault_of(entities, i) : std::nullopt) {
      faults.push_back(std::move(*fault));
    } else if (is_flat_vertex(entity)) {
      faults.push_back({fmt::format("#{}, VERTEX_POINT", entities.IdentLabel(entity)),
                        "its point does not have three numbers"});
    }
  }
  return faults;
}

void refuse_faults(const std::vector<Note>& faults, const std::string& file,
                   Completeness completeness) {
  if (faults.empty() || completeness == Completeness::accept_partial) {
    return;
  }
  const std::string more =
      faults.size() == 1 ? std::string() : fmt::format("; and {} more", faults.size() - 1);
  throw Error(ErrorCode::unreadable, {file, faults.front().about}, faults.front().text + more,
              "export the file again, or accept a partial model");
}

}  // namespace spotblue
