#include "geometry/sizes/semantic_read.hpp"

#include <array>
#include <cstring>
#include <utility>

#include "geometry/sizes/semantic_settle.hpp"

namespace spotblue {

bool states_sizes(std::string_view text) {
  constexpr std::array<std::string_view, 2> kWords{"DIMENSIONAL_SIZE", "DIMENSIONAL_LOCATION"};
  for (const std::string_view word : kWords) {
    if (memmem(text.data(), text.size(), word.data(), word.size()) != nullptr) {
      return true;
    }
  }
  return false;
}

void add_semantic_sizes(const StepReader& reader, const Tree& tree, Model& model) {
  FaceBook book(tree, model);
  SettledSizes settled = settled_sizes(stated_sizes(reader), book, model);
  model.semantic_sizes = std::move(settled.sizes);
  model.notes.insert(model.notes.end(), settled.notes.begin(), settled.notes.end());
}

}  // namespace spotblue
