// The service as a host program has it: by its header, loaded from where spotblue is installed
// (install_stage.cmake). Nothing of spotblue is linked here.

#include "plugin/service.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <BRepAlgoAPI_Cut.hxx>
#include <BRepPrimAPI_MakeBox.hxx>
#include <BRepPrimAPI_MakeCylinder.hxx>
#include <BRep_Builder.hxx>
#include <BinXCAFDrivers.hxx>
#include <STEPCAFControl_Reader.hxx>
#include <TDocStd_Application.hxx>
#include <TopLoc_Location.hxx>
#include <TopoDS_Solid.hxx>
#include <XCAFDoc_DocumentTool.hxx>
#include <XCAFDoc_NotesTool.hxx>
#include <XCAFDoc_ShapeTool.hxx>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <gp_Trsf.hxx>
#include <set>

namespace spotblue::host::service_test {

using ::testing::HasSubstr;
using ::testing::Not;

const std::string kStage = SPOTBLUE_STAGE;
const std::string kJob = kStage + "/models/by-size.job.toml";

Handle(TDocStd_Document) new_document() {
  static const Handle(TDocStd_Application) application = new TDocStd_Application;
  BinXCAFDrivers::DefineFormat(application);
  Handle(TDocStd_Document) document;
  application->NewDocument("BinXCAF", document);
  return document;
}

Handle(TDocStd_Document) document_of(const std::string& model) {
  Handle(TDocStd_Document) document = new_document();
  STEPCAFControl_Reader reader;
  reader.SetNameMode(Standard_True);
  const std::string file = kStage + "/models/out/" + model + ".step";
  EXPECT_EQ(reader.ReadFile(file.c_str()), IFSelect_RetDone);
  EXPECT_TRUE(reader.Transfer(document));
  return document;
}

TopoDS_Shape rod(double diameter, double length) {
  return BRepPrimAPI_MakeCylinder(0.5 * diameter, length).Shape();
}

// A block with a hole of 20.02 for the rod of 20.
std::vector<Part> pin_in_block() {
  const TopoDS_Shape block =
      BRepPrimAPI_MakeBox(gp_Pnt(-30.0, -30.0, 0.0), 60.0, 60.0, 20.0).Shape();
  return {{"Pin", rod(20.0, 20.0)}, {"Block", BRepAlgoAPI_Cut(block, rod(20.02, 20.0)).Shape()}};
}

class HostService : public testing::Test {
 protected:
  void SetUp() override { ASSERT_FALSE(service_.IsNull()); }
  Handle(Service) service_ = load_service();
};

void expect_words(const std::string& trouble, const std::string& words) {
  EXPECT_THAT(trouble, HasSubstr(words));
  EXPECT_THAT(trouble, Not(HasSubstr("\n")));
}

TEST_F(HostService, TellsItsInterfaceAndVersion) {
  EXPECT_EQ(service_->interface_version(), kInterface);
  EXPECT_EQ(service_->version(), SPOTBLUE_VERSION);
}

TEST_F(HostService, IsTheSameEachTimeItIsLoaded) { EXPECT_EQ(load_service(), service_); }

TEST_F(HostService, ShapesBecomeSeatsByTheNamesOfTheirHost) {
  const LookResult look = service_->look_at_shapes(pin_in_block());
  EXPECT_EQ(look.trouble, "");
  EXPECT_EQ(look.parts, 2U);
  ASSERT_FALSE(look.seats.empty());
  EXPECT_EQ(look.seats[0].kind, "radial");
  EXPECT_EQ(look.seats[0].hole, "Block: bore");
  EXPECT_EQ(look.seats[0].shaft, "Pin: outside");
  EXPECT_NEAR(look.seats[0].clearance_mm, 0.02, 1e-9);
  EXPECT_TRUE(look.fouls.empty());
}

TEST_F(HostService, WhatTimeOrMemoryDidNotReachIsTold) {
  for (const Bounds& bounds : {Bounds{1e-6, 0.0}, Bounds{0.0, 1e-6}}) {
    const LookResult look = service_->look_at_shapes(pin_in_block(), bounds);
    EXPECT_EQ(look.trouble, "");
    EXPECT_TRUE(look.seats.empty());
    EXPECT_FALSE(look.not_looked_at.empty());
  }
  EXPECT_TRUE(service_->look_at_shapes(pin_in_block(), {100.0, 2000.0}).not_looked_at.empty());
  expect_words(service_->look_at_shapes(pin_in_block(), {-1.0, 0.0}).trouble, "more than 0");
}

TEST_F(HostService, PartsThatFoulAreFouls) {
  std::vector<Part> parts = pin_in_block();
  parts[0].shape = BRepPrimAPI_MakeBox(gp_Pnt(-25.0, -25.0, 5.0), 50.0, 50.0, 5.0).Shape();
  const LookResult look = service_->look_at_shapes(parts);
  ASSERT_EQ(look.fouls.size(), 1U);
  EXPECT_EQ((std::set{look.fouls[0].a, look.fouls[0].b}), (std::set<std::string>{"Block", "Pin"}));
  EXPECT_GT(look.fouls[0].volume_mm3, 1000.0);
}

TEST_F(HostService, ShapesAreJudgedByAJobFile) {
  const auto file = std::filesystem::path(testing::TempDir()) / "spotblue-host.job.toml";
  std::ofstream(file) << "schema = 1\nmodel = \"of-the-host\"\nunit = \"mm\"\n[[fits]]\n"
                         "hole = \"Block: bore\"\nshaft = \"Pin: outside\"\n"
                         "clearance = [0.05, 0.1]\n";
  const CheckResult check = service_->check_shapes(pin_in_block(), file.string());
  std::filesystem::remove(file);
  EXPECT_EQ(check.trouble, "");
  EXPECT_EQ(check.nonconforming, 1);
  ASSERT_FALSE(check.findings.empty());
  EXPECT_EQ(check.findings[0].outcome, "nonconforming");
  EXPECT_EQ(check.findings[0].about[0], "Block: bore");
  ASSERT_FALSE(check.findings[0].wanted.empty());
  EXPECT_EQ(check.findings[0].wanted[0].key, "fit");
}

TEST_F(HostService, FindingsAreKeptInTheDocumentAndColoursComeAndGo) {
  const Handle(TDocStd_Document) document = document_of("ink-disc-plan-b");
  std::string trouble;
  EXPECT_EQ(service_->kept_findings(document, trouble), "[]");
  const CheckResult check = service_->check_document(document, {kJob, true, true});
  EXPECT_EQ(check.trouble, "");
  EXPECT_GT(check.nonconforming, 0);
  EXPECT_EQ(check.findings.size(),
            static_cast<std::size_t>(check.conforming + check.nonconforming + check.undecided));
  EXPECT_GT(check.notes_kept, 0U);
  EXPECT_EQ(XCAFDoc_DocumentTool::NotesTool(document->Main())->NbNotes(),
            static_cast<int>(check.notes_kept));
  const std::string kept = service_->kept_findings(document, trouble);
  EXPECT_EQ(trouble, "");
  EXPECT_THAT(kept, HasSubstr("\"about\":[\"Bracket: bore 7\",\"Cross shaft: outside 2\"]"));
  EXPECT_GT(check.marks_set, 0U);
  EXPECT_GT(service_->clear_marks(document, trouble), 0U);
  EXPECT_EQ(service_->clear_marks(document, trouble), 0U);
  EXPECT_EQ(trouble, "");
}

TEST_F(HostService, NothingIsWrittenUnlessItIsWished) {
  const Handle(TDocStd_Document) document = document_of("ink-disc-plan-b");
  EXPECT_EQ(service_->check_document(document, {kJob, false, false}).trouble, "");
  std::string trouble;
  EXPECT_EQ(service_->kept_findings(document, trouble), "[]");
  EXPECT_EQ(service_->clear_marks(document, trouble), 0U);
}

TEST_F(HostService, MistakesAreAnsweredInOneLine) {
  const Handle(TDocStd_Document) nothing;
  std::string trouble;
  expect_words(service_->look_at_document(nothing).trouble, "no XDE document");
  expect_words(service_->look_at_document(new_document()).trouble, "no solid");
  expect_words(service_->look_at_shapes({{"Gone", {}}}).trouble, "'Gone' has no shape");
  EXPECT_NE(service_->look_at_shapes({}).trouble, "");
  expect_words(service_->check_shapes(pin_in_block(), "").trouble, "name a job file");
  expect_words(service_->check_shapes(pin_in_block(), "no/such.toml").trouble, "no/such.toml");
  EXPECT_EQ(service_->kept_findings(nothing, trouble), "");
  expect_words(trouble, "no XDE document");
  EXPECT_EQ(service_->clear_marks(nothing, trouble), 0U);
  expect_words(trouble, "no XDE document");

  const Handle(TDocStd_Document) other = document_of("hand-pump-crank");
  expect_words(service_->check_document(other, {kJob, true, true}).trouble, "by-size.job");
  EXPECT_EQ(service_->kept_findings(other, trouble), "[]");
  expect_words(service_->check_document(other, {}).trouble, "states no size");
}

TEST_F(HostService, AnAssemblyThatContainsItselfIsTrouble) {
  const Handle(TDocStd_Document) document = new_document();
  const auto tool = XCAFDoc_DocumentTool::ShapeTool(document->Main());
  const TDF_Label part = tool->AddShape(rod(20.0, 20.0), Standard_False);
  const TDF_Label top = tool->NewShape();
  const TDF_Label inner = tool->NewShape();
  tool->AddComponent(inner, part, TopLoc_Location());
  tool->AddComponent(inner, inner, TopLoc_Location());
  tool->AddComponent(top, inner, TopLoc_Location());
  expect_words(service_->look_at_document(document).trouble, "contains itself");
}

TEST_F(HostService, SolidsThatAreNotWholeAreNoted) {
  std::vector<Part> parts = pin_in_block();
  TopoDS_Solid bare;
  BRep_Builder().MakeSolid(bare);
  parts.push_back({"Ghost", bare});
  const LookResult look = service_->look_at_shapes(parts);
  EXPECT_EQ(look.trouble, "");
  EXPECT_THAT(look.notes, testing::Contains(HasSubstr("Ghost: its solid has no faces")));
}

TEST_F(HostService, AScaleThatIsHardlyOneIsToldInAllItsDigits) {
  gp_Trsf scale;
  scale.SetScaleFactor(1.0000001);
  TopoDS_Shape pin = rod(20.0, 20.0);
  pin.Location(TopLoc_Location(scale), Standard_False);
  expect_words(service_->look_at_shapes({{"Pin", pin}}).trouble, "a scale of 1.0000001");
}

TEST_F(HostService, ATouchIsNoMinusNothing) {
  const TopoDS_Shape low = BRepPrimAPI_MakeBox(gp_Pnt(0, 0, -5), 10.0, 10.0, 5.0).Shape();
  const TopoDS_Shape high = BRepPrimAPI_MakeBox(gp_Pnt(0, 0, 0), 10.0, 10.0, 5.0).Shape();
  for (const Seat& seat : service_->look_at_shapes({{"Low", low}, {"High", high}}).seats) {
    EXPECT_FALSE(seat.clearance_mm == 0.0 && std::signbit(seat.clearance_mm)) << seat.hole;
  }
}

TEST_F(HostService, AnotherGuidIsNotAnswered) {
  EXPECT_THROW(Plugin::Load(Standard_GUID("00000000-1111-2222-3333-444444444444"), Standard_False),
               Standard_Failure);
}

}  // namespace spotblue::host::service_test
