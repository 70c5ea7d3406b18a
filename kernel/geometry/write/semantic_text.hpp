#pragma once
// Stated sizes as text of a STEP file (ISO 10303-21), added to a file whose other entities stay as
// they are.

#include <string>
#include <string_view>
#include <vector>

#include "geometry/part21/step_text.hpp"
#include "spotblue/base/unit.hpp"
#include "spotblue/geometry/semantic_write.hpp"

namespace spotblue {

// A size and the entities of the file it belongs to: 12 for #12.
struct PlacedSize {
  const SizeToWrite* size = nullptr;
  SizeCharacteristic characteristic = SizeCharacteristic::diameter;
  int definition = 0;       // product definition
  std::vector<int> solids;  // of the product
  std::vector<int> faces;
};

// `text` with the sizes added, labelled AP242, and with grades that Open CASCADE's own writer left
// two too high put right. `entities` are those of `text`; sizes are in `unit`.
// Throws Error unreadable where a part's shape representation cannot be found.
[[nodiscard]] std::string with_sizes(std::string_view text, const StepText& entities,
                                     const std::vector<PlacedSize>& sizes, LengthUnit unit,
                                     const std::string& file);

}  // namespace spotblue
