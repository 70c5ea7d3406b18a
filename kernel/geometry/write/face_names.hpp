#pragma once
// Names of faces in the STEP files that Open CASCADE writes: it writes those of parts alone.

#include <TopoDS_Shape.hxx>
#include <XSControl_WorkSession.hxx>
#include <string>
#include <vector>

namespace spotblue {

struct CalledShape {
  TopoDS_Shape face;
  std::string name;  // as the file has it
};

// What the file that the session has read and transferred calls its faces.
[[nodiscard]] std::vector<CalledShape> face_names_read(const Handle(XSControl_WorkSession) &
                                                       session);

// Calls the faces so in the file that the session is to write, whose shapes it has transferred.
void write_face_names(const std::vector<CalledShape>& faces,
                      const Handle(XSControl_WorkSession) & session);

}  // namespace spotblue
