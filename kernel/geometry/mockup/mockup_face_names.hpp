#pragma once
// What the maker of a mock-up calls the faces of a part.

#include <TopoDS_Face.hxx>
#include <TopoDS_Shape.hxx>
#include <string>
#include <vector>

#include "spotblue/geometry/mockup_part.hpp"

namespace spotblue {

struct NamedFace {
  TopoDS_Face face;
  std::string name;
};

// The faces of the part's solid, as make_solid made it, that belong to a step, bore or boss with a
// name: "journal" and its shoulders "journal start" and "journal end"; "bolt hole", or "bolt hole
// 2" of several; "boss" and "boss outside". Both flanks of a key are "key". A face with two names
// has the one that stands first in the file.
[[nodiscard]] std::vector<NamedFace> named_faces(const TopoDS_Shape& solid, const MockupPart& part);

}  // namespace spotblue
