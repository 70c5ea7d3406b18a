#pragma once
/// @file
/// Whether a part comes out of a piece of stock when every skin of the stock is cleaned off, and
/// how much metal is removed. Lengths in mm.

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "spotblue/base/describe.hpp"
#include "spotblue/base/export.hpp"

namespace spotblue {

struct RoundStock {
  double diameter_mm = 0.0;
  double inner_mm = 0.0;
  std::optional<double> length_mm;
};
constexpr void describe(auto& fields, const RoundStock*) {
  fields.value("RoundStock", "Bar, slug, or tube: turned round about its own axis.")
      .member("diameter_mm", &RoundStock::diameter_mm, "mm, > 0")
      .range(kOver0)
      .member("inner_mm", &RoundStock::inner_mm, "hole of a tube, mm, under the diameter")
      .range(kFrom0)
      .member("length_mm", &RoundStock::length_mm, "mm; None: as long as needed")
      .range(kOver0);
}

struct BlockStock {
  std::optional<double> length_mm, width_mm, thickness_mm;
};
constexpr void describe(auto& fields, const BlockStock*) {
  fields
      .value("BlockStock",
             "Plate or block, three sizes square to each other; absent: as large as needed.")
      .member("length_mm", &BlockStock::length_mm, "mm or None")
      .range(kOver0)
      .member("width_mm", &BlockStock::width_mm, "mm or None")
      .range(kOver0)
      .member("thickness_mm", &BlockStock::thickness_mm, "mm or None")
      .range(kOver0);
}

struct RoundPart {
  double outside_mm = 0.0;
  double bore_mm = 0.0;
  double length_mm = 0.0;
};
constexpr void describe(auto& fields, const RoundPart*) {
  fields.value("RoundPart", "A turned part, mm.")
      .member("outside_mm", &RoundPart::outside_mm, "greatest diameter, mm, > 0")
      .range(kOver0)
      .member("bore_mm", &RoundPart::bore_mm, "least bore right through, mm; 0 without one")
      .range(kFrom0)
      .member("length_mm", &RoundPart::length_mm, "mm, > 0")
      .range(kOver0);
}

struct FlatSidedPart {
  double length_mm = 0.0, width_mm = 0.0, thickness_mm = 0.0;
};
constexpr void describe(auto& fields, const FlatSidedPart*) {
  fields.value("FlatSidedPart", "A part with flat sides, sizes of the box round it.")
      .member("length_mm", &FlatSidedPart::length_mm, "> 0, in any order")
      .range(kOver0)
      .member("width_mm", &FlatSidedPart::width_mm, "> 0, in any order")
      .range(kOver0)
      .member("thickness_mm", &FlatSidedPart::thickness_mm, "> 0, in any order")
      .range(kOver0);
}

struct StockMargin {
  std::string size;
  double margin_mm = 0.0;
};
constexpr void describe(auto& fields, const StockMargin*) {
  fields
      .value("StockMargin",
             "Room left at one size once both its sides are cleaned; negative: too small.")
      .member("size", &StockMargin::size,
              "\"diameter\", \"bore\", \"length\", \"width\", \"thickness\"")
      .member("margin_mm", &StockMargin::margin_mm, "mm, negative: too small");
}

struct StockCheck {
  std::vector<StockMargin> margins;
  std::optional<double> volume_mm3;
  [[nodiscard]] SPOTBLUE_EXPORT double least_margin_mm() const;
  [[nodiscard]] bool fits() const { return least_margin_mm() >= 0.0; }
};
constexpr void describe(auto& fields, const StockCheck*) {
  fields.value("StockCheck", "Whether a part comes out of a piece of stock.")
      .member("margins", &StockCheck::margins, "one for each size")
      .member("volume_mm3", &StockCheck::volume_mm3,
              "of the stock as it is, or of the length that the part needs where it has none; "
              "absent when a size that it depends on is not given")
      .derived("least_margin_mm", &StockCheck::least_margin_mm, "mm")
      .derived("fits", &StockCheck::fits, "whether no margin is negative");
}

/// @param cleaning_mm  metal to take off each side, >= 0; twice that from a diameter or length, and
///                     the bore of a tube must clean up as well.
/// @throws Error bad_input naming the argument.
/// Checked by: tests/mechanics/stock_test.cpp, worked by hand.
[[nodiscard]] SPOTBLUE_EXPORT StockCheck check_stock(const RoundPart& part, const RoundStock& stock,
                                                     double cleaning_mm);
/// The part may lie any way up, its axis along any side of the block: the way that leaves most.
[[nodiscard]] SPOTBLUE_EXPORT StockCheck check_stock(const RoundPart& part, const BlockStock& stock,
                                                     double cleaning_mm);
/// The longest size of the part lies along the bar; the other two must lie in its circle.
[[nodiscard]] SPOTBLUE_EXPORT StockCheck check_stock(const FlatSidedPart& part,
                                                     const RoundStock& stock, double cleaning_mm);
/// Any way up, sides along sides: the way that leaves most.
[[nodiscard]] SPOTBLUE_EXPORT StockCheck check_stock(const FlatSidedPart& part,
                                                     const BlockStock& stock, double cleaning_mm);

/// What is left over of a bar when parts are parted off one after the other; negative: too short.
/// @param lengths_mm  of the parts with what is cleaned off their ends, each > 0.
/// @param parting_mm  >= 0, that each cut takes; the last part needs none where no stub is held.
/// @param stub_mm     >= 0, that stays in the chuck.
/// @throws Error bad_input naming the argument. Checked by: tests/mechanics/stock_test.cpp.
[[nodiscard]] SPOTBLUE_EXPORT double left_over_mm(double stock_length_mm,
                                                  std::span<const double> lengths_mm,
                                                  double parting_mm, double stub_mm);

}  // namespace spotblue
