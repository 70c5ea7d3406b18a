#include "group/turning/reach.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace spotblue {

// A straight line within bounds at several places is farthest out where two of these bind: the
// least over all pairs, each taken by itself (duality of linear programmes in two unknowns).
double greatest_reach(const std::vector<Guided>& bearings, double place) {
  std::vector<std::pair<double, double>> ends;  // where, and how far aside
  for (const Guided& bearing : bearings) {
    ends.emplace_back(bearing.from, bearing.aside);
    ends.emplace_back(bearing.to, bearing.aside);
  }
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < ends.size(); ++i) {
    for (std::size_t j = i + 1; j < ends.size(); ++j) {
      const double apart = std::abs(ends[j].first - ends[i].first);
      if (apart > 0.0) {
        least = std::min(least, (ends[i].second * std::abs(place - ends[j].first) +
                                 ends[j].second * std::abs(place - ends[i].first)) /
                                    apart);
      }
    }
  }
  return least;
}

}  // namespace spotblue
