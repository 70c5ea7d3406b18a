// What a seat or thread accounts for ends where it ends: past its depth and its length it is a
// foul.

#include <gmock/gmock.h>

#include "clash_solids.hpp"
#include "spotblue/geometry/clash.hpp"
#include "support/value_parts.hpp"

namespace spotblue {
namespace {

using test::bar_solid;
using test::shifted;
using ::testing::IsEmpty;
using ::testing::SizeIs;

ClashReport clashes_of(const TopoDS_Shape& a, const TopoDS_Shape& b, const Frame& b_in_a = {}) {
  const Model model = test::solid_model({{a, {}}, {b, b_in_a}});
  return find_clashes(model, find_seats(model, {}), {}, {});
}

TEST(Accounted, APressFitALittleOffItsAxisIsNoFoul) {
  const ClashReport report =
      clashes_of(bar_solid(15, 30, 0, 40), bar_solid(0, 15.03, -10, 50), shifted(0.05, 0, 0));
  EXPECT_THAT(report.clashes, IsEmpty());
}

// 0.33 deep on one side where a press fit of 30 may have 0.15.
TEST(Accounted, APressFitFarOffItsAxisFoulsOnOneSide) {
  const ClashReport report =
      clashes_of(bar_solid(15, 30, 0, 40), bar_solid(0, 15.03, -10, 50), shifted(0.3, 0, 0));
  ASSERT_THAT(report.clashes, SizeIs(1));
  EXPECT_GT(report.clashes.front().volume, 1.0);
}

TEST(Accounted, AScrewThatRunsOnIntoAPlainHoleFouls) {
  const TopoDS_Shape nut =
      test::turned_solid({{4.25, 0}, {15, 0}, {15, 40}, {4.875, 40}, {4.875, 20}, {4.25, 20}});
  const ClashReport report = clashes_of(nut, bar_solid(0, 5, -5, 45));
  EXPECT_THAT(report.clashes, SizeIs(1));
}

TEST(Accounted, AScrewInACountersunkTappedHoleIsNoFoul) {
  const TopoDS_Shape nut =
      test::turned_solid({{5.25, 0}, {15, 0}, {15, 20}, {4.25, 20}, {4.25, 1}});
  const ClashReport report = clashes_of(nut, bar_solid(0, 5, -5, 25));
  EXPECT_THAT(report.clashes, IsEmpty());
}

}  // namespace
}  // namespace spotblue
