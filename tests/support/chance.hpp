#pragma once
/// @file
/// Random numbers that are the same on every machine for one seed.

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <random>

namespace spotblue::test {

/// The standard fixes what std::mt19937_64 gives, not what its distributions give: those are here.
class Chance {
 public:
  explicit Chance(std::uint64_t seed) : engine_(seed) {}

  /// Even between low and high.
  double between(double low, double high) {
    return low + (high - low) * static_cast<double>(engine_() >> 11U) * 0x1p-53;
  }
  /// A size in whole micrometres between low and high, as sizes are written on drawings.
  double size(double low, double high) { return std::round(between(low, high) * 1000.0) / 1000.0; }
  std::size_t below(std::size_t count) {
    return static_cast<std::size_t>(between(0.0, static_cast<double>(count))) % count;
  }
  bool in(double probability) { return between(0.0, 1.0) < probability; }
  double sign() { return in(0.5) ? 1.0 : -1.0; }

 private:
  std::mt19937_64 engine_;
};

}  // namespace spotblue::test
