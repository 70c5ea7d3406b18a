// Colours that the service puts in a document of its host, and takes off again.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <BRepPrimAPI_MakeBox.hxx>
#include <BinXCAFDrivers.hxx>
#include <Quantity_Color.hxx>
#include <TDF_LabelSequence.hxx>
#include <TDataStd_Comment.hxx>
#include <TDataStd_Name.hxx>
#include <TDocStd_Application.hxx>
#include <XCAFDoc_ColorTool.hxx>
#include <XCAFDoc_DocumentTool.hxx>
#include <XCAFDoc_ShapeTool.hxx>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "plugin/service.hpp"

namespace spotblue::host::service_marks_test {

Handle(TDocStd_Document) new_marked_document() {
  static const Handle(TDocStd_Application) application = new TDocStd_Application;
  BinXCAFDrivers::DefineFormat(application);
  Handle(TDocStd_Document) document;
  application->NewDocument("BinXCAF", document);
  return document;
}

class HostMarks : public testing::Test {
 protected:
  void SetUp() override { ASSERT_FALSE(service_.IsNull()); }
  Handle(Service) service_ = load_service();
};

// Two boxes that foul, "A" painted green; with marks on both.
struct Painted {
  Handle(TDocStd_Document) document = new_marked_document();
  Handle(XCAFDoc_ColorTool) colours = XCAFDoc_DocumentTool::ColorTool(document->Main());
  TDF_Label a = add(gp_Pnt(0, 0, 0), 10.0, "A");
  TDF_Label b = add(gp_Pnt(5, 2, 2), 6.0, "B");
  std::string job;

  Painted() {
    colours->SetColor(a, Quantity_NOC_GREEN, XCAFDoc_ColorSurf);
    const auto file = std::filesystem::path(testing::TempDir()) / "spotblue-paint.job.toml";
    std::ofstream(file) << "schema = 1\nmodel = \"x.step\"\nunit = \"mm\"\n";
    job = file.string();
  }
  [[nodiscard]] TDF_Label add(const gp_Pnt& corner, double size, const char* name) const {
    const TDF_Label label =
        XCAFDoc_DocumentTool::ShapeTool(document->Main())
            ->AddShape(BRepPrimAPI_MakeBox(corner, size, size, size).Shape(), Standard_False);
    TDataStd_Name::Set(label, name);
    return label;
  }
  [[nodiscard]] std::string colour_of(const TDF_Label& label) const {
    Quantity_Color colour;
    return colours->GetColor(label, XCAFDoc_ColorSurf, colour)
               ? Quantity_Color::StringName(colour.Name())
               : "none";
  }
  [[nodiscard]] int in_table() const {
    TDF_LabelSequence all;
    colours->GetColors(all);
    return all.Length();
  }
};

TEST_F(HostMarks, ClearedMarksLeaveTheColoursAsTheyWere) {
  const Painted painted;
  std::string trouble;
  EXPECT_GT(service_->check_document(painted.document, {painted.job, false, true}).marks_set, 1U);
  EXPECT_NE(painted.colour_of(painted.a), "GREEN");
  service_->clear_marks(painted.document, trouble);
  EXPECT_EQ(trouble, "");
  EXPECT_EQ(painted.colour_of(painted.a), "GREEN");
  EXPECT_EQ(painted.colour_of(painted.b), "none");
  EXPECT_EQ(painted.in_table(), 1);
}

TEST_F(HostMarks, AColourThatWasSetAfterMarkingStays) {
  const Painted painted;
  std::string trouble;
  service_->check_document(painted.document, {painted.job, false, true});
  painted.colours->SetColor(painted.b, Quantity_NOC_PINK, XCAFDoc_ColorSurf);
  painted.colours->UnSetColor(painted.a, XCAFDoc_ColorSurf);
  service_->clear_marks(painted.document, trouble);
  EXPECT_EQ(painted.colour_of(painted.b), "PINK");
  EXPECT_EQ(painted.colour_of(painted.a), "none");
}

TEST_F(HostMarks, MarksLeaveTheOwnersCommentsAlone) {
  const Painted painted;
  std::string trouble;
  TDataStd_Comment::Set(painted.b, "mine");
  service_->check_document(painted.document, {painted.job, false, true});
  service_->clear_marks(painted.document, trouble);
  Handle(TDataStd_Comment) comment;
  ASSERT_TRUE(painted.b.FindAttribute(TDataStd_Comment::GetID(), comment));
  EXPECT_TRUE(comment->Get().IsEqual("mine"));
}

TEST_F(HostMarks, MarksCanBeTakenOffInAnotherSession) {
  const Painted painted;
  std::string trouble;
  service_->check_document(painted.document, {painted.job, false, true});
  std::stringstream file;
  const auto application = Handle(TDocStd_Application)::DownCast(painted.document->Application());
  ASSERT_EQ(application->SaveAs(painted.document, file), PCDM_SS_OK);
  Handle(TDocStd_Document) again;
  ASSERT_EQ(application->Open(file, again), PCDM_RS_OK);
  EXPECT_GT(service_->clear_marks(again, trouble), 1U);
  TDF_LabelSequence all;
  XCAFDoc_DocumentTool::ColorTool(again->Main())->GetColors(all);
  EXPECT_EQ(all.Length(), 1);
  application->Close(again);
}

TEST_F(HostMarks, ADocumentThatMayNotBeChangedIsSaidSo) {
  const Painted painted;
  painted.document->SetModificationMode(Standard_True);
  const CheckResult check = service_->check_document(painted.document, {painted.job, true, true});
  EXPECT_THAT(check.trouble, testing::HasSubstr("open a command of it first"));
  EXPECT_EQ(service_->check_document(painted.document, {painted.job, false, false}).trouble, "");
}

}  // namespace spotblue::host::service_marks_test
