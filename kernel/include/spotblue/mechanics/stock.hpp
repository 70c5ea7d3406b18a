#pragma once
/// @file
/// Whether a part comes out of a piece of stock when every skin of the stock is cleaned off, and
/// how much metal is removed. Lengths in mm.

#include <optional>
#include <string>
#include <vector>

#include "spotblue/base/export.hpp"

namespace spotblue {

/// Bar, slug, or tube: turned round about its own axis.
struct RoundStock {
  double diameter_mm = 0.0;         ///< > 0
  double inner_mm = 0.0;            ///< hole of a tube, 0 <= inner < diameter
  std::optional<double> length_mm;  ///< absent: as long as needed
};

/// Plate or block, three sizes square to each other; absent: as large as needed.
struct BlockStock {
  std::optional<double> length_mm, width_mm, thickness_mm;
};

/// A turned part.
struct RoundPart {
  double outside_mm = 0.0;  ///< greatest, > 0
  double bore_mm = 0.0;     ///< least bore right through it; 0 without one
  double length_mm = 0.0;   ///< > 0
};

/// A part with flat sides, sizes of the box round it.
struct FlatSidedPart {
  double length_mm = 0.0, width_mm = 0.0, thickness_mm = 0.0;  ///< > 0, in any order
};

/// Room left at one size once both its sides are cleaned; negative: too small.
struct StockMargin {
  std::string size;  ///< "diameter", "bore", "length", "width", "thickness"
  double margin_mm = 0.0;
};

struct StockCheck {
  std::vector<StockMargin> margins;
  /// Of the stock as it is, or of the length that the part needs where it has none; absent when a
  /// size that it depends on is not given.
  std::optional<double> volume_mm3;
  [[nodiscard]] SPOTBLUE_EXPORT double least_margin_mm() const;
  [[nodiscard]] bool fits() const { return least_margin_mm() >= 0.0; }
};

/// @param cleaning_mm  metal to take off each side, >= 0; twice that from a diameter or length, and
///                     the bore of a tube must clean up as well.
/// @throws Error bad_input naming the argument.
/// Checked by: tests/mechanics/stock_test.cpp, worked by hand.
[[nodiscard]] SPOTBLUE_EXPORT StockCheck check_stock(const RoundPart& part, const RoundStock& stock,
                                                     double cleaning_mm);
/// The axis of the part stands square to the plate.
[[nodiscard]] SPOTBLUE_EXPORT StockCheck check_stock(const RoundPart& part, const BlockStock& stock,
                                                     double cleaning_mm);
/// The longest size of the part lies along the bar; the other two must lie in its circle.
[[nodiscard]] SPOTBLUE_EXPORT StockCheck check_stock(const FlatSidedPart& part,
                                                     const RoundStock& stock, double cleaning_mm);
/// The least size of the part lies through the plate, its longest along it.
[[nodiscard]] SPOTBLUE_EXPORT StockCheck check_stock(const FlatSidedPart& part,
                                                     const BlockStock& stock, double cleaning_mm);

}  // namespace spotblue
