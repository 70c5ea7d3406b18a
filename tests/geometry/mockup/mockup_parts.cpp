#include "geometry/mockup/mockup_parts.hpp"

#include <gtest/gtest.h>
#include <unistd.h>

#include <BRepBndLib.hxx>
#include <BRepGProp.hxx>
#include <Bnd_Box.hxx>
#include <GProp_GProps.hxx>
#include <Message.hxx>
#include <Message_Printer.hxx>
#include <STEPCAFControl_Reader.hxx>
#include <TDF_LabelSequence.hxx>
#include <TDataStd_Name.hxx>
#include <TDocStd_Document.hxx>
#include <TopExp_Explorer.hxx>
#include <XCAFApp_Application.hxx>
#include <XCAFDoc_DocumentTool.hxx>
#include <XCAFDoc_ShapeTool.hxx>
#include <filesystem>
#include <map>

#include "spotblue/geometry/mockup_write.hpp"

namespace spotblue::test {
namespace {

int count(const TopoDS_Shape& shape, TopAbs_ShapeEnum kind) {
  int found = 0;
  for (TopExp_Explorer it(shape, kind); it.More(); it.Next()) {
    ++found;
  }
  return found;
}

std::string name_of(const TDF_Label& label) {
  Handle(TDataStd_Name) name;
  return label.FindAttribute(TDataStd_Name::GetID(), name)
             ? TCollection_AsciiString(name->Get()).ToCString()
             : "";
}

class Collector {
 public:
  void walk(const TDF_Label& label, const TopLoc_Location& where, const std::string& name) {
    TDF_Label product = label;
    if (XCAFDoc_ShapeTool::IsReference(label)) {
      XCAFDoc_ShapeTool::GetReferredShape(label, product);
    }
    if (XCAFDoc_ShapeTool::IsAssembly(product)) {
      TDF_LabelSequence components;
      XCAFDoc_ShapeTool::GetComponents(product, components);
      for (const TDF_Label& component : components) {
        walk(component, where * XCAFDoc_ShapeTool::GetLocation(component), name_of(component));
      }
      return;
    }
    const TopoDS_Shape shape = XCAFDoc_ShapeTool::GetShape(product).Moved(where);
    ReadPart part;
    part.name = name;
    part.solids = count(shape, TopAbs_SOLID);
    part.faces = count(shape, TopAbs_FACE);
    GProp_GProps properties;
    BRepGProp::VolumeProperties(shape, properties);
    part.volume = properties.Mass();
    Bnd_Box box;
    BRepBndLib::AddOptimal(shape, box, false, false);
    double x = 0, y = 0, z = 0, x2 = 0, y2 = 0, z2 = 0;
    box.Get(x, y, z, x2, y2, z2);
    part.box = {{x, y, z}, {x2, y2, z2}};
    part.product = products_.try_emplace(product.Tag(), products_.size()).first->second;
    parts_.push_back(part);
  }
  [[nodiscard]] std::vector<ReadPart> take() { return std::move(parts_); }

 private:
  std::map<int, std::size_t> products_;
  std::vector<ReadPart> parts_;
};

}  // namespace

std::vector<ReadPart> write_and_read(const Mockup& mockup) {
  const std::filesystem::path file = std::filesystem::temp_directory_path() /
                                     ("spotblue-mockup-" + std::to_string(::getpid()) + ".step");
  write_mockup(mockup, file);
  Message::DefaultMessenger()->ChangePrinters().Clear();
  Handle(TDocStd_Document) document;
  XCAFApp_Application::GetApplication()->NewDocument("MDTV-XCAF", document);
  STEPCAFControl_Reader reader;
  EXPECT_EQ(reader.ReadFile(file.c_str()), IFSelect_RetDone);
  EXPECT_TRUE(reader.Transfer(document));
  std::filesystem::remove(file);
  TDF_LabelSequence roots;
  XCAFDoc_DocumentTool::ShapeTool(document->Main())->GetFreeShapes(roots);
  Collector collector;
  for (const TDF_Label& root : roots) {
    collector.walk(root, {}, name_of(root));
  }
  XCAFApp_Application::GetApplication()->Close(document);
  return collector.take();
}

}  // namespace spotblue::test
