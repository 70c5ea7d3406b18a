// Stated sizes against Open CASCADE's own document reader and writer, whose known faults are
// stated where they are allowed for.

#include <gmock/gmock.h>

#include <BRepAdaptor_Surface.hxx>
#include <BRepPrimAPI_MakeCylinder.hxx>
#include <Interface_Static.hxx>
#include <STEPCAFControl_Controller.hxx>
#include <STEPCAFControl_Reader.hxx>
#include <STEPCAFControl_Writer.hxx>
#include <TDF_LabelSequence.hxx>
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

#include "geometry/sizes/semantic_files.hpp"
#include "support/step_out.hpp"

namespace spotblue::semantic_occt_test {

using test::Folder;

// A size as Open CASCADE's document gives it.
struct OcctSize {
  double value = 0.0;
  double upper = 0.0, lower = 0.0;
  int form = 0, grade = -1;  // Open CASCADE's own numbers
  bool hole = false;
  std::vector<double> diameters;  // of the cylinders it is on
};

Handle(TDocStd_Document) new_document() {
  Handle(TDocStd_Document) document;
  XCAFApp_Application::GetApplication()->NewDocument("MDTV-XCAF", document);
  return document;
}

OcctSize occt_size(const TDF_Label& label, XCAFDoc_DimTolTool& tool) {
  OcctSize size;
  Handle(XCAFDoc_Dimension) dimension;
  label.FindAttribute(XCAFDoc_Dimension::GetID(), dimension);
  const Handle(XCAFDimTolObjects_DimensionObject) object = dimension->GetObject();
  size.value = object->GetValue();
  if (object->IsDimWithPlusMinusTolerance()) {
    size.upper = object->GetUpperTolValue();
    size.lower = object->GetLowerTolValue();
  }
  XCAFDimTolObjects_DimensionFormVariance form{};
  XCAFDimTolObjects_DimensionGrade grade{};
  if (object->GetClassOfTolerance(size.hole, form, grade)) {
    size.form = form;
    size.grade = grade;
  }
  TDF_LabelSequence first;
  TDF_LabelSequence second;
  tool.GetRefShapeLabel(label, first, second);
  for (const TDF_Label& face : first) {
    const BRepAdaptor_Surface surface(TopoDS::Face(XCAFDoc_ShapeTool::GetShape(face)));
    size.diameters.push_back(2.0 * surface.Cylinder().Radius());
  }
  return size;
}

std::vector<OcctSize> occt_reads(const std::filesystem::path& file) {
  test::silence_open_cascade();
  STEPCAFControl_Controller::Init();
  Interface_Static::SetCVal("xstep.cascade.unit", "MM");
  Handle(TDocStd_Document) document = new_document();
  STEPCAFControl_Reader reader;
  reader.SetGDTMode(true);
  EXPECT_EQ(reader.ReadFile(file.c_str()), IFSelect_RetDone);
  EXPECT_TRUE(reader.Transfer(document));
  const Handle(XCAFDoc_DimTolTool) tool = XCAFDoc_DocumentTool::DimTolTool(document->Main());
  TDF_LabelSequence labels;
  tool->GetDimensionLabels(labels);
  std::vector<OcctSize> sizes;
  for (const TDF_Label& label : labels) {
    sizes.push_back(occt_size(label, *tool));
  }
  return sizes;
}

const OcctSize& on_diameter(const std::vector<OcctSize>& sizes, double diameter) {
  static const OcctSize none;
  for (const OcctSize& size : sizes) {
    if (!size.diameters.empty() && std::abs(size.diameters.front() - diameter) < 1e-6) {
      return size;
    }
  }
  ADD_FAILURE() << "no size on a cylinder of " << diameter;
  return none;
}

class OpenCascadeReads : public testing::TestWithParam<LengthUnit> {};

TEST_P(OpenCascadeReads, TheClassesWeWriteOnTheFacesWeMean) {
  const Folder folder;
  std::vector<double> diameters;
  std::vector<SizeToWrite> sizes;
  for (int grade = 1; grade <= 18; ++grade) {
    const double diameter = 20.0 + grade;
    diameters.push_back(diameter);
    sizes.push_back(
        {"Plate", "bore " + std::to_string(20 + grade), diameter, "H" + std::to_string(grade), {}});
  }
  const auto file =
      test::write_parts(folder, {test::plate("Plate", diameters)}, GetParam(), StepProtocol::ap214);
  const auto out = folder.path() / "out.step";
  (void)write_semantic_sizes(file, out, sizes, GetParam(), {});
  const std::vector<OcctSize> found = occt_reads(out);
  EXPECT_EQ(found.size(), sizes.size());
  for (int grade = 1; grade <= 18; ++grade) {
    const OcctSize& size = on_diameter(found, 20.0 + grade);
    EXPECT_TRUE(size.hole);
    EXPECT_EQ(size.form, XCAFDimTolObjects_DimensionFormVariance_H);
    EXPECT_EQ(size.grade, XCAFDimTolObjects_DimensionGrade_IT1 + grade - 1);
    EXPECT_NEAR(size.value, 20.0 + grade, 1e-9);
  }
}

// Open CASCADE's reader drops the sign of the lower deviation, does not turn deviations in inches
// into mm, and reads two negative ones as a range; so only magnitudes in mm are looked at.
TEST(OpenCascadeReadsDeviations, AsWeWriteThemButForItsOwnFaults) {
  const Folder folder;
  const auto file = test::write_parts(folder, {test::plate("Plate", {20.0, 30.0})}, LengthUnit::mm,
                                      StepProtocol::ap214);
  const auto out = folder.path() / "out.step";
  const std::vector<SizeToWrite> sizes{{"Plate", "bore 20", 20.0, "", SizeLimits{-0.02, 0.03}},
                                       {"Plate", "bore 30", 30.0, "", SizeLimits{0.0, 0.021}}};
  (void)write_semantic_sizes(file, out, sizes, LengthUnit::mm, {});
  const std::vector<OcctSize> found = occt_reads(out);
  EXPECT_NEAR(on_diameter(found, 20.0).upper, 0.03, 1e-12);
  EXPECT_NEAR(std::abs(on_diameter(found, 20.0).lower), 0.02, 1e-12);
  EXPECT_NEAR(on_diameter(found, 30.0).upper, 0.021, 1e-12);
}

INSTANTIATE_TEST_SUITE_P(Units, OpenCascadeReads,
                         testing::Values(LengthUnit::mm, LengthUnit::inch));

// A pin of 20 s6 written by Open CASCADE alone, its grade two too high.
std::filesystem::path occt_writes(const Folder& folder) {
  test::silence_open_cascade();
  STEPCAFControl_Controller::Init();
  Interface_Static::SetCVal("write.step.schema", "AP242DIS");
  Handle(TDocStd_Document) document = new_document();
  const Handle(XCAFDoc_ShapeTool) shapes = XCAFDoc_DocumentTool::ShapeTool(document->Main());
  const TopoDS_Shape solid = BRepPrimAPI_MakeCylinder(10.0, 30.0).Shape();
  const TDF_Label part = shapes->AddShape(solid, false);
  TDataStd_Name::Set(part, "Pin");
  const Handle(XCAFDoc_DimTolTool) tool = XCAFDoc_DocumentTool::DimTolTool(document->Main());
  TDF_LabelSequence faces;
  for (TopExp_Explorer each(solid, TopAbs_FACE); each.More(); each.Next()) {
    if (BRepAdaptor_Surface(TopoDS::Face(each.Current())).GetType() == GeomAbs_Cylinder) {
      faces.Append(shapes->AddSubShape(part, each.Current()));
    }
  }
  const TDF_Label label = tool->AddDimension();
  tool->SetDimension(faces, TDF_LabelSequence(), label);
  Handle(XCAFDoc_Dimension) dimension;
  label.FindAttribute(XCAFDoc_Dimension::GetID(), dimension);
  const Handle(XCAFDimTolObjects_DimensionObject) object = dimension->GetObject();
  object->SetType(XCAFDimTolObjects_DimensionType_Size_Diameter);
  object->SetValue(20.0);
  object->SetClassOfTolerance(false, XCAFDimTolObjects_DimensionFormVariance_S,
                              XCAFDimTolObjects_DimensionGrade_IT6);
  dimension->SetObject(object);
  STEPCAFControl_Writer writer;
  writer.SetDimTolMode(true);
  EXPECT_TRUE(writer.Transfer(document, STEPControl_AsIs));
  std::filesystem::path file = folder.path() / "kernel.step";
  EXPECT_EQ(writer.Write(file.c_str()), IFSelect_RetDone);
  return file;
}

TEST(OpenCascadeWrites, GradesTwoTooHighWhichAreReadRightWithANote) {
  const Folder folder;
  const auto file = occt_writes(folder);
  // Should a later kernel write '6' here, its version must no longer count as faulty.
  EXPECT_THAT(test::text_of(file), testing::HasSubstr("LIMITS_AND_FITS('s','shaft','8','')"));
  const Model model = test::read_whole(file);
  const auto found = test::sizes_on(model, "outside 20");
  ASSERT_EQ(found.size(), 1U);
  EXPECT_EQ(found[0].tolerance_class, "s6");
  EXPECT_TRUE(test::noted(model, "two too high"));
}

// The pin's class where the header names this version of the writer.
SemanticSize pin_written_by(const std::string& version) {
  const Folder folder;
  std::string text = test::text_of(occt_writes(folder));
  const std::string name = "'Open CASCADE STEP processor ";
  const auto begin = text.find(name) + name.size();
  text.replace(begin, text.find('\'', begin) - begin, version);
  const Model model = test::read_whole(folder.write("changed.step", text));
  EXPECT_EQ(model.semantic_sizes.size(), 1U);
  return model.semantic_sizes.at(0);
}

TEST(OpenCascadeWrites, GradesThatArePutRightForEveryKnownVersion) {
  for (const char* const version : {"7.5", "7.6", "7.7", "7.8", "7.9", "8.0"}) {
    EXPECT_EQ(pin_written_by(version).tolerance_class, "s6") << version;
  }
}

TEST(OpenCascadeWrites, GradesThatStayInDoubtForAVersionToCome) {
  const SemanticSize size = pin_written_by("8.1");
  EXPECT_EQ(size.tolerance_class, "");
  EXPECT_THAT(size.doubt, testing::HasSubstr("cannot be told"));
}

TEST(OpenCascadeWrites, GradesThatArePutRightInACopyWithMoreSizes) {
  const Folder folder;
  const auto file = occt_writes(folder);
  const auto out = folder.path() / "out.step";
  const std::vector<SizeToWrite> sizes{{"Pin", "width 30", 30.0, "h9", {}}};
  (void)write_semantic_sizes(file, out, sizes, LengthUnit::mm, {});
  const Model model = test::read_whole(out);
  EXPECT_EQ(test::sizes_on(model, "outside 20").at(0).tolerance_class, "s6");
  EXPECT_EQ(test::sizes_on(model, "width 30").at(0).tolerance_class, "h9");
  EXPECT_FALSE(test::noted(model, "two too high"));
}

}  // namespace spotblue::semantic_occt_test
