#pragma once
/// @file
/// The three outcomes when a value with an uncertainty meets limits, by ISO 14253-1.

#include <string_view>

#include "spotblue/base/export.hpp"
#include "spotblue/base/length.hpp"
#include "spotblue/base/words.hpp"

namespace spotblue {

/// ISO 14253-1:2017, 5: proof of conformity, proof of nonconformity, or neither.
enum class Outcome { conforming, nonconforming, undecided };
constexpr auto describe(const Outcome*) {
  return words("Proof of conformity, of nonconformity, or neither.", "conforming", "nonconforming",
               "undecided");
}

[[nodiscard]] SPOTBLUE_EXPORT std::string_view outcome_name(Outcome outcome);

/// Judges a measured length against limits, both included.
///
/// @param value        the measured length.
/// @param uncertainty  expanded uncertainty U (k = 2), >= 0.
/// @param limits       lower <= upper.
/// @return conforming when [value - U, value + U] lies within the limits; nonconforming when it
/// lies
///         wholly outside; undecided otherwise. With U = 0 never undecided.
/// @throws Error bad_input when U is negative, anything is not finite, or the limits are reversed.
///
/// Source: ISO 14253-1 (decision rules; acceptance and rejection zone reduced by U on each side).
[[nodiscard]] SPOTBLUE_EXPORT Outcome judge(Length value, Length uncertainty, Limits limits);

/// Judges a whole range of possible values: conforming when all of them lie within the limits,
/// nonconforming when none does, undecided when some do. A range that ends on a limit lies within
/// it: ends that miss it by no more than binary numbers lose of decimals (8.9e-16 of the greatest
/// of the four) are on it.
[[nodiscard]] SPOTBLUE_EXPORT Outcome judge(Limits possible, Limits limits);

/// Distance of the range's worst end from the limit it is nearest to, positive inside.
[[nodiscard]] SPOTBLUE_EXPORT Length margin(Limits possible, Limits limits);

}  // namespace spotblue
