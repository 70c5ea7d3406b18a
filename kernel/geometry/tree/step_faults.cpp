#include "geometry/tree/step_faults.hpp"

#include <fmt/format.h>

#include <Interface_Check.hxx>
#include <StepBasic_MeasureWithUnit.hxx>
#include <StepBasic_NamedUnit.hxx>
#include <StepGeom_GeometricRepresentationItem.hxx>
#include <StepRepr_ItemDefinedTransformation.hxx>
#include <StepRepr_RepresentationContext.hxx>
#include <StepShape_TopologicalRepresentationItem.hxx>
#include <algorithm>
#include <array>
#include <cctype>
#include <string>
#include <string_view>

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
    what = "its " + std::string(fail.substr(open + 1, close - open - 1));
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

}  // namespace

std::vector<Note> entity_faults(const StepData_StepModel& entities) {
  std::vector<Note> faults;
  for (int i = 1; i <= entities.NbEntities(); ++i) {
    if (!entities.IsReportEntity(i)) {
      continue;
    }
    const Handle(Standard_Transient) entity = entities.Value(i);
    const Handle(Interface_Check) check = entities.Check(i, true);
    if (entity.IsNull() || check.IsNull() || !measures_anything(entity)) {
      continue;
    }
    for (int fail = 1; fail <= check->NbFails(); ++fail) {
      const std::string_view told = check->CFail(fail);
      if (!is_about_words(told)) {
        faults.push_back({fmt::format("#{}, {}", entities.IdentLabel(entity), keyword_of(entity)),
                          in_words(told)});
        break;
      }
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
      faults.size() == 1 ? std::string() : fmt::format(", and {} more entities", faults.size() - 1);
  throw Error(ErrorCode::unreadable, {file, faults.front().about}, faults.front().text + more,
              "export the file again, or accept a partial model");
}

void note_faults(const std::vector<Note>& faults, Model& model) {
  if (faults.empty()) {
    return;
  }
  const std::string why = fmt::format("{}: {}; which parts are made of it is not known",
                                      faults.front().about, faults.front().text);
  for (Product& product : model.products) {
    if (product.unsound.empty()) {
      product.unsound = why;
    }
  }
  for (const Note& fault : faults) {
    model.notes.push_back({fault.about, fault.text + ": what is made of it is not to be trusted"});
  }
}

}  // namespace spotblue
