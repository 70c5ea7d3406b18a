#include "support/modelled_threads.hpp"

#include <BRepBuilderAPI_MakeEdge.hxx>
#include <BRepBuilderAPI_MakePolygon.hxx>
#include <BRepBuilderAPI_MakeWire.hxx>
#include <BRepLib.hxx>
#include <BRepOffsetAPI_MakePipeShell.hxx>
#include <Geom2d_Line.hxx>
#include <Geom_CylindricalSurface.hxx>
#include <TopoDS_Edge.hxx>
#include <cmath>
#include <gp_Ax3.hxx>
#include <numbers>

namespace spotblue::test {

TopoDS_Shape helical(const ThreadProfile& profile) {
  const double radius = 0.5 * (profile.inner + profile.outer);
  const Handle(Geom_CylindricalSurface) round = new Geom_CylindricalSurface(gp_Ax3(), radius);
  const double turn = 2.0 * std::numbers::pi;
  const Handle(Geom2d_Line) line =
      new Geom2d_Line(gp_Pnt2d(0.0, profile.from), gp_Dir2d(turn, profile.pitch));
  const double length = profile.turns * std::hypot(turn, profile.pitch);
  const TopoDS_Edge helix = BRepBuilderAPI_MakeEdge(line, round, 0.0, length);
  BRepLib::BuildCurves3d(helix);
  const auto at = [&](double r, double half) { return gp_Pnt(r, 0.0, profile.from + half); };
  BRepBuilderAPI_MakePolygon section(at(profile.inner, -0.5 * profile.width_inner),
                                     at(profile.outer, -0.5 * profile.width_outer),
                                     at(profile.outer, 0.5 * profile.width_outer),
                                     at(profile.inner, 0.5 * profile.width_inner), true);
  BRepOffsetAPI_MakePipeShell pipe(BRepBuilderAPI_MakeWire(helix).Wire());
  pipe.SetMode(gp_Dir(0, 0, 1));
  pipe.Add(section.Wire());
  pipe.Build();
  pipe.MakeSolid();
  return pipe.Shape();
}

}  // namespace spotblue::test
