#include "support/shape_out.hpp"

#include <BRepTools.hxx>
#include <BRep_Builder.hxx>
#include <BinTools.hxx>
#include <BinXCAFDrivers.hxx>
#include <Interface_Static.hxx>
#include <STEPCAFControl_Reader.hxx>
#include <STEPCAFControl_Writer.hxx>
#include <TCollection_ExtendedString.hxx>
#include <TDF_Label.hxx>
#include <TDF_LabelSequence.hxx>
#include <TDataStd_Name.hxx>
#include <TDocStd_Document.hxx>
#include <TopoDS_Compound.hxx>
#include <XCAFApp_Application.hxx>
#include <XCAFDoc_DocumentTool.hxx>
#include <XCAFDoc_ShapeTool.hxx>
#include <fstream>
#include <stdexcept>

#include "geometry/occt/occt_versions.hpp"
#include "geometry/write/step_author.hpp"
#include "support/step_out.hpp"

namespace spotblue::test {
namespace {

class Document {
 public:
  Document() : application_(XCAFApp_Application::GetApplication()) {
    BinXCAFDrivers::DefineFormat(application_);
    application_->NewDocument("BinXCAF", document_);
  }
  ~Document() { application_->Close(document_); }
  Document(const Document&) = delete;
  Document& operator=(const Document&) = delete;
  Document(Document&&) = delete;
  Document& operator=(Document&&) = delete;

  void read(const std::filesystem::path& step) {
    silence_open_cascade();
    STEPCAFControl_Reader reader;
    reader.SetNameMode(Standard_True);
    if (reader.ReadFile(step.c_str()) != IFSelect_RetDone || !reader.Transfer(document_)) {
      throw std::runtime_error("Open CASCADE does not read " + step.string());
    }
  }
  void save(const std::filesystem::path& xbf) {
    std::ofstream out(xbf, std::ios::binary);
    if (application_->SaveAs(document_, out) != PCDM_SS_OK) {
      throw std::runtime_error("Open CASCADE does not write " + xbf.string());
    }
  }
  [[nodiscard]] Handle(XCAFDoc_ShapeTool) shapes() const {
    return XCAFDoc_DocumentTool::ShapeTool(document_->Main());
  }
  [[nodiscard]] const Handle(TDocStd_Document) & get() const { return document_; }

 private:
  Handle(XCAFApp_Application) application_;
  Handle(TDocStd_Document) document_;
};

}  // namespace

void step_to_xbf(const std::filesystem::path& step, const std::filesystem::path& xbf) {
  Document document;
  document.read(step);
  document.save(xbf);
}

void step_to_step(const std::filesystem::path& step, const std::filesystem::path& again) {
  Document document;
  document.read(step);
  if (!Interface_Static::SetCVal("write.step.unit", "MM")) {  // before there is a writer
    throw std::runtime_error("Open CASCADE refuses the unit");
  }
  STEPCAFControl_Writer writer;
  leave_author_out(writer.Writer().WS());
  occt::write_lengths_in(writer.Writer().WS(), 1.0);
  if (!writer.Transfer(document.get(), STEPControl_AsIs) ||
      writer.Write(again.c_str()) != IFSelect_RetDone) {
    throw std::runtime_error("Open CASCADE does not write " + again.string());
  }
}

void step_to_brep(const std::filesystem::path& step, const std::filesystem::path& brep,
                  BrepKind kind) {
  Document document;
  document.read(step);
  TopoDS_Compound all;
  const BRep_Builder builder;
  builder.MakeCompound(all);
  TDF_LabelSequence roots;
  document.shapes()->GetFreeShapes(roots);
  for (const TDF_Label& root : roots) {
    builder.Add(all, XCAFDoc_ShapeTool::GetShape(root));
  }
  std::ofstream out(brep, std::ios::binary);
  if (kind == BrepKind::text) {
    BRepTools::Write(all, out);
  } else {
    BinTools::Write(all, out);
  }
}

void shape_to_xbf(const TopoDS_Shape& shape, const std::string& name, double metres_per_unit,
                  const std::filesystem::path& xbf) {
  Document document;
  const TDF_Label label = document.shapes()->AddShape(shape, Standard_False);
  TDataStd_Name::Set(label, TCollection_ExtendedString(name.c_str(), true));
  XCAFDoc_DocumentTool::SetLengthUnit(document.get(), metres_per_unit);
  document.save(xbf);
}

}  // namespace spotblue::test
