#pragma once
/// @file
/// What a Look says of a generated assembly against what is true of it.

#include <string>
#include <vector>

#include "spotblue/geometry/look.hpp"
#include "support/assembly_generator.hpp"

namespace spotblue::test {

/// Allowed differences, mm; areas and volumes are allowed what these lengths make of them.
struct Tolerance {
  double exact = 1e-6;
  double fitted = 1e-4;  ///< where a part's surfaces are written as B-splines
};

/// Every seat, thread and foul missing, invented or measured wrong, one line each.
std::vector<std::string> disagreements(const Look& look, const Assembly& assembly,
                                       const Tolerance& tolerance);

/// For each true occurrence its place in look.model.occurrences; -1 where there is none.
std::vector<std::size_t> match_occurrences(const Look& look, const Assembly& assembly);

}  // namespace spotblue::test
