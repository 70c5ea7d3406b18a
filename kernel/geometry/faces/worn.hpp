#pragma once
// Cylinders that are not one size: what they measure where.

#include <vector>

#include "geometry/model/arcs.hpp"
#include "spotblue/base/interval.hpp"
#include "spotblue/geometry/model.hpp"

namespace spotblue {

// At one station, even between those of its sizes and past them; of a plain one its diameter twice.
[[nodiscard]] Interval diameters_at(const Cylinder& cylinder, double at);

// Over a stretch of its axis.
[[nodiscard]] Interval diameters_over(const Cylinder& cylinder, double from, double to);

// Change of radius per mm along the axis where it is a slow taper, round at every station; 0 of a
// plain one and of any other.
[[nodiscard]] double taper_of(const Cylinder& cylinder);

// Whether its faces are known only by what bounds them: it is worn, and no taper.
[[nodiscard]] bool is_out_of_form(const Cylinder& cylinder);

// The sizes and the diameter of what is left of a worn cylinder once its stretches are known.
void keep_sizes_on_stretches(Cylinder& cylinder);

// Cones no steeper than half a degree are cylinders that wore, not tapers: makes them so. Two of
// them, one in the other, are then told by their least and greatest clearance.
void take_slow_cones(Product& product);

}  // namespace spotblue
