#include "check/words/common_fits.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cstddef>

#include "group/sizes/nominal.hpp"

namespace spotblue {
namespace {

// More than a few to choose from is no advice.
constexpr std::size_t kMostNamed = 3;

}  // namespace

std::vector<CommonFit> fits_for(Length size, Length clearance, LengthUnit unit) {
  return unit == LengthUnit::mm
             ? common_fits_with_clearance(nominal_of_actual(size, FitSystem::iso_286), clearance)
             : common_b4_1_fits_with_clearance(nominal_of_actual(size, FitSystem::ansi_b4_1),
                                               clearance);
}

std::string fits_that_would_do(Length size, Length clearance, LengthUnit unit) {
  const std::vector<CommonFit> fits = fits_for(size, clearance, unit);
  const std::size_t count = std::min(fits.size(), kMostNamed);
  std::string text;
  for (std::size_t i = 0; i < count; ++i) {
    text += i == 0 ? "would be " : (i + 1 == count ? " or " : ", ");
    text += fmt::format("{} ({})", fits[i].name, fits[i].duty);
  }
  return text.empty() ? "suits none of the usual fits: say what it is for" : text;
}

}  // namespace spotblue
