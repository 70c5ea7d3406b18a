#include "geometry/read/written_step.hpp"

#include <fmt/format.h>
#include <unistd.h>

#include <BRepAlgoAPI_Cut.hxx>
#include <BRepPrimAPI_MakeBox.hxx>
#include <BRepPrimAPI_MakeCylinder.hxx>
#include <BRepPrimAPI_MakeSphere.hxx>
#include <BRep_Builder.hxx>
#include <Interface_Static.hxx>
#include <Message.hxx>
#include <Message_Messenger.hxx>
#include <STEPCAFControl_Controller.hxx>
#include <STEPCAFControl_Writer.hxx>
#include <TDataStd_Name.hxx>
#include <TDocStd_Document.hxx>
#include <TopoDS_Compound.hxx>
#include <XCAFApp_Application.hxx>
#include <XCAFDoc_DocumentTool.hxx>
#include <XCAFDoc_ShapeTool.hxx>
#include <fstream>
#include <gp_Ax1.hxx>
#include <gp_Trsf.hxx>
#include <sstream>

#include "geometry/occt/occt_versions.hpp"
#include "geometry/write/step_author.hpp"

namespace spotblue::test {
namespace {

TopoDS_Shape frame() {
  const gp_Ax2 at(gp_Pnt(30, 20, -5), gp_Dir(0, 0, 1));
  return BRepAlgoAPI_Cut(BRepPrimAPI_MakeBox(60.0, 40.0, 20.0).Shape(),
                         BRepPrimAPI_MakeCylinder(at, 10.0, 30.0).Shape())
      .Shape();
}

TopoDS_Shape bush() {
  return BRepAlgoAPI_Cut(BRepPrimAPI_MakeCylinder(10.0, 25.0).Shape(),
                         BRepPrimAPI_MakeCylinder(6.0, 25.0).Shape())
      .Shape();
}

TopoDS_Shape pin() {
  TopoDS_Compound both;
  const BRep_Builder builder;
  builder.MakeCompound(both);
  builder.Add(both, BRepPrimAPI_MakeCylinder(6.0, 30.0).Shape());
  builder.Add(both, BRepPrimAPI_MakeSphere(gp_Pnt(0, 0, 40), 2.0).Shape());
  return both;
}

TopLoc_Location moved(double x, double y, double z, double turn) {
  gp_Trsf trsf;
  trsf.SetRotation(gp_Ax1(gp_Pnt(), gp_Dir(1, 0, 0)), turn);
  trsf.SetTranslationPart(gp_Vec(x, y, z));
  return {trsf};
}

Handle(TDocStd_Document) stand_document() {
  Handle(TDocStd_Document) document;
  XCAFApp_Application::GetApplication()->NewDocument("BinXCAF", document);
  const auto shapes = XCAFDoc_DocumentTool::ShapeTool(document->Main());
  const auto named = [](const TDF_Label& label, const char* name) {
    TDataStd_Name::Set(label, name);
    return label;
  };
  const auto frame_label = named(shapes->AddShape(frame(), false), "Frame");
  const auto bush_label = named(shapes->AddShape(bush(), false), "Bush");
  const auto pin_label = named(shapes->AddShape(pin(), false), "Pin");
  const auto pair = named(shapes->NewShape(), "Pair");
  const auto stand = named(shapes->NewShape(), "Stand");
  named(shapes->AddComponent(pair, bush_label, moved(0, 0, 0, 0.0)), "Bush");
  named(shapes->AddComponent(pair, pin_label, moved(0, 0, -2, 0.0)), "Pin");
  named(shapes->AddComponent(stand, frame_label, moved(0, 0, 0, 0.0)), "Frame");
  named(shapes->AddComponent(stand, pair, moved(30, 20, 0, 0.0)), "Pair");
  named(shapes->AddComponent(stand, pair, moved(100, 20, 0, 0.5)), "Spare pair");
  shapes->UpdateAssemblies();
  return document;
}

}  // namespace

Folder::Folder() {
  std::string name = (std::filesystem::temp_directory_path() / "spotblue-test-XXXXXX").string();
  if (mkdtemp(name.data()) != nullptr) {
    path_ = name;
  }
}

Folder::~Folder() {
  std::error_code ignored;
  std::filesystem::remove_all(path_, ignored);
}

std::filesystem::path Folder::write(std::string_view name, std::string_view text) const {
  const std::filesystem::path file = path_ / name;
  std::ofstream(file, std::ios::binary) << text;
  return file;
}

std::string stand_step(const std::string& unit, const std::string& schema) {
  Message::DefaultMessenger()->ChangePrinters().Clear();
  STEPCAFControl_Controller::Init();
  Interface_Static::SetCVal("write.step.schema", schema.c_str());
  Interface_Static::SetCVal("write.step.unit", unit.c_str());
  STEPCAFControl_Writer writer;
  leave_author_out(writer.Writer().WS());
  occt::write_lengths_in(writer.Writer().WS(), unit == "MM" ? 1.0 : unit == "INCH" ? 25.4 : 1000.0);
  writer.SetNameMode(true);
  writer.Transfer(stand_document(), STEPControl_AsIs);
  const Folder folder;
  const std::filesystem::path file = folder.path() / "stand.step";
  writer.Write(file.c_str());
  std::ostringstream text;
  text << std::ifstream(file, std::ios::binary).rdbuf();
  return text.str();
}

std::filesystem::path write_stand_in_files(const std::filesystem::path& folder,
                                           const std::string& unit) {
  Message::DefaultMessenger()->ChangePrinters().Clear();
  STEPCAFControl_Controller::Init();
  Interface_Static::SetCVal("write.step.schema", "AP214IS");
  Interface_Static::SetCVal("write.step.unit", unit.c_str());
  STEPCAFControl_Writer writer;
  occt::write_lengths_in(writer.Writer().WS(), unit == "MM" ? 1.0 : unit == "INCH" ? 25.4 : 1000.0);
  writer.SetNameMode(true);
  const Handle(TDocStd_Document) document = stand_document();  // which writing still looks at
  writer.Transfer(document, STEPControl_AsIs, "part-");
  std::filesystem::path file = folder / "stand.stp";
  writer.Write(file.c_str());
  return file;
}

std::string with_lines(const std::string& step, const std::string& lines) {
  std::string changed = step;
  changed.insert(step.rfind("ENDSEC"), lines);
  return changed;
}

std::string tower_lines(int from, int levels, int copies, Tower tower) {
  std::string lines;
  int next = from;
  const auto definition = [&](int level) { return from + 3 * level + 2; };
  for (int level = 0; level < levels; ++level) {
    lines += fmt::format(
        "#{}=PRODUCT('L{}','L{}','',());\n#{}=PRODUCT_DEFINITION_FORMATION('','',#{});\n"
        "#{}=PRODUCT_DEFINITION('design','',#{},$);\n",
        next, level, level, next + 1, next, next + 2, next + 1);
    next += 3;
  }
  const auto use = [&](int by, int what) {
    lines += fmt::format("#{}=NEXT_ASSEMBLY_USAGE_OCCURRENCE('','','',#{},#{},$);\n", next++,
                         definition(by), definition(what));
  };
  for (int level = 0; level + 1 < levels; ++level) {
    for (int copy = 0; copy < copies; ++copy) {
      use(level, level + 1);
    }
  }
  if (tower == Tower::closed) {
    use(levels - 1, 0);
  }
  return lines;
}

}  // namespace spotblue::test
