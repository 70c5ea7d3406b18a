#include "check/words/common_fits.hpp"

#include <algorithm>
#include <cstddef>

#include "group/sizes/nominal.hpp"
#include "group/words/said_fits.hpp"

namespace spotblue {
std::vector<CommonFit> fits_for(Length size, Length clearance, LengthUnit unit) {
  return unit == LengthUnit::mm
             ? common_fits_with_clearance(nominal_of_actual(size, FitSystem::iso_286), clearance)
             : common_b4_1_fits_with_clearance(nominal_of_actual(size, FitSystem::ansi_b4_1),
                                               clearance);
}

Saying fits_that_would_do(Length size, Length clearance, LengthUnit unit) {
  const std::vector<CommonFit> fits = fits_for(size, clearance, unit);
  switch (std::min<std::size_t>(fits.size(), 3)) {
    case 0:
      return {};
    case 1:
      return say(said::kOneFit, fits[0].name, fits[0].duty);
    case 2:
      return say(said::kTwoFits, fits[0].name, fits[0].duty, fits[1].name, fits[1].duty);
    default:  // more to choose from is no advice
      return say(said::kThreeFits, fits[0].name, fits[0].duty, fits[1].name, fits[1].duty,
                 fits[2].name, fits[2].duty);
  }
}

}  // namespace spotblue
