#pragma once
/// @file
/// Heating the hub or chilling the inner part so that they slip together.
///
/// change of temperature = (interference + slip clearance) / (expansion * diameter), from free
/// linear expansion; as engineering tables of shrink assembly give it. Take the greatest
/// interference, roughness not taken off. Nothing is allowed for cooling on the way to the press.

#include <optional>

#include "spotblue/base/describe.hpp"
#include "spotblue/base/export.hpp"
#include "spotblue/mechanics/elastic.hpp"
#include "spotblue/mechanics/press_fit.hpp"

namespace spotblue {

/// Dry ice in spirit, and liquid nitrogen. Source: CRC Handbook of Chemistry and
/// Physics, sublimation of CO2 and boiling of N2 at 1 atm, from memory.
inline constexpr double kDryIce_c = -78.0;
inline constexpr double kLiquidNitrogen_c = -196.0;
/// Metals contract less when very cold: share of the room-temperature expansion that is left on the
/// average down to the two media. From memory of cryogenic tables (carbon steel contracts 0.20 % to
/// 77 K, 0.253 % by its room-temperature figure).
inline constexpr double kDryIceShare = 0.9;
inline constexpr double kLiquidNitrogenShare = 0.8;
/// Above this a hub's temper may suffer: hardened or carburised steel is commonly tempered at 150
/// to 200 C, and structural change of steel starts between 200 and 400 C (from
/// memory: ASM Handbook, vol. 4, Heat Treating).
inline constexpr double kTemperLimit_c = 200.0;

struct SlipBounds {
  std::optional<double> coldest_c;
  std::optional<double> hottest_c;
};
constexpr void describe(auto& fields, const SlipBounds*) {
  fields
      .value("SlipBounds",
             "Temperatures between which hub and inner part may be together and neither yields.")
      .member("coldest_c", &SlipBounds::coldest_c, "degrees C; None where cold tightens nothing")
      .range(kTemperature_c)
      .member("hottest_c", &SlipBounds::hottest_c, "degrees C; None where warmth tightens nothing")
      .range(kTemperature_c);
}

/// Once slipped together the two come to one temperature, at worst the hotter's or the colder's:
/// how far that may be before one of them yields (and then comes back loose). Warmth tightens where
/// the inner part expands more than the hub, cold where the hub does.
///
/// @param fit  at its greatest interference once roughness is pressed flat; a part without a
///             strength sets no bound, nor do two that expand alike.
/// @throws Error bad_input as press_fit.
/// Source: thick rings (press_fit.hpp), whose stress grows evenly with interference; derived here.
[[nodiscard]] SPOTBLUE_EXPORT SlipBounds slip_bounds(const PressFit& fit, double bench_c);

struct SlipIn {
  std::optional<double> heat_hub_to_c;
  std::optional<double> chill_inner_to_c;
  bool dry_ice_will_do = false;
  bool liquid_nitrogen_will_do = false;
  bool may_soften_hub = false;
};
constexpr void describe(auto& fields, const SlipIn*) {
  fields.value("SlipIn", "Heating the hub or chilling the inner part to slip together.")
      .member("heat_hub_to_c", &SlipIn::heat_hub_to_c,
              "degrees C; None where one of the two would yield first, or all materials melt")
      .member(
          "chill_inner_to_c", &SlipIn::chill_inner_to_c,
          "by the room-temperature expansion, of which cold leaves less; None where one of the two "
          "would yield first, or there is no such cold")
      .member("dry_ice_will_do", &SlipIn::dry_ice_will_do, "whether dry ice is cold enough")
      .member("liquid_nitrogen_will_do", &SlipIn::liquid_nitrogen_will_do,
              "whether liquid nitrogen is cold enough")
      .member("may_soften_hub", &SlipIn::may_soften_hub, "hotter than TEMPER_LIMIT_C");
}

/// @param joint_mm  diameter, > 0.
/// @param interference_mm  greatest diametral interference, >= 0.
/// @param clearance_mm  wanted while slipping in, >= 0.
/// @param bounds  as slip_bounds gives them; no temperature past them is named.
/// @throws Error bad_input naming the argument that is out of range.
[[nodiscard]] SPOTBLUE_EXPORT SlipIn slip_in(const Elastic& hub, const Elastic& inner,
                                             double joint_mm, double interference_mm,
                                             double clearance_mm, double bench_c,
                                             const SlipBounds& bounds);

}  // namespace spotblue
