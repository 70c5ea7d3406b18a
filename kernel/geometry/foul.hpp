#pragma once
/// @file
/// Clashes that a measured seat already describes, in closed form: a shaft off the axis of its hole
/// and plane faces that overlap.

#include "geometry/accounted.hpp"
#include "spotblue/geometry/clash.hpp"

namespace spotblue::proof {

/// Area of a disc of radius `shaft` whose centre is `offset` off that of a hole of radius `hole`,
/// outside the hole; mm2.
[[nodiscard]] double crescent_area(double hole, double shaft, double offset);

/// The same for a shaft that leans: its section is an ellipse, longer by 1 / cos(tilt) along the
/// lean; `offset` of its centre, u along the lean. Summed over 1024 rays: good to about 1e-5 of the
/// area.
[[nodiscard]] double leaning_area(double hole, double shaft, double tilt, Point2 offset);

/// The clash of a seat that fouls all round; assembly frame, a and b left at 0.
[[nodiscard]] Clash radial_foul(const Model& model, const RadialSeat& seat);
/// The clash of two faces that overlap.
[[nodiscard]] Clash axial_foul(const Model& model, const Seats& seats, const AxialSeat& seat);

}  // namespace spotblue::proof
