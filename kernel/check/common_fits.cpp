#include "check/common_fits.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <string_view>

#include "check/nominal.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/standards/iso286.hpp"

namespace spotblue {
namespace {

struct Common {
  std::string_view text, duty;
};

// Preferred hole-basis fits, tightest first; duties are common practice, no source.
constexpr std::array<Common, 10> kCommon{{
    {"H7/s6", "pressed for good"},
    {"H7/p6", "light press, located"},
    {"H7/n6", "tight, driven home"},
    {"H7/k6", "located, tapped home"},
    {"H7/h6", "located, slid by hand"},
    {"H7/g6", "slides and turns slowly"},
    {"H8/f7", "runs, oiled"},
    {"H8/e8", "runs freely"},
    {"H9/d9", "loose running"},
    {"H11/c11", "loose, for dirt and heat"},
}};

}  // namespace

std::vector<ProposedFit> fits_for(Length size, Length clearance) {
  std::vector<ProposedFit> fits;
  const Length nominal = nominal_of_actual(size, FitSystem::iso_286);
  for (const Common& common : kCommon) {
    try {
      const Fit known = fit(nominal, common.text);
      if (clearance >= known.least_clearance && clearance <= known.greatest_clearance) {
        fits.push_back({std::string(common.text), std::string(common.duty)});
      }
    } catch (const Error&) {  // the standard has no such fit at this size: nothing to propose
      continue;
    }
  }
  return fits;
}

std::string fits_that_would_do(Length size, Length clearance) {
  std::string text;
  const std::vector<ProposedFit> fits = fits_for(size, clearance);
  for (std::size_t i = 0; i < fits.size(); ++i) {
    text += i == 0 ? "would be " : (i + 1 == fits.size() ? " or " : ", ");
    text += fmt::format("{} ({})", fits[i].text, fits[i].duty);
  }
  return text.empty() ? "suits none of the usual fits: say what it is for" : text;
}

}  // namespace spotblue
