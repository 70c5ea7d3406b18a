#pragma once
/// @file
/// Inch fits of ANSI B4.1 on the hole basis: running RC1 to RC9, locational LC1 to LC11, LT1 to
/// LT6 and LN1 to LN3, force FN1 to FN5, for basic sizes over 0 up to 19.69 in.
///
/// Source: ANSI B4.1-1967 (R1999), tables 1 to 5, as printed in handbooks;
/// kernel/standards/b4_1_tables.hpp says which rows are from memory (all of LC among them).
/// Checked by: tests/standards/b4_1_test.cpp, every row of tests/reference/ansi_b41_fits.csv.

#include <string_view>

#include "spotblue/base/export.hpp"
#include "spotblue/base/length.hpp"
#include "spotblue/standards/fit.hpp"

namespace spotblue {

/// Limits of hole and shaft for one class.
///
/// @param nominal  basic size, over 0 up to 19.69 in (500.126 mm).
/// @param cls      class without blanks, letter case aside: "FN2", "rc4".
/// @throws Error bad_input when the nominal is not a positive number or there is no such class;
///               not_in_standard when the table does not reach the size (above 19.69 in; FN3 up to
///               0.95 in, LT3 and LT4 up to 0.24 in), naming the nearest class that does.
///
/// @code
///   b4_1_fit(Length::inch(1.0), "FN2");  // hole 1.0000 to 1.0008, shaft 1.0014 to 1.0019 in
/// @endcode
[[nodiscard]] SPOTBLUE_EXPORT Fit b4_1_fit(Length nominal, std::string_view cls);

/// Whether a class begins with the two capitals of one here, "RC" or "FN", whatever follows: what
/// no class of ISO 286 does.
[[nodiscard]] SPOTBLUE_EXPORT bool has_b4_1_letters(std::string_view cls);

}  // namespace spotblue
