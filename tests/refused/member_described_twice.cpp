#include "spotblue/base/members.hpp"

struct Ring {
  double inner_mm = 0.0;
  double outer_mm = 0.0;
};
constexpr void describe(auto& fields, const Ring*) {
  fields
      .value("Ring", "A ring.")
#ifdef MISTAKE
      .member("outer_mm", &Ring::inner_mm, "diameter")
#else
      .member("outer_mm", &Ring::outer_mm, "diameter")
#endif
      .member("inner_mm", &Ring::inner_mm, "diameter");
}

static_assert(spotblue::wholly_described<Ring>());
