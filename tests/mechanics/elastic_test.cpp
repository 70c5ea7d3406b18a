#include "spotblue/mechanics/elastic.hpp"

#include <gtest/gtest.h>

#include "spotblue/base/error.hpp"
#include "support/thrown.hpp"

namespace spotblue::elastic_test {

TEST(Elastic, SteelGivesWayByYieldAndKeepsItsUnits) {
  const Elastic steel = elastic_of(*find_material("1045"));
  // Source: tests/reference/materials.csv, carbon steel 1045: 205 GPa, 0.29, 11.7e-6/K, 530 MPa.
  EXPECT_DOUBLE_EQ(steel.youngs_modulus_mpa, 205000.0);
  EXPECT_DOUBLE_EQ(steel.expansion_per_k, 11.7e-6);
  EXPECT_DOUBLE_EQ(steel.yield_mpa.value(), 530.0);
  EXPECT_EQ(steel.gives_way, GivesWay::ductile);
}

TEST(Elastic, GreyIronIsBrittle) {
  const Elastic iron = elastic_of(*find_material("grey iron"));
  EXPECT_EQ(iron.gives_way, GivesWay::brittle);
  EXPECT_FALSE(iron.yield_mpa.has_value());
  EXPECT_DOUBLE_EQ(iron.tensile_mpa.value(), 138.0);
}

TEST(Elastic, AnImpossiblePoissonsRatioIsRefusedByName) {
  Elastic steel = elastic_of(*find_material("1045"));
  steel.poisson_ratio = 0.5;
  const Error problem = test::error_of([&] { return require_elastic(steel, "hub"); });
  EXPECT_EQ(problem.code(), ErrorCode::bad_input);
  EXPECT_EQ(problem.place(), "hub.poisson_ratio");
}

}  // namespace spotblue::elastic_test
