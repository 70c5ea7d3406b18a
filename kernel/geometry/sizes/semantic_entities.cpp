#include "geometry/sizes/semantic_entities.hpp"

#include <fmt/format.h>

#include <APIHeaderSection_MakeHeader.hxx>
#include <Interface_EntityIterator.hxx>
#include <STEPConstruct_UnitContext.hxx>
#include <StepAP242_ItemIdentifiedRepresentationUsage.hxx>
#include <StepAP242_ItemIdentifiedRepresentationUsageDefinition.hxx>
#include <StepBasic_MeasureWithUnit.hxx>
#include <StepBasic_NamedUnit.hxx>
#include <StepBasic_Unit.hxx>
#include <StepDimTol_Datum.hxx>
#include <StepRepr_CompoundRepresentationItem.hxx>
#include <StepRepr_HArray1OfRepresentationItem.hxx>
#include <StepRepr_MeasureRepresentationItem.hxx>
#include <StepRepr_ReprItemAndMeasureWithUnit.hxx>
#include <StepRepr_RepresentationItem.hxx>
#include <StepRepr_ShapeAspect.hxx>
#include <StepRepr_ShapeAspectRelationship.hxx>
#include <StepShape_AngularLocation.hxx>
#include <StepShape_AngularSize.hxx>
#include <StepShape_DimensionalCharacteristic.hxx>
#include <StepShape_DimensionalCharacteristicRepresentation.hxx>
#include <StepShape_DimensionalLocation.hxx>
#include <StepShape_DimensionalLocationWithPath.hxx>
#include <StepShape_DimensionalSize.hxx>
#include <StepShape_HArray1OfShapeDimensionRepresentationItem.hxx>
#include <StepShape_LimitsAndFits.hxx>
#include <StepShape_PlusMinusTolerance.hxx>
#include <StepShape_ShapeDimensionRepresentation.hxx>
#include <StepShape_ShapeDimensionRepresentationItem.hxx>
#include <StepShape_ToleranceMethodDefinition.hxx>
#include <StepShape_ToleranceValue.hxx>
#include <TCollection_HAsciiString.hxx>
#include <cmath>
#include <optional>
#include <unordered_set>

#include "geometry/model/semantic_class.hpp"
#include "geometry/occt/occt_versions.hpp"
#include "geometry/part21/step_name.hpp"

namespace spotblue {
namespace {

std::string label_text(const Handle(TCollection_HAsciiString) & text) {
  return text.IsNull() ? std::string() : clean_name(text->ToCString());
}

SizeCharacteristic characteristic_named(const std::string& name) {
  if (name == "diameter") {
    return SizeCharacteristic::diameter;
  }
  if (name == "radius") {
    return SizeCharacteristic::radius;
  }
  return name == "thickness" || name == "width" ? SizeCharacteristic::width
                                                : SizeCharacteristic::other;
}

Handle(StepBasic_MeasureWithUnit) measure_in(const Handle(Standard_Transient) & entity) {
  if (const auto item = Handle(StepRepr_ReprItemAndMeasureWithUnit)::DownCast(entity);
      !item.IsNull()) {
    return item->GetMeasureWithUnit();
  }
  if (const auto item = Handle(StepRepr_MeasureRepresentationItem)::DownCast(entity);
      !item.IsNull()) {
    return item->Measure();
  }
  return Handle(StepBasic_MeasureWithUnit)::DownCast(entity);
}

class SizeReader {
 public:
  explicit SizeReader(const StepReader& reader) : reader_(reader), writer_(writer()) {}

  StatedSizes read() {
    const auto& entities = reader_.entities();
    for (int i = 1; i <= entities->NbEntities(); ++i) {
      const Handle(Standard_Transient) entity = entities->Value(i);
      if (const auto distance = Handle(StepShape_DimensionalLocation)::DownCast(entity);
          !distance.IsNull()) {
        add_distance(distance);
      } else if (entity->IsKind(STANDARD_TYPE(StepShape_AngularSize))) {
        ++result_.angles;
      } else if (const auto size = Handle(StepShape_DimensionalSize)::DownCast(entity);
                 !size.IsNull()) {
        add_size(size);
      }
    }
    return std::move(result_);
  }

 private:
  [[nodiscard]] Writer writer() const {
    const APIHeaderSection_MakeHeader header(reader_.entities());
    return header.HasFn() ? writer_of(label_text(header.PreprocessorVersion())) : Writer::other;
  }

  void add_size(const Handle(StepShape_DimensionalSize) & entity) {
    StatedSize stated = stated_by(entity, label_text(entity->Name()));
    stated.size.characteristic = characteristic_named(stated.size.name);
    std::unordered_set<const Standard_Transient*> seen;
    add_faces(entity->AppliesTo(), stated, stated.faces, seen);
    result_.sizes.push_back(std::move(stated));
  }

  void add_distance(const Handle(StepShape_DimensionalLocation) & entity) {
    if (entity->IsKind(STANDARD_TYPE(StepShape_AngularLocation))) {
      ++result_.angles;
      return;
    }
    const std::string name = label_text(entity->Name());
    if (entity->IsKind(STANDARD_TYPE(StepShape_DimensionalLocationWithPath)) ||
        !is_plain_distance(name)) {
      ++result_.distances;
      return;
    }
    StatedSize stated = stated_by(entity, name);
    stated.size.characteristic = SizeCharacteristic::width;
    stated.is_distance = true;
    std::unordered_set<const Standard_Transient*> seen;
    add_faces(entity->RelatingShapeAspect(), stated, stated.faces, seen);
    add_faces(entity->RelatedShapeAspect(), stated, stated.far_faces, seen);
    result_.sizes.push_back(std::move(stated));
  }

  // Values and tolerance of a size or a distance.
  StatedSize stated_by(const Handle(Standard_Transient) & entity, std::string name) const {
    StatedSize stated;
    stated.size.entity = reader_.number_of(entity);
    stated.size.name = std::move(name);
    for (Interface_EntityIterator each = reader_.graph().Sharings(entity); each.More();
         each.Next()) {
      if (const auto by =
              Handle(StepShape_DimensionalCharacteristicRepresentation)::DownCast(each.Value());
          !by.IsNull() && by->Dimension().Value() == entity && !by->Representation().IsNull()) {
        add_values(*by->Representation(), stated.size);
      } else if (const auto tolerance =
                     Handle(StepShape_PlusMinusTolerance)::DownCast(each.Value());
                 !tolerance.IsNull() && tolerance->TolerancedDimension().Value() == entity) {
        add_tolerance(tolerance->Range(), stated);
      }
    }
    return stated;
  }

  // Nothing, with a doubt, for what is no length.
  std::optional<double> mm_of(const Handle(Standard_Transient) & entity, SemanticSize& size) const {
    const Handle(StepBasic_MeasureWithUnit) measure = measure_in(entity);
    if (measure.IsNull() || measure->ValueComponentMember().IsNull()) {
      return std::nullopt;
    }
    const Handle(StepBasic_NamedUnit) unit = measure->UnitComponent().NamedUnit();
    STEPConstruct_UnitContext factors;
    if (unit.IsNull() || occt::compute_factors(factors, unit) != 0 || !factors.LengthDone()) {
      doubt(size, "a value of it is in a unit that is no known unit of length");
      return std::nullopt;
    }
    const double value = measure->ValueComponent() * factors.LengthFactor();
    if (!std::isfinite(value)) {
      doubt(size, "a value of it is no finite number");
      return std::nullopt;
    }
    return value;
  }

  static void doubt(SemanticSize& size, const std::string& why) {
    if (size.doubt.empty()) {
      size.doubt = why;
    }
  }

  void add_values(const StepShape_ShapeDimensionRepresentation& values, SemanticSize& size) const {
    std::optional<double> lower;
    std::optional<double> upper;
    const auto add_item = [&](const Handle(Standard_Transient) & entity) {
      const auto item = Handle(StepRepr_RepresentationItem)::DownCast(entity);
      const auto value = mm_of(entity, size);
      if (!value) {
        return;
      }
      const std::string name = item.IsNull() ? std::string() : label_text(item->Name());
      (name == "lower limit" ? lower : name == "upper limit" ? upper : size.nominal_mm) = value;
    };
    if (const auto items = values.Items(); !items.IsNull()) {
      for (int i = items->Lower(); i <= items->Upper(); ++i) {
        add_item(items->Value(i));
      }
    }
    if (const auto items = values.ItemsAP242(); !items.IsNull()) {
      for (int i = items->Lower(); i <= items->Upper(); ++i) {
        add_item(items->Value(i).Value());
      }
    }
    if (lower && upper) {
      size.limits = {*lower, *upper};
    } else if (lower || upper) {
      doubt(size, "it has but one limit");
    }
  }

  void add_tolerance(const StepShape_ToleranceMethodDefinition& range, StatedSize& stated) const {
    if (const Handle(StepShape_LimitsAndFits) fit = range.LimitsAndFits(); !fit.IsNull()) {
      ClassReading reading =
          read_class({label_text(fit->FormVariance()), label_text(fit->ZoneVariance()),
                      label_text(fit->Grade()), label_text(fit->Source())},
                     writer_);
      if (!reading.doubt.empty()) {
        doubt(stated.size, reading.doubt);
      } else if (!stated.size.tolerance_class.empty() &&
                 stated.size.tolerance_class != reading.tolerance_class) {
        doubt(stated.size, fmt::format("it has two classes, {} and {}", stated.size.tolerance_class,
                                       reading.tolerance_class));
      }
      stated.size.tolerance_class = std::move(reading.tolerance_class);
      stated.remark = std::move(reading.remark);
    } else if (const Handle(StepShape_ToleranceValue) value = range.ToleranceValue();
               !value.IsNull()) {
      const auto lower = mm_of(value->LowerBound(), stated.size);
      const auto upper = mm_of(value->UpperBound(), stated.size);
      if (lower && upper) {
        stated.size.deviations = {*lower, *upper};
      } else {
        doubt(stated.size, "a deviation of it is no length");
      }
    }
  }

  // Those of the aspect itself, and of all that it is put together from.
  // NOLINTNEXTLINE(misc-no-recursion): each aspect is visited once
  void add_faces(const Handle(StepRepr_ShapeAspect) & aspect, StatedSize& stated,
                 std::vector<TopoDS_Shape>& faces,
                 std::unordered_set<const Standard_Transient*>& seen) const {
    if (aspect.IsNull() || !seen.insert(aspect.get()).second ||
        aspect->IsKind(STANDARD_TYPE(StepDimTol_Datum))) {
      return;
    }
    constexpr std::size_t kMostAspects = 10000;
    for (Interface_EntityIterator each = reader_.graph().Sharings(aspect);
         each.More() && seen.size() < kMostAspects; each.Next()) {
      const Handle(Standard_Transient)& user = each.Value();
      if (const auto usage = Handle(StepAP242_ItemIdentifiedRepresentationUsage)::DownCast(user);
          !usage.IsNull() && usage->Definition().Value() == aspect) {
        for (int i = 1; i <= usage->NbIdentifiedItem(); ++i) {
          add_item(usage->IdentifiedItemValue(i), stated, faces);
        }
      } else if (const auto part = Handle(StepRepr_ShapeAspectRelationship)::DownCast(user);
                 !part.IsNull() && part->RelatingShapeAspect() == aspect &&
                 !part->IsKind(STANDARD_TYPE(StepShape_DimensionalLocation))) {
        add_faces(part->RelatedShapeAspect(), stated, faces, seen);
      }
    }
  }

  void add_item(const Handle(StepRepr_RepresentationItem) & item, StatedSize& stated,
                std::vector<TopoDS_Shape>& faces) const {
    const TopoDS_Shape shape = reader_.shape_of(item);
    if (!shape.IsNull() && shape.ShapeType() == TopAbs_FACE) {
      faces.push_back(shape);
    } else {
      ++stated.other_items;
    }
  }

  const StepReader& reader_;
  Writer writer_;
  StatedSizes result_;
};

}  // namespace

bool is_plain_distance(std::string_view name) {
  return name == "linear distance" || name == "linear distance outer outer" ||
         name == "linear distance inner inner";
}

StatedSizes stated_sizes(const StepReader& reader) { return SizeReader(reader).read(); }

}  // namespace spotblue
