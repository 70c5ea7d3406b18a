#pragma once
/// @file
/// Parallel keys and their keyseats by shaft diameter, metric (ISO 773 / DIN 6885-1) and inch
/// (ASME B17.1).
///
/// Sources: ISO/R 773:1969 and DIN 6885-1:1968 as printed in catalogues (DIN6885-C and
/// DIN6885-P of tests/reference/SOURCES.md); ASME B17.1-1967 sizes from the Shop Reference for
/// Students and Apprentices, 2nd ed., table 1, tolerances from memory.
/// Checked by: tests/standards/keys_test.cpp, every row of tests/reference/keys_*.csv.

#include <optional>
#include <span>

#include "spotblue/base/describe.hpp"
#include "spotblue/base/export.hpp"
#include "spotblue/base/length.hpp"
#include "spotblue/base/words.hpp"

namespace spotblue {

struct ParallelKey {
  Length shaft_over;
  Length shaft_up_to;
  Length width;
  Length height;
  Length shaft_depth;
  Length hub_depth;
  Length depth_tolerance;
};
constexpr void describe(auto& fields, const ParallelKey*) {
  fields
      .value("ParallelKey",
             "Section of a metric parallel key and depths of its keyseats for a range of shaft "
             "diameters.")
      .member("shaft_over_mm", &ParallelKey::shaft_over, "shaft diameters over this ...")
      .range(kFrom0)
      .member("shaft_up_to_mm", &ParallelKey::shaft_up_to,
              "... up to and including this; the first row takes both ends")
      .range(kOver0)
      .member("width_mm", &ParallelKey::width, "b, mm")
      .range(kOver0)
      .member("height_mm", &ParallelKey::height, "h, mm")
      .range(kOver0)
      .member("shaft_depth_mm", &ParallelKey::shaft_depth, "t1, from the top of the shaft, mm")
      .range(kOver0)
      .member("hub_depth_mm", &ParallelKey::hub_depth, "t2, from the bore, mm")
      .range(kOver0)
      .member("depth_tolerance_mm", &ParallelKey::depth_tolerance, "both depths + this, - 0, mm")
      .range(kFrom0);
}

/// How a metric key sits in its keyseats, ISO 773: free for a sliding hub, tight for shock and
/// reversing.
enum class KeyFit { free, normal, tight };
constexpr auto describe(const KeyFit*) {
  return words("How a metric key sits in its keyseats, ISO 773.", "free", "normal", "tight");
}

struct KeyWidths {
  Limits key;
  Limits shaft_keyseat;
  Limits hub_keyseat;
};
constexpr void describe(auto& fields, const KeyWidths*) {
  fields.value("KeyWidths", "Limits of the widths of a key and its keyseats, mm.")
      .member("key", &KeyWidths::key, "width of the key, mm")
      .member("shaft_keyseat", &KeyWidths::shaft_keyseat, "width of the shaft's keyseat, mm")
      .member("hub_keyseat", &KeyWidths::hub_keyseat, "width of the hub's keyseat, mm");
}

/// All metric rows, for shafts of 6 up to 500 mm.
[[nodiscard]] SPOTBLUE_EXPORT std::span<const ParallelKey> parallel_keys();

/// The metric key for a shaft.
/// @throws Error bad_input when the diameter is not a positive number; not_in_standard when it is
///               under 6 or over 500 mm.
[[nodiscard]] SPOTBLUE_EXPORT ParallelKey parallel_key(Diameter shaft);

/// Width limits by ISO 773: key h9; keyseat of the shaft H9 (free), N9 (normal), P9 (tight); of the
/// hub D10 (free), JS9 (normal), P9 (tight).
/// @throws Error bad_input naming the key's size that is out of range.
[[nodiscard]] SPOTBLUE_EXPORT KeyWidths key_widths(const ParallelKey& key, KeyFit fit);

struct InchKey {
  Length shaft_over;
  Length shaft_up_to;
  Length width;
  Length square_height;
  std::optional<Length> rectangular_height;
};
constexpr void describe(auto& fields, const InchKey*) {
  fields
      .value("InchKey",
             "Section of an inch parallel key for a range of shaft diameters, ASME B17.1 table 1.")
      .member("shaft_over_mm", &InchKey::shaft_over, "shaft diameters over this ...")
      .member("shaft_up_to_mm", &InchKey::shaft_up_to,
              "... up to and including this; the first row takes both ends")
      .member("width_mm", &InchKey::width, "width, mm")
      .member("square_height_mm", &InchKey::square_height, "height of a square key, mm")
      .member("rectangular_height_mm", &InchKey::rectangular_height,
              "height of a rectangular key, mm; None for the smallest shafts");
}

/// The two classes of ASME B17.1: 1 takes bar stock and is free at the sides, 2 takes key stock and
/// may be tight there.
enum class InchKeyFit { class_1, class_2 };
constexpr auto describe(const InchKeyFit*) {
  return words("The two classes of ASME B17.1.", "class 1", "class 2");
}

/// All inch rows, for shafts of 5/16 up to 7 1/2 in.
[[nodiscard]] SPOTBLUE_EXPORT std::span<const InchKey> inch_keys();

/// The inch key for a shaft.
/// @throws Error bad_input when the diameter is not a positive number; not_in_standard when it is
///               under 5/16 or over 7 1/2 in.
[[nodiscard]] SPOTBLUE_EXPORT InchKey inch_key(Diameter shaft);

/// Nominal depth of the keyseat in shaft and in hub, at the side of the key: half its height.
/// Tolerances (from memory): shaft +0 / -0.015 in, hub +0.010 / -0 in.
/// @throws Error bad_input unless the height is > 0.
[[nodiscard]] SPOTBLUE_EXPORT Length inch_keyseat_depth(Length key_height);

/// Width limits by ASME B17.1 table 4; both keyseats alike. From memory.
/// @throws Error bad_input when the width is not a positive number; not_in_standard over 2 1/2 in.
[[nodiscard]] SPOTBLUE_EXPORT KeyWidths inch_key_widths(Length width, InchKeyFit fit);

}  // namespace spotblue
