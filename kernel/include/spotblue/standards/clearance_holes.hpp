#pragma once
/// @file
/// Clearance holes for bolts and screws M1 to M64.
///
/// Source: ISO 273:1979, table, series fine (H12), medium (H13) and coarse (H14); seen in
/// reprints of the table only.
/// Checked by: tests/standards/clearance_holes_test.cpp.

#include <optional>
#include <span>

#include "spotblue/base/export.hpp"
#include "spotblue/base/length.hpp"

namespace spotblue {

struct ClearanceHole {
  Length thread;
  Length fine;
  Length medium;
  Length coarse;
};
constexpr void describe(auto& fields, const ClearanceHole*) {
  fields.value("ClearanceHole", "Hole diameters for one thread size, ISO 273, mm.")
      .member("thread_mm", &ClearanceHole::thread, "nominal thread diameter, mm")
      .member("fine_mm", &ClearanceHole::fine, "fine series (H12), mm")
      .member("medium_mm", &ClearanceHole::medium, "medium series (H13), mm")
      .member("coarse_mm", &ClearanceHole::coarse, "coarse series (H14), mm");
}

/// The whole table, smallest first.
[[nodiscard]] SPOTBLUE_EXPORT std::span<const ClearanceHole> clearance_holes();

/// The row for a nominal thread diameter, exact to 0.001 mm; nothing where the standard has none.
/// @throws Error bad_input unless thread > 0.
[[nodiscard]] SPOTBLUE_EXPORT std::optional<ClearanceHole> clearance_hole(Length thread);

}  // namespace spotblue
