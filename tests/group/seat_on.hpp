#pragma once
// Seats on lines of their own, on models of plain values.

#include <cstddef>

#include "support/bench.hpp"

namespace spotblue::test {

/// A seat whose axis is along `axis` through `at`, on a line of its own number.
inline void seat_on(Bench& bench, const FeatureRef& hole, const FeatureRef& shaft, std::size_t line,
                    Point at, Direction along) {
  bench.seat(hole, shaft);
  RadialSeat& seat = bench.look.seats.radial.back();
  seat.centre_line = CentreLineId(line);
  seat.axis = {at, along};
  seat.from = -10.0;
  seat.to = 10.0;
  while (bench.look.seats.centre_lines.size() <= line) {
    bench.look.seats.centre_lines.push_back({"centre line", {at, along}, {}});
  }
}

inline const Direction kX{1, 0, 0};
inline const Direction kZ{0, 0, 1};

}  // namespace spotblue::test
