#pragma once
/// @file
/// A bush held in a stiffer hub, warmed until it yields: when it does, what it keeps of that when
/// cold again, and from what temperature on it comes back loose in the hub and tight on the shaft.
///
/// Model. Bush: elastic, then perfectly plastic at its yield, Tresca's rule with its flow rule,
/// plane stress, nothing in its bore. Hub: elastic. Both at one temperature. With a, b the bush's
/// inner and outer radius, Y its yield, p the pressure on its outside:
///  - At the bore the stress is hoop only, -2 p b^2 / (b^2 - a^2): Tresca and von Mises agree, and
///    yield begins at p1 = Y (b^2 - a^2) / (2 b^2).
///  - Yielded out to radius c, the hoop there is -Y, so equilibrium d(r s_r)/dr = s_hoop gives
///    s_r = -Y (1 - a/r) and on c the pressure q = Y (c - a) / c. The elastic rest carries
///    p = (Y + q)/2 - (Y - q) c^2 / (2 b^2).
///  - The whole wall yields at p2 = Y (b - a) / b; the pressure then rises no more. By von Mises it
///    is the same for a thin wall and up to 15 % more for a thick one: p2 is the low figure, safe
///    for what holds.
///  - The flow rule shortens the bush along the hoop and lengthens it along the axis; the radial
///    strain stays elastic, (s_r - nu s_hoop) / E, so the bore follows from the outside by
///    integrating it through the wall.
///  - Let F be the diametral give per pressure of both parts together, elastic. Warm interference
///  is
///    D(T) = D0 + (expansion of bush - of hub) d (T - bench). Of it F p(T) springs back when it
///    cools; D(T) - F p(T) is lost for good, and D0 less that is left at the bench (negative: it is
///    loose by so much). Cooling never yields the bush again: its bore ends at Y (b-a)/(b+a).
///  - For the bore Tresca is not the safe one: by von Mises the wall thickens as it yields and
///  keeps
///    more of its interference, so the bore is lost by up to a tenth more, and ends tighter. Its
///    stresses follow from equilibrium, s_hoop = (s_r - sqrt(4 Y^2 - 3 s_r^2)) / 2, worked in
///    steps; its strains from the deviators of stresses that no more change. set_bore and
///    bore_after are the worse of both theories, all else is Tresca's, the worse for hold. (Walls
///    of outside over 2.9 times the bore, for which plane stress by von Mises ends, by Tresca
///    alone.)
/// Left out: yield falls and creep begins as bronze warms, so the real temperatures are lower; a
/// bush hotter than its hub yields sooner. Oil films, keys and screws are not counted.
/// Derived here from the two theories named; checked by tests/reference/hand-checks.md.

#include <optional>

#include "spotblue/base/describe.hpp"
#include "spotblue/base/export.hpp"
#include "spotblue/mechanics/elastic.hpp"

namespace spotblue {

struct BushInHub {
  double bore_mm = 0.0;
  double joint_mm = 0.0;
  double hub_outside_mm = 0.0;
  double interference_mm = 0.0;
  Elastic bush;
  Elastic hub;
  double bench_c = 20.0;
};
constexpr void describe(auto& fields, const BushInHub*) {
  fields.value("BushInHub", "A bush held in a stiffer hub.")
      .member("bore_mm", &BushInHub::bore_mm, "free, mm, > 0")
      .range(kOver0)
      .member("joint_mm", &BushInHub::joint_mm, "diameter, mm, > bore")
      .range(kOver0)
      .member("hub_outside_mm", &BushInHub::hub_outside_mm, "diameter, mm, > joint")
      .range(kOver0)
      .member("interference_mm", &BushInHub::interference_mm,
              "effective, diametral, at the bench, mm, 0 or more")
      .range(kFrom0)
      .member("bush", &BushInHub::bush, "elastic values, with a yield")
      .member("hub", &BushInHub::hub, "elastic values")
      .member("bench_c", &BushInHub::bench_c, "degrees C")
      .range(kTemperature_c);
}

struct WarmedBush {
  double interference_mm = 0.0;
  double pressure_mpa = 0.0;
  double yielded_to_mm = 0.0;
  double set_outside_mm = 0.0;
  double set_bore_mm = 0.0;
  double left_mm = 0.0;
  double bore_after_mm = 0.0;
};
constexpr void describe(auto& fields, const WarmedBush*) {
  fields
      .value("WarmedBush",
             "Warm at one temperature, and cold again after it. Changes are of diameters, growth "
             "positive.")
      .member("interference_mm", &WarmedBush::interference_mm,
              "of the free sizes at temperature; 0 or less: free in the hub")
      .member("pressure_mpa", &WarmedBush::pressure_mpa, "MPa")
      .member("yielded_to_mm", &WarmedBush::yielded_to_mm,
              "diameter the yield reaches from the bore; the bore when none")
      .member("set_outside_mm", &WarmedBush::set_outside_mm,
              "outside lost for good, by Tresca, >= 0")
      .member("set_bore_mm", &WarmedBush::set_bore_mm,
              "bore lost for good, by Tresca or von Mises, >= 0")
      .member("left_mm", &WarmedBush::left_mm,
              "interference at the bench afterwards; negative is looseness")
      .member("bore_after_mm", &WarmedBush::bore_after_mm,
              "the bore at the bench afterwards, held or loose, the tighter by the two");
}

/// @param temperature_c  of both, at or above the bench's.
/// @throws Error bad_input naming the argument out of range, or a bush without a yield.
[[nodiscard]] SPOTBLUE_EXPORT WarmedBush warmed_bush(const BushInHub& pair, double temperature_c);

struct Loosening {
  std::optional<double> first_yield_c;
  std::optional<double> whole_wall_c;
  std::optional<double> loose_c;
  std::optional<double> lets_go_c;
};
constexpr void describe(auto& fields, const Loosening*) {
  fields.value("Loosening", "Temperatures at which a bush works loose, degrees C.")
      .member("first_yield_c", &Loosening::first_yield_c, "its bore begins to yield; or None")
      .member("whole_wall_c", &Loosening::whole_wall_c, "it yields right through; or None")
      .member("loose_c", &Loosening::loose_c, "warmed above this it comes back loose; or None")
      .member("lets_go_c", &Loosening::lets_go_c, "the hub grows away from it: no grip above this");
}

/// The temperatures between the bench and `highest_c` at which these happen.
/// @throws Error as warmed_bush.
[[nodiscard]] SPOTBLUE_EXPORT Loosening loosening(const BushInHub& pair, double highest_c);

}  // namespace spotblue
