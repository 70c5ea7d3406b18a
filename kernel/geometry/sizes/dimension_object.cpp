#include "geometry/sizes/dimension_object.hpp"

#include <TColStd_HArray1OfReal.hxx>
#include <TCollection_HAsciiString.hxx>
#include <TDF_Label.hxx>
#include <XCAFDimTolObjects_DimensionFormVariance.hxx>
#include <XCAFDimTolObjects_DimensionGrade.hxx>
#include <XCAFDoc_Dimension.hxx>
#include <algorithm>
#include <array>
#include <string>

#include "geometry/occt/guard.hpp"
#include "geometry/part21/step_name.hpp"
#include "geometry/sizes/semantic_entities.hpp"
#include "spotblue/base/ascii.hpp"
#include "spotblue/geometry/size_words.hpp"
#include "spotblue/geometry/sizes.hpp"
#include "spotblue/standards/iso286.hpp"

namespace spotblue {
namespace {

using Object = XCAFDimTolObjects_DimensionObject;

// In the order of Open CASCADE's enumerations.
constexpr std::array<std::string_view, 29> kLetters{
    "",  "A", "B", "C", "CD", "D", "E", "EF", "F", "FG", "G", "H",  "JS", "J", "K",
    "M", "N", "P", "R", "S",  "T", "U", "V",  "X", "Y",  "Z", "ZA", "ZB", "ZC"};
constexpr std::array<std::string_view, 20> kDocumentGrades{"01", "0",  "1",  "2",  "3",  "4",  "5",
                                                           "6",  "7",  "8",  "9",  "10", "11", "12",
                                                           "13", "14", "15", "16", "17", "18"};

template <std::size_t N>
std::string_view at(const std::array<std::string_view, N>& table, int index) {
  return index >= 0 && static_cast<std::size_t>(index) < N ? table[static_cast<std::size_t>(index)]
                                                           : std::string_view();
}

std::string in_case(std::string_view letters, SizeKind kind) {
  return kind == SizeKind::shaft ? ascii_lower(letters) : std::string(letters);
}

std::string class_in(const Object& object) {
  Standard_Boolean hole = Standard_False;
  auto letter = XCAFDimTolObjects_DimensionFormVariance_None;
  auto grade = XCAFDimTolObjects_DimensionGrade_IT01;
  if (!object.GetClassOfTolerance(hole, letter, grade)) {
    return {};
  }
  const std::string_view letters = at(kLetters, letter);
  const std::string_view number = at(kDocumentGrades, grade);
  return letters.empty() || number.empty()
             ? std::string()
             : in_case(letters, hole ? SizeKind::hole : SizeKind::shaft) + std::string(number);
}

SizeCharacteristic characteristic_of(XCAFDimTolObjects_DimensionType type) {
  switch (type) {
    case XCAFDimTolObjects_DimensionType_Size_Diameter:
      return SizeCharacteristic::diameter;
    case XCAFDimTolObjects_DimensionType_Size_Radius:
      return SizeCharacteristic::radius;
    case XCAFDimTolObjects_DimensionType_Size_Thickness:
      return SizeCharacteristic::width;
    default:
      return kind_of(type) == DimensionKind::plain_distance ? SizeCharacteristic::width
                                                            : SizeCharacteristic::other;
  }
}

std::string text_of(const Handle(TCollection_HAsciiString) & text) {
  return text.IsNull() ? std::string() : clean_name(text->ToCString());
}

void set_class(Object& object, const std::string& tolerance_class) {
  const std::size_t digits = tolerance_class.find_first_of("0123456789");
  const std::string letters = tolerance_class.substr(0, digits);
  const std::string number = digits == std::string::npos ? "" : tolerance_class.substr(digits);
  const SizeKind kind = size_kind(tolerance_class);
  const auto letter = std::ranges::find_if(
      kLetters, [&](std::string_view one) { return in_case(one, kind) == letters; });
  const auto grade = std::ranges::find(kDocumentGrades, number);
  if (letter == kLetters.end() || letter->empty() || grade == kDocumentGrades.end()) {
    throw Error(ErrorCode::bad_input, {"", tolerance_class},
                "can not be said in a document of Open CASCADE",
                "choose a class of ISO 286 with one of its letters and a grade from 01 to 18");
  }
  object.SetClassOfTolerance(
      kind == SizeKind::hole,
      static_cast<XCAFDimTolObjects_DimensionFormVariance>(letter - kLetters.begin()),
      static_cast<XCAFDimTolObjects_DimensionGrade>(grade - kDocumentGrades.begin()));
}

void set_values(Object& object, const SemanticSize& size) {
  const auto values = [&](std::initializer_list<double> all) {
    Handle(TColStd_HArray1OfReal) array =
        new TColStd_HArray1OfReal(1, static_cast<int>(all.size()));
    int i = 0;
    for (const double value : all) {
      array->SetValue(++i, value);
    }
    object.SetValues(array);
  };
  if (size.deviations && size.nominal_mm) {
    values({*size.nominal_mm, size.deviations->lower_mm, size.deviations->upper_mm});
  } else if (size.limits && size.tolerance_class.empty()) {
    values({size.limits->lower_mm, size.limits->upper_mm});
  } else if (size.nominal_mm) {
    values({*size.nominal_mm});
  }
}

void set_words(Object& object, const SemanticSize& size) {
  for (int i = object.NbDescriptions() - 1; i >= 0; --i) {
    if (text_of(object.GetDescriptionName(i)) == kSizeWordsName) {
      object.RemoveDescription(i);
    }
  }
  const std::string name(kSizeWordsName);
  object.AddDescription(new TCollection_HAsciiString(semantic_size_text(size).c_str()),
                        new TCollection_HAsciiString(name.c_str()));
}

}  // namespace

DimensionKind kind_of(XCAFDimTolObjects_DimensionType type) {
  switch (type) {
    case XCAFDimTolObjects_DimensionType_Location_LinearDistance:
    case XCAFDimTolObjects_DimensionType_Location_LinearDistance_FromOuterToOuter:
    case XCAFDimTolObjects_DimensionType_Location_LinearDistance_FromInnerToInner:
      return DimensionKind::plain_distance;
    case XCAFDimTolObjects_DimensionType_Location_Angular:
    case XCAFDimTolObjects_DimensionType_Size_Angular:
      return DimensionKind::angle;
    default:
      break;
  }
  return type >= XCAFDimTolObjects_DimensionType_Location_CurvedDistance &&
                 type <= XCAFDimTolObjects_DimensionType_Location_WithPath
             ? DimensionKind::other_distance
             : DimensionKind::size;
}

bool is_step_name(std::string_view name) {
  return name == "diameter" || name == "radius" || name == "thickness" || is_plain_distance(name);
}

SemanticSize size_in(const Object& object) {
  SemanticSize size;
  size.name = text_of(object.GetSemanticName());
  size.characteristic = characteristic_of(object.GetType());
  if (object.IsDimWithRange()) {
    size.limits = {object.GetLowerBound(), object.GetUpperBound()};
  } else if (!object.GetValues().IsNull()) {
    size.nominal_mm = object.GetValue();
  }
  if (object.IsDimWithPlusMinusTolerance()) {
    size.deviations = {object.GetLowerTolValue(), object.GetUpperTolValue()};
  }
  size.tolerance_class = class_in(object);
  return size;
}

std::optional<SemanticSize> words_in(const Object& object) {
  for (int i = 0; i < object.NbDescriptions(); ++i) {
    if (text_of(object.GetDescriptionName(i)) == kSizeWordsName) {
      try {
        return parse_size(text_of(object.GetDescription(i)), LengthUnit::mm);
      } catch (const Error&) {
        return std::nullopt;  // someone else's words
      }
    }
  }
  return std::nullopt;
}

void state_size(const TDF_Label& dimension, const SemanticSize& size) {
  guarded("stating a size", [&] {
    Handle(XCAFDoc_Dimension) attribute;
    if (!dimension.FindAttribute(XCAFDoc_Dimension::GetID(), attribute)) {
      throw Error(ErrorCode::bad_input, {"", size.name}, "its label is that of no dimension",
                  "add a dimension first");
    }
    const Handle(Object) object = attribute->GetObject();
    if (characteristic_of(object->GetType()) != size.characteristic) {
      object->SetType(size.characteristic == SizeCharacteristic::width
                          ? XCAFDimTolObjects_DimensionType_Location_LinearDistance
                      : size.characteristic == SizeCharacteristic::radius
                          ? XCAFDimTolObjects_DimensionType_Size_Radius
                          : XCAFDimTolObjects_DimensionType_Size_Diameter);
    }
    object->SetSemanticName(new TCollection_HAsciiString(size.name.c_str()));
    set_values(*object, size);
    if (!size.tolerance_class.empty()) {
      set_class(*object, size.tolerance_class);
    }
    set_words(*object, size);
    attribute->SetObject(object);
  });
}

}  // namespace spotblue
