#include "plugin/harness/step_mending.hpp"

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
#include <StepShape_ToleranceValue.hxx>
#include <TCollection_HAsciiString.hxx>
#include <charconv>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "spotblue/base/error.hpp"
#include "spotblue/geometry/size_words.hpp"
#include "spotblue/geometry/sizes.hpp"
#include "spotblue/standards/iso286.hpp"

namespace spotblue::plugin {
namespace {

using Measure = StepRepr_ReprItemAndLengthMeasureWithUnit;
using Words = StepRepr_DescriptiveRepresentationItem;

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
  Handle(Measure) measure = new Measure;
  measure->Init(length, item);
  return measure;
}

/// A dimension's values, to be looked at and added to.
class Values {
 public:
  Values(Handle(StepData_StepModel) model, Handle(StepShape_ShapeDimensionRepresentation) values)
      : model_(std::move(model)), values_(std::move(values)) {
    const auto items = values_->Items();
    for (int i = 1; !items.IsNull() && i <= items->Upper(); ++i) {
      const auto measure = Handle(Measure)::DownCast(items->Value(i));
      if (nominal_.IsNull()) {
        nominal_ = measure;
      }
      const auto words = Handle(Words)::DownCast(items->Value(i));
      if (!words.IsNull() && words->Name()->ToCString() == kSizeWordsName) {
        words_ = words->Description()->ToCString();
      }
    }
  }

  [[nodiscard]] bool has_nominal() const { return !nominal_.IsNull(); }
  [[nodiscard]] double nominal_mm() const {
    return nominal_->GetMeasureWithUnit()->ValueComponent();
  }
  /// Empty when there are none.
  [[nodiscard]] const std::string& words() const { return words_; }

  void add_measure(const char* name, double value_mm) {
    add(measure_like(*nominal_, name, value_mm));
  }
  void add_words(const std::string& text) {
    const Handle(Words) words = new Words;
    words->Init(new TCollection_HAsciiString(std::string(kSizeWordsName).c_str()),
                new TCollection_HAsciiString(text.c_str()));
    add(words);
  }

 private:
  void add(const Handle(StepRepr_RepresentationItem) & item) {
    const auto items = values_->Items();
    const Handle(StepRepr_HArray1OfRepresentationItem) more =
        new StepRepr_HArray1OfRepresentationItem(1, items->Upper() + 1);
    for (int i = 1; i <= items->Upper(); ++i) {
      more->SetValue(i, items->Value(i));
    }
    more->SetValue(more->Upper(), item);
    model_->AddWithRefs(item);
    values_->SetItems(more);
  }

  Handle(StepData_StepModel) model_;
  Handle(StepShape_ShapeDimensionRepresentation) values_;
  Handle(Measure) nominal_;
  std::string words_;
};

void mend_class(const StepShape_LimitsAndFits& fit, Values& values) {
  const std::string tolerance_class =
      std::string(fit.FormVariance()->ToCString()) + fit.Grade()->ToCString();
  if (needs_limits(tolerance_class)) {
    const Limits made = limits(Length::mm(values.nominal_mm()), tolerance_class);
    values.add_measure("lower limit", made.lower.in_mm());
    values.add_measure("upper limit", made.upper.in_mm());
  }
}

std::optional<SizeLimits> deviations_said(const std::string& words) {
  try {
    return parse_size(words, LengthUnit::mm).deviations;
  } catch (const Error&) {
    return std::nullopt;
  }
}

// The writer turns the sign of the lower deviation. A document has it signed, or, where it is
// positive and no less than the upper, as what lies below; what is neither is left in doubt.
void mend_deviations(const StepShape_ToleranceValue& tolerance, Values& values) {
  const auto lower = Handle(StepBasic_MeasureWithUnit)::DownCast(tolerance.LowerBound());
  const auto upper = Handle(StepBasic_MeasureWithUnit)::DownCast(tolerance.UpperBound());
  if (lower.IsNull() || upper.IsNull()) {
    return;
  }
  if (const auto said = deviations_said(values.words())) {
    lower->SetValueComponent(said->lower_mm);
    upper->SetValueComponent(said->upper_mm);
    return;
  }
  const double written = lower->ValueComponent();
  if (written >= 0.0) {
    lower->SetValueComponent(written == 0.0 ? 0.0 : -written);
  } else if (-written < upper->ValueComponent() - 1e-9) {
    return;
  }
  if (values.words().empty()) {
    SemanticSize size;
    size.characteristic = SizeCharacteristic::diameter;  // no word for what it is of
    size.nominal_mm = values.nominal_mm();
    size.deviations = {lower->ValueComponent(), upper->ValueComponent()};
    values.add_words(semantic_size_text(size));
  }
}

void sign(const Handle(StepData_StepModel) & model) {
  APIHeaderSection_MakeHeader header(model);
  const std::string writer = "spotblue " SPOTBLUE_VERSION " on Open CASCADE " OCC_VERSION_COMPLETE;
  header.SetPreprocessorVersion(new TCollection_HAsciiString(writer.c_str()));
}

}  // namespace

Written mend_sizes(const Handle(StepData_StepModel) & model) {
  Written written;
  std::map<const Standard_Transient*, Handle(StepShape_PlusMinusTolerance)> tolerances;
  for (int i = 1; i <= model->NbEntities(); ++i) {
    if (const auto fit = Handle(StepShape_LimitsAndFits)::DownCast(model->Value(i));
        !fit.IsNull() && !fit->Grade().IsNull()) {
      ++written.classes;
      mend_grade(*fit);
    } else if (const auto one = Handle(StepShape_PlusMinusTolerance)::DownCast(model->Value(i));
               !one.IsNull()) {
      tolerances[one->TolerancedDimension().Value().get()] = one;
    }
  }
  for (int i = 1, last = model->NbEntities(); i <= last; ++i) {
    const auto dimension =
        Handle(StepShape_DimensionalCharacteristicRepresentation)::DownCast(model->Value(i));
    if (dimension.IsNull() || dimension->Representation().IsNull()) {
      continue;
    }
    ++written.sizes;
    const auto found = tolerances.find(dimension->Dimension().Value().get());
    Values values(model, dimension->Representation());
    if (found != tolerances.end() && values.has_nominal()) {
      const StepShape_ToleranceMethodDefinition range = found->second->Range();
      if (const auto fit = range.LimitsAndFits(); !fit.IsNull() && !fit->Grade().IsNull()) {
        mend_class(*fit, values);
      } else if (const auto value = range.ToleranceValue(); !value.IsNull()) {
        mend_deviations(*value, values);
      }
    }
  }
  sign(model);
  return written;
}

}  // namespace spotblue::plugin
