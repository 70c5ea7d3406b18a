#include "spotblue/mechanics/involute.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "base/require.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

constexpr double kSeriesBelow = 0.03;  // rad; the first term left out is 1e-14 of the value
constexpr int kMostSteps = 60;

}  // namespace

double involute(double angle_rad) {
  if (!(angle_rad >= 0.0) || !(angle_rad < 0.5 * std::numbers::pi)) {
    throw Error(ErrorCode::bad_input, {"", "angle_rad"},
                fmt::format("need 0 or more and less than pi/2, got {}", angle_rad),
                "give the pressure angle in radians");
  }
  if (angle_rad < kSeriesBelow) {
    const double square = angle_rad * angle_rad;
    return angle_rad * square *
           (1.0 / 3.0 + square * (2.0 / 15.0 + square * (17.0 / 315.0 + square * 62.0 / 2835.0)));
  }
  return std::tan(angle_rad) - angle_rad;
}

double involute_inverse(double value) {
  require_not_negative(value, "value", "rad");
  if (value == 0.0) {
    return 0.0;
  }
  // Both are above the root: tan(x) - x >= x^3/3, and x < pi/2.
  double angle = std::min(std::cbrt(3.0 * value), std::atan(value + 0.5 * std::numbers::pi));
  for (int step = 0; step < kMostSteps; ++step) {
    const double slope = std::tan(angle) * std::tan(angle);
    const double next = angle - (involute(angle) - value) / slope;
    if (!(next < angle)) {
      break;
    }
    angle = next;
  }
  return angle;
}

}  // namespace spotblue
