#pragma once
/// @file
/// Fouls that a measured seat already describes, in closed form: a shaft off the axis of its hole
/// and plane faces that overlap.

#include <optional>
#include <vector>

#include "geometry/seats/accounted.hpp"
#include "spotblue/geometry/foul.hpp"

namespace spotblue::proof {

/// Area of a disc of radius `shaft` whose centre is `offset` off that of a hole of radius `hole`,
/// outside the hole; mm2.
[[nodiscard]] double crescent_area(double hole, double shaft, double offset);

/// The same for a shaft that leans: its section is an ellipse, longer by 1 / cos(tilt) along the
/// lean; `offset` of its centre, u along the lean. Summed over 1024 rays: good to about 1e-5 of the
/// area.
[[nodiscard]] double leaning_area(double hole, double shaft, double tilt, Point2 offset);

/// A foul told by numbers, and where a piece of the solids' overlap has to lie to be the same.
struct ToldFoul {
  Foul foul;                 ///< a and b left at 0
  std::optional<Ring> ring;  ///< about the seat's axis
  std::optional<Band> band;  ///< between the faces
  /// By itself beyond doubt and whole; else the solids are asked too.
  bool certain = false;

  [[nodiscard]] bool holds(Point p) const;
};

/// All in the frame that `to_a` leads to from the assembly.
struct FoulScene {
  const Model& model;
  const Seats& seats;
  const SeatSettings& settings;
  Frame to_a;
};

/// The foul of a seat that fouls: what of the shaft lies deeper than a press fit may, or all that
/// lies in the hole's metal where none is pressed.
[[nodiscard]] ToldFoul radial_foul(const FoulScene& scene, const RadialSeat& seat);
/// The same of a taper; its tilt is left aside.
[[nodiscard]] ToldFoul taper_foul(const FoulScene& scene, const TaperSeat& seat);
/// The foul of two faces that overlap.
[[nodiscard]] ToldFoul axial_foul(const FoulScene& scene, const AxialSeat& seat);

}  // namespace spotblue::proof
