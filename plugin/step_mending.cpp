#include "step_mending.hpp"

#include <APIHeaderSection_MakeHeader.hxx>
#include <Standard_Version.hxx>
#include <StepBasic_LengthMeasureWithUnit.hxx>
#include <StepBasic_MeasureValueMember.hxx>
#include <StepRepr_DescriptiveRepresentationItem.hxx>
#include <StepRepr_HArray1OfRepresentationItem.hxx>
#include <StepRepr_ReprItemAndLengthMeasureWithUnit.hxx>
#include <StepRepr_RepresentationItem.hxx>
#include <StepShape_DimensionalCharacteristic.hxx>
#include <StepShape_DimensionalCharacteristicRepresentation.hxx>
#include <StepShape_LimitsAndFits.hxx>
#include <StepShape_PlusMinusTolerance.hxx>
#include <StepShape_ShapeDimensionRepresentation.hxx>
#include <StepShape_ToleranceMethodDefinition.hxx>
#include <TCollection_HAsciiString.hxx>
#include <charconv>
#include <map>
#include <string>
#include <string_view>
#include <utility>

#include "spotblue/geometry/occt.hpp"
#include "spotblue/standards/iso286.hpp"

namespace spotblue::plugin {
namespace {

using Measure = StepRepr_ReprItemAndLengthMeasureWithUnit;

// The writer counts grades from IT01 and writes H7 as grade 9; 01 alone is written right.
void mend_grade(StepShape_LimitsAndFits& fit) {
  const std::string_view text(fit.Grade()->ToCString());
  int grade = 0;
  const auto [end, trouble] = std::from_chars(text.data(), text.data() + text.size(), grade);
  if (!text.starts_with('0') && trouble == std::errc() && end == text.data() + text.size()) {
    fit.SetGrade(new TCollection_HAsciiString(grade - 2));
  }
}

Handle(Measure) measure_like(const Measure& nominal, const char* name, double value_mm) {
  const Handle(StepBasic_MeasureValueMember) value = new StepBasic_MeasureValueMember;
  value->SetName("POSITIVE_LENGTH_MEASURE");
  value->SetReal(value_mm);
  const Handle(StepBasic_LengthMeasureWithUnit) length = new StepBasic_LengthMeasureWithUnit;
  length->Init(value, nominal.GetMeasureWithUnit()->UnitComponent());
  const Handle(StepRepr_RepresentationItem) item = new StepRepr_RepresentationItem;
  item->Init(new TCollection_HAsciiString(name));
  const Handle(Measure) measure = new Measure;
  measure->Init(length, item);
  return measure;
}

void add_limits(const Handle(StepData_StepModel) & model,
                StepShape_ShapeDimensionRepresentation& values,
                const std::string& tolerance_class) {
  const Handle(StepRepr_HArray1OfRepresentationItem) items = values.Items();
  Handle(Measure) nominal;
  for (int i = 1; nominal.IsNull() && !items.IsNull() && i <= items->Upper(); ++i) {
    nominal = Handle(Measure)::DownCast(items->Value(i));
  }
  if (nominal.IsNull()) {
    return;
  }
  const Limits made =
      limits(Length::mm(nominal->GetMeasureWithUnit()->ValueComponent()), tolerance_class);
  const Handle(StepRepr_HArray1OfRepresentationItem) more =
      new StepRepr_HArray1OfRepresentationItem(1, items->Upper() + 2);
  for (int i = 1; i <= items->Upper(); ++i) {
    more->SetValue(i, items->Value(i));
  }
  const auto put = [&](int place, const char* name, Length limit) {
    const Handle(Measure) measure = measure_like(*nominal, name, limit.in_mm());
    model->AddWithRefs(measure);
    more->SetValue(place, measure);
  };
  put(items->Upper() + 1, "lower limit", made.lower);
  put(items->Upper() + 2, "upper limit", made.upper);
  values.SetItems(more);
}

void sign(const Handle(StepData_StepModel) & model) {
  APIHeaderSection_MakeHeader header(model);
  const std::string writer = "spotblue " SPOTBLUE_VERSION " on Open CASCADE " OCC_VERSION_COMPLETE;
  header.SetPreprocessorVersion(new TCollection_HAsciiString(writer.c_str()));
}

}  // namespace

Written mend_sizes(const Handle(StepData_StepModel) & model) {
  Written written;
  std::map<const Standard_Transient*, std::string> needy;  // dimensions, by their class
  for (int i = 1; i <= model->NbEntities(); ++i) {
    if (const auto fit = Handle(StepShape_LimitsAndFits)::DownCast(model->Value(i));
        !fit.IsNull() && !fit->Grade().IsNull()) {
      ++written.classes;
      mend_grade(*fit);
    } else if (const auto words =
                   Handle(StepRepr_DescriptiveRepresentationItem)::DownCast(model->Value(i));
               !words.IsNull() && words->Name()->ToCString() == kSizeWordsName) {
      ++written.sizes;
    }
  }
  for (int i = 1; i <= model->NbEntities(); ++i) {
    const auto tolerance = Handle(StepShape_PlusMinusTolerance)::DownCast(model->Value(i));
    const Handle(StepShape_LimitsAndFits) fit =
        tolerance.IsNull() ? Handle(StepShape_LimitsAndFits)() : tolerance->Range().LimitsAndFits();
    if (!fit.IsNull() && !fit->Grade().IsNull()) {
      const std::string text =
          std::string(fit->FormVariance()->ToCString()) + fit->Grade()->ToCString();
      if (needs_limits(text)) {
        needy[tolerance->TolerancedDimension().Value().get()] = text;
      }
    }
  }
  for (int i = 1, last = model->NbEntities(); i <= last; ++i) {
    const auto values =
        Handle(StepShape_DimensionalCharacteristicRepresentation)::DownCast(model->Value(i));
    if (!values.IsNull() && !values->Representation().IsNull()) {
      const auto found = needy.find(values->Dimension().Value().get());
      if (found != needy.end()) {
        add_limits(model, *values->Representation(), found->second);
      }
    }
  }
  sign(model);
  return written;
}

}  // namespace spotblue::plugin
