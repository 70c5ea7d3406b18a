#pragma once
// What rings, interferences, teeth and lengths keep wherever this layer takes them; each is in the
// source that they are of.

#include <span>
#include <string>
#include <string_view>

#include "spotblue/mechanics/stack.hpp"
#include "spotblue/mechanics/thick_ring.hpp"
#include "spotblue/mechanics/tooth_form.hpp"

namespace spotblue {

/// @throws Error bad_input with a place under `argument`.
void require_ring(const Ring& ring, const std::string& argument);

/// No metal bears a tenth of this, as a share of the joint's diameter: what is more is no press but
/// two sizes that do not belong together. Choice of this program, no source.
inline constexpr double kMostInterferenceShare = 0.5;

/// @throws Error bad_input when it is more; a clearance (negative) is none.
void require_interference(double interference_mm, double joint_mm, const std::string& argument);

/// @throws Error bad_input with a place under "form".
void require_form(const ToothForm& form);

/// @throws Error bad_input unless 0 < thickness < pitch.
void require_tooth_thickness(const ToothForm& form, double thickness_mm,
                             const std::string& argument);

/// @throws Error bad_input with a place under `argument`; no lengths are fine.
void require_dimensions(std::span<const StackDimension> lengths, std::string_view argument);

}  // namespace spotblue
