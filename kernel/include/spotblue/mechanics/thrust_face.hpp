#pragma once
/// @file
/// A flat ring that takes the end thrust of a part that turns: area, mean radius, pressure and
/// speed.

#include <optional>

#include "spotblue/base/describe.hpp"
#include "spotblue/base/export.hpp"
#include "spotblue/base/length.hpp"
#include "spotblue/mechanics/plain_bearing.hpp"

namespace spotblue {

struct ThrustRing {
  Diameter inner, outer;
};
constexpr void describe(auto& fields, const ThrustRing*) {
  fields.value("ThrustRing", "The ring two faces share, by diameters; 0 <= inner < outer.")
      .member("inner_mm", &ThrustRing::inner, "mm, 0 or more")
      .range(kFrom0)
      .member("outer_mm", &ThrustRing::outer, "mm, > inner")
      .range(kOver0);
}

/// pi/4 (outer2 - inner2): what a ring without grooves, holes and keyseats offers.
/// @throws Error bad_input when the ring breaks its rule.
[[nodiscard]] SPOTBLUE_EXPORT double full_area_mm2(const ThrustRing& ring);

/// Mean radius by area, 2/3 (Ro3 - Ri3)/(Ro2 - Ri2): where a new, flat face, evenly pressed, rubs
/// on the average. Source: uniform pressure theory; Stolarski, Tribology in Machine Design,
/// 1990, 4.12.
/// @throws Error bad_input when the ring breaks its rule.
[[nodiscard]] SPOTBLUE_EXPORT Radius mean_radius(const ThrustRing& ring);

/// (Ro + Ri)/2: the same once the face has worn in, when pressure x radius is the same everywhere.
/// @throws Error bad_input when the ring breaks its rule.
[[nodiscard]] SPOTBLUE_EXPORT Radius worn_mean_radius(const ThrustRing& ring);

/// (outer - inner)/2.
[[nodiscard]] SPOTBLUE_EXPORT Length radial_width(const ThrustRing& ring);

/// Pressure on the net area, speed at the mean radius by area, their product. The mean radius is
/// that of the full ring: grooves shift it by less than the ring is wide.
/// @param net_area_mm2  what is left of the ring, > 0 and no more than the full area.
/// @throws Error bad_input when a value breaks its rule.
[[nodiscard]] SPOTBLUE_EXPORT RunningLoad thrust_load(const ThrustRing& ring, double net_area_mm2,
                                                      double rpm, std::optional<double> thrust_n);

/// The narrowest band that a small face may have; common practice, no source.
inline constexpr Length kLeastBand = Length::mm(2.0);

/// The narrowest band that is called a thrust face: 2 mm, or a twentieth of the outer diameter
/// where that is more. Common practice, no source: a narrower band cuts in or lets the part rock.
[[nodiscard]] SPOTBLUE_EXPORT Length least_band(const ThrustRing& ring);

}  // namespace spotblue
