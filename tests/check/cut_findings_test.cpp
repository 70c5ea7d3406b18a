#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>

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
    bench.declare("part 1", PartState::as_found, SizesMeant::actual).material = material;
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
  cut().feature = "part 1: face 28.97";
  cut().before = Length();
  cut().depth = Length::mm(1.0);
  EXPECT_TRUE(test::of_kind(bench, "shaft section").empty());
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
  EXPECT_EQ(error.place(), "line 4, cuts");
}

}  // namespace spotblue::test::cut_findings_test
