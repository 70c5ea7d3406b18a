#pragma once
// Sets of angles about an axis: union, intersection and difference of arcs.

#include <vector>

#include "spotblue/geometry/model.hpp"

namespace spotblue {

// The same angles as disjoint arcs in ascending order, from in [0, 2 pi); gaps below 1e-7 rad
// close.
[[nodiscard]] std::vector<Arc> merged_arcs(const std::vector<Arc>& arcs);
// What both sets cover; the inputs need not be merged.
[[nodiscard]] std::vector<Arc> common_arcs(const std::vector<Arc>& a, const std::vector<Arc>& b);
// What a covers and b does not.
[[nodiscard]] std::vector<Arc> arcs_without(const std::vector<Arc>& a, const std::vector<Arc>& b);
// Sum of sweeps of the merged set, up to 2 pi.
[[nodiscard]] double coverage(const std::vector<Arc>& arcs);
// The same angles counted from another zero and, for sense -1, the other way round.
[[nodiscard]] std::vector<Arc> recounted_arcs(const std::vector<Arc>& arcs, double zero_at,
                                              int sense);

// Disjoint ascending stretches of a line covering the same points; gaps below 1e-9 mm close.
using Stretches = std::vector<Interval>;
[[nodiscard]] Stretches merged_stretches(Stretches stretches);
[[nodiscard]] Stretches common_stretches(const Stretches& a, const Stretches& b);
[[nodiscard]] double total_length(const Stretches& stretches);

}  // namespace spotblue
