#include "spotblue/mechanics/loosening.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <vector>

#include "base/require.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/mechanics/thick_ring.hpp"

namespace spotblue {
namespace {

constexpr int kHalvings = 200;  // of a bisection; stops at the last bit long before

/// Radii and constants of the bush, as in the header.
struct Wall {
  double a = 0.0, b = 0.0;
  double yield = 0.0, modulus = 0.0, poisson = 0.0;
};

Wall wall_of(const BushInHub& pair) {
  return {0.5 * pair.bore_mm, 0.5 * pair.joint_mm, *pair.bush.yield_mpa,
          pair.bush.youngs_modulus_mpa, pair.bush.poisson_ratio};
}

void require_pair(const BushInHub& pair) {
  require_value(pair, "pair");
  require_elastic(pair.bush, "pair.bush");
  require_elastic(pair.hub, "pair.hub");
  const auto refuse = [](const std::string& argument, const std::string& rule) {
    throw Error(ErrorCode::bad_input, {"", argument}, rule, "check which diameter is which");
  };
  if (!(pair.joint_mm > pair.bore_mm)) {
    refuse("pair.joint_mm",
           fmt::format("need more than the bore ({} mm), got {} mm", pair.bore_mm, pair.joint_mm));
  }
  if (!(pair.hub_outside_mm > pair.joint_mm)) {
    refuse("pair.hub_outside_mm", fmt::format("need more than the joint ({} mm), got {} mm",
                                              pair.joint_mm, pair.hub_outside_mm));
  }
  if (!pair.bush.yield_mpa) {
    throw Error(ErrorCode::bad_input, {"", "pair.bush.yield_mpa"},
                "need the yield of the bush, got none", "take it from a data sheet");
  }
}

double expansion_apart(const BushInHub& pair) {
  return (pair.bush.expansion_per_k - pair.hub.expansion_per_k) * pair.joint_mm;
}

double warm_interference(const BushInHub& pair, double temperature_c) {
  return pair.interference_mm + expansion_apart(pair) * (temperature_c - pair.bench_c);
}

double hub_give(const BushInHub& pair) {
  return loaded_ring({pair.joint_mm, pair.hub_outside_mm, pair.hub}, {1.0, 0.0}).bore_change_mm;
}

RingState bush_per_pressure(const BushInHub& pair) {
  return loaded_ring({pair.bore_mm, pair.joint_mm, pair.bush}, {0.0, 1.0});
}

double first_yield_pressure(const Wall& wall) {
  return wall.yield * (1.0 - wall.a * wall.a / (wall.b * wall.b)) / 2.0;
}

// The bush with yield out to radius c: pressure on its outside and diametral closing there.
struct Yielded {
  double pressure = 0.0;
  double closing = 0.0;
};

Yielded yielded_to(const Wall& wall, double c) {
  const double q = wall.yield * (c - wall.a) / c;
  const double even = 0.5 * (wall.yield + q);
  const double part = 0.5 * (wall.yield - q) * c * c / (wall.b * wall.b);
  Yielded state;
  state.pressure = even - part;
  const double hoop = -(even + part);
  state.closing = -2.0 * wall.b / wall.modulus * (hoop + wall.poisson * state.pressure);
  return state;
}

// Elastic radial strain through the wall, diametral: outside's change less the bore's.
double through_wall(const Wall& wall, double c) {
  const double in_yielded = -wall.yield * (1.0 - wall.poisson) * (c - wall.a) +
                            wall.yield * wall.a * std::log(c / wall.a);
  const double q = wall.yield * (c - wall.a) / c;
  // Outside c: s_r = even + part / r^2 and hoop = even - part / r^2.
  const double even = -0.5 * (wall.yield + q);
  const double part = 0.5 * (wall.yield - q) * c * c;
  const double in_elastic = even * (1.0 - wall.poisson) * (wall.b - c) +
                            part * (1.0 + wall.poisson) * (1.0 / c - 1.0 / wall.b);
  return 2.0 * (in_yielded + in_elastic) / wall.modulus;
}

// The same by von Mises: stresses on a fine grid of radii, which hold wherever the wall has yielded
// that far, since they follow from equilibrium inwards alone.
class VonMisesWall {
 public:
  explicit VonMisesWall(const Wall& wall) : wall_(wall) {
    const double step = (wall.b - wall.a) / kSteps;
    double radial = 0.0;
    for (int i = 0; i <= kSteps; ++i) {
      const double r = wall.a + step * i;
      radius_.push_back(r);
      radial_.push_back(radial);
      const double half = radial + 0.5 * step * slope(r, radial);
      radial += step * slope(r + 0.5 * step, half);
    }
  }

  // Thicker walls bear no more at their outside than the rule has stresses for.
  [[nodiscard]] bool applies() const { return wall_.b <= kThickest * wall_.a; }

  [[nodiscard]] Yielded yielded_to(double c) const {
    const double radial = radial_at(c);
    const double hoop = hoop_of(radial);
    const double even = 0.5 * (radial + hoop);
    const double part = 0.5 * (radial - hoop) * c * c / (wall_.b * wall_.b);
    return {-(even + part),
            -2.0 * wall_.b / wall_.modulus * (even - part - wall_.poisson * (even + part))};
  }

  // Of the bore's diameter with yield out to c, or right through and the outside changed by so
  // much. Hoop strain and radial strain keep together as d(r e_hoop)/dr = e_radial; the plastic
  // ones are as the deviators of stresses that no more change, so flow and deformation theory are
  // one.
  [[nodiscard]] double bore_change(double c, double outside_change) const {
    const bool through = c >= wall_.b;
    double moved = through ? 0.5 * outside_change : c * elastic_hoop(radial_at(c));
    double from = c;
    for (std::size_t i = radius_.size(); i-- > 0;) {
      if (radius_[i] >= from) {
        continue;
      }
      const double step = from - radius_[i];
      const double first = radial_strain(from, moved);
      const double second = radial_strain(radius_[i], moved - step * first);
      moved -= 0.5 * step * (first + second);
      from = radius_[i];
    }
    return 2.0 * moved;
  }

 private:
  static constexpr int kSteps = 1000;
  static constexpr double kThickest = 2.9;

  [[nodiscard]] double hoop_of(double radial) const {
    return 0.5 * (radial - std::sqrt(std::max(
                               0.0, 4.0 * wall_.yield * wall_.yield - 3.0 * radial * radial)));
  }
  [[nodiscard]] double slope(double r, double radial) const {
    return (hoop_of(radial) - radial) / r;
  }
  [[nodiscard]] double radial_at(double r) const {
    const double at = (r - wall_.a) / (wall_.b - wall_.a) * kSteps;
    const auto i = static_cast<std::size_t>(std::clamp(at, 0.0, kSteps - 1.0));
    return std::lerp(radial_[i], radial_[i + 1], at - static_cast<double>(i));
  }
  [[nodiscard]] double elastic_hoop(double radial) const {
    return (hoop_of(radial) - wall_.poisson * radial) / wall_.modulus;
  }
  [[nodiscard]] double radial_strain(double r, double moved) const {
    const double radial = radial_at(r);
    const double hoop = hoop_of(radial);
    const double plastic = (moved / r - elastic_hoop(radial)) / (2.0 * hoop - radial);
    return (radial - wall_.poisson * hoop) / wall_.modulus + plastic * (2.0 * radial - hoop);
  }

  Wall wall_;
  std::vector<double> radius_, radial_;  // mm, MPa
};

// Radius to which yield must reach for this interference; between a and b.
template <class Reached>
double yielded_radius(const Wall& wall, double hub_give_mm, double interference,
                      const Reached& reached) {
  double low = wall.a;
  double high = wall.b;
  for (int i = 0; i < kHalvings && low < high; ++i) {
    const double middle = 0.5 * (low + high);
    if (middle <= low || middle >= high) {
      break;
    }
    const Yielded state = reached(middle);
    (state.closing + hub_give_mm * state.pressure < interference ? low : high) = middle;
  }
  return 0.5 * (low + high);
}

}  // namespace

namespace {

// What von Mises makes of it, where that leaves the bore the tighter: the bush thickens as it
// yields, and holds on to more of its interference.
void take_tighter_bore(const BushInHub& pair, WarmedBush& state) {
  const Wall wall = wall_of(pair);
  const VonMisesWall yielding(wall);
  if (!yielding.applies()) {
    return;
  }
  const double hub = hub_give(pair);
  const RingState unit = bush_per_pressure(pair);
  const double c = yielded_radius(wall, hub, state.interference_mm,
                                  [&](double radius) { return yielding.yielded_to(radius); });
  // Bisection ends a hair below the outside where the whole wall yields.
  const bool through = wall.b - c < 1e-9 * wall.b;
  const double pressure = yielding.yielded_to(through ? wall.b : c).pressure;
  const double outside = hub * pressure - state.interference_mm;
  const double bore = yielding.bore_change(through ? wall.b : c, outside);
  const double set_outside = unit.outside_change_mm * pressure - outside;
  const double set_bore = unit.bore_change_mm * pressure - bore;
  const double left = std::max(0.0, pair.interference_mm - set_outside);
  const double after =
      pair.bore_mm - set_bore + unit.bore_change_mm * left / (hub - unit.outside_change_mm);
  state.set_bore_mm = std::max(state.set_bore_mm, set_bore);
  state.bore_after_mm = std::min(state.bore_after_mm, after);
}

// By Tresca alone.
WarmedBush held_bush(const BushInHub& pair, double temperature_c) {
  const Wall wall = wall_of(pair);
  const double hub = hub_give(pair);
  const RingState unit = bush_per_pressure(pair);
  const double give = hub - unit.outside_change_mm;
  WarmedBush state;
  state.interference_mm = warm_interference(pair, temperature_c);
  state.yielded_to_mm = pair.bore_mm;
  const double elastic_mpa = std::max(0.0, state.interference_mm) / give;
  if (elastic_mpa <= first_yield_pressure(wall)) {
    state.pressure_mpa = elastic_mpa;
  } else {
    const double c = yielded_radius(wall, hub, state.interference_mm,
                                    [&](double radius) { return yielded_to(wall, radius); });
    state.pressure_mpa = yielded_to(wall, c).pressure;
    state.yielded_to_mm = 2.0 * c;
    const double outside = hub * state.pressure_mpa - state.interference_mm;
    const double bore = outside - through_wall(wall, c);
    state.set_outside_mm = unit.outside_change_mm * state.pressure_mpa - outside;
    state.set_bore_mm = unit.bore_change_mm * state.pressure_mpa - bore;
  }
  state.left_mm = pair.interference_mm - state.set_outside_mm;
  const double held_mpa = std::max(0.0, state.left_mm) / give;
  state.bore_after_mm = pair.bore_mm - state.set_bore_mm + unit.bore_change_mm * held_mpa;
  return state;
}

}  // namespace

WarmedBush warmed_bush(const BushInHub& pair, double temperature_c) {
  require_pair(pair);
  require_temperature(temperature_c, "temperature_c");
  if (temperature_c < pair.bench_c) {
    throw Error(
        ErrorCode::bad_input, {"", "temperature_c"},
        fmt::format("need at least the bench's {} C, got {} C", pair.bench_c, temperature_c),
        "this speaks of warming");
  }
  WarmedBush state = held_bush(pair, temperature_c);
  if (state.yielded_to_mm > pair.bore_mm) {
    take_tighter_bore(pair, state);
  }
  return state;
}

Loosening loosening(const BushInHub& pair, double highest_c) {
  require_pair(pair);
  require_temperature(highest_c, "highest_c");
  const double per_k = expansion_apart(pair);
  const Wall wall = wall_of(pair);
  const double give = hub_give(pair) - bush_per_pressure(pair).outside_change_mm;
  Loosening found;
  const auto at = [&](double interference) -> std::optional<double> {
    const double t = pair.bench_c + (interference - pair.interference_mm) / per_k;
    return t <= highest_c ? std::optional(std::max(t, pair.bench_c)) : std::nullopt;
  };
  if (per_k < 0.0) {
    found.lets_go_c = at(0.0);
  }
  if (per_k <= 0.0 || highest_c < pair.bench_c) {
    return found;  // warming only ever eases it, or changes nothing
  }
  const Yielded whole = yielded_to(wall, wall.b);
  found.first_yield_c = at(give * first_yield_pressure(wall));
  found.whole_wall_c = at(whole.closing + hub_give(pair) * whole.pressure);
  if (held_bush(pair, highest_c).left_mm < 0.0) {
    double low = pair.bench_c;
    double high = highest_c;
    for (int i = 0; i < kHalvings && high - low > 1e-9; ++i) {
      const double middle = 0.5 * (low + high);
      (held_bush(pair, middle).left_mm < 0.0 ? high : low) = middle;
    }
    found.loose_c = 0.5 * (low + high);
  }
  return found;
}

}  // namespace spotblue
