#include "group/joints/pressing.hpp"

namespace spotblue {

Pressing pressing_of(const SeatSizes& sizes) {
  if (sizes.wanted) {
    const Limits wanted = sizes.wanted->clearance;
    if (wanted.upper <= kSizeRounding && wanted.lower < -kSizeRounding) {
      return Pressing::always;
    }
    return wanted.lower < -kSizeRounding ? Pressing::perhaps : Pressing::none;
  }
  if (sizes.found.clearance.upper < Length()) {
    return Pressing::always;
  }
  return sizes.found.without_uncertainty.lower < Length() ? Pressing::perhaps : Pressing::none;
}

}  // namespace spotblue
