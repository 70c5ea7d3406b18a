#include "geometry/model/arcs.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace spotblue {
namespace {

constexpr double kTurn = 2.0 * std::numbers::pi;
constexpr double kSameAngle =
    1e-7;  // rad: 0.1 um at a metre, below any seat's coverage that matters
constexpr double kSameStation = 1e-9;  // mm: the accuracy the design asks of a measured length

double wrapped(double angle) {
  const double turned = std::fmod(angle, kTurn);
  return turned < 0.0 ? turned + kTurn : turned;
}

// Arcs cut at the zero angle, as stretches of [0, 2 pi].
Stretches unrolled(const std::vector<Arc>& arcs) {
  Stretches stretches;
  for (const Arc& arc : arcs) {
    if (arc.sweep >= kTurn - kSameAngle) {
      return {{0.0, kTurn}};
    }
    const double from = wrapped(arc.from);
    const double to = from + arc.sweep;
    stretches.push_back({from, std::min(to, kTurn)});
    if (to > kTurn) {
      stretches.push_back({0.0, to - kTurn});
    }
  }
  return stretches;
}

Stretches joined(Stretches stretches, double gap) {
  std::sort(stretches.begin(), stretches.end());
  Stretches result;
  for (const auto& [from, to] : stretches) {
    if (!result.empty() && from <= result.back().high + gap) {
      result.back().high = std::max(result.back().high, to);
    } else {
      result.push_back({from, to});
    }
  }
  return result;
}

std::vector<Arc> rolled(Stretches stretches) {
  std::erase_if(stretches, [](const auto& s) { return s.length() < kSameAngle; });
  if (stretches.size() == 1 && stretches[0].length() >= kTurn - kSameAngle) {
    return {{0.0, kTurn}};
  }
  std::vector<Arc> arcs;
  for (const auto& [from, to] : stretches) {
    arcs.push_back({from, to - from});
  }
  if (arcs.size() > 1 && stretches.front().low <= kSameAngle &&
      stretches.back().high >= kTurn - kSameAngle) {
    arcs.back().sweep += arcs.front().sweep;
    arcs.erase(arcs.begin());
  }
  return arcs;
}

Stretches common(const Stretches& a, const Stretches& b) {
  Stretches result;
  for (std::size_t i = 0, j = 0; i < a.size() && j < b.size();) {
    const double from = std::max(a[i].low, b[j].low);
    const double to = std::min(a[i].high, b[j].high);
    if (from < to) {
      result.push_back({from, to});
    }
    a[i].high < b[j].high ? ++i : ++j;
  }
  return result;
}

}  // namespace

std::vector<Arc> merged_arcs(const std::vector<Arc>& arcs) {
  return rolled(joined(unrolled(arcs), kSameAngle));
}

std::vector<Arc> common_arcs(const std::vector<Arc>& a, const std::vector<Arc>& b) {
  return rolled(common(joined(unrolled(a), kSameAngle), joined(unrolled(b), kSameAngle)));
}

std::vector<Arc> arcs_without(const std::vector<Arc>& a, const std::vector<Arc>& b) {
  Stretches gaps;
  double from = 0.0;
  for (const auto& [start, end] : joined(unrolled(b), kSameAngle)) {
    gaps.push_back({from, start});
    from = end;
  }
  gaps.push_back({from, kTurn});
  return rolled(common(joined(unrolled(a), kSameAngle), gaps));
}

double coverage(const std::vector<Arc>& arcs) {
  double sum = 0.0;
  for (const auto& [from, to] : joined(unrolled(arcs), kSameAngle)) {
    sum += to - from;
  }
  return std::min(sum, kTurn);
}

std::vector<Arc> recounted_arcs(const std::vector<Arc>& arcs, double zero_at, int sense) {
  std::vector<Arc> result;
  result.reserve(arcs.size());
  for (const Arc& arc : arcs) {
    const double from = sense > 0 ? arc.from - zero_at : zero_at - arc.from - arc.sweep;
    result.push_back({wrapped(from), arc.sweep});
  }
  return result;
}

Stretches merged_stretches(Stretches stretches) {
  return joined(std::move(stretches), kSameStation);
}

Stretches common_stretches(const Stretches& a, const Stretches& b) { return common(a, b); }

double total_length(const Stretches& stretches) {
  double sum = 0.0;
  for (const auto& [from, to] : stretches) {
    sum += to - from;
  }
  return sum;
}

}  // namespace spotblue
