#include "spotblue/mechanics/plain_bearing.hpp"

const spotblue::Radius radius(spotblue::Length::mm(12.5));

#ifdef MISTAKE
const double speed = spotblue::surface_speed_m_s(radius, 60.0);
#else
const double speed = spotblue::surface_speed_m_s(spotblue::diameter_of(radius), 60.0);
#endif
