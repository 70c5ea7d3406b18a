// A bush with an oil groove that winds along its bore from end to end.

#include <BRepBuilderAPI_MakeEdge.hxx>
#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRepBuilderAPI_MakeSolid.hxx>
#include <BRepBuilderAPI_MakeWire.hxx>
#include <BRepBuilderAPI_Sewing.hxx>
#include <BRepFill.hxx>
#include <BRepLib.hxx>
#include <GCE2d_MakeSegment.hxx>
#include <Geom2d_TrimmedCurve.hxx>
#include <Geom_CylindricalSurface.hxx>
#include <ShapeFix_Shape.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Edge.hxx>
#include <TopoDS_Face.hxx>
#include <TopoDS_Solid.hxx>
#include <array>
#include <gp_Ax3.hxx>
#include <stdexcept>

#include "support/families/family.hpp"

namespace spotblue::test {
namespace {

struct Winding {
  double wide = 0.0, twist = 0.0, from = 0.0, to = 0.0;  // rad, rad, mm, mm
};

// A winding strip of a cylinder, and its edges: along the foot, up, along the head, up again.
struct Strip {
  std::array<TopoDS_Edge, 4> edges;
  TopoDS_Face face;
};

Strip winding_strip(const Winding& w, double radius) {
  const Handle(Geom_CylindricalSurface) surface =
      new Geom_CylindricalSurface(gp_Ax3(gp_Pnt(0, 0, 0), gp_Dir(0, 0, 1)), radius);
  const auto edge = [&](double u1, double v1, double u2, double v2) {
    TopoDS_Edge made = BRepBuilderAPI_MakeEdge(
                           GCE2d_MakeSegment(gp_Pnt2d(u1, v1), gp_Pnt2d(u2, v2)).Value(), surface)
                           .Edge();
    BRepLib::BuildCurve3d(made, 1e-6);
    return made;
  };
  Strip strip{{edge(0, w.from, w.wide, w.from), edge(w.wide, w.from, w.wide + w.twist, w.to),
               edge(w.twist, w.to, w.wide + w.twist, w.to), edge(0, w.from, w.twist, w.to)},
              {}};
  BRepBuilderAPI_MakeWire wire(strip.edges[0], strip.edges[1]);
  wire.Add(strip.edges[2]);
  wire.Add(strip.edges[3]);
  strip.face = BRepBuilderAPI_MakeFace(surface, wire.Wire(), true).Face();
  return strip;
}

// What a square-ended cutter takes that winds round the axis between two radii.
TopoDS_Shape winding_cutter(const Winding& w, double inner, double outer) {
  const Strip in = winding_strip(w, inner);
  const Strip out = winding_strip(w, outer);
  BRepBuilderAPI_Sewing sewing(1e-4);
  sewing.Add(in.face);
  sewing.Add(out.face);
  for (std::size_t i = 0; i < in.edges.size(); ++i) {
    sewing.Add(BRepFill::Face(in.edges.at(i), out.edges.at(i)));
  }
  sewing.Perform();
  TopExp_Explorer shell(sewing.SewedShape(), TopAbs_SHELL);
  if (!shell.More() || sewing.NbFreeEdges() > 0) {
    throw std::runtime_error("generator: a winding cutter did not close");
  }
  ShapeFix_Shape whole(BRepBuilderAPI_MakeSolid(TopoDS::Shell(shell.Current())).Solid());
  whole.Perform();  // ruled faces come without their edges' curves
  TopExp_Explorer body(whole.Shape(), TopAbs_SOLID);
  TopoDS_Solid solid = TopoDS::Solid(body.Current());
  BRepLib::OrientClosedSolid(solid);
  return solid;
}

}  // namespace

Station helical_groove(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"helical groove", {}, {}, {}};
  const double shaft = chance.size(16.0, 40.0);
  const double bore = shaft + chance.size(0.01, 0.2);
  const double length = chance.size(20.0, 40.0);
  const Winding w{3.0 / bore * chance.between(1.0, 2.0), chance.between(1.5, 4.5), -2.0,
                  length + 2.0};
  const Finish b = shop.finish();
  const TopoDS_Shape ring = turned(bar(bore, bore + 16.0, 0.0, length), {});
  const auto bush =
      station.add("Winding bush", cut(ring, winding_cutter(w, bore / 2 - 1.0, bore / 2 + 1.6)), {});
  const auto rod = station.add("Shaft", turned(bar(0.0, shaft, -9.0, length + 9.0), b), b);
  TrueRadial seat = centred(bush, rod, bore, shaft, length);
  seat.engaged_slack = 1e-4;
  station.truth.radial.push_back(seat);
  return station;
}

}  // namespace spotblue::test
