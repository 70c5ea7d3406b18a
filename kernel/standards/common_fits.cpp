#include "spotblue/standards/common_fits.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <span>

#include "base/require.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/standards/b4_1.hpp"
#include "spotblue/standards/iso286.hpp"

namespace spotblue {
namespace {

struct Named {
  std::string_view name;
  std::string_view duty;
};

// Loosest first. Duties: common practice, no source.
constexpr std::array<Named, 13> kIso = {{
    {"H11/c11", "loose running, dirt or rough tolerance allowed"},
    {"H9/d9", "free running, high speed or wide temperature range"},
    {"H8/e8", "easy running, long or several bearings"},
    {"H8/f7", "close running, ordinary lubricated journals"},
    {"H7/g6", "sliding and turning by hand, accurate location"},
    {"H7/h6", "snug location, put together by hand when oiled"},
    {"H7/js6", "location with hardly any play, light mallet"},
    {"H7/k6", "accurate location, mallet, held by a key"},
    {"H7/n6", "tight location, press, seldom taken apart"},
    {"H7/p6", "location without play, light press"},
    {"H7/r6", "press fit for bushes, medium pressure"},
    {"H7/s6", "heavy press or shrink fit"},
    {"H7/u6", "shrink fit for high pressure"},
}};

// ANSI B4.1, descriptions of the classes in few words; loosest first.
constexpr std::array<Named, 21> kB4_1 = {{
    {"RC9", "very loose running, commercial tolerance"},
    {"RC8", "loose running"},
    {"RC7", "free running, accuracy not essential or wide temperature range"},
    {"RC6", "medium running, high speed or heavy journals"},
    {"RC5", "medium running, higher speed"},
    {"RC4", "close running, moderate speed and pressure"},
    {"RC3", "precision running, slow and lightly loaded"},
    {"RC2", "sliding, moves and turns easily but not to run free"},
    {"RC1", "close sliding, no perceptible play"},
    {"LC4", "location with clearance, wide tolerance"},
    {"LC2", "snug location, put together by hand"},
    {"LT3", "location with hardly any play or overlap"},
    {"LT6", "location with a little interference"},
    {"LN1", "location, barely any interference"},
    {"LN2", "location with rigidity, light press"},
    {"LN3", "location with more interference"},
    {"FN1", "light drive, thin sections or long fits"},
    {"FN2", "medium drive, ordinary steel parts"},
    {"FN3", "heavy drive, heavier steel parts"},
    {"FN4", "force fit for highly stressed parts"},
    {"FN5", "shrink fit for high stress"},
}};

using FitFunction = Fit (*)(Length, std::string_view);

std::optional<Fit> fit_at(Length nominal, std::string_view name, FitFunction fit_of) {
  try {
    return fit_of(nominal, name);
  } catch (const Error& error) {
    if (error.code() == ErrorCode::not_in_standard) {
      return std::nullopt;
    }
    throw;
  }
}

double off_centre(const CommonFit& entry, Length clearance) {
  const Length width = entry.fit.greatest_clearance - entry.fit.least_clearance;
  const Length middle = (entry.fit.greatest_clearance + entry.fit.least_clearance) / 2.0;
  return std::abs((clearance - middle) / width);
}

std::vector<CommonFit> with_clearance(Length nominal, Length clearance,
                                      std::span<const Named> names, FitFunction fit_of) {
  require_finite(clearance.in_mm(), "clearance_mm", "mm");
  std::vector<CommonFit> found;
  for (const Named& named : names) {
    const auto at_size = fit_at(nominal, named.name, fit_of);
    if (at_size && clearance >= at_size->least_clearance &&
        clearance <= at_size->greatest_clearance) {
      found.push_back({named.name, named.duty, *at_size});
    }
  }
  std::stable_sort(found.begin(), found.end(), [&](const CommonFit& a, const CommonFit& b) {
    return off_centre(a, clearance) < off_centre(b, clearance);
  });
  return found;
}

}  // namespace

std::vector<CommonFit> common_fits_with_clearance(Length nominal, Length clearance) {
  return with_clearance(nominal, clearance, kIso, fit);
}

std::vector<CommonFit> common_b4_1_fits_with_clearance(Length nominal, Length clearance) {
  return with_clearance(nominal, clearance, kB4_1, b4_1_fit);
}

}  // namespace spotblue
