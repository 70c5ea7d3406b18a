// Press fits and the clearance they leave, on parts turned about one line. Numbers of the mechanics
// are theirs to prove (tests/mechanics); here they are asked for and judged.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <cstddef>
#include <numbers>

#include "spotblue/report/sentence_text.hpp"
#include "support/advice.hpp"
#include "support/bench.hpp"
#include "support/value_parts.hpp"

namespace spotblue::press_findings_test {

using test::Bench;
using test::iso;
using test::number;
using test::worded;
using ::testing::HasSubstr;

constexpr double kHubOutside = 80.0;

FeatureRef cylinder_of(const Bench& bench, OccurrenceId part, Side side) {
  const std::vector<Cylinder>& all =
      bench.look.model.products[bench.look.model.occurrences[part].product].cylinders;
  for (std::size_t i = 0; i < all.size(); ++i) {
    if (all[i].side == side) {
      return {part, FeatureKind::cylinder, i};
    }
  }
  return {};
}

void seat(Bench& bench, OccurrenceId outer, OccurrenceId inner) {
  bench.seat(cylinder_of(bench, outer, Side::internal), cylinder_of(bench, inner, Side::external));
  RadialSeat& made = bench.look.seats.radial.back();
  made.axis = {{0, 0, 0}, {0, 0, 1}};
  made.from = 0.0;
  made.to = 20.0;
}

/// A shaft in a bush in a hub, all 20 long; the bush pressed, the shaft free.
Bench bush_in_hub(double bush_outside, double shaft = 29.9, double bush_bore = 30.0) {
  Bench bench;
  const auto ring = [](double bore, double outside) {
    return test::ring_part(0.5 * bore, 0.5 * outside, 0.0, 20.0);  // radii
  };
  bench.look.model = test::placed_model(
      {{ring(44.0, kHubOutside), {}}, {ring(bush_bore, bush_outside), {}}, {ring(0.0, shaft), {}}});
  const std::array<const char*, 3> names{"Hub", "Bush", "Shaft"};
  for (std::size_t i = 0; i < names.size(); ++i) {
    Product& product = bench.look.model.products[i];
    product.id = product.name = names[i];
    for (Cylinder& cylinder : product.cylinders) {
      cylinder.name = cylinder.side == Side::internal ? "bore 1" : "outside 1";
    }
    bench.look.model.occurrences[i].id = bench.look.model.occurrences[i].path = names[i];
  }
  seat(bench, OccurrenceId(0), OccurrenceId(1));
  seat(bench, OccurrenceId(1), OccurrenceId(2));
  bench.declare("Hub", PartState::as_found, Drawn::at_the_size_wanted).material = "1045";
  bench.declare("Bush", PartState::to_make, Drawn::at_the_size_wanted).material = "leaded bronze";
  bench.declare("Shaft", PartState::as_found, Drawn::at_the_size_wanted).material = "1045";
  bench.job.conditions.rz_um = 0.0;
  return bench;
}

Finding press(const Bench& bench) { return of_kind(bench, "press fit").at(0); }
Finding clearance(const Bench& bench) { return of_kind(bench, "running clearance").at(0); }

TEST(PressFinding, ConformsBelowYieldAndSaysHowToPress) {
  const Finding finding = press(bush_in_hub(44.03));
  EXPECT_EQ(finding.id, "press-1");
  EXPECT_EQ(finding.outcome, Outcome::conforming);
  EXPECT_NEAR(number(finding.found, "interference_max_mm"), 0.03, 1e-9);
  EXPECT_GT(number(finding.found, "pressure_max_mpa"), 0.0);
  EXPECT_LT(number(finding.found, "inner_utilisation_percent"), 100.0);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("press with up to"));
  EXPECT_THAT(text_of(finding.caution), HasSubstr("local rules"));
}

TEST(PressFinding, NamesThePartThatGivesWayAndTheInterferenceThatIsEnough) {
  const Finding finding = press(bush_in_hub(44.10));
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("Bush gives way at the inner part's bore"));
  EXPECT_THAT(text_of(finding.advice), HasSubstr("keep the interference to"));
}

// Of 97 % of its strength by the pressed 20 alone; a hub of 60 presses the bush harder.
TEST(PressFinding, ThatALongerHubMayPressTooHardIsUndecided) {
  const double used = number(press(bush_in_hub(44.03)).found, "inner_utilisation_percent");
  Bench bench = bush_in_hub(44.0 + 0.03 * 97.0 / used);
  EXPECT_EQ(press(bench).outcome, Outcome::conforming);
  bench.look.model.products[0].box.low.z = -20.0;
  bench.look.model.products[0].box.high.z = 40.0;
  const Finding finding = press(bench);
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("Bush may give way at the inner part's bore"));
}

// Force = friction x pressure x pi x diameter x length, the diameter the middle of both.
TEST(PressFinding, ForceComesFromTheJobsFrictionAndTheWholeLength) {
  Bench bench = bush_in_hub(44.03);
  bench.job.conditions.friction_greatest = 0.3;
  const Finding finding = press(bench);
  EXPECT_NEAR(number(finding.found, "force_to_press_max_n"),
              0.3 * number(finding.found, "pressure_max_mpa") * std::numbers::pi * 44.015 * 20.0,
              1e-3);
}

// A stranger's case: half of the joint is a recess, and the hold was told for all of it.
TEST(PressFinding, ForceAndHoldCountOnlyTheLengthThatTouches) {
  Bench bench = bush_in_hub(44.03);
  const double half = 0.5 * kHubOutside;
  Product hub = test::turned_part({{22, 0}, {half, 0}, {half, 20}, {25, 20}, {25, 10}, {22, 10}});
  hub.id = hub.name = "Hub";
  bench.look.model.products[0] = hub;
  for (std::size_t i = 0; i < hub.cylinders.size(); ++i) {
    if (hub.cylinders[i].side == Side::internal && hub.cylinders[i].diameter < 46) {
      bench.look.seats.radial[0].hole.index = i;
    }
  }
  const Finding finding = press(bench);
  EXPECT_NEAR(number(finding.found, "force_to_press_max_n"),
              bench.job.conditions.friction_greatest * number(finding.found, "pressure_max_mpa") *
                  std::numbers::pi * 44.015 * 10.0,
              1e-3);
}

// A stranger's case: a bush yielded under the press of its hub into a third part.
TEST(PressFinding, OfThreeRingsIsUndecidedSinceOnlyPairsAreReckonedWith) {
  Bench bench = bush_in_hub(44.03);
  const Product outer = test::ring_part(0.5 * kHubOutside - 0.02, kHubOutside, 0.0, 20.0);
  bench.look.model.products.push_back(outer);
  bench.look.model.products.back().id = bench.look.model.products.back().name = "Housing";
  for (Cylinder& cylinder : bench.look.model.products.back().cylinders) {
    cylinder.name = cylinder.side == Side::internal ? "bore 1" : "outside 1";
  }
  Occurrence placed = bench.look.model.occurrences[0];
  placed.id = placed.path = "Housing";
  placed.product = ProductId(3);
  bench.look.model.occurrences.push_back(placed);
  seat(bench, OccurrenceId(3), OccurrenceId(0));
  bench.declare("Housing", PartState::as_found, Drawn::at_the_size_wanted).material = "1045";
  const std::vector<Finding> presses = of_kind(bench, "press fit");
  ASSERT_EQ(presses.size(), 2U);
  for (const Finding& finding : presses) {
    EXPECT_EQ(finding.outcome, Outcome::undecided);
    EXPECT_THAT(text_of(finding.advice), HasSubstr("is pressed there too"));
  }
}

TEST(PressFinding, IsUndecidedWithoutAMaterialAndNamesThePart) {
  Bench bench = bush_in_hub(44.03);
  bench.job.parts[0].material = "";
  const Finding finding = press(bench);
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("no material is given for Hub"));
}

TEST(PressFinding, AClearanceFitIsNoPressFit) {
  EXPECT_TRUE(of_kind(bush_in_hub(43.98), "press fit").empty());
}

TEST(PressFinding, RoughnessMayTakeTheWholeInterference) {
  Bench bench = bush_in_hub(44.008);
  bench.job.conditions.rz_um = 25.0;  // 0.4 x 50 um = 0.020 mm and more
  const Finding finding = press(bench);
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("without hold"));
}

TEST(PressFinding, CastIronIsWarnedOfHiddenCracks) {
  Bench bench = bush_in_hub(44.03);
  bench.job.parts[0].material = "grey iron";
  EXPECT_THAT(text_of(press(bench).caution), HasSubstr("hide cracks"));
}

TEST(PressFinding, ABushThatRunsTooHotComesBackLoose) {
  Bench bench = bush_in_hub(44.03);
  const double loose = number(press(bench).found, "comes_back_loose_above_c");
  bench.job.conditions.running_c = loose + 5.0;
  const Finding finding = press(bench);
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("comes back loose"));
}

// The hub alone 300 K warmer grows by 44 x 300 x 11.x um/m/K, ten times the 0.03 there is.
TEST(PressFinding, ThatLetsGoAtAllItsSizesWhenWarmDoesNotConform) {
  Bench bench = bush_in_hub(44.03);
  bench.job.parts[0].running_c = 320.0;
  const Finding finding = press(bench);
  EXPECT_LT(number(finding.found, "warm_interference_max_mm"), 0.0);
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("lets go when warm"));
}

// To slip a bush of 0.35 more in would take more cold than there is: no temperature is told.
TEST(PressFinding, TellsNoChillingThatNoUsualMediumReaches) {
  const Finding finding = press(bush_in_hub(44.2));
  EXPECT_EQ(worded(finding.found, "chilling"), "no usual medium is cold enough");
  EXPECT_TRUE(std::isnan(number(finding.found, "chill_inner_to_c")));
  const Finding less = press(bush_in_hub(44.02));
  EXPECT_NE(worded(less.found, "chilling"), "no usual medium is cold enough");
  EXPECT_FALSE(std::isnan(number(less.found, "chill_inner_to_c")));
}

TEST(PressFinding, TellsAWarmJointItsTemperaturesInDegreesCelsius) {
  Bench bench = bush_in_hub(44.03);
  bench.job.conditions.running_c = number(press(bench).found, "comes_back_loose_above_c") + 5.0;
  EXPECT_THAT(text_of(press(bench).advice), ::testing::ContainsRegex("begins at [0-9]+ deg C"));
}

TEST(PressFinding, OfAnInchJobSaysNothingMetric) {
  std::vector<Bench> benches{bush_in_hub(44.03), bush_in_hub(44.10), bush_in_hub(44.008)};
  benches[2].job.conditions.rz_um = 25.0;
  benches.push_back(bush_in_hub(44.03));
  benches[3].job.parts[0].material = "";
  benches.push_back(bush_in_hub(44.03));
  benches[4].job.conditions.running_c = 300.0;
  for (Bench& bench : benches) {
    bench.job.unit = LengthUnit::inch;
    EXPECT_EQ(test::metric_in(press(bench)), "");
  }
}

// 1.6 um / 0.0254 is 62.99 uin.
TEST(PressFinding, TellsAnInchJobRoughnessInMicroinchesAndTheForceInPounds) {
  Bench bench = bush_in_hub(44.03);
  bench.job.conditions.rz_um = 1.6;
  const std::string words = test::all_words(press(bench), LengthUnit::inch);
  EXPECT_THAT(words, HasSubstr("roughness Rz 62.99 uin and 62.99 uin"));
  EXPECT_THAT(words, ::testing::ContainsRegex("press with up to [0-9]+ lbf"));
}

Finding running_fit(const Bench& bench) { return of_kind(bench, "radial fit").at(1); }

Bench running_bush(double least, double greatest, double shaft = 29.9) {
  Bench bench = bush_in_hub(44.03, shaft);
  bench.want("Bush: bore 1", "Shaft: outside 1",
             ClearanceLimits{Length::mm(least), Length::mm(greatest)});
  return bench;
}

TEST(RunningFit, IsJudgedByWhatPressingLeavesOfTheTurnedBore) {
  const Bench bench = running_bush(0.05, 0.1);
  const Finding finding = running_fit(bench);
  EXPECT_EQ(finding.outcome, Outcome::conforming);
  const double close_in = number(press(bench).found, "bore_close_in_max_mm");
  EXPECT_GT(close_in, 0.0);
  EXPECT_NEAR(number(finding.found, "clearance_min_mm"), 0.1 - close_in, 1e-4);
  EXPECT_NEAR(number(finding.found, "hole_assembled_min_mm"), 30.0 - close_in, 1e-4);
}

// With its outside turned already the bush closes by what is known; else both are made to suit.
TEST(RunningFit, SaysWhatToMakeTheBoreToBeforePressing) {
  Bench bench = running_bush(0.09, 0.12);
  bench.measure("Bush: outside 1", 44.03, 0.0);
  const Finding finding = running_fit(bench);
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_NEAR(number(finding.wanted, "make_hole_min_mm"),
              29.9 + 0.09 + 30.0 - number(finding.found, "hole_assembled_min_mm"), 1e-9);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("before pressing"));
}

// Of the press nothing is wanted: the bush's outside is made as it is drawn, and nobody plans to
// press it less.
TEST(RunningFit, AndMakeToSuitTellOneWindowWhereNoPressIsWanted) {
  const Bench bench = running_bush(0.09, 0.12);
  EXPECT_EQ(test::Advice(bench.findings()).contradiction(), "");
  const Finding fit = running_fit(bench);
  const Finding suit = of_kind(bench, "make to suit").at(0);
  EXPECT_LT(number(fit.wanted, "make_hole_min_mm"), number(suit.wanted, "size_max_mm"));
  EXPECT_LT(number(suit.wanted, "size_min_mm"), number(fit.wanted, "make_hole_max_mm"));
}

TEST(RunningFit, OfABushFoundInItsHubHasClosedInAlready) {
  Bench bench = running_bush(0.05, 0.1);
  bench.job.parts[1].state = PartState::as_found;
  EXPECT_NEAR(number(running_fit(bench).found, "clearance_min_mm"), 0.1, 1e-6);
}

TEST(RunningFit, OfAPressedPartWithoutAMaterialIsUndecidedWhateverItsSizesAsMade) {
  Bench bench = running_bush(0.2, 0.3);
  bench.job.parts[1].material = "";
  const Finding finding = running_fit(bench);
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("no material is given for Bush"));
}

TEST(RunningFit, ThatFoulsOffItsAxisDoesNotConformThoughWhatPressingDoesIsNotKnown) {
  Bench bench = running_bush(0.05, 0.1);
  bench.job.parts[1].material = "";
  bench.look.seats.radial[1].least_gap = -0.2;
  EXPECT_EQ(running_fit(bench).outcome, Outcome::nonconforming);
}

TEST(RunningFit, OfAPressedPartWithoutAMaterialGivesNoLimitsToMake) {
  Bench bench = running_bush(0.05, 0.1);
  bench.job.parts[1].material = "";
  const Finding finding = running_fit(bench);
  for (const Quantity& quantity : finding.wanted) {
    EXPECT_THAT(quantity.name, ::testing::Not(HasSubstr("make_")));
  }
  EXPECT_TRUE(finding.margin.empty());
}

TEST(RunningClearance, BindsWhenTheWarmBushClosesOnTheShaft) {
  Bench bench = running_bush(0.01, 0.1, 29.97);
  bench.job.conditions.running_c = 120.0;
  bench.job.parts[2].running_c = 160.0;
  const Finding finding = clearance(bench);
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_LT(number(finding.found, "warm_clearance_min_mm"), 0.0);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("binds when it runs"));
}

TEST(RunningClearance, OfAPlainPairIsJudgedWarmToo) {
  Bench bench = running_bush(0.01, 0.1, 29.97);
  bench.job.parts[2].running_c = 160.0;
  const Finding finding = clearance(bench);
  // Bore 30 less close-in stays; the shaft, 1045 steel, grows by 29.97 x 140 K x 11.x um/m/K.
  EXPECT_LT(number(finding.found, "warm_clearance_max_mm"),
            number(finding.found, "clearance_max_mm") - 0.04);
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
}

TEST(RunningClearance, OfAWarmShaftOfNoMaterialIsUndecidedWhereSomeMaterialWouldBind) {
  Bench bench = running_bush(0.01, 0.1, 29.95);
  bench.job.parts[2].material = "";
  bench.job.parts[2].running_c = 60.0;
  const Finding finding = clearance(bench);
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("no material is given for Shaft"));
}

TEST(RunningClearance, OfAWarmShaftOfNoMaterialConformsWhereNoMaterialWouldBind) {
  Bench bench = running_bush(0.01, 1.0, 29.5);
  bench.job.parts[2].material = "";
  bench.job.parts[2].running_c = 60.0;
  EXPECT_EQ(clearance(bench).outcome, Outcome::conforming);
}

// Drawn and found with 0.01 of interference, wanted with clearance: a hole that is warmer runs
// clear, and yet the two can not be put together so.
TEST(RunningClearance, OfAPairThatIsPressedAtTheBenchDoesNotConformHoweverWarmTheHole) {
  Bench bench = running_bush(0.01, 0.1, 30.01);
  bench.job.parts[0].running_c = bench.job.parts[1].running_c = 220.0;
  const Finding finding = clearance(bench);
  EXPECT_LT(number(finding.found, "clearance_max_mm"), 0.0);
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("that is no running fit"));
}

// A hub 60 long holds a bush of 20 tighter than 20 of it alone would, or less tightly where the
// wave of its ends swings back: both are told.
TEST(RunningClearance, InALongHubIsTheOneByItselfAndTheOneOfTheWholeHub) {
  Bench alone = running_bush(0.01, 0.1, 29.9);
  Bench in_long = alone;
  in_long.look.model.products[0].box.low.z = -20.0;
  in_long.look.model.products[0].box.high.z = 40.0;
  const double own = number(press(alone).found, "bore_close_in_max_mm");
  const Finding finding = running_fit(in_long);
  const double least = number(finding.found, "hole_assembled_min_mm");
  const double greatest = number(finding.found, "hole_assembled_max_mm");
  EXPECT_LT(least, 30.0 - own - 2e-4);
  EXPECT_GT(greatest, 30.0 - own + 1e-5);
  EXPECT_LT(greatest - least, 0.3 * own);
}

}  // namespace spotblue::press_findings_test
