#include "geometry/surfaces/surface_fit.hpp"

#include <gtest/gtest.h>

#include <BRepBuilderAPI_MakeFace.hxx>
#include <GeomConvert.hxx>
#include <Geom_BSplineSurface.hxx>
#include <Geom_CylindricalSurface.hxx>
#include <Geom_RectangularTrimmedSurface.hxx>
#include <Geom_SphericalSurface.hxx>
#include <TColStd_Array1OfInteger.hxx>
#include <TColStd_Array1OfReal.hxx>
#include <TColgp_Array2OfPnt.hxx>
#include <numbers>

#include "geometry/surfaces/face_surface.hpp"

namespace spotblue::surface_fit_test {

TopoDS_Face face_on(const Handle(Geom_Surface) & surface) {
  return BRepBuilderAPI_MakeFace(surface, 1e-7).Face();
}

// Knots moved to [from, to] without changing the surface.
void stretch_knots(TColStd_Array1OfReal& knots, double from, double to) {
  const double first = knots.First();
  const double span = knots.Last() - first;
  for (int i = knots.Lower(); i <= knots.Upper(); ++i) {
    knots(i) = from + (knots(i) - first) / span * (to - from);
  }
}

Handle(Geom_BSplineSurface) half_barrel(double radius, double length) {
  const Handle(Geom_Surface) cylinder = new Geom_CylindricalSurface(gp_Ax3(), radius);
  return GeomConvert::SurfaceToBSplineSurface(
      new Geom_RectangularTrimmedSurface(cylinder, 0.1, std::numbers::pi, 0.0, length));
}

TEST(SurfaceFit, ASplineWithKnotsByArcLengthInTheThousandsIsStillItsCylinder) {
  const Handle(Geom_BSplineSurface) spline = half_barrel(44.0, 30.0);
  TColStd_Array1OfReal knots(1, spline->NbUKnots());
  spline->UKnots(knots);
  stretch_knots(knots, 157.0, 3140.0);
  spline->SetUKnots(knots);
  TColStd_Array1OfReal along(1, spline->NbVKnots());
  spline->VKnots(along);
  stretch_knots(along, -5000.0, -4970.0);
  spline->SetVKnots(along);
  const FaceSurface found = face_surface(face_on(spline));
  ASSERT_EQ(found.kind, FaceSurface::Kind::cylinder);
  EXPECT_NEAR(found.radius, 44.0, 1e-9);
}

TEST(SurfaceFit, ASurfaceCollapsedToALineIsNoPlaneAndNoCylinder) {
  TColgp_Array2OfPnt poles(1, 2, 1, 2);
  for (int u = 1; u <= 2; ++u) {
    for (int v = 1; v <= 2; ++v) {
      poles(u, v) = gp_Pnt(10.0 * u + 3.0 * v, 1e-9 * v, 0.0);
    }
  }
  TColStd_Array1OfReal knots(1, 2);
  knots(1) = 0.0;
  knots(2) = 1.0;
  TColStd_Array1OfInteger times(1, 2);
  times.Init(2);
  const Handle(Geom_BSplineSurface) line =
      new Geom_BSplineSurface(poles, knots, knots, times, times, 1, 1);
  EXPECT_TRUE(sample_surface(BRepAdaptor_Surface(face_on(line), Standard_False)).empty());
}

// A half barrel of 44 whose poles stand off by turns by this much.
Handle(Geom_BSplineSurface) dented_barrel(double dent) {
  const Handle(Geom_BSplineSurface) spline = half_barrel(44.0, 30.0);
  spline->IncreaseDegree(3, 3);
  TColStd_Array1OfReal more(1, 6);
  TColStd_Array1OfInteger once(1, 6);
  once.Init(1);
  double u0 = 0.0;
  double u1 = 0.0;
  double v0 = 0.0;
  double v1 = 0.0;
  spline->Bounds(u0, u1, v0, v1);
  for (int i = 1; i <= 6; ++i) {
    more(i) = u0 + (u1 - u0) * i / 7.3;
  }
  spline->InsertUKnots(more, once);
  for (int u = 1; u <= spline->NbUPoles(); ++u) {
    for (int v = 1; v <= spline->NbVPoles(); ++v) {
      const gp_Pnt pole = spline->Pole(u, v);
      const gp_Vec out = gp_Vec(pole.X(), pole.Y(), 0.0).Normalized();
      spline->SetPole(u, v, pole.Translated(dent * ((u + v) % 2 == 0 ? 1.0 : -1.0) * out));
    }
  }
  return spline;
}

TEST(SurfaceFit, ASplineWithinATenthOfAMicronOfACylinderIsOneWithItsDeviation) {
  const FaceSurface found = face_surface(face_on(dented_barrel(8e-5)));
  ASSERT_EQ(found.kind, FaceSurface::Kind::cylinder);
  EXPECT_NEAR(found.radius, 44.0, 1e-4);
  EXPECT_GT(found.deviation, 1e-6);
  EXPECT_LE(found.deviation, 1e-4);
}

TEST(SurfaceFit, ASplineFartherOffACylinderIsNone) {
  EXPECT_EQ(face_surface(face_on(dented_barrel(2e-3))).kind, FaceSurface::Kind::other);
}

TEST(SurfaceFit, AnExactCylinderHasNoDeviation) {
  EXPECT_LT(face_surface(face_on(half_barrel(44.0, 30.0))).deviation, 1e-9);
}

// So small a patch lies near many cylinders.
TEST(SurfaceFit, ASliverOfABallIsNoCylinder) {
  const Handle(Geom_Surface) ball = new Geom_SphericalSurface(gp_Ax3(), 20.0);
  const Handle(Geom_BSplineSurface) sliver = GeomConvert::SurfaceToBSplineSurface(
      new Geom_RectangularTrimmedSurface(ball, 0.0, 1.0, 0.0, 0.004));
  EXPECT_EQ(face_surface(face_on(sliver)).kind, FaceSurface::Kind::other);
}

}  // namespace spotblue::surface_fit_test
