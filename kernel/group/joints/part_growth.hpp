#pragma once
// How much longer a part's lengths are when running than at the bench.

#include <cstddef>
#include <optional>
#include <string>

#include "group/match/declared.hpp"

namespace spotblue {

struct PartGrowth {
  std::optional<double> expansion_per_k;  ///< nothing where the material is not known
  double warmer_by_k = 0.0;               ///< running less bench temperature
  std::string material;                   ///< as declared; empty when it is not
};

[[nodiscard]] PartGrowth growth_of(const DeclaredJob& declared, OccurrenceId occurrence);

}  // namespace spotblue
