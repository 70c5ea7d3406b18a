#include "geometry/write/face_names.hpp"

#include <STEPConstruct.hxx>
#include <StepRepr_RepresentationItem.hxx>
#include <StepShape_Face.hxx>
#include <TCollection_HAsciiString.hxx>
#include <TransferBRep.hxx>
#include <Transfer_FinderProcess.hxx>
#include <Transfer_TransientProcess.hxx>
#include <XSControl_TransferReader.hxx>
#include <XSControl_TransferWriter.hxx>

namespace spotblue {

std::vector<CalledShape> face_names_read(const Handle(XSControl_WorkSession) & session) {
  std::vector<CalledShape> faces;
  const Handle(Interface_InterfaceModel) model = session->Model();
  const Handle(Transfer_TransientProcess) process = session->TransferReader()->TransientProcess();
  for (int i = 1; i <= model->NbEntities(); ++i) {
    const Handle(StepShape_Face) face = Handle(StepShape_Face)::DownCast(model->Value(i));
    if (face.IsNull() || face->Name().IsNull() || face->Name()->IsEmpty()) {
      continue;
    }
    if (const TopoDS_Shape shape = TransferBRep::ShapeResult(process, face); !shape.IsNull()) {
      faces.push_back({shape, face->Name()->ToCString()});
    }
  }
  return faces;
}

void write_face_names(const std::vector<CalledShape>& faces,
                      const Handle(XSControl_WorkSession) & session) {
  const Handle(Transfer_FinderProcess) process = session->TransferWriter()->FinderProcess();
  for (const CalledShape& one : faces) {
    const Handle(StepRepr_RepresentationItem) item = STEPConstruct::FindEntity(process, one.face);
    if (!item.IsNull()) {
      item->SetName(new TCollection_HAsciiString(one.name.c_str()));
    }
  }
}

}  // namespace spotblue
