#include "spotblue/mechanics/sleeve_chain.hpp"

#include <fmt/format.h>

#include <cmath>
#include <cstddef>
#include <utility>

#include "base/require.hpp"
#include "mechanics/require.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

constexpr double kReference_c = 20.0;  // ISO 1

Ring at_temperature(const ChainRing& ring) {
  const double grown =
      1.0 + ring.free.material.expansion_per_k * (ring.temperature_c - kReference_c);
  return {ring.free.inner_mm * grown, ring.free.outer_mm * grown, ring.free.material};
}

void require_chain(std::span<const ChainRing> rings) {
  if (rings.empty()) {
    throw Error(ErrorCode::bad_input, {"", "rings"}, "need at least one ring, got none",
                "give the rings from the innermost out");
  }
  for (std::size_t i = 0; i < rings.size(); ++i) {
    const std::string name = fmt::format("rings[{}]", i);
    require_value(rings[i], name);
    require_ring(rings[i].free, name + ".free");
    if (i > 0) {
      require_positive(rings[i].free.inner_mm, name + ".free.inner_mm", "mm");
      require_interference(rings[i - 1].free.outer_mm - rings[i].free.inner_mm,
                           rings[i].free.inner_mm, name + ".free.inner_mm");
    }
  }
}

// What each interface's gap changes by for 1 MPa there and at its neighbours.
struct Give {
  double own = 0.0;      // > 0
  double outward = 0.0;  // pressure of the next interface outward, <= 0
  double inward = 0.0;   // of the next inward, <= 0
};

std::vector<Give> gives(const std::vector<Ring>& rings) {
  std::vector<Give> all(rings.size() - 1);
  for (std::size_t i = 0; i < all.size(); ++i) {
    const RingState inner = loaded_ring(rings[i], {0.0, 1.0});
    const RingState outer = loaded_ring(rings[i + 1], {1.0, 0.0});
    all[i].own = outer.bore_change_mm - inner.outside_change_mm;
    if (i + 1 < all.size()) {
      all[i].outward = loaded_ring(rings[i + 1], {0.0, 1.0}).bore_change_mm;
    }
    if (i > 0) {
      all[i].inward = -loaded_ring(rings[i], {1.0, 0.0}).outside_change_mm;
    }
  }
  return all;
}

// Pressures that close the touching interfaces exactly, the rest 0: elimination along the chain.
std::vector<double> pressures(const std::vector<Give>& give, const std::vector<double>& gap,
                              const std::vector<char>& touches) {
  const std::size_t count = gap.size();
  std::vector<double> diagonal(count), right(count), pressure(count, 0.0);
  for (std::size_t i = 0; i < count; ++i) {
    diagonal[i] = give[i].own;
    right[i] = -gap[i];
    if (touches[i] != 0 && i > 0 && touches[i - 1] != 0) {
      const double factor = give[i].inward / diagonal[i - 1];
      diagonal[i] -= factor * give[i - 1].outward;
      right[i] -= factor * right[i - 1];
    }
  }
  for (std::size_t i = count; i-- > 0;) {
    if (touches[i] != 0) {
      const double next = i + 1 < count ? pressure[i + 1] : 0.0;
      pressure[i] = (right[i] - give[i].outward * next) / diagonal[i];
    }
  }
  return pressure;
}

std::vector<double> gaps_under(const std::vector<Give>& give, const std::vector<double>& gap,
                               const std::vector<double>& pressure) {
  std::vector<double> loaded = gap;
  for (std::size_t i = 0; i < gap.size(); ++i) {
    loaded[i] += give[i].own * pressure[i];
    loaded[i] += i + 1 < gap.size() ? give[i].outward * pressure[i + 1] : 0.0;
    loaded[i] += i > 0 ? give[i].inward * pressure[i - 1] : 0.0;
  }
  return loaded;
}

std::vector<InterfaceState> solve(const std::vector<Ring>& rings) {
  std::vector<double> gap;
  for (std::size_t i = 0; i + 1 < rings.size(); ++i) {
    gap.push_back(rings[i + 1].inner_mm - rings[i].outer_mm);
  }
  const std::vector<Give> give = gives(rings);
  std::vector<char> touches(gap.size(), 0);
  std::vector<double> pressure(gap.size(), 0.0);
  std::vector<double> loaded = gap;
  for (bool more = true; std::exchange(more, false);) {
    for (std::size_t i = 0; i < gap.size(); ++i) {
      if (touches[i] == 0 && loaded[i] < 0.0) {
        touches[i] = 1;
        more = true;
      }
    }
    pressure = pressures(give, gap, touches);
    loaded = gaps_under(give, gap, pressure);
  }
  std::vector<InterfaceState> all;
  for (std::size_t i = 0; i < gap.size(); ++i) {
    all.push_back({-gap[i], pressure[i], touches[i] != 0 ? 0.0 : loaded[i]});
  }
  return all;
}

}  // namespace

ChainState sleeve_chain(std::span<const ChainRing> rings) {
  require_chain(rings);
  std::vector<Ring> warm;
  warm.reserve(rings.size());
  for (const ChainRing& ring : rings) {
    warm.push_back(at_temperature(ring));
  }
  ChainState state;
  state.interfaces = solve(warm);
  for (std::size_t i = 0; i < warm.size(); ++i) {
    const double inside = i > 0 ? state.interfaces[i - 1].pressure_mpa : 0.0;
    const double outside = i + 1 < warm.size() ? state.interfaces[i].pressure_mpa : 0.0;
    ChainRingState ring;
    ring.loaded = loaded_ring(warm[i], {inside, outside});
    ring.free_bore_mm = warm[i].inner_mm;
    ring.free_outside_mm = warm[i].outer_mm;
    ring.bore_mm = ring.free_bore_mm + ring.loaded.bore_change_mm;
    ring.outside_mm = ring.free_outside_mm + ring.loaded.outside_change_mm;
    state.rings.push_back(ring);
  }
  return state;
}

}  // namespace spotblue
