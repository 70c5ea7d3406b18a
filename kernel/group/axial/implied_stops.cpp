#include "group/axial/implied_stops.hpp"

#include <algorithm>
#include <cstddef>
#include <functional>
#include <initializer_list>
#include <map>
#include <utility>

#include "group/axial/body_faces.hpp"

namespace spotblue {
namespace {

LengthSum sum_of(const PlayStop& stop) {
  LengthSum sum;
  for (const PlayTerm& term : stop.gap) {
    sum[term.length] += term.count;
  }
  return sum;
}

double greatest_mm(const PlayNet& net, const LengthSum& sum) {
  double greatest = 0.0;
  for (const auto& [length, count] : sum) {
    const Limits& limits = net.lengths[length].limits;
    greatest += count * (count > 0 ? limits.upper : limits.lower).in_mm();
  }
  return greatest;
}

// The stops that are left, by the bodies that they are of.
class Left {
 public:
  explicit Left(const PlayNet& net) : net_(net) {
    for (std::size_t i = 0; i < net.stops.size(); ++i) {
      sums_.push_back(sum_of(net.stops[i]));
      from_[net.stops[i].a][net.stops[i].b].push_back(i);
    }
  }

  [[nodiscard]] bool implies(std::size_t stop) const {
    const PlayStop& own = net_.stops[stop];
    for (const auto& [middle, firsts] : from_.at(own.a)) {
      for (const std::size_t first : firsts) {
        if (first == stop) {
          continue;
        }
        if (middle == own.b ? is_behind(stop, first) : over(stop, first, middle)) {
          return true;
        }
      }
    }
    return false;
  }

  void drop(std::size_t stop) { std::erase(from_[net_.stops[stop].a][net_.stops[stop].b], stop); }

 private:
  [[nodiscard]] bool over(std::size_t stop, std::size_t first, std::size_t middle) const {
    const auto onward = from_.find(middle);
    if (onward == from_.end()) {
      return false;
    }
    const auto seconds = onward->second.find(net_.stops[stop].b);
    if (seconds == onward->second.end()) {
      return false;
    }
    for (const std::size_t second : seconds->second) {
      if (never_wider(stop, {first, second})) {
        return true;
      }
    }
    return false;
  }

  // Two that are met together, nearer than any part is measured, both stay, whichever comes first.
  [[nodiscard]] bool is_behind(std::size_t stop, std::size_t other) const {
    constexpr double kTogether_mm = 1e-6;
    return greatest_more(stop, {other}) < -kTogether_mm;
  }

  [[nodiscard]] bool never_wider(std::size_t stop,
                                 std::initializer_list<std::size_t> others) const {
    return greatest_more(stop, others) <= 0.0;
  }

  // By how much the others together can be the wider.
  [[nodiscard]] double greatest_more(std::size_t stop,
                                     std::initializer_list<std::size_t> others) const {
    LengthSum more;
    add_to(more, sums_[stop], -1);
    for (const std::size_t other : others) {
      add_to(more, sums_[other], 1);
    }
    return greatest_mm(net_, more);
  }

  const PlayNet& net_;
  std::vector<LengthSum> sums_;
  std::map<std::size_t, std::map<std::size_t, std::vector<std::size_t>>> from_;  // by a, by b
};

}  // namespace

std::vector<bool> implied_stops(const PlayNet& net) {
  Left left(net);
  std::vector<bool> implied(net.stops.size(), false);
  for (std::size_t i = 0; i < net.stops.size(); ++i) {
    if (left.implies(i)) {
      implied[i] = true;
      left.drop(i);
    }
  }
  return implied;
}

void leave_out_implied(StopNet& net) {
  std::vector<bool> implied = implied_stops(net.bench);
  if (net.warm) {
    const std::vector<bool> warm = implied_stops(*net.warm);
    std::transform(implied.begin(), implied.end(), warm.begin(), implied.begin(),
                   std::logical_and<>());
  }
  const auto take_out = [&implied](auto& stops) {
    std::size_t kept = 0;
    for (std::size_t i = 0; i < implied.size(); ++i) {
      if (!implied[i]) {
        std::swap(stops[kept], stops[i]);
        ++kept;
      }
    }
    stops.resize(kept);
  };
  take_out(net.stops);
  take_out(net.bench.stops);
  if (net.warm) {
    take_out(net.warm->stops);
  }
}

}  // namespace spotblue
