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

/// Hole diameters for one thread size.
struct ClearanceHole {
  Length thread;  ///< Nominal thread diameter.
  Length fine;
  Length medium;
  Length coarse;
};

/// The whole table, smallest first.
[[nodiscard]] SPOTBLUE_EXPORT std::span<const ClearanceHole> clearance_holes();

/// The row for a nominal thread diameter, exact to 0.001 mm; nothing where the standard has none.
[[nodiscard]] SPOTBLUE_EXPORT std::optional<ClearanceHole> clearance_hole(Length thread);

}  // namespace spotblue
