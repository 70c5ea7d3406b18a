#include "spotblue/geometry/seats.hpp"

const spotblue::ProductId wheel(1);

#ifdef MISTAKE
const spotblue::FeatureRef bore{wheel, spotblue::FeatureKind::cylinder, 0};
#else
const spotblue::FeatureRef bore{spotblue::OccurrenceId(1), spotblue::FeatureKind::cylinder, 0};
#endif
