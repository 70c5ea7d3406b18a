#pragma once
/// @file
/// Stress concentration of a shoulder with a fillet and of a keyseat in a round shaft: greatest
/// elastic stress over the nominal stress of the smaller diameter.

#include <optional>
#include <string>

#include "spotblue/base/describe.hpp"
#include "spotblue/base/export.hpp"
#include "spotblue/base/length.hpp"
#include "spotblue/base/words.hpp"

namespace spotblue {

enum class ShaftLoad { bending, torsion, tension };
constexpr auto describe(const ShaftLoad*) {
  return words("How a shaft is loaded.", "bending", "torsion", "tension");
}

struct SteppedShaft {
  double larger_mm = 0.0;
  double smaller_mm = 0.0;
  double fillet_mm = 0.0;
};
constexpr void describe(auto& fields, const SteppedShaft*) {
  fields
      .value("SteppedShaft",
             "A round shaft that steps from `larger` down to `smaller` with a fillet in the "
             "corner, mm.")
      .member("larger_mm", &SteppedShaft::larger_mm, "diameter, mm, > smaller")
      .range(kOver0)
      .member("smaller_mm", &SteppedShaft::smaller_mm, "diameter, mm, > 0")
      .range(kOver0)
      .member("fillet_mm", &SteppedShaft::fillet_mm, "radius, mm, > 0")
      .range(kOver0);
}

struct StressFactor {
  std::optional<double> factor;
  std::optional<double> within_percent;
  std::string reason;
};
constexpr void describe(auto& fields, const StressFactor*) {
  fields.value("StressFactor", "A factor, or why the published curves do not give one.")
      .member("factor", &StressFactor::factor, "1 or more, or None")
      .member("within_percent", &StressFactor::within_percent,
              "how far the sources that were compared differ at most, percent; None where only one "
              "was seen or remembered")
      .member("reason", &StressFactor::reason, "empty when there is a factor");
}

/// Kt by Peterson's curve fits, 0.1 <= h/r <= 20 in bending and tension and 0.25 <= h/r <= 4 in
/// torsion (Kts), h the height of the step: Kt = C1 + C2 x + C3 x^2 + C4 x^3, x = 2h/D. Never below
/// 1, where the fits fall to 0.97 (x over 0.98). From h/r 1.5 to 2 the first fit is led over to the
/// second, from which it differs there by up to 4 % (x near 1; 0.5 % in tension): no jumps.
/// @return no factor outside the range, with the reason.
/// @throws Error bad_input for an impossible step.
/// Error: bending is within 3.4 % of Roark's fits, -2.7 to +3.4 % over all of 0.25 <= h/r <= 20;
/// torsion within 3 % of three steps worked from another chart (Gere, Mechanics of Materials, 6th
/// ed., problem 3.11-3); tension was compared with no second book.
/// Source: Pilkey, Peterson's Stress Concentration Factors, charts 3.10 and 3.12, read in a reprint
/// that lost the minus signs; restored from memory and from Roark.
/// Checked by: tests/mechanics/stress_concentration_test.cpp.
[[nodiscard]] SPOTBLUE_EXPORT StressFactor shoulder_factor(const SteppedShaft& step,
                                                           ShaftLoad load);

/// Kt in bending by Roark's fits, 0.25 <= h/r <= 20; as shoulder_factor. Source: Roark's Formulas
/// for Stress and Strain, 7th ed., table 17.1, read in a reprint.
[[nodiscard]] SPOTBLUE_EXPORT StressFactor shoulder_bending_factor_roark(const SteppedShaft& step);

/// A keyseat cut with an end mill, key width d/4, depth d/8, bottom fillet r: bending 1.426 +
/// 0.1643 q - 0.0019 q^2, torsion without a key 1.953 + 0.1434 q - 0.0021 q^2, q = 0.1 d/r.
/// @param diameter, bottom  > 0; 0.005 <= r/d <= 0.07, else no factor.
/// @return no factor for tension.
/// Source: Peterson, from memory. At r/d = 0.02 it gives 2.20 in bending where the first-pass value
/// of the textbooks is 2.14: both are quoted in findings.
[[nodiscard]] SPOTBLUE_EXPORT StressFactor keyseat_factor(Diameter diameter, Radius bottom,
                                                          ShaftLoad load);

/// What cuts a keyseat or groove, for first-pass factors.
enum class ShaftNotch { end_milled_keyseat, sled_runner_keyseat, ring_groove };
constexpr auto describe(const ShaftNotch*) {
  return words("What cuts a keyseat or groove.", "end-milled keyseat", "sled-runner keyseat",
               "ring groove");
}

/// Factors for a first pass, before the details are known: end-milled keyseat 2.14 bending, 3.0
/// torsion (r/d = 0.02); sled-runner keyseat 1.7 bending; ring groove 5.0 bending, 3.0 torsion.
/// @return no factor where the source has none.
/// Source: Shigley's Mechanical Engineering Design, table 7-1: 2.2 and 3.0 seen in its solutions
/// manual (8th ed., ch. 7), the rest from memory.
[[nodiscard]] SPOTBLUE_EXPORT StressFactor first_pass_factor(ShaftNotch notch, ShaftLoad load);

}  // namespace spotblue
