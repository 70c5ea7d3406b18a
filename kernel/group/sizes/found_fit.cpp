#include "group/sizes/found_fit.hpp"

namespace spotblue {

FoundFit found_fit(const SizeRange& hole, const SizeRange& shaft) {
  const Limits exact_hole = without_uncertainty(hole);
  const Limits exact_shaft = without_uncertainty(shaft);
  FoundFit found{hole, shaft, {}, {}};
  found.clearance = {found.hole.limits.lower - found.shaft.limits.upper,
                     found.hole.limits.upper - found.shaft.limits.lower};
  found.without_uncertainty = {exact_hole.lower - exact_shaft.upper,
                               exact_hole.upper - exact_shaft.lower};
  return found;
}

Limits window_of_hole(const FoundFit& found, Limits wanted) {
  return {found.shaft.limits.upper + wanted.lower, found.shaft.limits.lower + wanted.upper};
}

Limits window_of_shaft(const FoundFit& found, Limits wanted) {
  return {found.hole.limits.upper - wanted.upper, found.hole.limits.lower - wanted.lower};
}

}  // namespace spotblue
