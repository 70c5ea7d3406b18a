#include "spotblue/base/length.hpp"

#ifdef MISTAKE
double x = spotblue::Length::mm(20.0);
#else
double x = spotblue::Length::mm(20.0).in_mm();
#endif
