#include "spotblue/base/length.hpp"

#ifdef MISTAKE
spotblue::Length x = spotblue::Length::mm(20.0) + 0.021;
#else
spotblue::Length x = spotblue::Length::mm(20.0) + spotblue::Length::um(21.0);
#endif
