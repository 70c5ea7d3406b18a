#pragma once
// What occurrences are called.

#include <string>

#include "spotblue/geometry/model.hpp"

namespace spotblue {

// The first name of a path; bodies "Pin#1" and "Pin#2" are of one.
[[nodiscard]] std::string root_of(const std::string& path);

// Whether all occurrences are below one root, which says nothing then.
[[nodiscard]] bool has_one_root(const List<Occurrence>& occurrences);

// Gives each occurrence its id: its path below the one root, "Back shaft/Wheel", or the whole path
// where there are several; numbered, "Wheel (1)", "Wheel (2)", where several would have the same,
// and where that is what all places of a product are called together.
void name_occurrences(Model& model);

}  // namespace spotblue
