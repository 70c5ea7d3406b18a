// Sizes of seats in each state, on models of plain values.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "spotblue/geometry/seats.hpp"
#include "spotblue/group/group.hpp"
#include "spotblue/report/sentence_text.hpp"
#include "support/bench.hpp"
#include "support/value_parts.hpp"

namespace spotblue::surface_sizes_test {

using test::block_part;
using test::iso;
using test::placed_model;
using test::turned_part;
using ::testing::HasSubstr;

// A shaft of 30 with a sleeve 30/40 from 10 to 50, on which a ring with a bore of 40.1 runs.
struct Sleeved {
  Sleeved() {
    Product shaft = turned_part({{0, 0}, {15, 0}, {15, 60}, {0, 60}});
    Product sleeve = turned_part({{15, 10}, {20, 10}, {20, 50}, {15, 50}});
    Product ring = turned_part({{20.05, 20}, {30, 20}, {30, 40}, {20.05, 40}});
    name(shaft, "Shaft");
    name(sleeve, "Sleeve");
    name(ring, "Ring");
    bench.look.model = placed_model({{shaft, {}}, {sleeve, {}}, {ring, {}}});
    const char* const ids[] = {"Shaft", "Sleeve", "Ring"};
    for (std::size_t i = 0; i < 3; ++i) {
      bench.look.model.products[i].id = bench.look.model.products[i].name = ids[i];
      bench.look.model.occurrences[i].id = bench.look.model.occurrences[i].path = ids[i];
    }
    bench.look.seats = find_seats(bench.look.model, {});
    bench.declare("Shaft", PartState::to_make, Drawn::at_nominal).material = "steel";
    bench.declare("Sleeve", PartState::to_make, Drawn::at_nominal).material = "steel";
    bench.want("Sleeve: inside", "Shaft: outside", iso("H7/s6"));
    material("steel");
  }
  static void name(Product& product, const std::string&) {
    for (Cylinder& cylinder : product.cylinders) {
      cylinder.name = cylinder.side == Side::internal ? "inside" : "outside";
    }
  }
  void material(const std::string& name) {
    for (JobPart& part : bench.job.parts) {
      part.material = name;
    }
  }
  [[nodiscard]] SeatStates seat(const std::string& hole) const {
    const Group group = make_group(bench.job, bench.look);
    for (const SeatStates& seat : group.seats) {
      if (bench.look.model.occurrences[seat.hole.occurrence].id == hole) {
        return seat;
      }
    }
    ADD_FAILURE() << "no seat in " << hole;
    return {};
  }
  test::Bench bench;
};

// H7/s6 at 30: interference 0.014 to 0.048; roughness of 2 x 6.3 um takes 0.8 and 0.4 of it away;
// the outside grows by 30/40 of what is left (Lame, by hand).
TEST(SurfaceSizes, APressedSleeveMeetsItsMateAtItsGrownSize) {
  const SeatStates seat = Sleeved().seat("Ring");
  EXPECT_EQ(seat.pressing, Pressing::none);
  EXPECT_EQ(seat.shaft_size.free, (Interval{40.0, 40.0}));
  ASSERT_TRUE(seat.shaft_size.assembled);
  EXPECT_NEAR(seat.shaft_size.assembled->low, 40.0 + 0.75 * (0.014 - 0.8 * 0.0126), 1e-4);
  EXPECT_NEAR(seat.shaft_size.assembled->high, 40.0 + 0.75 * (0.048 - 0.4 * 0.0126), 1e-4);
  EXPECT_EQ(seat.hole_size.assembled, seat.hole_size.free);
}

TEST(SurfaceSizes, WithoutAMaterialAPressedSleevesSizeIsNotKnown) {
  Sleeved sleeved;
  sleeved.material("");
  const SeatStates seat = sleeved.seat("Ring");
  EXPECT_FALSE(seat.shaft_size.assembled);
  EXPECT_THAT(text_of(seat.shaft_size.unknown), HasSubstr("no material"));
  EXPECT_TRUE(seat.hole_size.assembled);
}

TEST(SurfaceSizes, ThatAreNotKnownLeaveMakeToSuitOpen) {
  Sleeved sleeved;
  sleeved.material("");
  sleeved.bench.want("Ring: inside", "Sleeve: outside",
                     ClearanceLimits{Length::mm(0.04), Length::mm(0.12)});
  bool told = false;
  for (const Finding& finding : sleeved.bench.findings()) {
    if (finding.kind == "make to suit" && finding.about.front() == "Sleeve: outside") {
      EXPECT_EQ(finding.outcome, Outcome::undecided);
      EXPECT_THAT(text_of(finding.advice), HasSubstr("no material"));
      told = true;
    }
  }
  EXPECT_TRUE(told);
}

TEST(SurfaceSizes, PartsFoundInPlaceNeedNoMaterial) {
  Sleeved sleeved;
  sleeved.material("");
  for (JobPart& part : sleeved.bench.job.parts) {
    part.state = PartState::as_found;
    part.drawn = Drawn::at_the_size_wanted;
  }
  const SeatStates seat = sleeved.seat("Ring");
  EXPECT_EQ(seat.shaft_size.assembled, seat.shaft_size.free);
}

// A stranger's case: a block of 120 x 44 round a bush of 40 goes out of round, past both of its
// rings.
TEST(SurfaceSizes, OfABushInALongBlockAreNotKnown) {
  Sleeved sleeved;
  Product block = block_part({-60, -22, 20}, {60, 22, 40}, {{0, 0, 40.0}});
  block.id = block.name = "Ring";
  Sleeved::name(block, "Ring");
  sleeved.bench.look.model.products[2] = block;
  sleeved.bench.look.seats = find_seats(sleeved.bench.look.model, {});
  sleeved.bench.job.fits.clear();
  sleeved.bench.want("Ring: inside", "Sleeve: outside", iso("H7/s6"));
  sleeved.bench.want("Sleeve: inside", "Shaft: outside",
                     ClearanceLimits{Length::mm(0.01), Length::mm(0.2)});
  sleeved.bench.declare("Ring", PartState::to_make, Drawn::at_nominal).material = "steel";
  sleeved.material("carbon steel 1045");
  const SeatStates seat = sleeved.seat("Sleeve");
  EXPECT_FALSE(seat.hole_size.assembled);
  EXPECT_THAT(text_of(seat.hole_size.unknown), HasSubstr("out of round"));
}

// A stranger's case: make to suit forgot that the sleeve grows.
TEST(SurfaceSizes, OfASleeveToMakeAreTakenOffByMakeToSuitToo) {
  Sleeved sleeved;
  sleeved.bench.want("Ring: inside", "Sleeve: outside",
                     ClearanceLimits{Length::mm(0.04), Length::mm(0.12)});
  for (const Finding& finding : sleeved.bench.findings()) {
    if (finding.kind == "make to suit" && finding.about.front() == "Sleeve: outside") {
      // Bore 40.1 less 0.04 less the greatest growth, 0.75 x 0.04296.
      EXPECT_LT(test::number(finding.wanted, "size_max_mm"), 40.1 - 0.04 - 0.0322 + 1e-4);
      return;
    }
  }
  ADD_FAILURE() << "nothing is said of the sleeve's outside";
}

TEST(SurfaceSizes, PartsFoundInPlaceKeepTheSizesTheyWereMeasuredAt) {
  Sleeved sleeved;
  for (JobPart& part : sleeved.bench.job.parts) {
    part.state = PartState::as_found;
    part.drawn = Drawn::at_the_size_wanted;
  }
  const SeatStates seat = sleeved.seat("Ring");
  ASSERT_TRUE(seat.shaft_size.assembled);
  EXPECT_NEAR(seat.shaft_size.assembled->low, seat.shaft_size.free.low, 1e-9);
  EXPECT_NEAR(seat.shaft_size.assembled->high, seat.shaft_size.free.high, 1e-9);
}

TEST(SurfaceSizes, OfAWarmPartWithoutAMaterialTheRunningSizeIsThatOfAnyMaterial) {
  Sleeved sleeved;
  sleeved.bench.job.conditions.running_c = 60.0;
  const SeatStates seat = sleeved.seat("Ring");
  // Of a material that expands by anything from nothing to 2e-4 1/K.
  ASSERT_TRUE(seat.hole_size.running);
  EXPECT_NEAR(seat.hole_size.running->low, 40.1, 1e-9);
  EXPECT_NEAR(seat.hole_size.running->high, 40.1 * (1.0 + 40.0 * 2e-4), 1e-9);
  EXPECT_EQ(seat.hole_size.assembled, seat.hole_size.free);
  EXPECT_THAT(text_of(seat.hole_size.unknown), HasSubstr("Ring"));
  EXPECT_TRUE(seat.shaft_size.running);
}

TEST(MakeGroup, CallsASleeveAndItsShaftOneBody) {
  const Sleeved sleeved;
  const Group group = make_group(sleeved.bench.job, sleeved.bench.look);
  ASSERT_EQ(group.bodies.size(), 2U);
  EXPECT_EQ(group.bodies[0].parts.size(), 2U);
  EXPECT_EQ(group.joints.at(0).kind, JointKind::press);
  EXPECT_THAT(group.joints.at(0).why, HasSubstr("pressed, H7/s6"));
}

}  // namespace spotblue::surface_sizes_test
