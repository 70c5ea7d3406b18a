#include "spotblue/base/length.hpp"

#ifdef MISTAKE
spotblue::Length x = 20.0;
#else
spotblue::Length x = spotblue::Length::mm(20.0);
#endif
