#pragma once
// Parts whose shapes a STEP file leaves to other files (DOCUMENT_FILE and what refers to it, ISO
// 10303-41).

#include <string>
#include <vector>

#include "geometry/part21/step_text.hpp"

namespace spotblue {

// A file that stands for the shape of a product.
struct OutsidePart {
  std::string file;    // as the file names it
  int definition = 0;  // product definition, 12 for #12; 0 where the file does not say which
};

// In the order of the names, each pair once; drawings and data sheets are documents too, but no
// STEP files. Linear in the entities.
[[nodiscard]] std::vector<OutsidePart> outside_parts(const StepText& text);

}  // namespace spotblue
