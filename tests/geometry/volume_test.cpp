// Volumes of solids as a STEP file brings them, with curves in surface parameters and without:
// round faces in closed form, so that a seam's two curves the wrong way round can't turn a part
// inside out.

#include <gtest/gtest.h>

#include <BRepAlgoAPI_Common.hxx>
#include <BRepAlgoAPI_Cut.hxx>
#include <BRepAlgoAPI_Fuse.hxx>
#include <BRepBuilderAPI_MakeEdge.hxx>
#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRepBuilderAPI_MakeWire.hxx>
#include <BRepBuilderAPI_Transform.hxx>
#include <BRepFilletAPI_MakeFillet.hxx>
#include <BRepGProp.hxx>
#include <BRepPrimAPI_MakeBox.hxx>
#include <BRepPrimAPI_MakeCylinder.hxx>
#include <BRepPrimAPI_MakeRevol.hxx>
#include <BRepPrimAPI_MakeSphere.hxx>
#include <BRepPrimAPI_MakeTorus.hxx>
#include <GProp_GProps.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>
#include <filesystem>
#include <functional>
#include <numbers>
#include <ostream>
#include <string>

#include "geometry/written_step.hpp"
#include "spotblue/geometry/read.hpp"
#include "support/step_out.hpp"

namespace spotblue::test {
namespace {

constexpr double kPi = std::numbers::pi;

TopoDS_Shape rod(double radius, double from, double to) {
  return BRepPrimAPI_MakeCylinder(gp_Ax2(gp_Pnt(0, 0, from), gp_Dir(0, 0, 1)), radius, to - from)
      .Shape();
}

// A shaft of 10 with a collar of 20, every edge of the collar's foot rounded by 3.
TopoDS_Shape filleted_shaft() {
  TopoDS_Shape shaft = BRepAlgoAPI_Fuse(rod(5, 0, 60), rod(10, 20, 40)).Shape();
  BRepFilletAPI_MakeFillet fillet(shaft);
  int n = 0;
  for (TopExp_Explorer it(shaft, TopAbs_EDGE); it.More(); it.Next(), ++n) {
    if (n % 3 == 0) {
      fillet.Add(1.5, TopoDS::Edge(it.Current()));
    }
  }
  return fillet.Shape();
}

TopoDS_Shape rounded_block() {
  const TopoDS_Shape block = BRepPrimAPI_MakeBox(gp_Pnt(-20, -15, 0), gp_Pnt(20, 15, 25)).Shape();
  BRepFilletAPI_MakeFillet fillet(block);
  for (TopExp_Explorer it(block, TopAbs_EDGE); it.More(); it.Next()) {
    fillet.Add(4.0, TopoDS::Edge(it.Current()));
  }
  return fillet.Shape();
}

TopoDS_Shape ring_of_wire() { return BRepPrimAPI_MakeTorus(30.0, 4.0).Shape(); }

// A quarter of the ring: its torus face runs round the tube and not round the axis.
TopoDS_Shape bent_bar() { return BRepPrimAPI_MakeTorus(30.0, 4.0, 0.5 * kPi).Shape(); }

// A ball race's groove in a sleeve: the inner half of the tube is no face, the outer is.
TopoDS_Shape grooved_sleeve() {
  const TopoDS_Shape sleeve = BRepAlgoAPI_Cut(rod(30, -10, 10), rod(18, -11, 11)).Shape();
  return BRepAlgoAPI_Cut(sleeve, BRepPrimAPI_MakeTorus(30.0, 4.0).Shape()).Shape();
}

TopoDS_Shape ball() { return BRepPrimAPI_MakeSphere(gp_Pnt(3, 4, 5), 7.0).Shape(); }

TopoDS_Shape hollow_ball() {
  return BRepAlgoAPI_Cut(BRepPrimAPI_MakeSphere(10.0).Shape(),
                         BRepPrimAPI_MakeSphere(gp_Pnt(1, 2, 0), 6.0).Shape())
      .Shape();
}

TopoDS_Shape ball_with_flats() {
  return BRepAlgoAPI_Common(BRepPrimAPI_MakeSphere(10.0).Shape(),
                            BRepPrimAPI_MakeBox(gp_Pnt(-9, -8, -7), gp_Pnt(8, 9, 9.5)).Shape())
      .Shape();
}

TopoDS_Shape socket() {
  return BRepAlgoAPI_Cut(BRepPrimAPI_MakeBox(gp_Pnt(-20, -20, -20), gp_Pnt(20, 20, 2)).Shape(),
                         BRepPrimAPI_MakeSphere(10.0).Shape())
      .Shape();
}

TopoDS_Shape slotted_ring() {
  return BRepAlgoAPI_Cut(ring_of_wire(),
                         BRepPrimAPI_MakeBox(gp_Pnt(20, -3, 1), gp_Pnt(40, 3, 9)).Shape())
      .Shape();
}

struct Case {
  std::string name;
  std::function<TopoDS_Shape()> make;
};

void PrintTo(const Case& one, std::ostream* out) { *out << one.name; }

class RoundSolid : public ::testing::TestWithParam<Case> {};

// The judge: Open CASCADE's own integration of the shape in memory, whose curves are right.
double judged(const TopoDS_Shape& shape) {
  GProp_GProps props;
  BRepGProp::VolumeProperties(shape, props, 1e-12);
  return props.Mass();
}

TopoDS_Shape posed(const TopoDS_Shape& shape) {
  gp_Trsf turn;
  turn.SetRotation(gp_Ax1(gp_Pnt(1, 2, 3), gp_Dir(2, -1, 4)), 0.7);
  gp_Trsf shift;
  shift.SetTranslation(gp_Vec(120, -80, 45));
  return BRepBuilderAPI_Transform(shape, shift * turn, true).Shape();
}

double volume_read(const TopoDS_Shape& shape, SurfaceCurves curves) {
  const Folder folder;
  const auto file = folder.path() / "solid.step";
  write_step({{"Solid", shape, {}}}, Schema::ap214, FileUnit::mm, file, curves);
  return read_step(file, {}, Completeness::all_or_error).products.at(0).volume;
}

TEST_P(RoundSolid, HasItsVolumeWithAndWithoutCurvesInSurfaceParameters) {
  const TopoDS_Shape shape = posed(GetParam().make());
  const double truth = judged(shape);
  ASSERT_GT(truth, 0.0);
  EXPECT_NEAR(volume_read(shape, SurfaceCurves::left_out), truth, 1e-8 * truth);
  EXPECT_NEAR(volume_read(shape, SurfaceCurves::written), truth, 1e-8 * truth);
}

INSTANTIATE_TEST_SUITE_P(
    Closed, RoundSolid,
    ::testing::Values(Case{"FilletedShaft", filleted_shaft}, Case{"RoundedBlock", rounded_block},
                      Case{"RingOfWire", ring_of_wire}, Case{"BentBar", bent_bar},
                      Case{"GroovedSleeve", grooved_sleeve}, Case{"Ball", ball},
                      Case{"HollowBall", hollow_ball}, Case{"BallWithFlats", ball_with_flats},
                      Case{"Socket", socket}, Case{"SlottedRing", slotted_ring}),
    [](const auto& one) { return one.param.name; });

}  // namespace
}  // namespace spotblue::test
