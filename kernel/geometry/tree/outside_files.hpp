#pragma once
// Files beside a STEP file that hold the shapes of some of its parts.

#include <filesystem>
#include <string>

#include "spotblue/geometry/model.hpp"

namespace spotblue {

// The file of that name in the same folder as `file`; empty, with the reason in `why`, when the
// name leads elsewhere (a path, .., a link) or there is none.
struct FileBeside {
  std::filesystem::path path;
  std::string why;
};
[[nodiscard]] FileBeside file_beside(const std::filesystem::path& file, const std::string& name);

// Where a part belongs whose shape is in another file.
struct OutsidePlace {
  int definition = 0;  // 12 for #12
  std::string path;    // "Press/Wheel"
  Frame frame;
};

// Puts the other model's parts at each of the places: products once, renamed where the model has
// one of that name, occurrences under the place's path, shapes copied to the model's store in
// `folder`. Throws Error file_access when the shapes can not be copied.
void take_in(Model& model, const std::filesystem::path& folder, const Model& other,
             const std::vector<OutsidePlace>& places);

}  // namespace spotblue
