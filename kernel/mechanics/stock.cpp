#include "spotblue/mechanics/stock.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <limits>
#include <numbers>

#include "base/require.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

void require_round(const RoundStock& stock) {
  require_value(stock, "stock");
  if (stock.inner_mm >= stock.diameter_mm) {
    throw Error(ErrorCode::bad_input, {"", "stock.inner_mm"},
                fmt::format("need less than the outside of {} mm, got {} mm", stock.diameter_mm,
                            stock.inner_mm),
                "swap or correct the two diameters");
  }
}

void require_part(const RoundPart& part) { require_value(part, "part"); }

// Longest first.
std::array<double, 3> sizes_of(const FlatSidedPart& part) {
  require_value(part, "part");
  std::array<double, 3> sizes{part.length_mm, part.width_mm, part.thickness_mm};
  std::sort(sizes.begin(), sizes.end(), std::greater<>());
  return sizes;
}

void add_margin(StockCheck& check, const char* size, const std::optional<double>& has,
                double needs) {
  if (has) {
    check.margins.push_back({size, *has - needs});
  }
}

double round_volume(const RoundStock& stock, double length_needed) {
  return 0.25 * std::numbers::pi *
         (stock.diameter_mm * stock.diameter_mm - stock.inner_mm * stock.inner_mm) *
         stock.length_mm.value_or(length_needed);
}

std::optional<double> block_volume(const BlockStock& stock) {
  if (!stock.length_mm || !stock.width_mm || !stock.thickness_mm) {
    return std::nullopt;
  }
  return *stock.length_mm * *stock.width_mm * *stock.thickness_mm;
}

// Laid any way up: of the six ways the one that leaves most at its tightest size.
StockCheck in_block(std::array<double, 3> sizes, const BlockStock& stock) {
  require_value(stock, "stock");
  std::sort(sizes.begin(), sizes.end(), std::greater<>());
  std::optional<StockCheck> best;
  std::array<std::size_t, 3> order{0, 1, 2};
  do {
    StockCheck check;
    add_margin(check, "length", stock.length_mm, sizes[order[0]]);
    add_margin(check, "width", stock.width_mm, sizes[order[1]]);
    add_margin(check, "thickness", stock.thickness_mm, sizes[order[2]]);
    if (!best || check.least_margin_mm() > best->least_margin_mm()) {
      best = check;
    }
  } while (std::next_permutation(order.begin(), order.end()));
  best->volume_mm3 = block_volume(stock);
  return *best;
}

}  // namespace

double StockCheck::least_margin_mm() const {
  double least = std::numeric_limits<double>::infinity();
  for (const StockMargin& margin : margins) {
    least = std::min(least, margin.margin_mm);
  }
  return least;
}

StockCheck check_stock(const RoundPart& part, const RoundStock& stock, double cleaning_mm) {
  require_part(part);
  require_round(stock);
  require_not_negative(cleaning_mm, "cleaning_mm", "mm");
  const double off = 2.0 * cleaning_mm;
  StockCheck check;
  add_margin(check, "diameter", stock.diameter_mm, part.outside_mm + off);
  if (stock.inner_mm > 0.0) {
    check.margins.push_back({"bore", part.bore_mm - off - stock.inner_mm});
  }
  add_margin(check, "length", stock.length_mm, part.length_mm + off);
  check.volume_mm3 = round_volume(stock, part.length_mm + off);
  return check;
}

StockCheck check_stock(const RoundPart& part, const BlockStock& stock, double cleaning_mm) {
  require_part(part);
  require_not_negative(cleaning_mm, "cleaning_mm", "mm");
  const double off = 2.0 * cleaning_mm;
  return in_block({part.outside_mm + off, part.outside_mm + off, part.length_mm + off}, stock);
}

StockCheck check_stock(const FlatSidedPart& part, const RoundStock& stock, double cleaning_mm) {
  const std::array<double, 3> sizes = sizes_of(part);
  require_round(stock);
  require_not_negative(cleaning_mm, "cleaning_mm", "mm");
  const double off = 2.0 * cleaning_mm;
  StockCheck check;
  add_margin(check, "diameter", stock.diameter_mm, std::hypot(sizes[1], sizes[2]) + off);
  if (stock.inner_mm > 0.0) {
    check.margins.push_back({"bore", -stock.inner_mm});  // a solid block has no room for a hole
  }
  add_margin(check, "length", stock.length_mm, sizes[0] + off);
  check.volume_mm3 = round_volume(stock, sizes[0] + off);
  return check;
}

StockCheck check_stock(const FlatSidedPart& part, const BlockStock& stock, double cleaning_mm) {
  const std::array<double, 3> sizes = sizes_of(part);
  require_not_negative(cleaning_mm, "cleaning_mm", "mm");
  const double off = 2.0 * cleaning_mm;
  return in_block({sizes[0] + off, sizes[1] + off, sizes[2] + off}, stock);
}

double left_over_mm(double stock_length_mm, std::span<const double> lengths_mm, double parting_mm,
                    double stub_mm) {
  require_positive(stock_length_mm, "stock_length_mm", "mm");
  require_not_negative(parting_mm, "parting_mm", "mm");
  require_not_negative(stub_mm, "stub_mm", "mm");
  double left = stock_length_mm - stub_mm;
  for (std::size_t i = 0; i < lengths_mm.size(); ++i) {
    require_positive(lengths_mm[i], fmt::format("lengths_mm[{}]", i), "mm");
    left -= lengths_mm[i];
  }
  const std::size_t kept = stub_mm > 0.0 || lengths_mm.empty() ? 0 : 1;  // the last needs no cut
  return left - parting_mm * static_cast<double>(lengths_mm.size() - kept);
}

}  // namespace spotblue
