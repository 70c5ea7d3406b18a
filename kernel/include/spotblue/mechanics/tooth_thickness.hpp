#pragma once
/// @file
/// Thickness of a gear tooth on the reference circle, in the normal plane, from the two ways a
/// workshop takes it: a span over several teeth, and a size over pins. Lengths in mm.

#include "spotblue/base/export.hpp"
#include "spotblue/base/words.hpp"
#include "spotblue/mechanics/tooth_form.hpp"

namespace spotblue {

/// pi m / 2: half the pitch, with no backlash taken off.
[[nodiscard]] SPOTBLUE_EXPORT double standard_thickness_mm(const ToothForm& form);

/// Profile shift coefficient x of a tooth of this thickness: s = m (pi/2 + 2 x tan(alpha)). A tooth
/// thinned for backlash shows as a small negative shift.
[[nodiscard]] SPOTBLUE_EXPORT double shift_of_thickness(const ToothForm& form, double thickness_mm);

/// Teeth to span so that the anvils bear near the reference circle (x = 0), >= 2.
/// Source: k = z alpha_t / pi + 0.5 rounded, spread by the helix (z / cos^3); common practice.
[[nodiscard]] SPOTBLUE_EXPORT int teeth_to_span(const ToothForm& form, int teeth);

/// Size over `spanned` teeth, the base tangent length W:
///   W = m cos(alpha) (pi (k - 0.5) + z inv(alpha_t)) + (s - pi m / 2) cos(alpha), normal plane.
/// @throws Error bad_input for fewer than 2 or more than z/2 spanned teeth.
/// Source: ISO 21771:2007, 6.3 (from memory).
/// Checked by: tests/mechanics/tooth_thickness_test.cpp.
[[nodiscard]] SPOTBLUE_EXPORT double span_mm(const ToothForm& form, int teeth, int spanned,
                                             double thickness_mm);
/// The inverse: the thickness of a tooth that gives this span.
/// @throws Error bad_input also when the tooth would have no thickness or fill the pitch: the
///         count of the teeth or the module is wrong then.
[[nodiscard]] SPOTBLUE_EXPORT double thickness_from_span_mm(const ToothForm& form, int teeth,
                                                            int spanned, double span_mm);

/// How many pins lie in the spaces of a gear with an odd number of teeth: one and one across, or
/// one and two across under a flat anvil. With an even number the two give the same size.
enum class Pins { two, three };
constexpr auto describe(const Pins*) {
  return words("How many pins lie in the spaces of a gear.", "two", "three");
}

/// Size over pins laid in opposite spaces.
///   inv(phi) = D / (z m cos(alpha)) + s / (z m) - pi / z + inv(alpha_t); centres on d_b /
///   cos(phi); M = d_c + D for even z, d_c cos(90 deg/z) + D over two pins and d_c cos^2(90 deg/z)
///   + D over three for odd z. On a helical gear the pins shift along their spaces until they stand
///   opposite, so that M = d_c + D for any z.
/// @throws Error bad_input naming the argument out of range, the pin when it touches no flank:
/// below
///         the base circle, over the tips (addendum 1.25 modules, and the shift) or under them
///         (addendum 0.8).
/// Source: ISO 21771:2007, 6.4, DIN 3960 for helical odd z (both from memory); three pins derived.
[[nodiscard]] SPOTBLUE_EXPORT double over_pins_mm(const ToothForm& form, int teeth, double pin_mm,
                                                  double thickness_mm, Pins pins);
/// The inverse. @throws Error bad_input as thickness_from_span_mm.
[[nodiscard]] SPOTBLUE_EXPORT double thickness_from_pins_mm(const ToothForm& form, int teeth,
                                                            double pin_mm, double over_mm,
                                                            Pins pins);

}  // namespace spotblue
