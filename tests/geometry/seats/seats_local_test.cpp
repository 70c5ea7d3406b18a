// Seats where hole and shaft have surface at some angles only, keys with round ends, half moon
// keys, what lies beside a tongue, and overlaps that only the looks of a face promise.

#include <gmock/gmock.h>

#include <BRepAlgoAPI_Common.hxx>
#include <BRepAlgoAPI_Fuse.hxx>
#include <BRepPrimAPI_MakeCylinder.hxx>
#include <BRepPrimAPI_MakeSphere.hxx>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/fouls/foul_solids.hpp"
#include "spotblue/geometry/foul.hpp"
#include "support/value_parts.hpp"

namespace spotblue::seats_local_test {

using test::bar_solid;
using test::block_solid;
using test::cut_solid;
using test::key_solid;
using test::moved_solid;
using test::shifted;
using ::testing::IsEmpty;
using ::testing::SizeIs;

constexpr double kPi = std::numbers::pi;

struct Looked {
  Model model;
  Seats seats;
  std::vector<Foul> fouls;
};

Looked looked_at(const std::vector<std::pair<TopoDS_Shape, Frame>>& parts) {
  Looked looked;
  looked.model = test::solid_model(parts);
  looked.seats = find_seats(looked.model, {});
  looked.fouls = find_fouls(looked.model, looked.seats, {}, {}).found;
  return looked;
}

TopoDS_Shape common(const TopoDS_Shape& a, const TopoDS_Shape& b) {
  return BRepAlgoAPI_Common(a, b).Shape();
}

// Along z, bore 15.1, the half below y = 0.
TopoDS_Shape half_bush() {
  return common(bar_solid(15.1, 20, 0, 30), block_solid({-30, -30, -1}, {30, 0, 31}));
}

// The nearest it comes is at the two edges: 15.1 - sqrt(15^2 - 0.3^2).
TEST(SeatsLocal, AShaftLiftedOutOfAHalfBushDoesNotFoul) {
  const Looked looked =
      looked_at({{half_bush(), {}}, {bar_solid(0, 15, -5, 35), shifted(0, 0.3, 0)}});
  ASSERT_THAT(looked.seats.radial, SizeIs(1));
  const RadialSeat& seat = looked.seats.radial[0];
  EXPECT_NEAR(seat.least_gap, 15.1 - std::sqrt(15.0 * 15.0 - 0.3 * 0.3), 1e-9);
  EXPECT_NEAR(seat.coverage, kPi, 1e-6);
  EXPECT_EQ(seat.fouls_by, 0.0);
  EXPECT_THAT(looked.fouls, IsEmpty());
}

TEST(SeatsLocal, AShaftSunkIntoAHalfBushFoulsByWhatItIsSunk) {
  const Looked looked =
      looked_at({{half_bush(), {}}, {bar_solid(0, 15, -5, 35), shifted(0, -0.3, 0)}});
  ASSERT_THAT(looked.seats.radial, SizeIs(1));
  EXPECT_NEAR(looked.seats.radial[0].least_gap, -0.2, 1e-9);
  ASSERT_THAT(looked.fouls, SizeIs(1));
  EXPECT_NEAR(looked.fouls[0].depth, 0.2, 1e-6);
}

TEST(SeatsLocal, AMirroredHalfBushTellsTheSameGap) {
  const Frame mirror{{{{-1, 0, 0, 0}, {0, 1, 0, 0}, {0, 0, 1, 0}}}};
  const Looked looked =
      looked_at({{half_bush(), mirror}, {bar_solid(0, 15, -5, 35), shifted(0.2, -0.2, 0)}});
  ASSERT_THAT(looked.seats.radial, SizeIs(1));
  EXPECT_NEAR(looked.seats.radial[0].least_gap, 0.1 - 0.2 * std::numbers::sqrt2, 1e-9);
}

// A pad from -5 to 5 degrees; the shaft is aside at 90.
TEST(SeatsLocal, ANarrowPadIsFarFromWhereTheShaftIsAside) {
  const double half = 15.1 * std::tan(5.0 / 180.0 * kPi) * 1.5;
  const TopoDS_Shape pad =
      common(bar_solid(15.1, 20, 0, 30), block_solid({0, -half, -1}, {30, half, 31}));
  const Looked looked = looked_at({{pad, {}}, {bar_solid(0, 15, -5, 35), shifted(0, 0.3, 0)}});
  ASSERT_THAT(looked.seats.radial, SizeIs(1));
  const RadialSeat& seat = looked.seats.radial[0];
  const double edge = std::asin(half / 15.1);
  const double past = kPi / 2 - edge;
  const double reach =
      0.3 * std::cos(past) + std::sqrt(15.0 * 15.0 - std::pow(0.3 * std::sin(past), 2));
  EXPECT_NEAR(seat.coverage, 2.0 * edge, 1e-6);
  EXPECT_NEAR(seat.least_gap, 15.1 - reach, 1e-9);
  EXPECT_THAT(looked.fouls, IsEmpty());
}

// A half bush round a shaft that leans 0.5 degrees about x: its ends go up and down by 15 tan(t).
TEST(SeatsLocal, AShaftThatLeansInAHalfBushComesNearestBelowAtOneEnd) {
  const double t = 0.5 / 180.0 * kPi;
  const Frame lean =
      compose(shifted(0, 0, 15), compose(test::rotated({1, 0, 0}, t), shifted(0, 0, -15)));
  const Looked looked = looked_at({{half_bush(), {}}, {bar_solid(0, 14.9, -5, 35), lean}});
  ASSERT_THAT(looked.seats.radial, SizeIs(1));
  EXPECT_NEAR(looked.seats.radial[0].least_gap, 15.1 - 14.9 / std::cos(t) - 15.0 * std::tan(t),
              1e-6);
}

/// A bar along z with a round-ended keyseat 6 wide and 24 long, and a key in it.
Looked keyed(double length, double width, double along) {
  const Frame place{{{{0, 0, 1, 7}, {0, 1, 0, 0}, {-1, 0, 0, 30}}}};
  const TopoDS_Shape seat = moved_solid(key_solid(24, 6, 20, true), place);
  const TopoDS_Shape bar = cut_solid(bar_solid(0, 10, 0, 60), seat);
  return looked_at(
      {{bar, {}}, {key_solid(length, width, 6, true), compose(place, shifted(along, 0, 0))}});
}

TEST(SeatsLocal, ARoundEndedKeyHasItsSidesAndItsEndsApart) {
  for (const double short_by : {0.1, 0.5, 3.0}) {
    const Looked looked = keyed(24.0 - short_by, 5.98, 0.0);
    ASSERT_THAT(looked.seats.width, SizeIs(1)) << short_by;
    EXPECT_NEAR(looked.seats.width[0].least_gap, 0.01, 1e-9);
    ASSERT_TRUE(looked.seats.width[0].ends_apart) << short_by;
    EXPECT_NEAR(*looked.seats.width[0].ends_apart, short_by, 1e-9);
    for (const RadialSeat& end : looked.seats.radial) {
      EXPECT_GT(end.least_gap, 0.0);
    }
    EXPECT_THAT(looked.fouls, IsEmpty()) << short_by;
  }
}

TEST(SeatsLocal, ARoundEndedKeyAgainstOneEndOfItsSeatDoesNotFoul) {
  EXPECT_THAT(keyed(23.5, 5.98, 0.24).fouls, IsEmpty());
}

TEST(SeatsLocal, ARoundEndedKeyTooLongForItsSeatFoulsAtItsEnds) {
  const Looked looked = keyed(24.4, 5.98, 0.0);
  EXPECT_THAT(looked.fouls, SizeIs(2));
  ASSERT_THAT(looked.seats.width, SizeIs(1));
  ASSERT_TRUE(looked.seats.width[0].ends_apart);
  EXPECT_NEAR(*looked.seats.width[0].ends_apart, -0.4, 1e-9);
}

TEST(SeatsLocal, AKeyWithSquareEndsHasNoRoundEndsApart) {
  const Frame place{{{{0, 0, 1, 7}, {0, 1, 0, 0}, {-1, 0, 0, 30}}}};
  const TopoDS_Shape seat = moved_solid(key_solid(24, 6, 20, true), place);
  const Looked looked = looked_at(
      {{cut_solid(bar_solid(0, 10, 0, 60), seat), {}}, {key_solid(17, 5.98, 6, false), place}});
  ASSERT_THAT(looked.seats.width, SizeIs(1));
  EXPECT_FALSE(looked.seats.width[0].ends_apart);
}

// A disc cutter of radius 8 sunk into a shaft of 10 from +x, its middle at x = 9.
TopoDS_Shape disc(double radius, double width, double x) {
  return BRepPrimAPI_MakeCylinder(gp_Ax2(gp_Pnt(x, -0.5 * width, 30), gp_Dir(0, 1, 0)), radius,
                                  width)
      .Shape();
}

TEST(SeatsLocal, AHalfMoonKeyHasAWidthSeatInItsShaftAndInItsHub) {
  const TopoDS_Shape shaft = cut_solid(bar_solid(0, 10, 0, 60), disc(8.0, 5.0, 9.0));
  const TopoDS_Shape key = common(disc(7.95, 4.98, 9.0), block_solid({-5, -10, 0}, {12, 10, 60}));
  const TopoDS_Shape hub =
      cut_solid(bar_solid(10.01, 25, 20, 40), block_solid({0, -2.51, 0}, {12.2, 2.51, 60}));
  const Looked looked = looked_at({{shaft, {}}, {key, {}}, {hub, {}}});
  ASSERT_THAT(looked.seats.width, SizeIs(2));
  std::vector<double> clearances;
  for (const WidthSeat& seat : looked.seats.width) {
    clearances.push_back(seat.clearance);
    EXPECT_EQ(seat.key.occurrence, 1U);
    EXPECT_GT(seat.area, 10.0);
  }
  std::ranges::sort(clearances);
  EXPECT_NEAR(clearances[0], 0.02, 1e-9);
  EXPECT_NEAR(clearances[1], 0.04, 1e-9);
  EXPECT_THAT(looked.fouls, IsEmpty());
}

TopoDS_Shape slot_block() {
  return cut_solid(block_solid({-30, -20, -20}, {30, 20, 0}),
                   block_solid({-31, -10, -10}, {31, 10, 1}));
}

TEST(SeatsLocal, LinersBesideATonguePartItFromItsSlot) {
  const TopoDS_Shape tongue = block_solid({-25, -9.4, -9.5}, {25, 9.4, 15});
  const TopoDS_Shape left = block_solid({-30, -9.95, -9.8}, {30, -9.45, 0});
  const TopoDS_Shape right = block_solid({-30, 9.45, -9.8}, {30, 9.95, 0});
  for (const bool both : {true, false}) {
    std::vector<std::pair<TopoDS_Shape, Frame>> parts{{slot_block(), {}}, {tongue, {}}, {left, {}}};
    if (both) {
      parts.push_back({right, {}});
    }
    const Looked looked = looked_at(parts);
    EXPECT_THAT(looked.seats.width, IsEmpty()) << both;
  }
}

TEST(SeatsLocal, ATongueThatOnlyGrazesItsSlotIsNoSeat) {
  // 50 long and 0.005 deep: a quarter of a mm2.
  const TopoDS_Shape tongue = block_solid({-25, -9.98, -0.005}, {25, 9.98, 15});
  EXPECT_THAT(looked_at({{slot_block(), {}}, {tongue, {}}}).seats.width, IsEmpty());
}

// Flat below and domed above to 0.3, or the other way round: at 3 mm from the middle of a 12 mm
// disc of that dome less than 0.25 thick.
TopoDS_Shape domed(double from) {
  const double height = 0.3;
  const double radius = (6.0 * 6.0 + height * height) / (2.0 * height);
  const TopoDS_Shape ball =
      BRepPrimAPI_MakeSphere(gp_Pnt(0, 0, from + height - radius), radius).Shape();
  return common(ball, bar_solid(0, 8.0, from, from + 1.0));
}

TEST(SeatsLocal, DomedShimsThatOnlyOverlapInTheirMiddleHaveNoOverlapOfFaces) {
  const TopoDS_Shape low = domed(0.0);
  const Frame turned_over{{{{1, 0, 0, 0}, {0, -1, 0, 0}, {0, 0, -1, 0.28}}}};
  const Looked looked = looked_at({{low, {}}, {low, turned_over}});
  for (const AxialSeat& seat : looked.seats.axial) {
    EXPECT_GE(seat.gap, 0.0);
  }
  EXPECT_THAT(looked.fouls, SizeIs(1));
}

}  // namespace spotblue::seats_local_test
