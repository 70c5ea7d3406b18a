#include "group/sizes/nominal.hpp"

#include <array>
#include <cmath>
#include <optional>

namespace spotblue {
namespace {

std::optional<Length> on_grid(Length size, Length step, double within_mm) {
  const Length nearest = std::round(size / step) * step;
  const bool close = std::abs((size - nearest).in_mm()) <= within_mm;
  return close && nearest > Length() ? std::optional(nearest) : std::nullopt;
}

}  // namespace

Length nominal_of_basic(Length modelled) {
  const std::array steps{Length::mm(0.1), Length::mm(0.25), Length::inch(1.0 / 64.0),
                         Length::inch(0.005)};
  for (const Length step : steps) {
    if (const auto nominal = on_grid(modelled, step, kAtBasicSize_mm)) {
      return *nominal;
    }
  }
  return on_grid(modelled, Length::mm(0.1), 0.05).value_or(modelled);
}

Length nominal_of_actual(Length size, FitSystem system) {
  constexpr double worn_mm = 0.1;
  const Length metric = Length::mm(0.5);
  const Length imperial = Length::inch(1.0 / 32.0);
  const bool inch_first = system == FitSystem::ansi_b4_1;
  for (const Length step : {inch_first ? imperial : metric, inch_first ? metric : imperial}) {
    if (const auto nominal = on_grid(size, step, worn_mm)) {
      return *nominal;
    }
  }
  return size;
}

}  // namespace spotblue
