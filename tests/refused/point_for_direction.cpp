#include "spotblue/geometry/vector.hpp"

constexpr spotblue::Point between{3.0, 4.0, 0.0};

#ifdef MISTAKE
const spotblue::Line line{{}, between};
#else
const spotblue::Line line{{}, spotblue::unit(between)};
#endif
