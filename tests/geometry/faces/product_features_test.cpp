#include "geometry/faces/product_features.hpp"

#include <gtest/gtest.h>

#include <BRepAlgoAPI_Fuse.hxx>
#include <BRepBuilderAPI_MakeEdge.hxx>
#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRepBuilderAPI_MakeWire.hxx>
#include <BRepBuilderAPI_NurbsConvert.hxx>
#include <BRepBuilderAPI_Transform.hxx>
#include <BRepFilletAPI_MakeFillet.hxx>
#include <BRepGProp.hxx>
#include <BRepPrimAPI_MakeRevol.hxx>
#include <BRepPrimAPI_MakeSphere.hxx>
#include <BRep_Builder.hxx>
#include <GProp_GProps.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Compound.hxx>
#include <TopoDS_Solid.hxx>
#include <algorithm>
#include <gp_Circ.hxx>
#include <numbers>

#include "support/shape_model.hpp"

namespace spotblue::product_features_test {

using namespace testing;

constexpr double kPi = std::numbers::pi;

Product analysed(const TopoDS_Shape& shape) {
  Product product;
  analyse_shape(shape, product);
  return product;
}

std::vector<std::string> names(const Product& product) {
  std::vector<std::string> all;
  for (const Cylinder& c : product.cylinders) {
    all.push_back(c.sized_name);
  }
  for (const Cone& c : product.cones) {
    all.push_back(c.sized_name);
  }
  for (const Plane& p : product.planes) {
    all.push_back(p.sized_name);
  }
  for (const Width& w : product.widths) {
    all.push_back(w.sized_name);
  }
  std::sort(all.begin(), all.end());
  return all;
}

TEST(ProductFeatures, ABoredBlockHasABoreAndItsFacesByTheirSizes) {
  const Product product = analysed(cut(block(80, 60, 0, 30), rod(44, -1, 31)));
  EXPECT_EQ(names(product),
            (std::vector<std::string>{"bore 44", "face 60x30 @ 0", "face 60x30 @ 80",
                                      "face 80x30 @ 0", "face 80x30 @ 60", "face 80x60 @ 0",
                                      "face 80x60 @ 30", "width 30", "width 60", "width 80"}));
}

TEST(ProductFeatures, AFaceIsNetOfItsHole) {
  const Product product = analysed(cut(block(80, 60, 0, 30), rod(44, -1, 31)));
  const auto top = std::find_if(product.planes.begin(), product.planes.end(),
                                [](const Plane& p) { return p.normal.z() > 0.5; });
  ASSERT_NE(top, product.planes.end());
  EXPECT_NEAR(area(top->outline), 80.0 * 60.0 - kPi * 22.0 * 22.0, 1e-9);
}

TEST(ProductFeatures, ABoreInTwoCheeksIsOneFeatureWithTwoIntervals) {
  const TopoDS_Shape fork = cut(cut(block(40, 40, 0, 50), block(60, 60, 20, 30)), rod(16, -1, 51));
  // The slot goes right through, so the two cheeks are two solids of one product.
  const Product product = analysed(fork);
  ASSERT_EQ(product.cylinders.size(), 1U);
  EXPECT_EQ(product.cylinders[0].intervals.size(), 2U);
  EXPECT_EQ(product.solids, 2);
}

TEST(ProductFeatures, TwoEqualJournalsWithACollarBetweenAreTwoFeatures) {
  const Product product = analysed(BRepAlgoAPI_Fuse(rod(30, 0, 100), rod(50, 40, 60)).Shape());
  ASSERT_EQ(product.cylinders.size(), 3U);
  std::vector<std::string> journals;
  for (const Cylinder& one : product.cylinders) {
    if (one.diameter < 40.0) {
      journals.push_back(one.sized_name);
      ASSERT_EQ(one.intervals.size(), 1U);
      EXPECT_NEAR(one.intervals[0].high - one.intervals[0].low, 40.0, 1e-9);
      EXPECT_NEAR(one.intervals[0].low, -20.0, 1e-9);
    }
  }
  EXPECT_EQ(journals, (std::vector<std::string>{"outside 30 @ 20", "outside 30 @ 80"}));
}

TEST(ProductFeatures, AGrooveDoesNotDivideAJournal) {
  const TopoDS_Shape groove = cut(rod(40, 40, 60), rod(25, 39, 61));
  const Product product = analysed(cut(rod(30, 0, 100), groove));
  const auto journal = std::find_if(product.cylinders.begin(), product.cylinders.end(),
                                    [](const Cylinder& one) { return one.diameter > 29.0; });
  ASSERT_NE(journal, product.cylinders.end());
  EXPECT_EQ(journal->intervals.size(), 2U);
}

TEST(ProductFeatures, TwoEqualBoresWithALipBetweenAreTwoFeatures) {
  const Product product =
      analysed(cut(cut(cut(rod(60, 0, 100), rod(30, -1, 40)), rod(30, 60, 101)), rod(20, 30, 70)));
  EXPECT_EQ(std::count_if(product.cylinders.begin(), product.cylinders.end(),
                          [](const Cylinder& one) { return std::abs(one.diameter - 30.0) < 1e-9; }),
            2);
}

TEST(ProductFeatures, ABoreThroughAForkIsOneFeature) {
  const TopoDS_Shape fork = cut(cut(block(60, 40, 0, 50), block(40, 60, 20, 30)), rod(16, -1, 51));
  const Product product = analysed(fork);
  const auto bore = std::find_if(product.cylinders.begin(), product.cylinders.end(),
                                 [](const Cylinder& one) { return one.side == Side::internal; });
  ASSERT_NE(bore, product.cylinders.end());
  EXPECT_EQ(bore->intervals.size(), 2U);
}

TEST(ProductFeatures, AKeyseatCutsTheCoverageOfAShaftOnlyWhereItRunsOut) {
  const TopoDS_Shape key = BRepPrimAPI_MakeBox(gp_Pnt(-4, 11, -1), gp_Pnt(4, 20, 60)).Shape();
  const Product product = analysed(cut(rod(30, 0, 40), key));
  ASSERT_EQ(product.cylinders.size(), 1U);
  EXPECT_NEAR(product.cylinders[0].coverage, 2.0 * kPi - 2.0 * std::asin(4.0 / 15.0), 1e-9);
  const auto slot = std::find_if(product.widths.begin(), product.widths.end(),
                                 [](const Width& w) { return w.side == Side::internal; });
  ASSERT_NE(slot, product.widths.end());
  EXPECT_EQ(slot->sized_name, "slot 8");
  EXPECT_EQ(slot->name, "keyseat");
}

// A seam beside a keyseat once closed the keyseat's angles (random assembly, seed 133).
TEST(ProductFeatures, AKeyseatKeepsItsAnglesWhereverTheSeamLies) {
  for (int turn = 0; turn < 12; ++turn) {
    TopoDS_Shape key = BRepPrimAPI_MakeBox(gp_Pnt(-4, 11, 10), gp_Pnt(4, 20, 30)).Shape();
    gp_Trsf round;
    round.SetRotation(gp_Ax1(gp_Pnt(0, 0, 0), gp_Dir(0, 0, 1)), turn * kPi / 6.0);
    key = BRepBuilderAPI_Transform(key, round, true).Shape();
    const Product product = analysed(cut(rod(30, 0, 40), key));
    ASSERT_EQ(product.cylinders.size(), 1U);
    double least = 2.0 * kPi;
    for (const Patch& patch : product.cylinders[0].patches) {
      double sum = 0.0;
      for (const Arc& arc : patch.arcs) {
        sum += arc.sweep;
      }
      least = std::min(least, sum);
    }
    EXPECT_NEAR(least, 2.0 * kPi - 2.0 * std::asin(4.0 / 15.0), 1e-9) << "turn " << turn;
  }
}

TEST(ProductFeatures, ABlockWrittenAsSplinesHasTheSameFeatures) {
  const TopoDS_Shape plain = cut(cut(block(80, 60, 0, 30), rod(44, -1, 31)),
                                 BRepPrimAPI_MakeCone(up_from(0, 30, 20), 3, 5, 30).Shape());
  const Product a = analysed(plain);
  const Product b = analysed(BRepBuilderAPI_NurbsConvert(plain).Shape());
  EXPECT_EQ(names(a), names(b));
  ASSERT_EQ(b.cylinders.size(), 1U);
  EXPECT_EQ(b.cylinders[0].source, SurfaceSource::bspline);
  EXPECT_NEAR(b.cylinders[0].diameter, 44.0, 1e-9);
  EXPECT_NEAR(b.volume, a.volume, 1e-6);
}

TopoDS_Shape together(const TopoDS_Shape& a, const TopoDS_Shape& b) {
  TopoDS_Compound both;
  BRep_Builder builder;
  builder.MakeCompound(both);
  builder.Add(both, a);
  builder.Add(both, b);
  return both;
}

// The same solid with all its shells but the largest turned.
TopoDS_Shape with_voids_turned(const TopoDS_Shape& solid) {
  TopoDS_Solid turned;
  BRep_Builder builder;
  builder.MakeSolid(turned);
  bool outer = true;
  for (TopExp_Explorer it(solid, TopAbs_SHELL); it.More(); it.Next(), outer = false) {
    builder.Add(turned, outer ? it.Current() : it.Current().Reversed());
  }
  return turned;
}

TEST(ProductFeatures, OneSolidInsideOutBesideARightOneIsTurnedAlone) {
  const TopoDS_Shape bored = cut(block(80, 60, 0, 30), rod(44, -1, 31));
  const TopoDS_Shape big = block(200, 200, 100, 300);
  const Product right = analysed(together(bored, big));
  const Product mixed = analysed(together(bored.Reversed(), big));
  EXPECT_EQ(names(right), names(mixed));
  ASSERT_EQ(mixed.cylinders.size(), 1U);
  EXPECT_EQ(mixed.cylinders[0].side, Side::internal);
  EXPECT_NEAR(mixed.volume, right.volume, 1e-9 * right.volume);
}

TEST(ProductFeatures, AVoidIsAVoidWhicheverWayItsShellIsWritten) {
  const TopoDS_Shape hollow = cut(block(80, 60, 0, 60), rod(20, 10, 50));
  const Product right = analysed(hollow);
  const Product turned = analysed(with_voids_turned(hollow));
  EXPECT_NEAR(right.volume, 80.0 * 60.0 * 60.0 - kPi * 100.0 * 40.0, 1e-6);
  EXPECT_NEAR(turned.volume, right.volume, 1e-6);
  ASSERT_EQ(turned.cylinders.size(), 1U);
  EXPECT_EQ(turned.cylinders[0].side, Side::internal);
  EXPECT_EQ(names(right), names(turned));
}

TEST(ProductFeatures, ASolidInsideOutMeasuresAsTheRightWayOut) {
  TopoDS_Shape shape = cut(block(80, 60, 0, 30), rod(44, -1, 31));
  const Product right = analysed(shape);
  const Product inside_out = analysed(shape.Reversed());
  EXPECT_EQ(names(right), names(inside_out));
  EXPECT_NEAR(inside_out.volume, right.volume, 1e-9);
  for (const Plane& plane : inside_out.planes) {
    EXPECT_GT(area(plane.outline), 0.0) << plane.name;
  }
}

TEST(ProductFeatures, ConesGrowAlongTheirAxisAndKnowTheirSide) {
  const Product product =
      analysed(cut(rod(60, 0, 40), BRepPrimAPI_MakeCone(up_from(0), 15, 10, 40).Shape()));
  ASSERT_EQ(product.cones.size(), 1U);
  EXPECT_EQ(product.cones[0].sized_name, "taper bore 20/30");
  EXPECT_EQ(product.cones[0].side, Side::internal);
  EXPECT_NEAR(product.cones[0].axis.along.z(), -1.0, 1e-12);
  EXPECT_NEAR(product.cones[0].half_angle, std::atan(5.0 / 40.0), 1e-12);
}

TEST(ProductFeatures, AFilletIsARingNoLargerThanItIs) {
  const TopoDS_Shape stepped = BRepAlgoAPI_Fuse(rod(30, 0, 20), rod(20, 20, 50)).Shape();
  BRepFilletAPI_MakeFillet fillet(stepped);
  for (TopExp_Explorer it(stepped, TopAbs_EDGE); it.More(); it.Next()) {
    const Product unused;
    GProp_GProps length;
    BRepGProp::LinearProperties(it.Current(), length);
    if (std::abs(length.Mass() - kPi * 20.0) < 1e-6 &&
        std::abs(length.CentreOfMass().Z() - 20.0) < 1e-6) {
      fillet.Add(1.0, TopoDS::Edge(it.Current()));
    }
  }
  const Product product = analysed(fillet.Shape());
  ASSERT_EQ(product.others.size(), 1U);
  EXPECT_TRUE(product.others[0].revolved);
  EXPECT_NEAR(product.others[0].inner, 10.0, 1e-9);
  EXPECT_NEAR(product.others[0].outer, 11.0, 1e-9);
}

TEST(ProductFeatures, AFilletTurnedAboutAnAxisIsTheRingATorusWouldBe) {
  BRepBuilderAPI_MakeWire wire;
  const gp_Circ circle(gp_Ax2(gp_Pnt(11, 0, 21), gp_Dir(0, -1, 0), gp_Dir(1, 0, 0)), 1.0);
  const gp_Pnt low(11, 0, 20);
  const gp_Pnt high(10, 0, 21);
  const std::vector<gp_Pnt> before{{0, 0, 0}, {15, 0, 0}, {15, 0, 20}, low};
  const std::vector<gp_Pnt> after{high, {10, 0, 50}, {0, 0, 50}, {0, 0, 0}};
  const auto add_lines = [&wire](const std::vector<gp_Pnt>& points) {
    for (std::size_t i = 0; i + 1 < points.size(); ++i) {
      wire.Add(BRepBuilderAPI_MakeEdge(points[i], points[i + 1]).Edge());
    }
  };
  add_lines(before);
  // Of the two arcs between the points the short one, whichever way the circle runs.
  const TopoDS_Edge one = BRepBuilderAPI_MakeEdge(circle, low, high).Edge();
  GProp_GProps length;
  BRepGProp::LinearProperties(one, length);
  wire.Add(length.Mass() < 2.0 ? one : BRepBuilderAPI_MakeEdge(circle, high, low).Edge());
  add_lines(after);
  const TopoDS_Face section = BRepBuilderAPI_MakeFace(wire.Wire()).Face();
  const Product product =
      analysed(BRepPrimAPI_MakeRevol(section, gp_Ax1(gp_Pnt(0, 0, 0), gp_Dir(0, 0, 1))).Shape());
  ASSERT_EQ(product.others.size(), 1U);
  EXPECT_TRUE(product.others[0].revolved);
  EXPECT_NEAR(product.others[0].inner, 10.0, 1e-9);
  EXPECT_NEAR(product.others[0].outer, 11.0, 1e-9);
  EXPECT_NEAR(product.others[0].to - product.others[0].from, 1.0, 1e-9);
}

// Open CASCADE's own integration as the judge of ours.
TEST(ProductFeatures, VolumeAgreesWithOpenCascadesOnPosedMachinedParts) {
  const TopoDS_Shape key = BRepPrimAPI_MakeBox(gp_Pnt(-4, 11, 5), gp_Pnt(4, 20, 60)).Shape();
  const TopoDS_Shape cross =
      BRepPrimAPI_MakeCylinder(gp_Ax2(gp_Pnt(-40, 0, 12), gp_Dir(1, 0, 0)), 3, 80).Shape();
  const TopoDS_Shape shaft =
      cut(cut(BRepAlgoAPI_Fuse(rod(30, 0, 40), rod(22, 40, 90)).Shape(), key), cross);
  gp_Trsf pose;
  pose.SetRotation(gp_Ax1(gp_Pnt(3, -7, 11), gp_Dir(1, 2, -0.5)), 0.7);
  for (const TopoDS_Shape& part :
       {shaft, cut(block(80, 60, 0, 30), BRepPrimAPI_MakeCone(up_from(0), 15, 10, 30).Shape()),
        cut(block(40, 40, 0, 30), BRepPrimAPI_MakeSphere(gp_Pnt(0, 0, 30), 9).Shape())}) {
    const TopoDS_Shape posed = BRepBuilderAPI_Transform(part, pose, true).Shape();
    GProp_GProps judge;
    BRepGProp::VolumeProperties(posed, judge, 1e-10);
    EXPECT_NEAR(analysed(posed).volume, judge.Mass(), 1e-6 * judge.Mass());
  }
}

TEST(ProductFeatures, TheBoxHoldsOpenCascadesBox) {
  const Product product = analysed(rod(30, 2, 40, 5, -3));
  EXPECT_LE(product.box.low.x, -10.0 + 1e-9);
  EXPECT_GE(product.box.high.x, 20.0 - 1e-9);
  EXPECT_NEAR(product.box.low.z, 2.0, 1e-6);
  EXPECT_NEAR(product.box.high.z, 40.0, 1e-6);
}

}  // namespace spotblue::product_features_test
