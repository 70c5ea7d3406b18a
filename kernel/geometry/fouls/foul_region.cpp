#include "geometry/fouls/foul_region.hpp"

#include <algorithm>
#include <cmath>

namespace spotblue::proof {

Foul measured(const OverlapRegion& region, std::span<const ToldFoul* const> told) {
  constexpr double kSameFoul = 0.02;
  Foul foul{.volume = region.volume,
            .depth = region.depth,
            .length = region.length,
            .at = region.at,
            .exact = region.exact,
            .cause = "solids overlap"};
  if (told.empty()) {
    return foul;
  }
  const Foul& greatest = (*std::ranges::max_element(told, {}, [](const ToldFoul* one) {
                           return one->foul.volume;
                         }))->foul;
  foul.cause = greatest.cause;
  const auto near = [](double one, double other) {
    return std::abs(one - other) <= kSameFoul * other;
  };
  if (told.size() == 1 && near(region.depth, greatest.depth)) {
    foul.depth = greatest.depth;
    if (greatest.exact && near(region.volume, greatest.volume)) {
      foul.volume = greatest.volume;
      foul.exact = true;
      foul.at = greatest.at ? greatest.at : foul.at;
    }
  }
  return foul;
}

std::vector<const ToldFoul*> shown_by(const OverlapRegion& region,
                                      const std::vector<ToldFoul>& told) {
  std::vector<const ToldFoul*> found;
  unsigned bit = 0;
  for (const ToldFoul& one : told) {
    const bool holds_its_place = one.foul.at && bit < 32 && (region.holds >> bit & 1U) != 0;
    bit += one.foul.at ? 1 : 0;
    if (holds_its_place || (region.at && one.holds(*region.at))) {
      found.push_back(&one);
    }
  }
  return found;
}

}  // namespace spotblue::proof
