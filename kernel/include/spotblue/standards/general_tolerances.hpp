#pragma once
/// @file
/// General tolerances for lengths that a drawing gives without limits of their own.
///
/// Source: ISO 2768-1:1989, clause 4, table 1 (linear dimensions) and table 2 (external radii and
/// chamfer heights); seen in reprints of the tables only.
/// Checked by: tests/standards/general_tolerances_test.cpp, every row of
/// tests/reference/iso2768_1.csv.

#include <array>
#include <optional>
#include <span>
#include <string_view>

#include "spotblue/base/export.hpp"
#include "spotblue/base/length.hpp"
#include "spotblue/base/words.hpp"

namespace spotblue {

/// ISO 2768-1: f, m, c and v.
enum class GeneralTolerance { fine, medium, coarse, very_coarse };
constexpr auto describe(const GeneralTolerance*) {
  return words("ISO 2768-1: f, m, c and v.", "fine", "medium", "coarse", "very coarse");
}

struct GeneralToleranceStep {
  double over_mm = 0.0;
  double up_to_mm = 0.0;
  std::array<std::optional<double>, 4> deviation_mm;
};
constexpr void describe(auto& fields, const GeneralToleranceStep*) {
  fields
      .value("GeneralToleranceStep",
             "One size step: how far a length may be off either way, by class; absent where the "
             "standard gives nothing.")
      .member("over_mm", &GeneralToleranceStep::over_mm,
              "sizes over this, mm; the first step takes both ends")
      .member("up_to_mm", &GeneralToleranceStep::up_to_mm, "up to and including this, mm")
      .member("deviation_mm", &GeneralToleranceStep::deviation_mm,
              "for f, m, c and v, mm; None where the standard gives nothing");
}

/// Table 1, smallest step first: 0.5 up to 4000 mm.
[[nodiscard]] SPOTBLUE_EXPORT std::span<const GeneralToleranceStep> general_tolerance_steps();
/// Table 2, smallest step first: broken edges, 0.5 mm and up.
[[nodiscard]] SPOTBLUE_EXPORT std::span<const GeneralToleranceStep> broken_edge_steps();

/// Class by its letter.
/// @throws Error bad_input for anything but f, m, c or v.
[[nodiscard]] SPOTBLUE_EXPORT GeneralTolerance parse_general_tolerance(std::string_view letter);
[[nodiscard]] SPOTBLUE_EXPORT std::string_view general_tolerance_letter(GeneralTolerance tolerance);

/// How far a length may be off its nominal, either way.
///
/// @param nominal  0.5 up to 4000 mm; the edges of table 2: 0.5 mm and up.
/// @throws Error bad_input when the nominal is not a positive number; not_in_standard under 0.5 mm
///               (the standard wants the limits written at the size), over 4000 mm, for f over
///               2000 mm and for v up to 3 mm.
///
/// @code
///   general_deviation(Length::mm(40.0), GeneralTolerance::medium);  // 0.3 mm
/// @endcode
[[nodiscard]] SPOTBLUE_EXPORT Length general_deviation(Length nominal, GeneralTolerance tolerance);
/// The same for external radii and chamfer heights.
[[nodiscard]] SPOTBLUE_EXPORT Length broken_edge_deviation(Length nominal,
                                                           GeneralTolerance tolerance);

}  // namespace spotblue
