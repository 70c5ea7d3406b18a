#include "spotblue/standards/b4_1.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <string>
#include <vector>

#include "base/require.hpp"
#include "spotblue/base/ascii.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/nearest.hpp"
#include "spotblue/base/unit.hpp"
#include "standards/b4_1_tables.hpp"

namespace spotblue {
namespace {

namespace b4_1_rows = b4_1_tables;

constexpr double kStepSlack_in = 1e-9;  // a basic size that came through millimetres ends its step

struct Limits_thou {
  double hole_upper;
  double shaft_lower;
  double shaft_upper;
};

Length thou(double value) { return Length::inch(value / 1000.0); }

std::vector<std::string> class_names() {
  std::vector<std::string> names;
  names.reserve(b4_1_rows::kRows.size() + b4_1_rows::kForceRows.size());
  for (const auto& row : b4_1_rows::kRows) {
    names.emplace_back(row.name);
  }
  for (const auto& row : b4_1_rows::kForceRows) {
    names.emplace_back(row.name);
  }
  return names;
}

template <std::size_t Steps>
Limits_thou row_limits(const b4_1_rows::Row<Steps>& row, const std::array<double, Steps>& up_to,
                       Length nominal) {
  const auto step = static_cast<std::size_t>(
      std::lower_bound(up_to.begin(), up_to.end(), nominal.in_inch() - kStepSlack_in) -
      up_to.begin());
  return {row.hole_upper[step], row.shaft_lower[step], row.shaft_upper[step]};
}

// The row of a class whose name is known, at a size the b4_1_rows reach.
Limits_thou class_limits(const std::string& name, Length nominal) {
  for (const auto& row : b4_1_rows::kForceRows) {
    if (row.name == name) {
      return row_limits(row, b4_1_rows::kForceStepUpTo, nominal);
    }
  }
  const auto* const row = std::find_if(b4_1_rows::kRows.begin(), b4_1_rows::kRows.end(),
                                       [&name](const auto& entry) { return entry.name == name; });
  return row_limits(*row, b4_1_rows::kStepUpTo, nominal);
}

std::string known_name(std::string_view cls) {
  std::string name = ascii_upper(cls);
  const std::vector<std::string> names = class_names();
  if (std::find(names.begin(), names.end(), name) == names.end()) {
    throw Error(
        ErrorCode::bad_input, {"", "cls"}, fmt::format("\"{}\" is not a class of ANSI B4.1", cls),
        fmt::format("classes are RC1 to RC9, LC1 to LC11, LT1 to LT6, LN1 to LN3 and FN1 to "
                    "FN5; nearest is {}",
                    nearest_word(cls, names)));
  }
  return name;
}

void check_basic_size(Length nominal) {
  require_positive(nominal.in_inch(), "nominal_mm", "in");
  const double largest = b4_1_rows::kStepUpTo.back();
  if (nominal.in_inch() > largest + kStepSlack_in) {
    throw Error(ErrorCode::not_in_standard, {"", "nominal_mm"},
                fmt::format("the tables of ANSI B4.1 here end at {} in, got {} in", largest,
                            format_size(nominal, LengthUnit::inch)),
                "give plain limits or an ISO 286 class instead");
  }
}

// Classes of the same letters that the size has, nearest number first.
std::string nearest_at(const std::string& name, Length nominal) {
  std::vector<std::string> near;
  for (const std::string& other : class_names()) {
    if (other.compare(0, 2, name, 0, 2) == 0 &&
        class_limits(other, nominal).hole_upper != b4_1_rows::kNone) {
      near.push_back(other);
    }
  }
  const int wanted = std::stoi(name.substr(2));
  const auto distance = [wanted](const std::string& other) {
    return std::abs(std::stoi(other.substr(2)) - wanted);
  };
  std::stable_sort(near.begin(), near.end(), [&](const std::string& a, const std::string& b) {
    return distance(a) < distance(b);
  });
  near.resize(std::min<std::size_t>(near.size(), 2));
  return fmt::format("{}", fmt::join(near, ", "));
}

}  // namespace

Fit b4_1_fit(Length nominal, std::string_view cls) {
  check_basic_size(nominal);
  const std::string name = known_name(cls);
  const Limits_thou row = class_limits(name, nominal);
  if (row.hole_upper == b4_1_rows::kNone) {
    throw Error(
        ErrorCode::not_in_standard, {"", "cls"},
        fmt::format("ANSI B4.1 has no {} at {} in", name, format_size(nominal, LengthUnit::inch)),
        fmt::format("nearest it has there: {}", nearest_at(name, nominal)));
  }
  const Length least = thou(-row.shaft_upper);
  const Length greatest = thou(row.hole_upper - row.shaft_lower);
  return {{nominal, nominal + thou(row.hole_upper)},
          {nominal + thou(row.shaft_lower), nominal + thou(row.shaft_upper)},
          least,
          greatest,
          fit_kind(least, greatest)};
}

bool has_b4_1_letters(std::string_view cls) {
  const std::vector<std::string> names = class_names();
  return cls.size() >= 2 && std::any_of(names.begin(), names.end(), [cls](const std::string& name) {
           return name.starts_with(cls.substr(0, 2));
         });
}

}  // namespace spotblue
