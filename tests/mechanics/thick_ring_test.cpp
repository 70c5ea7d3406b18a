#include "spotblue/mechanics/thick_ring.hpp"

#include <gtest/gtest.h>

#include "spotblue/base/error.hpp"
#include "support/thrown.hpp"

namespace spotblue::thick_ring_test {

Elastic steel() { return {"steel", 200000.0, 0.29, 11.7e-6, 400.0, {}, GivesWay::ductile}; }
Elastic iron() { return {"grey iron", 100000.0, 0.26, 10.8e-6, {}, 200.0, GivesWay::brittle}; }

// Source: A. P. Boresi, R. J. Schmidt, Advanced Mechanics of Materials, example 11.1, p. 397: radii
// 10 and 50 mm under 300 MPa inside; numbers seen in the public Python companion of the book.
TEST(ThickRing, BoreAndOutsideHoopOfAPressedBoreAsPrinted) {
  const RingState state = loaded_ring({20.0, 100.0, steel()}, {300.0, 0.0});
  EXPECT_NEAR(state.bore.hoop_mpa, 325.0, 0.005);
  EXPECT_NEAR(state.bore.radial_mpa, -300.0, 0.005);
  EXPECT_NEAR(state.outside.hoop_mpa, 25.0, 0.005);
  EXPECT_NEAR(state.outside.radial_mpa, 0.0, 1e-9);
}

// The same book, example 11.2, p. 397: radii 100 and 400 mm under 150 MPa inside (same companion).
TEST(ThickRing, HoopOfAWideRingAsPrinted) {
  EXPECT_NEAR(loaded_ring({200.0, 800.0, steel()}, {150.0, 0.0}).bore.hoop_mpa, 170.0, 0.005);
}

// The same book, example 11.4, p. 403: the ring of 11.1 at 1.75 times 300 MPa needs a yield of
// 947.47 MPa by distortion energy, which the companion takes without axial stress.
TEST(ThickRing, EquivalentStressIsThePrintedYieldNeeded) {
  const RingState state = loaded_ring({20.0, 100.0, steel()}, {1.75 * 300.0, 0.0});
  EXPECT_NEAR(state.bore.equivalent_mpa, 947.47, 0.005);
}

// An even pressure all round strains a ring evenly: (1 - nu) p / E, whatever its bore.
TEST(ThickRing, EvenPressureAllRoundShrinksEveryDiameterAlike) {
  const RingState state = loaded_ring({20.0, 100.0, steel()}, {60.0, 60.0});
  const double strain = -(1.0 - 0.29) * 60.0 / 200000.0;
  EXPECT_NEAR(state.bore_change_mm, 20.0 * strain, 1e-12);
  EXPECT_NEAR(state.outside_change_mm, 100.0 * strain, 1e-12);
}

TEST(ThickRing, ASolidDiscIsPressedEvenly) {
  const RingState state = loaded_ring({0.0, 40.0, steel()}, {0.0, 80.0});
  EXPECT_DOUBLE_EQ(state.outside.hoop_mpa, -80.0);
  EXPECT_DOUBLE_EQ(state.bore.hoop_mpa, -80.0);
  EXPECT_DOUBLE_EQ(state.bore_change_mm, 0.0);
}

TEST(ThickRing, BrittleMaterialsAreUsedByTheirGreatestPullOnly) {
  const RingState pulled = loaded_ring({20.0, 100.0, iron()}, {50.0, 0.0});
  EXPECT_NEAR(utilisation(pulled.bore, iron()).value(), 50.0 * 26.0 / 24.0 / 200.0, 1e-12);
  const RingState pressed = loaded_ring({20.0, 100.0, iron()}, {0.0, 50.0});
  EXPECT_DOUBLE_EQ(utilisation(pressed.bore, iron()).value(), 0.0);
}

TEST(ThickRing, UtilisationIsUnknownWithoutAStrength) {
  Elastic unknown = steel();
  unknown.yield_mpa.reset();
  EXPECT_FALSE(utilisation({100.0, 0.0, 100.0}, unknown).has_value());
}

TEST(ThickRing, ABoreNotLessThanTheOutsideIsRefusedByName) {
  const Error problem = test::error_of([&] {
    return loaded_ring({50.0, 50.0, steel()}, {1.0, 0.0});
  });
  EXPECT_EQ(problem.code(), ErrorCode::bad_input);
  EXPECT_EQ(problem.place(), "ring.inner_mm");
}

}  // namespace spotblue::thick_ring_test
