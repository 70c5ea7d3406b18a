#include "spotblue/standards/keys.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

#include "base/require.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/unit.hpp"
#include "spotblue/standards/iso286.hpp"

namespace spotblue {
namespace {

constexpr double kLargestWidth_mm = 3150.0;  // ISO 286 ends there
constexpr const char* kShaft = "shaft_diameter_mm";
constexpr double kSlack_mm = 1e-9;  // a diameter that came through another unit ends its row

constexpr ParallelKey metric(double over, double up_to, double width, double height, double shaft,
                             double hub, double tolerance) {
  return {Length::mm(over),  Length::mm(up_to), Length::mm(width),    Length::mm(height),
          Length::mm(shaft), Length::mm(hub),   Length::mm(tolerance)};
}

constexpr InchKey inch(double over, double up_to, double width, double square, double rectangular) {
  return {Length::inch(over), Length::inch(up_to), Length::inch(width), Length::inch(square),
          rectangular > 0.0 ? std::optional(Length::inch(rectangular)) : std::nullopt};
}

// DIN 6885-1 table 1 / ISO 773: shaft over, up to, b, h, t1, t2, tolerance of both depths
// [DIN6885-C;
// first row KEYDET].
// clang-format off
constexpr std::array<ParallelKey, 26> kMetric = {
    metric(6, 8, 2, 2, 1.2, 1, 0.1),
    metric(8, 10, 3, 3, 1.8, 1.4, 0.1),
    metric(10, 12, 4, 4, 2.5, 1.8, 0.1),
    metric(12, 17, 5, 5, 3, 2.3, 0.1),
    metric(17, 22, 6, 6, 3.5, 2.8, 0.1),
    metric(22, 30, 8, 7, 4, 3.3, 0.2),
    metric(30, 38, 10, 8, 5, 3.3, 0.2),
    metric(38, 44, 12, 8, 5, 3.3, 0.2),
    metric(44, 50, 14, 9, 5.5, 3.8, 0.2),
    metric(50, 58, 16, 10, 6, 4.3, 0.2),
    metric(58, 65, 18, 11, 7, 4.4, 0.2),
    metric(65, 75, 20, 12, 7.5, 4.9, 0.2),
    metric(75, 85, 22, 14, 9, 5.4, 0.2),
    metric(85, 95, 25, 14, 9, 5.4, 0.2),
    metric(95, 110, 28, 16, 10, 6.4, 0.2),
    metric(110, 130, 32, 18, 11, 7.4, 0.2),
    metric(130, 150, 36, 20, 12, 8.4, 0.3),
    metric(150, 170, 40, 22, 13, 9.4, 0.3),
    metric(170, 200, 45, 25, 15, 10.4, 0.3),
    metric(200, 230, 50, 28, 17, 11.4, 0.3),
    metric(230, 260, 56, 32, 20, 12.4, 0.3),
    metric(260, 290, 63, 32, 20, 12.4, 0.3),
    metric(290, 330, 70, 36, 22, 14.4, 0.3),
    metric(330, 380, 80, 40, 25, 15.4, 0.3),
    metric(380, 440, 90, 45, 28, 17.4, 0.3),
    metric(440, 500, 100, 50, 31, 19.4, 0.3),
};

// ASME B17.1 table 1: shaft over, up to, width, height square, height rectangular (0: none)
// [SHOPREF].
constexpr std::array<InchKey, 14> kInch = {
    inch(0.3125, 0.4375, 0.09375, 0.09375, 0),
    inch(0.4375, 0.5625, 0.125, 0.125, 0.09375),
    inch(0.5625, 0.875, 0.1875, 0.1875, 0.125),
    inch(0.875, 1.25, 0.25, 0.25, 0.1875),
    inch(1.25, 1.375, 0.3125, 0.3125, 0.25),
    inch(1.375, 1.75, 0.375, 0.375, 0.25),
    inch(1.75, 2.25, 0.5, 0.5, 0.375),
    inch(2.25, 2.75, 0.625, 0.625, 0.4375),
    inch(2.75, 3.25, 0.75, 0.75, 0.5),
    inch(3.25, 3.75, 0.875, 0.875, 0.625),
    inch(3.75, 4.5, 1, 1, 0.75),
    inch(4.5, 5.5, 1.25, 1.25, 0.875),
    inch(5.5, 6.5, 1.5, 1.5, 1),
    inch(6.5, 7.5, 1.75, 1.75, 1.5),
};
// clang-format on

// ASME B17.1 table 4, thousandths of an inch, from memory: widths up to, bar stock -a / +0, keyseat
// +b / -0 (class 1); key stock +c / -0 (class 2, keyseat +2 / -0 throughout).
struct InchWidthTolerance {
  double up_to_in;
  double bar_stock_under;
  double keyseat_class_1_over;
  double key_stock_over;
};
constexpr std::array<InchWidthTolerance, 6> kInchWidths = {{{0.5, 2, 2, 1},
                                                            {0.75, 2, 3, 1},
                                                            {1.0, 3, 3, 1},
                                                            {1.25, 3, 4, 1},
                                                            {1.5, 3, 4, 2},
                                                            {2.5, 4, 4, 2}}};
constexpr double kKeyseatClass2Over = 2.0;

template <class Rows>
auto row_for(const Rows& rows, Length shaft, LengthUnit unit, std::string_view standard) {
  require_positive(shaft.in_mm(), kShaft, "mm");
  const auto* const row = std::find_if(rows.begin(), rows.end(), [shaft](const auto& entry) {
    return shaft.in_mm() <= entry.shaft_up_to.in_mm() + kSlack_mm;
  });
  if (row == rows.end() || shaft.in_mm() < rows.front().shaft_over.in_mm() - kSlack_mm) {
    throw Error(ErrorCode::not_in_standard, {"", kShaft},
                fmt::format("{} has keys for shafts of {} to {} {}, got {}", standard,
                            format_size(rows.front().shaft_over, unit),
                            format_size(rows.back().shaft_up_to, unit), unit_name(unit),
                            format_size(shaft, unit)),
                "give the keyseat as plain limits");
  }
  return *row;
}

Limits around_size(Length width, double under_thou, double over_thou) {
  return {width - Length::inch(under_thou / 1000.0), width + Length::inch(over_thou / 1000.0)};
}

}  // namespace

std::span<const ParallelKey> parallel_keys() { return kMetric; }

ParallelKey parallel_key(Diameter shaft) {
  return row_for(kMetric, shaft.length(), LengthUnit::mm, "ISO 773");
}

KeyWidths key_widths(const ParallelKey& key, KeyFit fit) {
  require_value(key, "key");
  require_in_range(key.width.in_mm(), {0.0, kLargestWidth_mm}, {nullptr, "key.width_mm"});
  const auto sized = [&key](std::string_view shaft, std::string_view hub) {
    return KeyWidths{limits(key.width, "h9"), limits(key.width, shaft), limits(key.width, hub)};
  };
  switch (fit) {
    case KeyFit::free:
      return sized("H9", "D10");
    case KeyFit::normal:
      return sized("N9", "JS9");
    case KeyFit::tight:
      break;
  }
  return sized("P9", "P9");
}

std::span<const InchKey> inch_keys() { return kInch; }

InchKey inch_key(Diameter shaft) {
  return row_for(kInch, shaft.length(), LengthUnit::inch, "ASME B17.1");
}

Length inch_keyseat_depth(Length key_height) {
  require_positive(key_height.in_mm(), "key_height_mm", "mm");
  return key_height / 2.0;
}

KeyWidths inch_key_widths(Length width, InchKeyFit fit) {
  require_positive(width.in_mm(), "width_mm", "mm");
  const auto* const row =
      std::find_if(kInchWidths.begin(), kInchWidths.end(), [width](const auto& entry) {
        return width.in_mm() <= Length::inch(entry.up_to_in).in_mm() + kSlack_mm;
      });
  if (row == kInchWidths.end()) {
    throw Error(ErrorCode::not_in_standard, {"", "width_mm"},
                fmt::format("key widths of ASME B17.1 here end at 2.5 in, got {} in",
                            format_size(width, LengthUnit::inch)),
                "give the keyseat as plain limits");
  }
  if (fit == InchKeyFit::class_1) {
    const Limits keyseat = around_size(width, 0.0, row->keyseat_class_1_over);
    return {around_size(width, row->bar_stock_under, 0.0), keyseat, keyseat};
  }
  const Limits keyseat = around_size(width, 0.0, kKeyseatClass2Over);
  return {around_size(width, 0.0, row->key_stock_over), keyseat, keyseat};
}

}  // namespace spotblue
