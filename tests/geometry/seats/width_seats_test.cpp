// Slots and what stands in them, about a centre line and beside one.

#include <gtest/gtest.h>

#include <BRepAlgoAPI_Fuse.hxx>
#include <cmath>

#include "spotblue/geometry/seats.hpp"
#include "support/shape_model.hpp"

namespace spotblue::width_seats_test {

using namespace testing;

TopoDS_Shape box(gp_Pnt low, gp_Pnt high) { return BRepPrimAPI_MakeBox(low, high).Shape(); }
TopoDS_Shape fused(const TopoDS_Shape& a, const TopoDS_Shape& b) {
  return BRepAlgoAPI_Fuse(a, b).Shape();
}
TopoDS_Shape common(const TopoDS_Shape& a, const TopoDS_Shape& b) { return cut(a, cut(a, b)); }
TopoDS_Shape cross_hole(double diameter) {
  return BRepPrimAPI_MakeCylinder(gp_Ax2(gp_Pnt(0, -20, 30), gp_Dir(0, 1, 0)), 0.5 * diameter, 40)
      .Shape();
}

/// A bar 20 with a slot 6 wide across its end, z 30 to 40.
TopoDS_Shape slotted_end() { return cut(rod(20, 0, 40), box({-15, -3, 30}, {15, 3, 41})); }
/// A bar 20 whose end is a tongue 5.98 wide, z 30.5 to 42.
TopoDS_Shape tongue() {
  return fused(rod(20, 42, 60), common(rod(20, 30.5, 42), box({-15, -2.99, 30}, {15, 2.99, 43})));
}

Seats seats_of(const TopoDS_Shape& slot, const TopoDS_Shape& key) {
  return find_seats(model_of({{"Slot", slot, {}}, {"Key", key, {}}}), SeatSettings{});
}

void expect_width(const Seats& seats, double slot, double key) {
  const auto found = std::find_if(seats.width.begin(), seats.width.end(), [&](const WidthSeat& w) {
    return std::abs(w.slot_width - slot) < 1e-9 && std::abs(w.key_width - key) < 1e-9;
  });
  ASSERT_NE(found, seats.width.end());
  EXPECT_NEAR(found->clearance, slot - key, 1e-9);
  EXPECT_NEAR(found->offset, 0.0, 1e-9);
  for (const AxialSeat& seat : seats.axial) {
    EXPECT_GT(std::abs(seat.axis.along.z()), 0.5) << "a side is told as a gap too";
  }
}

TEST(WidthSeat, IsATongueInASlotAcrossAShaftsEnd) {
  expect_width(seats_of(slotted_end(), tongue()), 6.0, 5.98);
  expect_width(seats_of(slotted_end(), box({-9, -2.99, 30.5}, {9, 2.99, 50})), 6.0, 5.98);
  expect_width(seats_of(slotted_end(), cut(tongue(), rod(4, 29, 61))), 6.0, 5.98);
}

TEST(WidthSeat, IsASlitTongueInASlot) {
  const TopoDS_Shape slit = cut(tongue(), box({-15, -0.5, 29}, {15, 0.5, 40}));
  expect_width(seats_of(slotted_end(), slit), 6.0, 5.98);
  const TopoDS_Shape twice =
      cut(cut(tongue(), box({-15, -1.5, 29}, {15, -0.5, 40})), box({-15, 0.5, 29}, {15, 1.5, 40}));
  expect_width(seats_of(slotted_end(), twice), 6.0, 5.98);
}

TEST(WidthSeat, IsAHollowKeyInASlot) {
  const TopoDS_Shape hollow =
      cut(box({-9, -2.99, 30.5}, {9, 2.99, 50}), box({-10, -1.5, 32}, {10, 1.5, 48}));
  expect_width(seats_of(slotted_end(), hollow), 6.0, 5.98);
}

TEST(WidthSeat, IsASlitKeyInASlotWithARib) {
  const TopoDS_Shape slot =
      fused(cut(box({-20, -20, 0}, {20, 20, 20}), box({-21, -8, 10}, {21, 8, 21})),
            box({-20, -1, 10}, {20, 1, 14}));
  const TopoDS_Shape key =
      cut(box({-10, -7.98, 10.1}, {10, 7.98, 20}), box({-11, -4, 9}, {11, 4, 16}));
  expect_width(seats_of(slot, key), 16.0, 15.96);
}

TEST(WidthSeat, IsAPlateInASlotMilledAcrossAShaft) {
  const TopoDS_Shape milled = cut(rod(30, 0, 60), box({-20, -4, 20}, {20, 4, 40}));
  const Seats seats = seats_of(milled, box({-25, -3.98, 20.5}, {25, 3.98, 39.5}));
  expect_width(seats, 8.0, 7.96);
  EXPECT_EQ(seats.width.size(), 2U);  // its height in the slot's length is the other
}

// An eye on its pin moves along the pin: its two sides are end faces on a centre line.
TEST(AxialSeat, AreTheSidesOfAnEyeInItsFork) {
  const TopoDS_Shape fork =
      cut(cut(box({-10, -15, 0}, {10, 15, 40}), box({-11, -6, 15}, {11, 6, 41})), cross_hole(8));
  const TopoDS_Shape eye = cut(box({-8, -5.95, 18}, {8, 5.95, 60}), cross_hole(8));
  const Seats seats = seats_of(fork, eye);
  EXPECT_EQ(seats.width.size(), 0U);
  EXPECT_EQ(seats.axial.size(), 2U);
}

}  // namespace spotblue::width_seats_test
