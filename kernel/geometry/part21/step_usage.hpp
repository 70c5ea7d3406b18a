#pragma once
// The graph of which assembly uses which component, from the text of a STEP file.

#include <string>
#include <unordered_map>

#include "geometry/part21/step_text.hpp"
#include "spotblue/geometry/settings.hpp"

namespace spotblue {

struct Usage {
  double occurrences = 1.0;  // of a product definition after unfolding
  bool has_components = false;
};

// For each product definition that uses or is used; the others occur once.
// Throws Error unreadable for a cycle, too deep a nesting or too many occurrences.
[[nodiscard]] std::unordered_map<int, Usage> read_usage(const StepText& text,
                                                        const std::string& file,
                                                        const ReadLimits& limits);

// The name of a product definition's product, its id where it has no name; may be empty.
[[nodiscard]] std::string product_name(const StepText& text, int definition);

}  // namespace spotblue
