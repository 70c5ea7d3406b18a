// Every limit of a seat holds up to and including, whatever rounding makes of a size or a place.

#include "spotblue/geometry/seat_limits.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <numbers>

#include "spotblue/geometry/seats.hpp"
#include "support/shape_model.hpp"

namespace spotblue::seat_limits_test {

using namespace testing;

constexpr double kDeg = std::numbers::pi / 180.0;

Frame at(double x, double y, double z, double lean = 0.0) {
  Frame frame;
  frame.rows = {{{std::cos(lean), 0, std::sin(lean), x},
                 {0, 1, 0, y},
                 {-std::sin(lean), 0, std::cos(lean), z}}};
  return frame;
}

// Places and turns at which sums of decimals round either way.
std::vector<Frame> poses() {
  std::vector<Frame> found{{}};
  for (const double by : {0.1, 0.3, 1.0 / 3.0, 7.7, 1234.56789}) {
    found.push_back(at(by, -2.0 * by, 3.3 * by));
    found.push_back(at(-by, by, 0.7 * by, by));
  }
  return found;
}

using SeatCount = std::size_t (*)(const Seats&);
std::size_t radials(const Seats& seats) { return seats.radial.size(); }
std::size_t axials(const Seats& seats) { return seats.axial.size(); }
std::size_t tapers(const Seats& seats) { return seats.taper.size(); }

// What is there of a pair at its limit, and past it by more than lengths that count.
void expect_up_to(double limit, double sense, SeatCount count,
                  const std::function<std::vector<PlacedShape>(double)>& pair) {
  for (const Frame& pose : poses()) {
    for (const double more : {0.0, 1e-5}) {
      std::vector<PlacedShape> parts = pair(limit + sense * more);
      for (PlacedShape& part : parts) {
        part.frame = compose(pose, part.frame);
      }
      EXPECT_EQ(count(find_seats(model_of(parts), SeatSettings{})), more == 0.0 ? 1U : 0U)
          << limit << " and " << sense * more << " at " << pose.rows[0][3] << ' '
          << pose.rows[2][3];
    }
  }
}

TEST(SeatLimits, AFaceGapOfTwoMillimetresIsTold) {
  for (const double low : {0.0, 0.1, 4.7, 1000.3}) {
    expect_up_to(2.0, 1.0, axials, [&](double gap) {
      return std::vector<PlacedShape>{{"Plate", block(20, 20, low - 5.0, low), {}},
                                      {"Cover", block(20, 20, low + gap, low + gap + 5.0), {}}};
    });
  }
}

TEST(SeatLimits, AFaceGapIsToldOnBothSidesOfAPart) {
  for (const double by : {0.1, 0.7, 1.9, 33.3}) {
    const Seats seats = find_seats(model_of({{"Left", block(20, 20, by - 7.0, by - 2.0), {}},
                                             {"Between", block(20, 20, by, by + 0.3), {}},
                                             {"Right", block(20, 20, by + 2.3, by + 9.0), {}}}),
                                   SeatSettings{});
    EXPECT_EQ(seats.axial.size(), 2U) << by;
  }
}

TEST(SeatLimits, AnOverlapOfFacesOfAMillimetreIsTold) {
  expect_up_to(1.0, 1.0, axials, [](double deep) {
    return std::vector<PlacedShape>{{"Plate", block(20, 20, -5.0, 0.7), {}},
                                    {"Cover", block(20, 20, 0.7 - deep, 9.0), {}}};
  });
}

TEST(SeatLimits, ARadialGapOfAMillimetreOrTwoHundredthsIsTold) {
  for (const double hole : {20.1, 40.3, 60.3}) {
    expect_up_to(std::max(1.0, 0.02 * hole), 1.0, radials, [&](double gap) {
      return std::vector<PlacedShape>{{"Hub", tube(90, hole, 0, 30), {}},
                                      {"Shaft", rod(hole - 2.0 * gap, -5, 35), {}}};
    });
  }
}

TEST(SeatLimits, APressFitOfHalfAHundredthIsToldWithoutAFoul) {
  for (const double hole : {3.3, 44.7}) {
    const double most = most_overlap(SeatSettings{}, hole);
    expect_up_to(most, 1.0, radials, [&](double deep) {
      return std::vector<PlacedShape>{{"Hub", tube(90, hole, 0, 30), {}},
                                      {"Shaft", rod(hole + 2.0 * deep, -5, 35), {}}};
    });
    const Seats seats = find_seats(model_of({{"Hub", tube(90, hole, 0, 30), {}},
                                             {"Shaft", rod(hole + 2.0 * most, -5, 35), {}}}),
                                   SeatSettings{});
    ASSERT_EQ(seats.radial.size(), 1U);
    EXPECT_EQ(seats.radial[0].fouls_by, 0.0);
  }
}

TEST(SeatLimits, AxesHalfAMillimetreApartAreTold) {
  expect_up_to(0.5, 1.0, radials, [](double off) {
    return std::vector<PlacedShape>{{"Hub", tube(50, 20.4, 0, 30), {}},
                                    {"Shaft", rod(19.2, -5, 35), at(off, 0, 0)}};
  });
}

TEST(SeatLimits, AxesADegreeAskewAreTold) {
  expect_up_to(1.0, 1.0, radials, [](double degrees) {
    return std::vector<PlacedShape>{{"Hub", tube(50, 20.4, -3, 3), {}},
                                    {"Shaft", rod(19.2, -9, 9), at(0, 0, 0, degrees * kDeg)}};
  });
}

TEST(SeatLimits, FacesADegreeAskewAreTold) {
  expect_up_to(1.0, 1.0, axials, [](double degrees) {
    return std::vector<PlacedShape>{
        {"Plate", block(20, 20, -5, 0), {}},
        {"Cover", block(10, 10, 0.0, 5.0), at(0, 0, 0.8, degrees * kDeg)}};
  });
}

// Two blocks whose faces overlap by a strip along one edge.
TEST(SeatLimits, AContactOfHalfASquareMillimetreIsTold) {
  expect_up_to(0.5, -1.0, axials, [](double area) {
    return std::vector<PlacedShape>{
        {"Plate", block(40, 25, -5.0, 0.3), {}},
        {"Foot", block(40, 25, 0.3, 9.0), at(40.0 - area / 25.0, 0, 0)}};
  });
}

TEST(SeatLimits, AConeInAConeOfOneDegreeMoreIsTold) {
  const auto cone = [](double half_angle) {
    return BRepPrimAPI_MakeCone(up_from(0), 15, 15 - 20 * std::tan(half_angle), 20).Shape();
  };
  expect_up_to(1.0, 1.0, tapers, [&](double degrees) {
    return std::vector<PlacedShape>{{"Socket", cut(rod(60, 0, 20), cone(7.0 * kDeg)), {}},
                                    {"Plug", cone((7.0 + degrees) * kDeg), {}}};
  });
}

}  // namespace spotblue::seat_limits_test
