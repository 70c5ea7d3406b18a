#include "geometry/fouls/clash_region.hpp"

#include <algorithm>
#include <cmath>

namespace spotblue::proof {

Clash measured(const OverlapRegion& region, std::span<const ToldClash* const> told) {
  constexpr double kSameFoul = 0.02;
  Clash clash{.volume = region.volume,
              .depth = region.depth,
              .length = region.length,
              .at = region.at,
              .exact = region.exact,
              .cause = "solids overlap"};
  if (told.empty()) {
    return clash;
  }
  const Clash& greatest = (*std::ranges::max_element(told, {}, [](const ToldClash* one) {
                            return one->clash.volume;
                          }))->clash;
  clash.cause = greatest.cause;
  const auto near = [](double one, double other) {
    return std::abs(one - other) <= kSameFoul * other;
  };
  if (told.size() == 1 && near(region.depth, greatest.depth)) {
    clash.depth = greatest.depth;
    if (greatest.exact && near(region.volume, greatest.volume)) {
      clash.volume = greatest.volume;
      clash.exact = true;
      clash.at = greatest.at ? greatest.at : clash.at;
    }
  }
  return clash;
}

std::vector<const ToldClash*> shown_by(const OverlapRegion& region,
                                       const std::vector<ToldClash>& told) {
  std::vector<const ToldClash*> found;
  unsigned bit = 0;
  for (const ToldClash& one : told) {
    const bool holds_its_place = one.clash.at && bit < 32 && (region.holds >> bit & 1U) != 0;
    bit += one.clash.at ? 1 : 0;
    if (holds_its_place || (region.at && one.holds(*region.at))) {
      found.push_back(&one);
    }
  }
  return found;
}

}  // namespace spotblue::proof
