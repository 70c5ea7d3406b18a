#pragma once
// The demands on sizes still to be made, freed of the sizes that exist, and how far each size may
// go while the others can follow.

#include <cstddef>
#include <optional>
#include <utility>
#include <vector>

#include "spotblue/base/interval.hpp"
#include "spotblue/mechanics/make_to_suit.hpp"

namespace spotblue {

// mm; far below any size, above the rounding of sums.
inline constexpr double kSuitRounding = 1e-9;
// mm; two bounds that miss each other by less meet: what rounding may come to over small factors.
inline constexpr double kSuitMeets = 1e-8;

// least <= sum of factor x size <= greatest for every value of the sizes that exist.
struct SuitRow {
  std::vector<std::pair<std::size_t, double>> terms;  // size to make, factor
  double least = 0.0, greatest = 0.0;                 // reversed when nothing can be right
  std::size_t source = 0;                             // demand, or demands + size for own limits
};

// Checks the problem and gives its rows; demands without a size to make are left out.
[[nodiscard]] std::vector<SuitRow> suit_rows(const SuitProblem& problem);

// "H7/s6 of ..." or who asks for a size's own limits.
[[nodiscard]] const std::string& suit_source(const SuitProblem& problem, std::size_t source);

// The row's sum over every value of the sizes in it, but for `without`.
[[nodiscard]] Interval sum_of_others(const SuitRow& row, const std::vector<Interval>& sizes,
                                     std::size_t without);

struct SuitContradiction {
  std::size_t size = 0;
  std::size_t lower_by = 0, upper_by = 0;  // sources
  std::vector<std::size_t> through;        // sources behind those, ascending
  double short_by = 0.0;
};

struct SuitBounds {
  std::vector<Interval> spans;  // by size; infinite where nothing bounds it
  std::optional<SuitContradiction> contradiction;
};

// Of each size what leaves the others a value; from `start` inwards.
[[nodiscard]] SuitBounds suit_bounds(const std::vector<SuitRow>& rows,
                                     const std::vector<Interval>& start);

}  // namespace spotblue
