#pragma once
/// @file
/// Hand-made values for the report tests: a stud pressed in a wheel, with a key, a taper, a screw
/// and a foul. The sizes are invented; nothing here was measured by the code under test.

#include "spotblue/check/check.hpp"
#include "spotblue/geometry/look.hpp"

namespace spotblue::test {

/// Two products, "Wheel" and "Stud"; the wheel occurs twice, once mirrored.
[[nodiscard]] Look example_look();

/// The example's wheel and stud repeated at `stations` places, each with a centre line and a seat.
[[nodiscard]] Look repeated_look(std::size_t stations);

/// The example judged: one finding of each outcome, made by hand.
[[nodiscard]] CheckResult example_check();

}  // namespace spotblue::test
