#include "group/rings/assembled_clearance.hpp"

namespace spotblue {

Limits clearance_between(Interval hole, Interval shaft) {
  return {Length::mm(hole.low - shaft.high), Length::mm(hole.high - shaft.low)};
}

Limits assembled_clearance(const SurfaceSizes& surface) {
  if (!surface.hole.assembled || !surface.shaft.assembled) {
    return surface.sizes.found.clearance;
  }
  return clearance_between(*surface.hole.assembled, *surface.shaft.assembled);
}

Saying why_not_assembled(const SurfaceSizes& surface) {
  Saying why;
  for (const SizeStates* size : {&surface.hole, &surface.shaft}) {
    if (!size->assembled && why != size->unknown) {
      why += size->unknown;
    }
  }
  return why;
}

}  // namespace spotblue
