// Parts that touch, or stand one in the other, where no seat says how are told, with their least
// distance; those that only come near are not.

#include <gmock/gmock.h>

#include <BRepAlgoAPI_Cut.hxx>
#include <BRepAlgoAPI_Fuse.hxx>
#include <BRepBuilderAPI_NurbsConvert.hxx>
#include <BRepPrimAPI_MakeCone.hxx>
#include <BRepPrimAPI_MakeSphere.hxx>
#include <BRepPrimAPI_MakeTorus.hxx>
#include <cmath>
#include <gp_Ax2.hxx>
#include <numbers>

#include "geometry/fouls/foul_solids.hpp"
#include "spotblue/geometry/foul.hpp"
#include "support/value_parts.hpp"

namespace spotblue::contact_test {

using test::bar_solid;
using test::block_solid;
using test::cut_solid;
using test::shifted;
using test::turned_solid;
using ::testing::IsEmpty;
using ::testing::SizeIs;

FoulReport looked_at(const TopoDS_Shape& a, const TopoDS_Shape& b, const Frame& b_in_a = {}) {
  const Model model = test::solid_model({{a, {}}, {b, b_in_a}});
  return find_fouls(model, find_seats(model, {}), {}, {});
}

TopoDS_Shape ball(double radius, Point centre = {}) {
  return BRepPrimAPI_MakeSphere(gp_Pnt(centre.x, centre.y, centre.z), radius).Shape();
}

TopoDS_Shape socket(double radius) {
  return cut_solid(block_solid({-20, -20, -20}, {20, 20, 0}), ball(radius));
}

TEST(Contact, ABallInItsSocketIsToldWithTheGapThatIsLeft) {
  const FoulReport report = looked_at(socket(10.05), ball(10.0));
  EXPECT_THAT(report.found, IsEmpty());
  ASSERT_THAT(report.contacts, SizeIs(1));
  ASSERT_TRUE(report.contacts[0].gap);
  EXPECT_NEAR(*report.contacts[0].gap, 0.05, 1e-6);
  EXPECT_EQ(report.contacts[0].a_face, "sphere");
  EXPECT_EQ(report.contacts[0].b_face, "sphere");
}

TEST(Contact, ABallThatRestsOnTheFloorOfItsSocketTouches) {
  const FoulReport report = looked_at(socket(10.05), ball(10.0, {0, 0, -0.05}));
  ASSERT_THAT(report.contacts, SizeIs(1));
  EXPECT_NEAR(report.contacts[0].gap.value(), 0.0, 1e-6);
  EXPECT_NEAR(report.contacts[0].at.value().z, -10.05, 1e-4);
}

TEST(Contact, ABallInASocketWrittenAsSplinesIsToldAsWell) {
  const TopoDS_Shape spline = BRepBuilderAPI_NurbsConvert(socket(10.05), Standard_True).Shape();
  const FoulReport report = looked_at(spline, ball(10.0));
  ASSERT_THAT(report.contacts, SizeIs(1));
  EXPECT_NEAR(report.contacts[0].gap.value(), 0.05, 1e-4);
}

TEST(Contact, AShaftThatLiesOnAFlatTouches) {
  const FoulReport report = looked_at(block_solid({-20, -20, -5}, {20, 20, 20}),
                                      bar_solid(0, 5, -10, 10), shifted(25, 0, 5));
  ASSERT_THAT(report.contacts, SizeIs(1));
  EXPECT_EQ(report.contacts[0].a_face, "plane");
  EXPECT_EQ(report.contacts[0].b_face, "cylinder");
  EXPECT_NEAR(report.contacts[0].gap.value(), 0.0, 1e-9);
}

TEST(Contact, ConesOfTwoAnglesTouchAtAnEnd) {
  // Half angles of 10 and 8.5 degrees, of one size at the wide end.
  const auto narrow = [](double degrees) {
    return 20.0 - 30.0 * std::tan(degrees * std::numbers::pi / 180.0);
  };
  const TopoDS_Shape hub = turned_solid({{narrow(10.0), 0}, {40, 0}, {40, 30}, {20.0, 30}});
  const TopoDS_Shape plug =
      turned_solid({{0, 2}, {narrow(8.5) - 2.0, 2}, {20.0 - 2.0, 30.0}, {0, 30}});
  const FoulReport report = looked_at(hub, plug);
  ASSERT_THAT(report.found, IsEmpty());
  EXPECT_THAT(report.contacts, IsEmpty()) << "2 mm apart";
  const TopoDS_Shape close =
      turned_solid({{0, 2},
                    {20.0 - 28.0 * std::tan(10.0 * std::numbers::pi / 180.0) - 0.005, 2},
                    {20.0 - 1.0, 30.0},
                    {0, 30}});
  const FoulReport touching = looked_at(hub, close);
  ASSERT_THAT(touching.contacts, SizeIs(1));
  EXPECT_EQ(touching.contacts[0].a_face, "cone");
}

TEST(Contact, ARingInAGrooveOfItsOwnRoundIsTold) {
  const TopoDS_Shape ring = BRepPrimAPI_MakeTorus(30.0, 3.0).Shape();
  const TopoDS_Shape grooved =
      cut_solid(bar_solid(0, 30, -10, 10), BRepPrimAPI_MakeTorus(30.0, 3.1).Shape());
  const FoulReport report = looked_at(grooved, ring);
  ASSERT_THAT(report.contacts, SizeIs(1));
  EXPECT_NEAR(report.contacts[0].gap.value(), 0.1, 1e-6);
  EXPECT_EQ(report.contacts[0].a_face, "torus");
}

TEST(Contact, RollersSideBySideThatDoNotTouchAreNotTold) {
  EXPECT_THAT(
      looked_at(bar_solid(0, 5, 0, 20), bar_solid(0, 5, 0, 20), shifted(10.5, 0, 0)).contacts,
      IsEmpty());
}

TEST(Contact, RollersSideBySideThatTouchAreTold) {
  EXPECT_THAT(
      looked_at(bar_solid(0, 5, 0, 20), bar_solid(0, 5, 0, 20), shifted(10.0, 0, 0)).contacts,
      SizeIs(1));
}

TEST(Contact, AShaftInItsHoleIsASeatAndNoContact) {
  EXPECT_THAT(looked_at(bar_solid(10.05, 20, 0, 20), bar_solid(0, 10, -5, 25)).contacts, IsEmpty());
}

TEST(Contact, APinBesideTheWallOfAWideRingIsNoContact) {
  EXPECT_THAT(
      looked_at(bar_solid(50, 60, 0, 20), bar_solid(0, 2, -5, 25), shifted(47.5, 0, 0)).contacts,
      IsEmpty());
}

// A stem in its guide joins the two; its ball bears on a cone of the same body, or stands off it.
TEST(Contact, ABallOnItsConeIsToldThoughItsStemIsASeat) {
  const double half = 0.5 * std::numbers::sqrt2;
  const auto valve = [](double lift) {
    BRepAlgoAPI_Fuse whole(ball(10.0, {0, 0, lift}), bar_solid(0, 3, -30 + lift, 0));
    return whole.Shape();
  };
  // The ball of 10 touches the cone r = z + 10 sqrt(2) where its normal is at 45 degrees.
  const double at = 10.0 * half;
  const TopoDS_Shape seat = turned_solid({{3.02, -40},
                                          {20, -40},
                                          {20, -at + 3.0},
                                          {at + 3.0, -at + 3.0},
                                          {at - 2.0, -at - 2.0},
                                          {at - 2.0, -12.0},
                                          {3.02, -12.0}});
  const FoulReport shut = looked_at(seat, valve(0.0));
  ASSERT_THAT(shut.contacts, SizeIs(1));
  EXPECT_NEAR(shut.contacts[0].gap.value(), 0.0, 1e-6);
  EXPECT_EQ(shut.contacts[0].a_face, "cone");
  EXPECT_EQ(shut.contacts[0].b_face, "sphere");
  EXPECT_THAT(looked_at(seat, valve(0.5)).contacts, IsEmpty());
}

TEST(Contact, TheRoundEndOfAShaftInItsHoleIsNone) {
  const TopoDS_Shape pin = BRepAlgoAPI_Fuse(ball(5.0), bar_solid(0, 5, 0, 20)).Shape();
  EXPECT_THAT(looked_at(bar_solid(5.02, 12, -20, 15), pin).contacts, IsEmpty());
}

TEST(Contact, ABallAgainstARimOverAShoulderThatStandsApartIsTold) {
  // The faces at 15 are 0.5 mm apart and so an axial seat; the ball end bears in its socket.
  const TopoDS_Shape stud =
      BRepAlgoAPI_Cut(ball(10.0), block_solid({-20, -20, 0}, {20, 20, 20})).Shape();
  const FoulReport report = looked_at(socket(10.02), stud);
  ASSERT_THAT(report.contacts, SizeIs(1));
  EXPECT_NEAR(report.contacts[0].gap.value(), 0.02, 1e-6);
}

}  // namespace spotblue::contact_test
