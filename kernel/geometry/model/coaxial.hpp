#pragma once
// Stations and angles of one axis told on another that is near-coaxial with it.

#include <vector>

#include "geometry/model/arcs.hpp"
#include "spotblue/base/interval.hpp"
#include "spotblue/geometry/model.hpp"

namespace spotblue {

// Whether two directions, either way round, are within `angle` rad (small) of each other.
[[nodiscard]] bool parallel_within(Direction a, Direction b, double angle);

// From `other`'s own axis to `base`'s, both placed in one frame.
class AxisTransfer {
 public:
  template <typename Revolved, typename Other>
  AxisTransfer(const Revolved& base, const Frame& base_frame, const Other& other,
               const Frame& other_frame)
      : AxisTransfer(place_line(base_frame, base.axis), place_direction(base_frame, base.zero),
                     place_direction(base_frame, third(base.axis.along, base.zero)),
                     place_line(other_frame, other.axis), place_direction(other_frame, other.zero),
                     place_direction(other_frame, third(other.axis.along, other.zero))) {}

  // Ends on the other's axis, projected on the base's axis, in ascending order.
  [[nodiscard]] Interval stretch(double from, double to) const;
  [[nodiscard]] Stretches stretches(const Stretches& others) const;
  // Angles counted as the base's, where its stations run the way its axis does.
  [[nodiscard]] std::vector<Arc> arcs(const std::vector<Arc>& others) const;
  // False only when the other's reference point is so far off the base's axis that no tilt within
  // reason brings them together.
  [[nodiscard]] bool may_come_within(double offset) const;

 private:
  AxisTransfer(const Line& base, Direction base_zero, Direction base_quarter, const Line& other,
               Direction other_zero, Direction other_quarter);
  Line base_;
  Line other_;
  double scale_ = 1.0;  // base station per other station, signed
  double start_ = 0.0;  // base station of the other's station 0
  double zero_at_ = 0.0;
  int sense_ = 1;
};

}  // namespace spotblue
