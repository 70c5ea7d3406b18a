// Models of shapes and documents that a host program holds, against the files they came from and
// against what is true of them.

#include "spotblue/geometry/occt.hpp"

#include <gtest/gtest.h>

#include <BRepAlgoAPI_Cut.hxx>
#include <BRepPrimAPI_MakeBox.hxx>
#include <BRepPrimAPI_MakeCylinder.hxx>
#include <BRep_Builder.hxx>
#include <STEPCAFControl_Reader.hxx>
#include <TDocStd_Document.hxx>
#include <TopExp.hxx>
#include <TopLoc_Location.hxx>
#include <TopTools_IndexedMapOfShape.hxx>
#include <TopoDS_Compound.hxx>
#include <XCAFApp_Application.hxx>
#include <XCAFDoc_DocumentTool.hxx>
#include <XCAFDoc_Location.hxx>
#include <XCAFDoc_ShapeTool.hxx>
#include <algorithm>
#include <cmath>
#include <filesystem>

#include "geometry/truth/truth_match.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/geometry/feature_faces.hpp"
#include "spotblue/geometry/look.hpp"
#include "support/thrown.hpp"

namespace spotblue::test::occt_test {

Handle(TDocStd_Document) new_document() {
  Handle(TDocStd_Document) document;
  XCAFApp_Application::GetApplication()->NewDocument("BinXCAF", document);
  return document;
}

Handle(TDocStd_Document) document_of(const std::filesystem::path& file) {
  silence_open_cascade();
  Handle(TDocStd_Document) document = new_document();
  STEPCAFControl_Reader reader;
  reader.SetNameMode(Standard_True);
  EXPECT_EQ(reader.ReadFile(file.c_str()), IFSelect_RetDone);
  EXPECT_TRUE(reader.Transfer(document));
  return document;
}

TopoDS_Shape rod(double diameter, double length) {
  return BRepPrimAPI_MakeCylinder(0.5 * diameter, length).Shape();
}

TopoDS_Shape moved(const TopoDS_Shape& shape, double x) {
  gp_Trsf by;
  by.SetTranslation(gp_Vec(x, 0.0, 0.0));
  return shape.Moved(TopLoc_Location(by));
}

std::vector<std::string> places(const Model& model) {
  std::vector<std::string> all;
  for (const Occurrence& one : model.occurrences) {
    all.push_back(one.path + " = " + model.products[one.product].name);
  }
  std::ranges::sort(all);
  return all;
}

class DocumentOfFile : public testing::TestWithParam<std::uint64_t> {};

TEST_P(DocumentOfFile, IsSeenAsItIsTrue) {
  const auto file = std::filesystem::temp_directory_path() /
                    ("spotblue-document-" + std::to_string(GetParam()) + ".step");
  const Wrapping wrapping = wrapping_of(GetParam());
  const Assembly assembly = generate_assembly(GetParam(), wrapping);
  SCOPED_TRACE(assembly.description());
  write_step(assembly.nodes, wrapping.schema, wrapping.unit, file);
  const Handle(TDocStd_Document) document = document_of(file);
  const Look seen = look_at(model_of_document(document->Main(), "D").model, {});
  for (const std::string& line : disagreements(seen, assembly, {})) {
    ADD_FAILURE() << line;
  }
  EXPECT_EQ(places(seen.model), places(read_step(file, {}, Completeness::all_or_error)));
  std::filesystem::remove(file);
}

INSTANTIATE_TEST_SUITE_P(FromSeed, DocumentOfFile, testing::Range<std::uint64_t>(1, 21));

TEST(ModelOfDocument, RefusesAPartThatTheDocumentPlacesNowhere) {
  const Handle(TDocStd_Document) document = new_document();
  const auto tool = XCAFDoc_DocumentTool::ShapeTool(document->Main());
  const TDF_Label group = tool->NewShape();
  const TDF_Label part = tool->AddShape(rod(20.0, 30.0), Standard_False);
  const TDF_Label placed = tool->AddComponent(group, part, TopLoc_Location());
  EXPECT_EQ(model_of_document(document->Main(), "D").model.occurrences.size(), 1U);
  placed.ForgetAttribute(XCAFDoc_Location::GetID());
  const Error error = test::error_of([&] { return model_of_document(document->Main(), "D"); });
  EXPECT_EQ(error.code(), ErrorCode::unreadable);
}

Error refused(const Handle(TDocStd_Document) & document) {
  return test::error_of([&] { return model_of_document(document->Main(), "D"); });
}

TEST(ModelOfDocument, AnAssemblyThatContainsItselfIsRefusedThoughNoRootLeadsThere) {
  for (const bool below_a_root : {true, false}) {
    const Handle(TDocStd_Document) document = new_document();
    const auto tool = XCAFDoc_DocumentTool::ShapeTool(document->Main());
    const TDF_Label part = tool->AddShape(rod(20.0, 30.0), Standard_False);
    const TDF_Label top = tool->NewShape();
    const TDF_Label a = tool->NewShape();
    const TDF_Label b = tool->NewShape();
    tool->AddComponent(top, below_a_root ? a : part, TopLoc_Location());
    tool->AddComponent(a, b, TopLoc_Location());
    tool->AddComponent(b, a, TopLoc_Location());
    EXPECT_NE(std::string(refused(document).what()).find("contains itself"), std::string::npos);
  }
}

TEST(ModelOfDocument, WhatUnfoldsToTooMuchIsRefusedBeforeItIsUnfolded) {
  const Handle(TDocStd_Document) document = new_document();
  const auto tool = XCAFDoc_DocumentTool::ShapeTool(document->Main());
  TDF_Label inner = tool->AddShape(rod(20.0, 30.0), Standard_False);
  for (int level = 0; level < 8; ++level) {
    const TDF_Label outer = tool->NewShape();
    for (int i = 0; i < 10; ++i) {
      tool->AddComponent(outer, inner, TopLoc_Location());
    }
    inner = outer;
  }
  EXPECT_NE(std::string(refused(document).what()).find("more than 2000000"), std::string::npos);
}

TEST(ModelOfDocument, AssembliesAreNestedNoDeeperThanThoseOfAFile) {
  const Handle(TDocStd_Document) document = new_document();
  const auto tool = XCAFDoc_DocumentTool::ShapeTool(document->Main());
  TDF_Label inner = tool->AddShape(rod(20.0, 30.0), Standard_False);
  for (int level = 0; level < 501; ++level) {
    const TDF_Label outer = tool->NewShape();
    tool->AddComponent(outer, inner, TopLoc_Location());
    inner = outer;
  }
  EXPECT_NE(std::string(refused(document).what()).find("deeper than 500"), std::string::npos);
}

TEST(ModelOfShapes, ACompoundThatUnfoldsToTooMuchIsRefusedByName) {
  TopoDS_Shape wide = rod(20.0, 30.0);
  for (int level = 0; level < 8; ++level) {
    TopoDS_Compound outer;
    const BRep_Builder builder;
    builder.MakeCompound(outer);
    for (int i = 0; i < 10; ++i) {
      builder.Add(outer, wide);
    }
    wide = outer;
  }
  const std::vector<NamedShape> shapes{{"wide", &wide}};
  EXPECT_THROW(static_cast<void>(model_of_shapes(shapes)), Error);
}

TEST(ModelOfShapes, APlaceThatIsNoNumberIsRefusedByName) {
  const TopoDS_Shape pin = moved(rod(20.0, 30.0), std::nan(""));
  const std::vector<NamedShape> shapes{{"pin", &pin}};
  const Error error = test::error_of([&] { return model_of_shapes(shapes); });
  EXPECT_EQ(error.place(), "'pin'");
}

TEST(ModelOfShapes, NamesAreMadeOneLineOfUtf8) {
  const TopoDS_Shape pin = rod(20.0, 30.0);
  const std::vector<NamedShape> shapes{{"pi\xFF\n", &pin}};
  EXPECT_EQ(model_of_shapes(shapes).products[0].name, "pi\xC3\xBF");
}

TEST(ModelOfDocument, TellsTheLabelOfEachProduct) {
  const Handle(TDocStd_Document) document = new_document();
  const auto tool = XCAFDoc_DocumentTool::ShapeTool(document->Main());
  tool->AddShape(rod(20.0, 30.0), Standard_False);
  const DocumentModel read = model_of_document(document->Main(), "D");
  EXPECT_EQ(read.product_labels, std::vector<std::string>{"0:1:1:1"});
  EXPECT_EQ(read.model.file.name, "D");
}

TEST(ModelOfDocument, AShapeAddedWhereItLiesStaysThere) {
  const Handle(TDocStd_Document) document = new_document();
  const auto tool = XCAFDoc_DocumentTool::ShapeTool(document->Main());
  tool->AddShape(moved(rod(20.0, 30.0), 100.0), Standard_False);
  const Model model = model_of_document(document->Main(), "D").model;
  ASSERT_EQ(model.occurrences.size(), 1U);
  EXPECT_DOUBLE_EQ(model.occurrences[0].frame.rows[0][3], 100.0);
}

TEST(ModelOfDocument, LengthsThatAreNoMillimetresAreRefused) {
  const Handle(TDocStd_Document) document = new_document();
  XCAFDoc_DocumentTool::ShapeTool(document->Main())->AddShape(rod(20.0, 30.0), Standard_False);
  XCAFDoc_DocumentTool::SetLengthUnit(document, 0.0254);
  const Error error = test::error_of([&] { return model_of_document(document->Main(), "D"); });
  EXPECT_EQ(error.code(), ErrorCode::bad_input);
  EXPECT_NE(std::string(error.what()).find("25.4 mm"), std::string::npos) << error.what();
}

TEST(ModelOfDocument, AnEmptyDocumentIsRefused) {
  EXPECT_THROW(static_cast<void>(model_of_document(new_document()->Main(), "D")), Error);
}

TEST(ModelOfShapes, OneShapeInTwoPlacesIsOneProduct) {
  const TopoDS_Shape here = rod(20.0, 30.0);
  const TopoDS_Shape there = moved(here, 100.0);
  const std::vector<NamedShape> shapes{{"pin", &here}, {"spare", &there}};
  const Model model = model_of_shapes(shapes);
  ASSERT_EQ(model.products.size(), 1U);
  EXPECT_EQ(places(model), (std::vector<std::string>{"pin = pin", "spare = pin"}));
}

TEST(ModelOfShapes, AShapeWithoutSolidIsRefusedByName) {
  TopTools_IndexedMapOfShape faces;
  TopExp::MapShapes(rod(20.0, 30.0), TopAbs_FACE, faces);
  const TopoDS_Shape face = faces(1);
  const std::vector<NamedShape> shapes{{"leaf", &face}};
  const Error error = test::error_of([&] { return model_of_shapes(shapes); });
  EXPECT_EQ(error.place(), "'leaf'");
}

struct Turned {
  const char* name;
  bool inside_out;
};
void PrintTo(const Turned& turned, std::ostream* out) { *out << turned.name; }

class FacesOfFeatures : public testing::TestWithParam<Turned> {};

TEST_P(FacesOfFeatures, EachPlaneAndCylinderOfABoredBlockIsFoundOnce) {
  const TopoDS_Shape hole = moved(rod(10.0, 40.0), 0.0);
  const TopoDS_Shape block = BRepPrimAPI_MakeBox(gp_Pnt(-20, -15, 0), gp_Pnt(20, 15, 40)).Shape();
  TopoDS_Shape bored = BRepAlgoAPI_Cut(block, hole).Shape();
  if (GetParam().inside_out) {
    bored.Reverse();
  }
  const std::vector<NamedShape> shapes{{"block", &bored}};
  const Model model = model_of_shapes(shapes);
  ASSERT_EQ(model.products.size(), 1U);
  const Product& product = model.products[0];
  ASSERT_EQ(product.cylinders.size(), 1U);
  EXPECT_EQ(product.cylinders[0].side, Side::internal);
  const std::vector<FeatureFace> found = feature_faces(bored, product);
  EXPECT_EQ(std::ranges::count(found, FeatureKind::cylinder, &FeatureFace::kind), 1);
  EXPECT_EQ(std::ranges::count(found, FeatureKind::plane, &FeatureFace::kind), 6);
  for (std::size_t plane = 0; plane < product.planes.size(); ++plane) {
    EXPECT_EQ(std::ranges::count_if(found,
                                    [&](const FeatureFace& face) {
                                      return face.kind == FeatureKind::plane && face.index == plane;
                                    }),
              1)
        << product.planes[plane].name;
  }
}

INSTANTIATE_TEST_SUITE_P(Solids, FacesOfFeatures,
                         testing::Values(Turned{"outward", false}, Turned{"inside out", true}));

}  // namespace spotblue::test::occt_test
