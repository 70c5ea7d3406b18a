#pragma once
// Shapes and documents as Open CASCADE itself stores them: what the child process does with them.

#include <cstddef>
#include <filesystem>
#include <string>
#include <string_view>

#include "geometry/read/model_format.hpp"
#include "geometry/read/step_transfer.hpp"
#include "spotblue/geometry/settings.hpp"

namespace spotblue {

// What a file of Open CASCADE's own is to be read as.
struct ShapeFile {
  std::string_view bytes;
  ModelFormat format = ModelFormat::brep;
  std::string stem;  // of its name: what its parts are called that have no name
  ReadLimits limits = {};
  Completeness completeness = Completeness::all_or_error;
};

// Reads the file and stores every product's shape in `folder`. The unit is empty when the file
// names none; model.file.unit is set.
//
// Every solid of a .brep is a part, since it knows no other: "stem", or "stem 1", "stem 2", ... in
// order; one that is there twice is one product in two places. An .xbf has its own parts and names;
// lengths in other units than mm are turned into mm, but then its stated sizes are left out.
//
// Throws Error unreadable when it is damaged, cut off, of another kind of document, holds no solid,
// too many or without end; incomplete when Open CASCADE tells of something that it leaves out and
// all is wanted, else it is noted; bad_input when a part is scaled. Exceptions of Open CASCADE pass
// through.
[[nodiscard]] Arrival transfer_shape_file(const ShapeFile& file,
                                          const std::filesystem::path& folder);

}  // namespace spotblue
