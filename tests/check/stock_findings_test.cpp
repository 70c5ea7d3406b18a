#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "spotblue/report/sentence_text.hpp"
#include "support/bench.hpp"
#include "support/value_parts.hpp"

namespace spotblue::test::stock_findings_test {

class StockFindings : public testing::Test {
 protected:
  void part(const Product& product, const Stock& stock) {
    bench.look.model = placed_model({{product, Frame{}}});
    bench.declare("part 1", PartState::to_make, Drawn::at_nominal).stock = stock;
  }
  static Stock bar(double diameter, std::optional<double> length) {
    Stock stock;
    stock.form = StockForm::bar;
    stock.diameter = Length::mm(diameter);
    if (length) {
      stock.length = Length::mm(*length);
    }
    return stock;
  }

  Bench bench;
};

TEST_F(StockFindings, ABushComesOutOfABarWithRoomToSpare) {
  Product bush = ring_part(15.0, 22.0, 0.0, 60.0);
  bush.volume = std::numbers::pi * (22.0 * 22.0 - 15.0 * 15.0) * 60.0;
  part(bush, bar(50.0, 64.0));
  const Finding found = bench.only();
  EXPECT_EQ(found.id, "stock-1");
  EXPECT_EQ(found.outcome, Outcome::conforming) << text_of(found.advice);
  EXPECT_NEAR(number(found.margin, "diameter_mm"), 4.0, 1e-9);
  EXPECT_NEAR(number(found.margin, "length_mm"), 2.0, 1e-9);
  // pi (25^2 64 - (22^2 - 15^2) 60) = 76843.4 mm3.
  EXPECT_NEAR(number(found.found, "removed_mm3"), 76843.4, 0.1);
}

TEST_F(StockFindings, TheCleaningAllowanceOfTheJobCounts) {
  part(ring_part(15.0, 22.0, 0.0, 60.0), bar(50.0, 70.0));
  bench.job.conditions.cleaning = Length::mm(3.5);
  const Finding found = bench.only();
  EXPECT_EQ(found.outcome, Outcome::nonconforming);
  EXPECT_NE(text_of(found.advice).find("diameter by 1.000 mm"), std::string::npos)
      << text_of(found.advice);
}

TEST_F(StockFindings, ABarOfUnknownLengthIsUndecided) {
  part(ring_part(15.0, 22.0, 0.0, 60.0), bar(50.0, {}));
  EXPECT_EQ(bench.only().outcome, Outcome::undecided);
}

TEST_F(StockFindings, TheBoreOfATubeMustCleanUp) {
  Stock tube = bar(50.0, 70.0);
  tube.form = StockForm::tube;
  tube.inner_diameter = Length::mm(29.0);
  part(ring_part(15.0, 22.0, 0.0, 60.0), tube);
  const Finding found = bench.only();
  EXPECT_EQ(found.outcome, Outcome::nonconforming);
  EXPECT_NEAR(number(found.margin, "bore_mm"), -1.0, 1e-9);
}

// A bush whose hole stops 2 short of its end: no tube has a bottom there.
TEST_F(StockFindings, APartWithAClosedBoreDoesNotComeOutOfATube) {
  Stock tube = bar(50.0, 70.0);
  tube.form = StockForm::tube;
  tube.inner_diameter = Length::mm(20.0);
  part(turned_part({{0.0, 0.0}, {22.0, 0.0}, {22.0, 60.0}, {15.0, 60.0}, {15.0, 2.0}, {0.0, 2.0}}),
       tube);
  const Finding found = bench.only();
  EXPECT_EQ(found.outcome, Outcome::nonconforming);
  EXPECT_TRUE(std::isnan(number(found.found, "bore_mm")));
}

// 40 h, to be made 44.0 to 44.5 outside: the greater one needs the bar.
TEST_F(StockFindings, LimitsCountAtTheirGreatest) {
  Product bush = ring_part(15.0, 22.0, 0.0, 60.0);
  for (Cylinder& cylinder : bush.cylinders) {
    cylinder.name = cylinder.side == Side::external ? "outside 44" : "bore 30";
  }
  part(bush, bar(46.2, 64.0));
  ASSERT_EQ(bench.only().outcome, Outcome::conforming);
  bench.job.sizes.push_back(
      {"part 1: outside 44", Limits{Length::mm(44.0), Length::mm(44.5)}, {}, {}});
  const Finding found = test::of_kind(bench, "stock").at(0);
  EXPECT_EQ(found.outcome, Outcome::nonconforming);
  EXPECT_NEAR(number(found.margin, "diameter_mm"), -0.3, 1e-9);
}

class SharedStockFindings : public testing::Test {
 protected:
  SharedStockFindings() {
    bench.look.model = placed_model(
        {{ring_part(15.0, 22.0, 0.0, 60.0), Frame{}}, {ring_part(8.0, 20.0, 0.0, 5.0), Frame{}}});
    for (const char* name : {"part 1", "part 2"}) {
      bench.declare(name, PartState::to_make, Drawn::at_nominal);
    }
  }
  Finding cut(double diameter, std::optional<double> length, StockForm form = StockForm::bar) {
    SharedStock shared;
    shared.piece.form = form;
    shared.piece.diameter = Length::mm(diameter);
    shared.piece.length = length ? std::optional(Length::mm(*length)) : std::nullopt;
    shared.parts = {"part 1", "part 2", "part 2"};
    shared.parting = Length::mm(3.0);
    shared.stub = Length::mm(20.0);
    bench.job.stock = {shared};
    return test::of_kind(bench, "stock").at(0);
  }
  Bench bench;
};

// 62 and twice 7 with three cuts of 3 and a stub of 20 are 105.
TEST_F(SharedStockFindings, SayWhatIsLeftOver) {
  const Finding found = cut(46.0, 120.0);
  EXPECT_EQ(found.outcome, Outcome::conforming) << text_of(found.advice);
  EXPECT_NEAR(number(found.found, "length_needed_mm"), 105.0, 1e-9);
  EXPECT_NEAR(number(found.found, "left_over_mm"), 15.0, 1e-9);
}

TEST_F(SharedStockFindings, ATooShortBarDoesNotConform) {
  const Finding found = cut(46.0, 104.0);
  EXPECT_EQ(found.outcome, Outcome::nonconforming);
  EXPECT_NEAR(number(found.margin, "length_mm"), -1.0, 1e-9);
}

TEST_F(SharedStockFindings, ABarTooThinForOneOfThemIsNamedByThePart) {
  const Finding found = cut(44.0, 300.0);
  EXPECT_EQ(found.outcome, Outcome::nonconforming);
  EXPECT_NE(text_of(found.advice).find("part 1: diameter by 2.000 mm"), std::string::npos)
      << text_of(found.advice);
}

TEST_F(SharedStockFindings, ABarOfUnknownLengthIsUndecided) {
  EXPECT_EQ(cut(46.0, {}).outcome, Outcome::undecided);
}

TEST_F(StockFindings, AFlangeCountsForTheGreatestDiameterAndTheWholeLength) {
  part(turned_part({{0.0, 0.0}, {20.0, 0.0}, {20.0, 8.0}, {12.0, 8.0}, {12.0, 50.0}, {0.0, 50.0}}),
       bar(42.0, 52.0));
  const Finding found = bench.only();
  EXPECT_NEAR(number(found.found, "outside_mm"), 40.0, 1e-9);
  EXPECT_NEAR(number(found.found, "length_mm"), 50.0, 1e-9);
  EXPECT_EQ(found.outcome, Outcome::conforming);
}

TEST_F(StockFindings, AHexagonHeadNeedsABarOverItsCorners) {
  Product screw = ring_part(0.0, 5.0, 0.0, 30.0);
  join(screw, hexagon_part(17.0, 30.0, 36.0));
  part(screw, bar(20.0, 40.0));
  // 17 / cos(30 deg) = 19.630 over the corners.
  const Finding found = bench.only();
  EXPECT_NEAR(number(found.found, "outside_mm"), 19.630, 1e-3);
  EXPECT_EQ(found.outcome, Outcome::nonconforming);
}

TEST_F(StockFindings, AnArmComesOutOfAPlate) {
  Stock plate;
  plate.form = StockForm::plate;
  plate.thickness = Length::mm(12.0);
  plate.width = Length::mm(30.0);
  plate.length = Length::mm(82.0);
  part(block_part({0, 0, 0}, {80, 25, 10}, {{10, 10, 8}}), plate);
  const Finding found = bench.only();
  EXPECT_EQ(found.outcome, Outcome::conforming) << text_of(found.advice);
  EXPECT_NEAR(number(found.margin, "width_mm"), 3.0, 1e-9);
  EXPECT_NEAR(number(found.margin, "thickness_mm"), 0.0, 1e-9);
}

TEST_F(StockFindings, InAnInchJobNothingMetricIsSaid) {
  bench.job.unit = LengthUnit::inch;
  part(ring_part(15.0, 22.0, 0.0, 60.0), bar(50.8, 63.5));
  const Finding fits = bench.only();
  // 50.8 - 2 x 1 - 44 = 4.8 and 63.5 - 2 - 60 = 1.5 mm, which is 0.05906 in.
  EXPECT_EQ(text_of(fits.advice), "comes out of the bar with 0.05906 in to spare");
  EXPECT_EQ(metric_in(fits), "");
  bench.job.parts[0].stock = bar(20.0, 20.0);
  EXPECT_EQ(metric_in(bench.only()), "");
}

TEST_F(StockFindings, IsAboutThePartOfTheModel) {
  part(ring_part(15.0, 22.0, 0.0, 60.0), bar(50.0, 64.0));
  EXPECT_EQ(bench.only().about, (std::vector<Reference>{{"part 1", OccurrenceId(0)}}));
}

TEST_F(StockFindings, APartThatExistsNeedsNoStock) {
  part(ring_part(15.0, 22.0, 0.0, 60.0), bar(10.0, 10.0));
  bench.job.parts[0].state = PartState::as_found;
  EXPECT_TRUE(test::of_kind(bench, "stock").empty());
}

}  // namespace spotblue::test::stock_findings_test
