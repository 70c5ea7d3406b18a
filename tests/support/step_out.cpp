#include "support/step_out.hpp"

#include <unistd.h>

#include <Interface_Static.hxx>
#include <Message.hxx>
#include <Message_Messenger.hxx>
#include <Message_Printer.hxx>
#include <STEPCAFControl_Controller.hxx>
#include <STEPCAFControl_Writer.hxx>
#include <TCollection_ExtendedString.hxx>
#include <TDF_Label.hxx>
#include <TDataStd_Name.hxx>
#include <TDocStd_Document.hxx>
#include <TopLoc_Location.hxx>
#include <XCAFApp_Application.hxx>
#include <XCAFDoc_DocumentTool.hxx>
#include <XCAFDoc_ShapeTool.hxx>
#include <array>
#include <stdexcept>

#include "geometry/occt/occt_versions.hpp"
#include "geometry/write/step_author.hpp"

namespace spotblue::test {

void silence_open_cascade() {
  Message::DefaultMessenger()->RemovePrinters(STANDARD_TYPE(Message_Printer));
}

void write_step(const std::vector<Node>& nodes, Schema schema, FileUnit unit,
                const std::filesystem::path& file, SurfaceCurves curves) {
  silence_open_cascade();
  const Handle(XCAFApp_Application) application = XCAFApp_Application::GetApplication();
  Handle(TDocStd_Document) document;
  application->NewDocument("BinXCAF", document);
  const Handle(XCAFDoc_ShapeTool) tool = XCAFDoc_DocumentTool::ShapeTool(document->Main());
  std::vector<TDF_Label> labels;
  for (const Node& node : nodes) {
    const bool is_part = !node.shape.IsNull();
    const TDF_Label label = is_part ? tool->AddShape(node.shape, false) : tool->NewShape();
    TDataStd_Name::Set(label, TCollection_ExtendedString(node.name.c_str(), true));
    for (const auto& [child, at] : node.components) {
      const TDF_Label placed = tool->AddComponent(label, labels.at(child), TopLoc_Location(at));
      TDataStd_Name::Set(placed, TCollection_ExtendedString(nodes.at(child).name.c_str(), true));
    }
    labels.push_back(label);
  }
  tool->UpdateAssemblies();

  constexpr std::array<const char*, 3> kSchemas{"AP203", "AP214IS", "AP242DIS"};
  constexpr std::array<const char*, 3> kUnits{"MM", "INCH", "M"};
  constexpr std::array<double, 3> kUnitsMm{1.0, 25.4, 1000.0};
  STEPCAFControl_Controller::Init();
  if (!Interface_Static::SetCVal("write.step.schema",
                                 kSchemas.at(static_cast<std::size_t>(schema))) ||
      !Interface_Static::SetCVal("write.step.unit", kUnits.at(static_cast<std::size_t>(unit))) ||
      !Interface_Static::SetIVal("write.surfacecurve.mode",
                                 curves == SurfaceCurves::written ? 1 : 0)) {
    throw std::runtime_error("generator: Open CASCADE refused the schema or the unit");
  }
  STEPCAFControl_Writer writer;
  leave_author_out(writer.Writer().WS());
  occt::write_lengths_in(writer.Writer().WS(), kUnitsMm.at(static_cast<std::size_t>(unit)));
  if (!writer.Transfer(labels.back(), STEPControl_AsIs) ||
      writer.Write(file.c_str()) != IFSelect_RetDone) {
    throw std::runtime_error("generator: Open CASCADE did not write " + file.string());
  }
  application->Close(document);
}

std::filesystem::path temp_step(const std::string& name) {
  return std::filesystem::temp_directory_path() /
         ("spotblue-" + std::to_string(getpid()) + "-" + name + ".step");
}

}  // namespace spotblue::test
