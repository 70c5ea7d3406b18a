#include "geometry/model/coaxial.hpp"

#include <algorithm>
#include <cmath>

namespace spotblue {

bool parallel_within(Direction a, Direction b, double angle) {
  const Point c = cross(a, b);
  return dot(c, c) <= std::sin(angle) * std::sin(angle);
}

AxisTransfer::AxisTransfer(const Line& base, Direction base_zero, Direction base_quarter,
                           const Line& other, Direction other_zero, Direction other_quarter)
    : base_(base),
      other_(other),
      scale_(dot(other.along, base.along)),
      start_(station(base, other.at)) {
  // Angles run from zero to quarter; the other's run the other way when it is turned end for end
  // or mirrored. In the base's count other = zero_at + sense * base, so base =
  // sense*(other-zero_at).
  sense_ = dot(cross(base_zero, base_quarter), cross(other_zero, other_quarter)) > 0.0 ? 1 : -1;
  zero_at_ = std::atan2(dot(base_zero, other_quarter), dot(base_zero, other_zero));
}

Interval AxisTransfer::stretch(double from, double to) const {
  return ordered(start_ + scale_ * from, start_ + scale_ * to);
}

Stretches AxisTransfer::stretches(const Stretches& others) const {
  Stretches result;
  result.reserve(others.size());
  for (const auto& [from, to] : others) {
    result.push_back(stretch(from, to));
  }
  if (scale_ < 0.0) {
    std::reverse(result.begin(), result.end());
  }
  return result;
}

std::vector<Arc> AxisTransfer::arcs(const std::vector<Arc>& others) const {
  return recounted_arcs(others, zero_at_, sense_);
}

bool AxisTransfer::may_come_within(double offset) const {
  const double off = distance(base_, other_.at);
  const double slope = norm(cross(base_.along, other_.along));
  // Stations far from the reference point can drift by the slope; a kilometre bounds any real part.
  return off <= offset + slope * 1e6;
}

}  // namespace spotblue
