#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "spotblue/base/error.hpp"
#include "spotblue/report/sentence_text.hpp"
#include "support/bench.hpp"
#include "support/thrown.hpp"
#include "support/value_parts.hpp"

namespace spotblue::test::cut_findings_test {

// A stud of 29.62 turned to 28.97 from z 0 to 40; the old diameter stays from 40 to 100.
class CutFindings : public testing::Test {
 protected:
  CutFindings() {
    Product stud = turned_part(
        {{0.0, 0.0}, {14.485, 0.0}, {14.485, 40.0}, {14.81, 40.0}, {14.81, 100.0}, {0.0, 100.0}});
    for (Cylinder& cylinder : stud.cylinders) {
      cylinder.name = cylinder.diameter < 29.0 ? "outside 28.97" : "outside 29.62";
    }
    bench.look.model = placed_model({{stud, Frame{}}});
    Cut cut;
    cut.feature = "part 1: outside 28.97";
    cut.before = Length::mm(29.62);
    cut.fillet = Length::mm(0.5);
    cut.line = 4;
    bench.job.cuts = {cut};
  }
  Cut& cut() { return bench.job.cuts.front(); }
  void load(double torque_nm, double bending_nm, const std::string& material) {
    cut().torque_nm = torque_nm;
    cut().bending_nm = bending_nm;
    bench.declare("part 1", PartState::as_found, Drawn::at_the_size_wanted).material = material;
  }
  // A keyseat 6 wide along the shaft between two stations.
  void keyseat(double from, double to) {
    Product slot = block_part({-3.0, 11.0, from}, {3.0, 15.0, to});
    Product& stud = bench.look.model.products[0];
    std::size_t sides[2] = {};
    std::size_t found = 0;
    for (Plane& plane : slot.planes) {
      if (plane.normal.x() > 0.5 || plane.normal.x() < -0.5) {
        // A slot's sides look at each other: turn the block's outside in.
        const Direction v = third(plane.normal, plane.u);
        plane.normal = -plane.normal;
        plane.u = v;
        for (Edge2& edge : plane.outline.edges) {
          edge = {{edge.from.v, edge.from.u}, {edge.to.v, edge.to.u}, 0.0, {}, 0.0};
        }
        sides[found++] = stud.planes.size();
        stud.planes.push_back(plane);
      }
    }
    stud.widths.push_back({"slot 6", Side::internal, sides[0], sides[1], 6.0});
  }

  Bench bench;
};

TEST_F(CutFindings, SectionAndCornerAgreeWithTheHandCalculation) {
  const Finding found = bench.only();
  EXPECT_EQ(found.id, "shaft-1");
  EXPECT_EQ(found.outcome, Outcome::undecided);
  EXPECT_NEAR(number(found.found, "strength_left_percent"), 93.560, 1e-3);
  EXPECT_NEAR(number(found.found, "polar_modulus_mm3"), 4773.9, 0.05);
  EXPECT_NEAR(number(found.found, "shoulder_mm"), 29.62, 1e-9);
  EXPECT_NEAR(number(found.found, "corner_bending_kt"), 1.7884, 5.1e-5);
  EXPECT_NEAR(number(found.found, "corner_torsion_kt"), 1.4520, 5.1e-5);
  EXPECT_NE(text_of(found.advice).find("93.6 %"), std::string::npos) << text_of(found.advice);
}

TEST_F(CutFindings, ACutMadeInCodeWithoutItsSizeBeforeIsRefused) {
  cut().before.reset();
  const Error problem = test::error_of([&] { return bench.findings(); });
  EXPECT_EQ(problem.place(), "line 4, cuts");
  EXPECT_THAT(problem.cure(), ::testing::HasSubstr("before"));
}

TEST_F(CutFindings, ALightLoadOnSteelConforms) {
  load(40.0, 0.0, "1045");
  const Finding found = bench.only();
  EXPECT_EQ(found.outcome, Outcome::conforming) << text_of(found.advice);
  EXPECT_NEAR(number(found.found, "torsion_before_mpa"), 7.84, 5e-3);
  EXPECT_NEAR(number(found.found, "torsion_mpa"), 8.38, 5e-3);
}

TEST_F(CutFindings, AStressOverYieldIsNonconforming) {
  load(3000.0, 0.0, "1045");
  EXPECT_EQ(bench.only().outcome, Outcome::nonconforming);
}

TEST_F(CutFindings, AStressOverHalfOfYieldInTheCornerIsUndecided) {
  // 1000 N m: 209 MPa of shear, 304 in the corner, 527 equivalent against half of 530.
  load(1000.0, 0.0, "1045");
  EXPECT_EQ(bench.only().outcome, Outcome::undecided);
}

TEST_F(CutFindings, WithoutAMaterialNothingConforms) {
  load(40.0, 0.0, "");
  EXPECT_EQ(bench.only().outcome, Outcome::undecided);
}

TEST_F(CutFindings, ASharpCornerIsSaidToBeUnknown) {
  load(40.0, 0.0, "1045");
  cut().fillet = std::nullopt;
  const Finding found = bench.only();
  EXPECT_EQ(found.outcome, Outcome::undecided);
  EXPECT_NE(text_of(found.advice).find("sharp corner"), std::string::npos) << text_of(found.advice);
  EXPECT_GT(number(found.found, "sharpest_corner_bending_kt"), 1.7884);
}

TEST_F(CutFindings, AModelledFilletIsFound) {
  cut().fillet = std::nullopt;
  OtherFace fillet;
  fillet.revolved = true;
  fillet.axis = {{0, 0, 0}, {0, 0, 1}};
  fillet.inner = 14.485;
  fillet.outer = 14.81;
  fillet.from = 39.6;
  fillet.to = 40.0;
  bench.look.model.products[0].others = {fillet};
  EXPECT_NEAR(number(bench.only().found, "fillet_mm"), 0.4, 1e-9);
}

TEST_F(CutFindings, ACutIntoAKeyseatIsFound) {
  keyseat(30.0, 60.0);
  const Finding found = bench.only();
  EXPECT_EQ(found.outcome, Outcome::nonconforming);
  EXPECT_NE(text_of(found.advice).find("runs into part 1: slot 6"), std::string::npos)
      << text_of(found.advice);
  EXPECT_NEAR(number(found.found, "keyseat_distance_mm"), -10.0, 1e-9);
}

TEST_F(CutFindings, TheDistanceToAKeyseatBeyondTheCutIsSaid) {
  keyseat(42.0, 60.0);
  const Finding found = bench.only();
  EXPECT_EQ(found.outcome, Outcome::undecided);
  EXPECT_NEAR(number(found.found, "keyseat_distance_mm"), 2.0, 1e-9);
  EXPECT_NE(text_of(found.advice).find("only 2.000 mm from"), std::string::npos)
      << text_of(found.advice);
}

TEST_F(CutFindings, ACutIntoAThreadIsFound) {
  Thread thread;
  const OccurrenceId nut = bench.part("Nut");
  thread.hole = bench.bore(nut, "bore 25", 25.0);
  thread.screw = {OccurrenceId(0), FeatureKind::cylinder, 0};
  thread.size = "M30";
  thread.axis = {{0, 0, 10.0}, {0, 0, 1}};
  thread.from = -8.0;
  thread.to = 8.0;
  bench.look.seats.threads = {thread};
  for (const Finding& finding : bench.findings()) {
    if (finding.kind == "shaft section") {
      EXPECT_EQ(finding.outcome, Outcome::nonconforming);
      EXPECT_NE(text_of(finding.advice).find("into the thread M30 (Nut)"), std::string::npos);
      return;
    }
  }
  FAIL() << "no finding on the cut";
}

TEST_F(CutFindings, AMateWhoseCornerRidesOnTheFilletIsFound) {
  cut().mate_corner = Length::mm(0.3);
  const Finding found = bench.only();
  EXPECT_EQ(found.outcome, Outcome::nonconforming);
  EXPECT_NEAR(number(found.margin, "mate_corner_mm"), -0.2, 1e-9);
}

TEST_F(CutFindings, AFaceTakenBackIsNoMatterOfTheSection) {
  for (Plane& plane : bench.look.model.products[0].planes) {
    plane.name = plane.at.z == 0.0 ? "face 28.97" : "face";
  }
  Cut faced;
  faced.feature = "part 1: face 28.97";
  faced.depth = Length::mm(1.0);
  cut() = faced;
  EXPECT_TRUE(test::of_kind(bench, "shaft section").empty());
}

// A stud turned to 28.97 in two places with 29.62 between them, and a groove of 26 in the second.
Product stud_of_two_journals(double groove) {
  Product stud = turned_part({{0.0, 0.0},
                              {14.485, 0.0},
                              {14.485, 20.0},
                              {14.81, 20.0},
                              {14.81, 60.0},
                              {14.485, 60.0},
                              {14.485, 70.0},
                              {0.5 * groove, 70.0},
                              {0.5 * groove, 73.0},
                              {14.485, 73.0},
                              {14.485, 90.0},
                              {14.81, 90.0},
                              {14.81, 100.0},
                              {0.0, 100.0}});
  std::vector<Cylinder> kept;
  for (Cylinder& cylinder : stud.cylinders) {
    const bool cut = std::abs(cylinder.diameter - 28.97) < 1e-6;
    cylinder.name = cut ? "outside 28.97" : "outside";
    if (cut && !kept.empty() && kept.front().name == cylinder.name) {
      // One feature has all pieces of one size, as in a look.
      for (const Interval& piece : cylinder.intervals) {
        const double low = station(kept.front().axis, at_station(cylinder.axis, piece.low));
        const double high = station(kept.front().axis, at_station(cylinder.axis, piece.high));
        kept.front().intervals.push_back({std::min(low, high), std::max(low, high)});
      }
    } else {
      kept.push_back(cylinder);
    }
  }
  stud.cylinders = kept;
  return stud;
}

TEST_F(CutFindings, JournalsThatLieApartAreTwoCuts) {
  bench.look.model = placed_model({{stud_of_two_journals(28.97), Frame{}}});
  const std::vector<Finding> found = test::of_kind(bench, "shaft section");
  ASSERT_EQ(found.size(), 2U);
  EXPECT_NEAR(number(found[0].found, "begins_mm"), 0.0, 1e-9);
  EXPECT_NEAR(number(found[0].found, "length_mm"), 20.0, 1e-9);
  EXPECT_NEAR(number(found[1].found, "begins_mm"), 60.0, 1e-9);
  EXPECT_NEAR(number(found[1].found, "length_mm"), 30.0, 1e-9);
}

// 0.5 yield of 1045 is far above: 16 x 40 N m / (pi 26^3 mm3) = 11.59 MPa, times 3.0 in torsion of
// a ring groove 34.77, times sqrt 3 is 60.2.
TEST_F(CutFindings, AGrooveInACutIsItsLeastSection) {
  bench.look.model = placed_model({{stud_of_two_journals(26.0), Frame{}}});
  load(40.0, 0.0, "1045");
  const std::vector<Finding> found = test::of_kind(bench, "shaft section");
  ASSERT_EQ(found.size(), 2U);
  EXPECT_NEAR(number(found[0].found, "torsion_mpa"), 8.38, 5e-3);
  EXPECT_NEAR(number(found[1].found, "groove_mm"), 26.0, 1e-9);
  EXPECT_NEAR(number(found[1].found, "torsion_mpa"), 11.59, 5e-3);
  EXPECT_NEAR(number(found[1].found, "greatest_stress_mpa"), 60.2, 0.1);
  EXPECT_NEAR(number(found[1].found, "strength_left_percent"), 100.0 * std::pow(26.0 / 29.62, 3.0),
              1e-6);
  EXPECT_THAT(text_of(found[1].advice), ::testing::HasSubstr("in the groove"));
}

// 16 x 1830 N m / (pi d^3): 530 MPa of yield is passed at sqrt 3 x 306 in 31.2 and less.
TEST_F(CutFindings, AGrooveThatYieldsDoesNotConformThoughTheJournalWould) {
  bench.look.model = placed_model({{stud_of_two_journals(20.0), Frame{}}});
  load(600.0, 0.0, "1045");
  const std::vector<Finding> found = test::of_kind(bench, "shaft section");
  ASSERT_EQ(found.size(), 2U);
  EXPECT_NE(found[0].outcome, Outcome::nonconforming);
  EXPECT_EQ(found[1].outcome, Outcome::nonconforming);
}

TEST_F(CutFindings, AHoleAcrossTheCutLeavesItUndecidedByName) {
  load(40.0, 0.0, "1045");
  ASSERT_EQ(bench.only().outcome, Outcome::conforming);
  Cylinder hole;
  hole.name = "bore 5";
  hole.side = Side::internal;
  hole.axis = {{0, 0, 20.0}, {1, 0, 0}};
  hole.diameter = 5.0;
  hole.intervals = {{-14.4, 14.4}};
  bench.look.model.products[0].cylinders.push_back(hole);
  const Finding found = bench.only();
  EXPECT_EQ(found.outcome, Outcome::undecided);
  EXPECT_THAT(text_of(found.advice), ::testing::HasSubstr("part 1: bore 5 breaks into the cut"));
}

TEST_F(CutFindings, AHoleAcrossBeyondTheCutIsNoMatter) {
  load(40.0, 0.0, "1045");
  Cylinder hole;
  hole.name = "bore 5";
  hole.side = Side::internal;
  hole.axis = {{0, 0, 70.0}, {1, 0, 0}};
  hole.diameter = 5.0;
  hole.intervals = {{-14.4, 14.4}};
  bench.look.model.products[0].cylinders.push_back(hole);
  EXPECT_EQ(bench.only().outcome, Outcome::conforming);
}

TEST_F(CutFindings, AFlatOnTheCutLeavesItUndecidedByName) {
  load(40.0, 0.0, "1045");
  Product block = block_part({-5.0, -5.0, 10.0}, {5.0, 13.0, 20.0});
  Product& stud = bench.look.model.products[0];
  for (Plane& plane : block.planes) {
    if (plane.normal.y() > 0.5) {
      plane.name = "face 10x10";
      stud.planes.push_back(plane);
    }
  }
  const Finding found = bench.only();
  EXPECT_EQ(found.outcome, Outcome::undecided);
  EXPECT_THAT(text_of(found.advice),
              ::testing::HasSubstr("part 1: face 10x10 breaks into the cut"));
}

// At its least the shaft is 28.97 - 0.05.
TEST_F(CutFindings, TheSectionIsThatOfTheLeastSizeTheShaftMayHave) {
  bench.measure("part 1: outside 28.97", 28.97, 0.05);
  EXPECT_NEAR(number(bench.only().found, "after_mm"), 28.92, 1e-9);
}

TEST_F(CutFindings, InAnInchJobNothingMetricIsSaid) {
  bench.job.unit = LengthUnit::inch;
  keyseat(30.0, 60.0);
  cut().mate_corner = Length::mm(0.3);
  EXPECT_EQ(metric_in(bench.only()), "");
  for (const double torque_nm : {40.0, 1000.0, 3000.0}) {
    bench.look.model.products[0].widths.clear();
    cut().mate_corner.reset();
    bench.job.parts.clear();
    load(torque_nm, 0.0, "1045");
    EXPECT_EQ(metric_in(bench.only()), "");
  }
}

TEST_F(CutFindings, ALightLoadIsToldInPsiToAnInchJob) {
  load(40.0, 0.0, "1045");
  // 16 x 40 N m / (pi 28.97^3 mm3) = 8.379 MPa of shear; 1.452 x sqrt(3) of it is 21.07 MPa.
  EXPECT_THAT(text_of(bench.only().advice), ::testing::HasSubstr("21.07 MPa in the corner"));
  EXPECT_THAT(all_words(bench.only(), LengthUnit::inch),
              ::testing::HasSubstr("3056 psi in the corner"));
}

TEST_F(CutFindings, ACutThatMakesTheShaftLargerIsRefusedWithItsLine) {
  cut().before = Length::mm(28.9);
  const Error error = test::error_of([&] { return bench.findings(); });
  EXPECT_EQ(error.place(), "line 4, cuts, before");
}

}  // namespace spotblue::test::cut_findings_test
