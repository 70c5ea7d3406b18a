#pragma once
/// @file
/// The ISO code system for tolerances on linear sizes: IT grades, deviations, limits and fits, for
/// nominal sizes over 0 up to 3150 mm.
///
/// Source: ISO 286-1:2010, tables 1 to 5 and ISO 286-2:2010 (same values as ISO 286:1988, IS 919
/// and JIS B 0401). kernel/standards/iso286_grades.hpp and iso286_deviations.hpp say which rows are
/// from memory. A class is accepted when part 1 gives its deviation and its grade at that size;
/// part 2 tabulates only the usual ones of these. Half values of JS and js are kept as they are;
/// ISO 286-1 lets grades 7 to 11 be rounded, which some catalogues do. Checked by:
/// tests/standards/iso286_table_test.cpp, every row of tests/reference/iso286_*.csv.

#include <string>
#include <string_view>

#include "spotblue/base/export.hpp"
#include "spotblue/base/length.hpp"
#include "spotblue/base/words.hpp"
#include "spotblue/standards/fit.hpp"

namespace spotblue {

/// Whether a class belongs to holes (capital letters) or shafts (small letters).
enum class SizeKind { hole, shaft };
constexpr auto describe(const SizeKind*) {
  return words("Whether a class is for holes (capitals) or shafts.", "hole", "shaft");
}

struct Deviations {
  Length lower;
  Length upper;
};
constexpr void describe(auto& fields, const Deviations*) {
  fields.value("Deviations", "Lower and upper deviation from the nominal size, signed.")
      .member("lower_mm", &Deviations::lower, "lower deviation, mm")
      .member("upper_mm", &Deviations::upper, "upper deviation, mm");
}

/// Width of a standard tolerance grade.
///
/// @param nominal  over 0, up to 3150 mm.
/// @param grade    "IT7" or "7"; IT01, IT0, IT1 .. IT18.
/// @throws Error bad_input when the nominal is not a positive number or the grade is no grade;
///               not_in_standard when the standard gives no such grade there: over 3150 mm, IT14 to
///               IT18 up to 1 mm, IT01 and IT0 above 500 mm.
[[nodiscard]] SPOTBLUE_EXPORT Length it_value(Length nominal, std::string_view grade);

/// Kind of size a class is for, by its letters alone.
/// @throws Error bad_input when the text is no class like H7, js6 or ZC11.
[[nodiscard]] SPOTBLUE_EXPORT SizeKind size_kind(std::string_view tolerance_class);

/// Deviations of a tolerance class.
///
/// @param nominal          over 0, up to 3150 mm.
/// @param tolerance_class  letters and grade: "H7", "zc8", "JS6"; capitals for holes.
/// @throws Error bad_input when the nominal is not a positive number or the text is no class;
///               not_in_standard when the standard defines no such class at this size; the cure
///               names the nearest classes that it does define there.
[[nodiscard]] SPOTBLUE_EXPORT Deviations deviations(Length nominal,
                                                    std::string_view tolerance_class);

/// Limits of size of a tolerance class: nominal plus deviations. Same arguments and errors as
/// deviations().
///
/// @code
///   limits(44_mm, "H7");  // 44.000 to 44.025 mm
/// @endcode
[[nodiscard]] SPOTBLUE_EXPORT Limits limits(Length nominal, std::string_view tolerance_class);

/// A fit by its two classes, hole first.
///
/// @param text  hole class, stroke, shaft class: "H7/s6"; blanks around the stroke are ignored.
/// @throws Error as deviations(), and bad_input when the text is not a hole and a shaft class.
///
/// @code
///   fit(44_mm, "H7/s6");  // interference, clearance -0.059 to -0.018 mm
/// @endcode
[[nodiscard]] SPOTBLUE_EXPORT Fit fit(Length nominal, std::string_view text);

}  // namespace spotblue
