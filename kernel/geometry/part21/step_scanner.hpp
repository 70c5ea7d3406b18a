#pragma once
// One pass over the text of a STEP file that refuses what no entity may hold.

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "geometry/part21/step_text.hpp"

namespace spotblue {

struct ScannedText {
  std::string_view header;
  std::size_t data_end = 0;                // where the last data section's ENDSEC begins
  std::vector<StepText::Entity> entities;  // in the order of their numbers
};

// See StepText.
[[nodiscard]] ScannedText scan_step(std::string_view text, const std::string& file,
                                    const ReadLimits& limits);

}  // namespace spotblue
