// Solids that nothing can be relied on of: said by part, with what is wrong.

#include <gmock/gmock.h>

#include <BRepBuilderAPI_MakeSolid.hxx>
#include <BRepPrimAPI_MakeBox.hxx>
#include <BRepPrimAPI_MakeCylinder.hxx>
#include <BRepPrimAPI_MakeSphere.hxx>
#include <BRep_Builder.hxx>
#include <BRep_Tool.hxx>
#include <Geom_CylindricalSurface.hxx>
#include <Geom_Plane.hxx>
#include <TopExp_Explorer.hxx>
#include <TopLoc_Location.hxx>
#include <TopoDS.hxx>
#include <gp_Ax3.hxx>
#include <optional>

#include "geometry/faces/product_features.hpp"

namespace spotblue::unsound_test {

using ::testing::HasSubstr;
using ::testing::IsEmpty;

std::string unsound_of(const TopoDS_Shape& solid) {
  Product product;
  static_cast<void>(analyse_shape(solid, product));
  return product.unsound;
}

// A rod of radius 10 whose round face is said to be of another radius; its edges stay.
TopoDS_Shape rod_with_face_of(double radius) {
  const TopoDS_Shape rod = BRepPrimAPI_MakeCylinder(10, 40).Shape();
  for (TopExp_Explorer it(rod, TopAbs_FACE); it.More(); it.Next()) {
    const TopoDS_Face& face = TopoDS::Face(it.Current());
    if (!Handle(Geom_CylindricalSurface)::DownCast(BRep_Tool::Surface(face)).IsNull()) {
      BRep_Builder().UpdateFace(face, new Geom_CylindricalSurface(gp_Ax3(), radius),
                                TopLoc_Location(), 1e-7);
    }
  }
  return rod;
}

TopoDS_Shell shell_of(const TopoDS_Shape& solid) {
  return TopoDS::Shell(TopExp_Explorer(solid, TopAbs_SHELL).Current());
}

TopoDS_Shape with_void(const TopoDS_Shape& solid, const TopoDS_Shape& hollow) {
  return BRepBuilderAPI_MakeSolid(shell_of(solid), TopoDS::Shell(shell_of(hollow).Reversed()))
      .Solid();
}

TEST(Unsound, IsAFaceThatLiesOffItsOwnEdges) {
  EXPECT_THAT(unsound_of(rod_with_face_of(10.3)), HasSubstr("up to 0.3 mm off their own edges"));
}

TopoDS_Shape rod_with_corner_off_by(double mm) {
  const TopoDS_Shape rod = BRepPrimAPI_MakeCylinder(10, 40).Shape();
  const TopoDS_Vertex corner = TopoDS::Vertex(TopExp_Explorer(rod, TopAbs_VERTEX).Current());
  const gp_Pnt at = BRep_Tool::Pnt(corner);
  BRep_Builder().UpdateVertex(corner, gp_Pnt(at.X(), at.Y(), at.Z() + mm), 1e-7);
  return rod;
}

TEST(Unsound, IsAnEdgeThatEndsOffItsOwnCorner) {
  EXPECT_THAT(unsound_of(rod_with_corner_off_by(3.0)),
              HasSubstr("end up to 3 mm off their own corners"));
}

TEST(Unsound, IsNoPartWhoseCornersAreOnlyAsCoarseAsExportersLeaveThem) {
  EXPECT_EQ(unsound_of(rod_with_corner_off_by(0.02)), "");
}

TEST(Unsound, IsAPlaneThatLiesOffItsOwnEdges) {
  const TopoDS_Shape box = BRepPrimAPI_MakeBox(10, 20, 30).Shape();
  const TopoDS_Face face = TopoDS::Face(TopExp_Explorer(box, TopAbs_FACE).Current());
  BRep_Builder().UpdateFace(face, new Geom_Plane(gp_Pnt(0.02, 0, 0), gp_Dir(1, 0, 0)),
                            TopLoc_Location(), 1e-7);
  EXPECT_THAT(unsound_of(box), HasSubstr("up to 0.02 mm off"));
}

TEST(Unsound, IsNoFaceWithinTwoThousandths) {
  EXPECT_THAT(unsound_of(rod_with_face_of(10.0019)), IsEmpty());
  EXPECT_THAT(unsound_of(rod_with_face_of(10.0021)), HasSubstr("0.0021 mm off"));
}

TEST(Unsound, IsAVoidThatReachesOutOfItsSolid) {
  const TopoDS_Shape box = BRepPrimAPI_MakeBox(40, 40, 40).Shape();
  EXPECT_THAT(unsound_of(with_void(box, BRepPrimAPI_MakeBox(gp_Pnt(30, 10, 10), 20, 5, 5).Shape())),
              HasSubstr("a void reaches out"));
  EXPECT_THAT(unsound_of(with_void(box, BRepPrimAPI_MakeBox(gp_Pnt(60, 10, 10), 20, 5, 5).Shape())),
              HasSubstr("a void reaches out"));
}

TEST(Unsound, IsNoVoidInsideItsSolid) {
  const TopoDS_Shape ball = BRepPrimAPI_MakeSphere(20).Shape();
  EXPECT_THAT(
      unsound_of(with_void(ball, BRepPrimAPI_MakeBox(gp_Pnt(-5, -5, -17), 10, 10, 30).Shape())),
      IsEmpty());
  EXPECT_THAT(unsound_of(with_void(ball, BRepPrimAPI_MakeSphere(19.9).Shape())), IsEmpty());
}

TEST(Unsound, IsASolidWhoseFacesEncloseNoVolume) {
  const TopoDS_Shape box = BRepPrimAPI_MakeBox(10, 20, 30).Shape();
  const TopoDS_Face face = TopoDS::Face(TopExp_Explorer(box, TopAbs_FACE).Current());
  TopoDS_Shell shell;
  TopoDS_Solid solid;
  const BRep_Builder builder;
  builder.MakeShell(shell);
  builder.Add(shell, face);
  builder.Add(shell, face.Reversed());
  shell.Closed(true);
  builder.MakeSolid(solid);
  builder.Add(solid, shell);
  EXPECT_THAT(unsound_of(solid), HasSubstr("enclose no volume"));
}

}  // namespace spotblue::unsound_test
