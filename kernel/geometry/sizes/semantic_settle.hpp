#pragma once
// Stated sizes tied to the features they are for, with their limits, and what is doubtful about
// them; wherever they were stated, in a file or in a document.

#include <cstddef>
#include <vector>

#include "geometry/sizes/face_book.hpp"
#include "geometry/sizes/semantic_entities.hpp"
#include "spotblue/geometry/model.hpp"

namespace spotblue {

struct SettledSizes {
  std::vector<SemanticSize> sizes;
  std::vector<std::size_t> from;  // of each of them, its place in what was stated
  std::vector<Note> notes;
};

// A distance that is the width of a feature is a size of that feature; others are only counted in a
// note.
[[nodiscard]] SettledSizes settled_sizes(StatedSizes stated, FaceBook& book, const Model& model);

}  // namespace spotblue
