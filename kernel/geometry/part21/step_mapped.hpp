#pragma once
// Representations in the text of a STEP file: what links them, what they hold, and copies by mapped
// items that place one product in another.

#include <unordered_map>
#include <utility>
#include <vector>

#include "geometry/part21/step_text.hpp"

namespace spotblue {

// For each representation those that a relation links it to within one product; relations that
// place a component are named by a context-dependent representation and link two products.
[[nodiscard]] std::unordered_map<int, std::vector<int>> linked_representations(
    const StepText& text);

// Product definitions and the representations of their shapes.
[[nodiscard]] std::vector<std::pair<int, int>> shapes_of_definitions(const StepText& text);

[[nodiscard]] std::vector<int> items_of(const StepText& text, int representation);
// 0 where there is none.
[[nodiscard]] int context_of(const StepText& text, int representation);
// The representation that a mapped item copies; 0 for other items.
[[nodiscard]] int mapped_by(const StepText& text, int item);

// The product definition whose shape each representation is part of, those that are linked to it
// included; 0 where several share it. Linear in the entities.
using RepresentationOwners = std::unordered_map<int, int>;
[[nodiscard]] RepresentationOwners representation_owners(const StepText& text);

// A product's shape in another's by a mapped item, where no usage (NEXT_ASSEMBLY_USAGE_OCCURRENCE)
// says that the one is in the other: it is a component all the same.
struct MappedUsage {
  int item = 0;       // 12 for #12
  int assembly = 0;   // product definition
  int component = 0;  // product definition
};

// In the order of the items' numbers; copies that mirror or scale are none. Linear in the entities.
[[nodiscard]] std::vector<MappedUsage> mapped_usages(const StepText& text);

}  // namespace spotblue
