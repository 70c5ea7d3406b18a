#include "spotblue/geometry/ids.hpp"

bool is_of(spotblue::ProductId wheel, spotblue::OccurrenceId placed) {
#ifdef MISTAKE
  return wheel == placed;
#else
  return wheel == spotblue::ProductId(std::size_t{placed});
#endif
}
