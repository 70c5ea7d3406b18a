// The wall behind a seat, on parts whose walls a person can work out with a pencil.
#include "spotblue/geometry/wall.hpp"

#include <gmock/gmock.h>

#include <BRepAlgoAPI_Fuse.hxx>
#include <cmath>
#include <numbers>

#include "support/shape_model.hpp"
#include "support/value_parts.hpp"

namespace spotblue::wall_test {

using spotblue::testing::cut;
using spotblue::testing::model_of;
using spotblue::testing::rod;
using spotblue::testing::tube;
using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::SizeIs;

constexpr double kPi = std::numbers::pi;

TopoDS_Shape slab(double x, double y, double from, double to) {
  return spotblue::testing::block(x, y, from, to);
}
TopoDS_Shape block_at(Point low, Point high) {
  return BRepPrimAPI_MakeBox(gp_Pnt(low.x, low.y, low.z), gp_Pnt(high.x, high.y, high.z)).Shape();
}
TopoDS_Shape across(double diameter, double z, double from, double to, double y = 0.0) {
  return BRepPrimAPI_MakeCylinder(gp_Ax2(gp_Pnt(from, y, z), gp_Dir(1, 0, 0)), 0.5 * diameter,
                                  to - from)
      .Shape();
}

RadialSeat only_seat(const Model& model) {
  const Seats seats = find_seats(model, {});
  EXPECT_EQ(seats.radial.size(), 1U);
  return seats.radial.at(0);
}

/// The hub's wall round a pin that fills its bore of this diameter, z 0 to 30.
Wall hub_wall(const TopoDS_Shape& hub, double bore, const Frame& pose = {}) {
  const Model model = model_of({{"Hub", hub, pose}, {"Pin", rod(bore, 0, 30), pose}});
  return wall_of_hub(model, only_seat(model));
}
Wall shaft_wall(const TopoDS_Shape& shaft, double bore) {
  const Model model = model_of({{"Hub", tube(2 * bore, bore, 0, 30), {}}, {"Shaft", shaft, {}}});
  return wall_of_shaft(model, only_seat(model));
}

void expect_one(const Wall& wall, double inner, double outer) {
  ASSERT_THAT(wall.stretches, SizeIs(1));
  EXPECT_NEAR(wall.stretches[0].to - wall.stretches[0].from, 30.0, 1e-6);
  EXPECT_NEAR(wall.stretches[0].inner, inner, 1e-9);
  EXPECT_NEAR(wall.stretches[0].outer, outer, 1e-9);
}

TEST(WallOfHub, EachStepOfAWheelIsAStretch) {
  const Product wheel = test::turned_part(
      {{22, 0}, {30, 0}, {30, 10}, {60, 10}, {60, 25}, {35, 25}, {35, 40}, {22, 40}});
  const Model model = test::placed_model({{wheel, {}}, {test::ring_part(0, 22, 0, 40), {}}});
  const Wall wall = wall_of_hub(model, only_seat(model));
  ASSERT_THAT(wall.stretches, SizeIs(3));
  EXPECT_THAT(wall.blind_spots, IsEmpty());
  const std::array<double, 3> outer{60, 120, 70};
  const std::array<double, 3> length{10, 15, 15};
  for (std::size_t i = 0; i < 3; ++i) {
    EXPECT_NEAR(wall.stretches[i].outer, outer.at(i), 1e-9);
    EXPECT_NEAR(wall.stretches[i].inner, 44.0, 1e-9);
    EXPECT_NEAR(wall.stretches[i].to - wall.stretches[i].from, length.at(i), 1e-9);
  }
}

TEST(WallOfHub, TheRimOfAWheelIsNotItsHub) {
  // Hub 30, web from 12 to 18, rim from 80 to 90.
  const Product wheel = test::turned_part({{10, 0},
                                           {15, 0},
                                           {15, 12},
                                           {40, 12},
                                           {40, 0},
                                           {45, 0},
                                           {45, 30},
                                           {40, 30},
                                           {40, 18},
                                           {15, 18},
                                           {15, 30},
                                           {10, 30}});
  const Model model = test::placed_model({{wheel, {}}, {test::ring_part(0, 10, 0, 30), {}}});
  const Wall wall = wall_of_hub(model, only_seat(model));
  ASSERT_THAT(wall.stretches, SizeIs(3));
  EXPECT_NEAR(wall.stretches[0].outer, 30.0, 1e-9);
  EXPECT_NEAR(wall.stretches[1].outer, 90.0, 1e-9);
  EXPECT_NEAR(wall.stretches[2].outer, 30.0, 1e-9);
}

TEST(WallOfHub, TheNearestSideOfABlockCounts) {
  const TopoDS_Shape hub = cut(block_at({-40, -50, 0}, {40, 11, 30}), rod(12, -1, 31));
  expect_one(hub_wall(hub, 12), 12, 22);
}

TEST(WallOfHub, AStepInTheSideOfABlockIsAStretchOfItsOwn) {
  const TopoDS_Shape notch = block_at({-41, 9, 20}, {5, 20, 31});
  const TopoDS_Shape hub = cut(cut(block_at({-40, -50, 0}, {40, 11, 30}), rod(12, -1, 31)), notch);
  const Wall wall = hub_wall(hub, 12);
  ASSERT_THAT(wall.stretches, SizeIs(2));
  EXPECT_NEAR(wall.stretches[0].outer, 22.0, 1e-9);
  EXPECT_NEAR(wall.stretches[1].outer, 18.0, 1e-9);
}

TEST(WallOfHub, AHoleBesideTheBoreThinsTheWall) {
  const TopoDS_Shape hub =
      cut(cut(slab(100, 100, 0, 30), rod(30, -1, 31)), rod(6.8, -1, 31, 15.0, 20.0));
  expect_one(hub_wall(hub, 30), 30, 43.2);
}

TEST(WallOfHub, ABlindHoleThinsOnlyTheStretchItReaches) {
  const TopoDS_Shape hub =
      cut(cut(slab(100, 100, 0, 30), rod(30, -1, 31)), rod(6.8, 18, 31, 0.0, 25.0));
  const Wall wall = hub_wall(hub, 30);
  ASSERT_THAT(wall.stretches, SizeIs(2));
  EXPECT_NEAR(wall.stretches[0].outer, 100.0, 1e-9);
  EXPECT_NEAR(wall.stretches[1].outer, 43.2, 1e-9);
}

TEST(WallOfHub, FlatsCountAtTheirNearest) {
  TopoDS_Shape hub = tube(50, 24, 0, 30);
  hub = cut(hub, block_at({21, -40, -1}, {40, 40, 31}));
  expect_one(hub_wall(hub, 24), 24, 42);
}

TEST(WallOfHub, ABoreOffTheMiddleIsThinOnOneSide) {
  const TopoDS_Shape hub = cut(rod(56, 0, 30, 6.0, 0.0), rod(22, -1, 31));
  expect_one(hub_wall(hub, 22), 22, 44);
}

TEST(WallOfHub, ABarWithABoreAcrossItIsThinTowardsItsEnds) {
  // Bar of 50 along x cut to 40 high; at 15 off its middle its side is sqrt(25^2 - 15^2) = 20 away.
  const TopoDS_Shape bar = cut(across(50, 15, -60, 60), rod(16, -20, 50));
  const TopoDS_Shape hub =
      cut(cut(bar, block_at({-70, -70, -20}, {70, 70, 0})), block_at({-70, -70, 30}, {70, 70, 60}));
  const Wall wall = hub_wall(hub, 16);
  ASSERT_THAT(wall.stretches, SizeIs(1));
  EXPECT_NEAR(wall.stretches[0].outer, 40.0, 1e-9);
}

TEST(WallOfHub, AKeywayIsABlindSpot) {
  const TopoDS_Shape hub = cut(tube(60, 24, 0, 30), block_at({0, -3, -1}, {15, 3, 31}));
  const Wall wall = hub_wall(hub, 24);
  expect_one(wall, 24, 60);
  EXPECT_THAT(wall.blind_spots, Contains(HasSubstr("is cut into the bore")));
}

TEST(WallOfHub, AHoleThroughTheWallIsABlindSpot) {
  const TopoDS_Shape hub = cut(tube(60, 24, 0, 30), across(5, 14, 0, 40));
  const Wall wall = hub_wall(hub, 24);
  ASSERT_THAT(wall.stretches, SizeIs(3));
  for (const WallStretch& stretch : wall.stretches) {
    EXPECT_NEAR(stretch.inner, 24.0, 1e-9);
    EXPECT_NEAR(stretch.outer, 60.0, 1e-9);
    EXPECT_NEAR(stretch.ends.high, 60.0, 1e-9);
  }
  EXPECT_NEAR(wall.stretches[1].to - wall.stretches[1].from, 5.0, 1e-9);
  EXPECT_GT(wall.stretches[1].begins.high, wall.stretches[1].ends.low);
  EXPECT_THAT(wall.blind_spots, ::testing::ElementsAre("bore 2 opens through the wall"));
}

TEST(WallOfHub, AHolePassingBesideTheBoreThinsTheWallThere) {
  const TopoDS_Shape hub = cut(slab(80, 80, 0, 30), rod(24, -1, 31));
  const Wall wall = hub_wall(cut(hub, across(6, 14, -50, 50, 20.0)), 24);
  ASSERT_THAT(wall.stretches, SizeIs(3));
  EXPECT_NEAR(wall.stretches[1].outer, 34.0, 1e-9);
  EXPECT_NEAR(wall.stretches[1].to - wall.stretches[1].from, 6.0, 1e-9);
  EXPECT_NEAR(wall.stretches[2].outer, 80.0, 1e-9);
}

TEST(WallOfHub, AGrooveTurnedIntoTheBoreWidensIt) {
  const TopoDS_Shape hub = cut(tube(60, 24, 0, 30), rod(28, 10, 14));
  const Wall wall = hub_wall(hub, 24);
  ASSERT_THAT(wall.stretches, SizeIs(3));
  EXPECT_NEAR(wall.stretches[1].inner, 28.0, 1e-9);
  EXPECT_NEAR(wall.stretches[1].outer, 60.0, 1e-9);
  EXPECT_NEAR(wall.stretches[2].inner, 24.0, 1e-9);
}

TEST(WallOfHub, ATaperIsTakenAtTheThinEndOfShortStretches) {
  const Product hub = test::turned_part({{10, 0}, {20, 0}, {30, 30}, {10, 30}});
  const Model model = test::placed_model({{hub, {}}, {test::ring_part(0, 10, 0, 30), {}}});
  const Wall wall = wall_of_hub(model, only_seat(model));
  ASSERT_GT(wall.stretches.size(), 4U);
  for (std::size_t i = 0; i < wall.stretches.size(); ++i) {
    // The axis of the seat starts at the middle of the shared length.
    const WallStretch& stretch = wall.stretches[i];
    const double thin = 40.0 + 20.0 * std::min(15.0 + stretch.from, 15.0 + stretch.to) / 30.0;
    EXPECT_NEAR(stretch.outer, thin, 1e-9);
    EXPECT_LT(stretch.to - stretch.from, 6.0);
  }
}

TEST(WallOfHub, AFreeEdgeRoundedAtTheHubIsNamedAndTakenAtItsNearest) {
  Product hub = test::turned_part({{12, 0}, {30, 0}, {30, 30}, {12, 30}});
  hub.others.push_back({.box = {{-30, -30, 27}, {30, 30, 30}},
                        .revolved = true,
                        .axis = {{0, 0, 0}, {0, 0, 1}},
                        .inner = 27,
                        .outer = 30,
                        .from = 27,
                        .to = 30});
  const Model model = test::placed_model({{hub, {}}, {test::ring_part(0, 12, 0, 30), {}}});
  const Wall wall = wall_of_hub(model, only_seat(model));
  ASSERT_THAT(wall.stretches, SizeIs(2));
  EXPECT_NEAR(wall.stretches[1].outer, 54.0, 1e-9);
  EXPECT_THAT(wall.blind_spots, Contains(HasSubstr("at its nearest")));
}

class WallInAnyPose : public ::testing::TestWithParam<int> {};

TEST_P(WallInAnyPose, IsTheSame) {
  const double k = GetParam();
  Frame pose = compose(test::shifted(100 * k, -37, 12 * k),
                       test::rotated(unit({1, 0.3 * k, -0.2}), 0.7 * k + 0.1));
  if (GetParam() % 2 == 1) {
    pose = compose(pose, Frame{{{{-1, 0, 0, 0}, {0, 1, 0, 0}, {0, 0, 1, 0}}}});
  }
  const TopoDS_Shape hub = cut(cut(block_at({-40, -50, 0}, {40, 21, 30}), rod(30, -1, 31)),
                               rod(6.8, 18, 31, 15.0, -20.0));
  const Wall straight = hub_wall(hub, 30);
  const Wall posed = hub_wall(hub, 30, pose);
  ASSERT_EQ(straight.stretches.size(), posed.stretches.size());
  EXPECT_EQ(straight.blind_spots, posed.blind_spots);
  for (std::size_t i = 0; i < straight.stretches.size(); ++i) {
    EXPECT_NEAR(straight.stretches[i].outer, posed.stretches[i].outer, 1e-7);
    EXPECT_NEAR(straight.stretches[i].inner, posed.stretches[i].inner, 1e-7);
  }
}

INSTANTIATE_TEST_SUITE_P(Poses, WallInAnyPose, ::testing::Range(1, 7));

void expect_bounds(const WallStretch& stretch, Interval begins, Interval ends) {
  EXPECT_NEAR(stretch.begins.low, begins.low, 1e-9);
  EXPECT_NEAR(stretch.begins.high, begins.high, 1e-9);
  EXPECT_NEAR(stretch.ends.low, ends.low, 1e-9);
  EXPECT_NEAR(stretch.ends.high, ends.high, 1e-9);
}

TEST(WallBounds, OfAPlainRingAreTheRing) {
  const Wall wall = hub_wall(tube(60, 24, 0, 30), 24);
  ASSERT_THAT(wall.stretches, SizeIs(1));
  expect_bounds(wall.stretches[0], {24, 24}, {60, 60});
}

TEST(WallBounds, OfABlockReachFromItsNearestSideToItsFarthestCorner) {
  const TopoDS_Shape hub = cut(block_at({-40, -50, 0}, {40, 11, 30}), rod(12, -1, 31));
  const Wall wall = hub_wall(hub, 12);
  ASSERT_THAT(wall.stretches, SizeIs(1));
  expect_bounds(wall.stretches[0], {12, 12}, {22, 2 * std::hypot(40, 50)});
}

TEST(WallBounds, OfAHubWithAKeywayBeginAtItsCorner) {
  // 3 deep beyond the bore's top at 12, 8 wide: its corners are at (4, 15).
  const TopoDS_Shape hub = cut(tube(60, 24, 0, 30), block_at({-4, 0, -1}, {4, 15, 31}));
  const Wall wall = hub_wall(hub, 24);
  ASSERT_THAT(wall.stretches, SizeIs(1));
  expect_bounds(wall.stretches[0], {24, 2 * std::hypot(4, 15)}, {60, 60});
}

TEST(WallBounds, OfAShaftWithAKeyseatEndAtItsFloor) {
  const Wall wall = shaft_wall(cut(rod(24, 0, 30), block_at({8.5, -3, -1}, {15, 3, 31})), 24);
  ASSERT_THAT(wall.stretches, SizeIs(1));
  expect_bounds(wall.stretches[0], {0, 0}, {17, 24});
}

TEST(WallBounds, OfABushCutThroughLeaveNoRing) {
  const Wall wall = shaft_wall(cut(tube(24, 18, 0, 30), block_at({0, -1, -1}, {15, 1, 31})), 24);
  for (const WallStretch& stretch : wall.stretches) {
    EXPECT_GE(stretch.begins.high, stretch.ends.low);
  }
}

TEST(WallOfShaft, ASolidShaftHasNoBore) { expect_one(shaft_wall(rod(24, 0, 30), 24), 0, 24); }

TEST(WallOfShaft, ABushHasItsBore) { expect_one(shaft_wall(tube(24, 18, 0, 30), 24), 18, 24); }

TEST(WallOfShaft, ABlindBoreReachesOnlyItsStretch) {
  const Wall wall = shaft_wall(cut(rod(24, 0, 30), rod(8, 20, 31)), 24);
  ASSERT_THAT(wall.stretches, SizeIs(2));
  EXPECT_NEAR(wall.stretches[0].inner, 0.0, 1e-9);
  EXPECT_NEAR(wall.stretches[1].inner, 8.0, 1e-9);
}

TEST(WallOfShaft, AKeyseatIsABlindSpot) {
  const Wall wall = shaft_wall(cut(rod(24, 0, 30), block_at({8.5, -3, -1}, {15, 3, 20})), 24);
  ASSERT_FALSE(wall.stretches.empty());
  for (const WallStretch& stretch : wall.stretches) {
    EXPECT_NEAR(stretch.outer, 24.0, 1e-9);
    EXPECT_NEAR(stretch.inner, 0.0, 1e-9);
  }
  EXPECT_THAT(wall.blind_spots, Contains(HasSubstr("is cut into the shaft")));
}

TEST(WallOfShaft, AnOilGrooveAllRoundIsAStretchOfItsOwn) {
  const Wall wall = shaft_wall(cut(rod(24, 0, 30), tube(40, 20, 10, 14)), 24);
  ASSERT_THAT(wall.stretches, SizeIs(3));
  EXPECT_NEAR(wall.stretches[1].outer, 20.0, 1e-9);
  EXPECT_NEAR(wall.stretches[2].outer, 24.0, 1e-9);
}

}  // namespace spotblue::wall_test
