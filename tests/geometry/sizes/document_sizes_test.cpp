// Sizes that a document states, and sizes in words.

#include <gmock/gmock.h>

#include <BRepAdaptor_Surface.hxx>
#include <BRepPrimAPI_MakeCylinder.hxx>
#include <TCollection_HAsciiString.hxx>
#include <TDataStd_Name.hxx>
#include <TDocStd_Document.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>
#include <XCAFApp_Application.hxx>
#include <XCAFDimTolObjects_DimensionObject.hxx>
#include <XCAFDoc_DimTolTool.hxx>
#include <XCAFDoc_Dimension.hxx>
#include <XCAFDoc_DocumentTool.hxx>
#include <XCAFDoc_ShapeTool.hxx>
#include <functional>

#include "spotblue/base/error.hpp"
#include "spotblue/geometry/occt.hpp"
#include "spotblue/geometry/size_words.hpp"
#include "spotblue/geometry/sizes.hpp"

namespace spotblue::document_sizes_test {

struct Words {
  const char* text;
  LengthUnit unit;
  std::optional<double> nominal_mm;
  std::string tolerance_class;
  std::optional<SizeLimits> deviations, limits;
};
void PrintTo(const Words& one, std::ostream* out) { *out << one.text; }
class SizeInWords : public testing::TestWithParam<Words> {};

TEST_P(SizeInWords, IsReadAsMeant) {
  const SemanticSize size = parse_size(GetParam().text, GetParam().unit);
  ASSERT_EQ(size.nominal_mm.has_value(), GetParam().nominal_mm.has_value());
  EXPECT_NEAR(size.nominal_mm.value_or(0.0), GetParam().nominal_mm.value_or(0.0), 1e-12);
  EXPECT_EQ(size.tolerance_class, GetParam().tolerance_class);
  const auto expect_near = [](const std::optional<SizeLimits>& found,
                              const std::optional<SizeLimits>& wanted) {
    ASSERT_EQ(found.has_value(), wanted.has_value());
    if (wanted) {
      EXPECT_NEAR(found->lower_mm, wanted->lower_mm, 1e-12);
      EXPECT_NEAR(found->upper_mm, wanted->upper_mm, 1e-12);
    }
  };
  expect_near(size.deviations, GetParam().deviations);
  expect_near(size.limits, GetParam().limits);
}

constexpr auto kMm = LengthUnit::mm;
constexpr auto kInch = LengthUnit::inch;
INSTANTIATE_TEST_SUITE_P(
    Forms, SizeInWords,
    testing::Values(Words{"H7", kMm, {}, "H7", {}, {}}, Words{" 38 H7 ", kMm, 38.0, "H7", {}, {}},
                    Words{"1 1/2 in js6", kMm, 38.1, "js6", {}, {}},
                    Words{"1 1/2 J7", kInch, 38.1, "J7", {}, {}},
                    Words{"38 +0.025/0", kMm, 38.0, "", SizeLimits{0.0, 0.025}, {}},
                    Words{"38 0/-0.016", kMm, 38.0, "", SizeLimits{-0.016, 0.0}, {}},
                    Words{"38 -0.025/-0.009", kMm, 38.0, "", SizeLimits{-0.025, -0.009}, {}},
                    Words{"38 +-0.1", kMm, 38.0, "", SizeLimits{-0.1, 0.1}, {}},
                    Words{"38 \u00b10.1", kMm, 38.0, "", SizeLimits{-0.1, 0.1}, {}},
                    Words{"1 in +0.001/0", kMm, 25.4, "", SizeLimits{0.0, 0.0254}, {}},
                    Words{"+0.1/-0.2", kMm, {}, "", SizeLimits{-0.2, 0.1}, {}},
                    Words{"37.9 to 38.1", kMm, {}, "", {}, SizeLimits{37.9, 38.1}},
                    Words{"1 to 2 in", kMm, {}, "", {}, SizeLimits{25.4, 50.8}}));

TEST(SizeInNoWords, IsRefusedWithWhatWouldDo) {
  for (const char* text : {"", "38", "tight", "38 5/16", "38.1 to 37.9", "many H7", "38 +x/-y",
                           "38 +--0.1", "38 +-+0.1"}) {
    EXPECT_THROW((void)parse_size(text, LengthUnit::mm), Error) << text;
  }
}

TEST(SizeInWordsOfOurs, ComesBackTheSame) {
  SemanticSize size;
  size.characteristic = SizeCharacteristic::diameter;
  size.nominal_mm = 6.35;
  size.deviations = {-0.0254, 0.0762};
  const SemanticSize back = parse_size(semantic_size_text(size), LengthUnit::mm);
  EXPECT_EQ(back.nominal_mm, size.nominal_mm);
  EXPECT_EQ(back.deviations, size.deviations);
}

// A document with a pin of 20 and dimensions on it.
class PinDocument : public testing::Test {
 protected:
  PinDocument() {
    XCAFApp_Application::GetApplication()->NewDocument("BinXCAF", document_);
    const auto shapes = XCAFDoc_DocumentTool::ShapeTool(document_->Main());
    const TopoDS_Shape pin = BRepPrimAPI_MakeCylinder(10.0, 30.0).Shape();
    const TDF_Label part = shapes->AddShape(pin, false);
    TDataStd_Name::Set(part, "Pin");
    for (TopExp_Explorer each(pin, TopAbs_FACE); each.More(); each.Next()) {
      if (BRepAdaptor_Surface(TopoDS::Face(each.Current())).GetType() == GeomAbs_Cylinder) {
        face_ = shapes->AddSubShape(part, each.Current());
      }
    }
  }

  using Change = std::function<void(XCAFDimTolObjects_DimensionObject&)>;
  SemanticSize stated(const Change& change) {
    const auto tool = XCAFDoc_DocumentTool::DimTolTool(document_->Main());
    const TDF_Label label = tool->AddDimension();
    tool->SetDimension(face_, label);
    Handle(XCAFDoc_Dimension) dimension;
    label.FindAttribute(XCAFDoc_Dimension::GetID(), dimension);
    const auto object = dimension->GetObject();
    object->SetType(XCAFDimTolObjects_DimensionType_Size_Diameter);
    object->SetValue(20.0);
    change(*object);
    dimension->SetObject(object);
    const Model model = model_of_document(document_->Main(), "D").model;
    EXPECT_EQ(model.semantic_sizes.size(), 1U);
    return model.semantic_sizes.at(0);
  }

  Handle(TDocStd_Document) document_;
  TDF_Label face_;
};

Handle(TCollection_HAsciiString) words(const char* text) {
  return new TCollection_HAsciiString(text);
}

TEST_F(PinDocument, WithoutDimensionsStatesNothing) {
  EXPECT_TRUE(model_of_document(document_->Main(), "D").model.semantic_sizes.empty());
}

TEST_F(PinDocument, StatesSignedDeviations) {
  const SemanticSize size = stated([](auto& object) {
    object.SetUpperTolValue(0.05);
    object.SetLowerTolValue(-0.02);
  });
  ASSERT_TRUE(is_usable(size)) << size.doubt;
  EXPECT_NEAR(size.limits->lower_mm, 19.98, 1e-9);
  EXPECT_NEAR(size.limits->upper_mm, 20.05, 1e-9);
  EXPECT_EQ(size.features, (std::vector<ProductFeatureRef>{{FeatureKind::cylinder, 0}}));
}

TEST_F(PinDocument, LeavesAPositiveLowerDeviationInDoubt) {
  const SemanticSize size = stated([](auto& object) {
    object.SetUpperTolValue(0.05);
    object.SetLowerTolValue(0.02);
  });
  EXPECT_THAT(size.doubt, testing::HasSubstr("can not be told"));
  EXPECT_FALSE(is_usable(size));
}

TEST_F(PinDocument, BelievesTheWordsBesideADeviationThatTheReaderHasSpoilt) {
  // +0.001/-0.002 in, as Open CASCADE's reader leaves them: no sign, and in inches.
  const SemanticSize size = stated([](auto& object) {
    object.SetSemanticName(words("diameter"));
    object.SetUpperTolValue(0.001);
    object.SetLowerTolValue(0.002);
    object.AddDescription(words("20 +0.0254/-0.0508"), words("size in mm"));
  });
  ASSERT_TRUE(is_usable(size)) << size.doubt;
  EXPECT_NEAR(size.limits->lower_mm, 19.9492, 1e-9);
  EXPECT_NEAR(size.limits->upper_mm, 20.0254, 1e-9);
}

TEST_F(PinDocument, DoubtsWhatTheReaderHasSpoiltWithoutWords) {
  const SemanticSize size = stated([](auto& object) {
    object.SetSemanticName(words("diameter"));
    object.SetUpperTolValue(0.001);
    object.SetLowerTolValue(0.002);
  });
  EXPECT_THAT(size.doubt, testing::HasSubstr("from the file itself"));
}

TEST_F(PinDocument, DoubtsWordsThatSayAnotherSize) {
  const SemanticSize size = stated([](auto& object) {
    object.SetClassOfTolerance(false, XCAFDimTolObjects_DimensionFormVariance_H,
                               XCAFDimTolObjects_DimensionGrade_IT9);
    object.AddDescription(words("20 h7"), words("size in mm"));
  });
  EXPECT_THAT(size.doubt, testing::HasSubstr("'20 h7', which is another size"));
}

TEST_F(PinDocument, TakesAClassOfJFromItsWordsAndLimits) {
  // ISO 286-2, table for j: 20 j7 is +13/-8 um.
  const SemanticSize size = stated([](auto& object) {
    object.SetUpperBound(20.013);
    object.SetLowerBound(19.992);
    object.AddDescription(words("20 j7"), words("size in mm"));
  });
  ASSERT_TRUE(is_usable(size)) << size.doubt;
  EXPECT_EQ(size.tolerance_class, "j7");
  EXPECT_NEAR(*size.nominal_mm, 20.0, 1e-12);
}

TEST_F(PinDocument, DoubtsASizeThatThePinDoesNotHave) {
  const SemanticSize size = stated([](auto& object) {
    object.SetUpperBound(31.0);
    object.SetLowerBound(30.0);
  });
  EXPECT_THAT(size.doubt, testing::HasSubstr("where the model has 20 mm"));
}

TEST_F(PinDocument, OfALabelWithoutADimensionCanBeGivenNone) {
  SemanticSize size;
  size.name = "Pin: outside 20";
  EXPECT_THROW(state_size(face_, size), Error);
}

}  // namespace spotblue::document_sizes_test
