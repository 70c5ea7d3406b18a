#include "support/solids.hpp"

#include <BRepAlgoAPI_Common.hxx>
#include <BRepAlgoAPI_Cut.hxx>
#include <BRepAlgoAPI_Fuse.hxx>
#include <BRepBuilderAPI_Copy.hxx>
#include <BRepBuilderAPI_MakeEdge.hxx>
#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRepBuilderAPI_MakePolygon.hxx>
#include <BRepBuilderAPI_MakeSolid.hxx>
#include <BRepBuilderAPI_MakeWire.hxx>
#include <BRepBuilderAPI_NurbsConvert.hxx>
#include <BRepBuilderAPI_Sewing.hxx>
#include <BRepBuilderAPI_Transform.hxx>
#include <BRepLib.hxx>
#include <BRepPrimAPI_MakePrism.hxx>
#include <BRepPrimAPI_MakeRevol.hxx>
#include <GC_MakeArcOfCircle.hxx>
#include <Geom_BSplineCurve.hxx>
#include <TColStd_Array1OfInteger.hxx>
#include <TColStd_Array1OfReal.hxx>
#include <TColgp_Array1OfPnt.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Face.hxx>
#include <TopoDS_Solid.hxx>
#include <cmath>
#include <gp_Ax1.hxx>
#include <gp_Circ.hxx>
#include <gp_Pnt.hxx>
#include <numbers>
#include <stdexcept>

namespace spotblue::test {
namespace {

constexpr double kTurn = 2.0 * std::numbers::pi;

gp_Pnt at(const Corner& c) { return {c.r, 0.0, c.z}; }

TopoDS_Edge straight(const gp_Pnt& a, const gp_Pnt& b, Surfaces surfaces) {
  if (surfaces != Surfaces::revolved) {
    return BRepBuilderAPI_MakeEdge(a, b).Edge();
  }
  // A line written as a B-spline keeps Open CASCADE from simplifying the surface it sweeps.
  TColgp_Array1OfPnt poles(1, 2);
  poles(1) = a;
  poles(2) = b;
  TColStd_Array1OfReal knots(1, 2);
  knots(1) = 0.0;
  knots(2) = 1.0;
  TColStd_Array1OfInteger multiplicities(1, 2);
  multiplicities(1) = multiplicities(2) = 2;
  return BRepBuilderAPI_MakeEdge(new Geom_BSplineCurve(poles, knots, multiplicities, 1)).Edge();
}

gp_Pnt towards(const gp_Pnt& from, const gp_Pnt& to, double by) {
  return from.Translated(gp_Vec(from, to).Normalized() * by);
}

Section without_repeats(const Section& section) {
  Section kept;
  for (const Corner& corner : section) {
    if (kept.empty() || corner.r != kept.back().r || corner.z != kept.back().z) {
      kept.push_back(corner);
    }
  }
  return kept;
}

TopoDS_Face section_face(const Section& corners, Surfaces surfaces) {
  const Section section = without_repeats(corners);
  BRepBuilderAPI_MakeWire wire;
  const std::size_t count = section.size();
  const auto leg = [](const Corner& c) { return c.fillet; };  // corners are square where rounded
  for (std::size_t i = 0; i < count; ++i) {
    const Corner& here = section[i];
    const Corner& next = section[(i + 1) % count];
    const Corner& after = section[(i + 2) % count];
    const gp_Pnt from = towards(at(here), at(next), leg(here));
    const gp_Pnt to = towards(at(next), at(here), leg(next));
    wire.Add(straight(from, to, surfaces));
    if (next.fillet > 0.0) {
      const gp_Pnt end = towards(at(next), at(after), leg(next));
      const gp_Pnt centre(end.X() + to.X() - next.r, 0.0, end.Z() + to.Z() - next.z);
      const gp_Pnt middle = towards(centre, at(next), next.fillet);
      wire.Add(BRepBuilderAPI_MakeEdge(GC_MakeArcOfCircle(to, middle, end).Value()).Edge());
    }
  }
  return BRepBuilderAPI_MakeFace(wire.Wire(), true).Face();
}

TopoDS_Shape only_solid(const TopoDS_Shape& shape) {
  TopExp_Explorer solids(shape, TopAbs_SOLID);
  if (!solids.More()) {
    throw std::runtime_error("generator: a boolean left no solid");
  }
  const TopoDS_Shape solid = solids.Current();
  solids.Next();
  if (solids.More()) {
    throw std::runtime_error("generator: a boolean left more than one solid");
  }
  return solid;
}

TopoDS_Wire round_wire(const RoundOutline& outline, double z) {
  BRepBuilderAPI_MakeWire wire;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const RoundCorner& a = outline[i];
    const RoundCorner& b = outline[(i + 1) % outline.size()];
    const gp_Pnt from(a.x, a.y, z);
    const gp_Pnt to(b.x, b.y, z);
    if (a.round) {
      const gp_Circ arc(gp_Ax2(gp_Pnt(0, 0, z), gp_Dir(0, 0, 1)), std::hypot(a.x, a.y));
      wire.Add(BRepBuilderAPI_MakeEdge(arc, from, to).Edge());
    } else {
      wire.Add(BRepBuilderAPI_MakeEdge(from, to).Edge());
    }
  }
  return wire.Wire();
}

TopoDS_Wire circle(const Drilled& hole, double z, double seam) {
  const gp_Circ round(gp_Ax2(gp_Pnt(hole.x, hole.y, z), gp_Dir(0, 0, 1)), hole.diameter / 2.0);
  BRepBuilderAPI_MakeWire wire;
  if (seam > 0.0) {
    wire.Add(BRepBuilderAPI_MakeEdge(round, 0.0, seam).Edge());
    wire.Add(BRepBuilderAPI_MakeEdge(round, seam, kTurn).Edge());
  } else {
    wire.Add(BRepBuilderAPI_MakeEdge(round).Edge());
  }
  return TopoDS::Wire(wire.Wire().Reversed());
}

}  // namespace

Finish choose_finish(FaceStyle style, Chance& chance) {
  const double seam = chance.between(0.6, 5.6);
  const double draw = chance.between(0.0, 1.0);
  switch (style) {
    case FaceStyle::plain:
      return {};
    case FaceStyle::split:
      return {seam, Surfaces::analytic};
    case FaceStyle::spline:
      return {0.0, Surfaces::spline};
    case FaceStyle::mixed:
      break;
  }
  if (draw < 0.25) {
    return {seam, Surfaces::analytic};
  }
  if (draw < 0.37) {
    return {0.0, Surfaces::spline};
  }
  return {0.0, draw < 0.45 ? Surfaces::revolved : Surfaces::analytic};
}

Section bar(double inner, double outer, double from, double to) {
  return {{inner / 2, from}, {outer / 2, from}, {outer / 2, to}, {inner / 2, to}};
}

Section chamfered_ring(double inner, double outer, double from, double to, double chamfer) {
  const double r = inner / 2;
  return {{r + chamfer, from}, {outer / 2, from}, {outer / 2, to},
          {r + chamfer, to},   {r, to - chamfer}, {r, from + chamfer}};
}

TopoDS_Shape turned(const Section& section, const Finish& finish) {
  bool bored = true;
  for (const Corner& corner : section) {
    bored = bored && corner.r > 0.0;
  }
  // On the axis a B-spline line sweeps a degenerate face Open CASCADE cannot build.
  const Surfaces surfaces =
      finish.surfaces == Surfaces::revolved && !bored ? Surfaces::analytic : finish.surfaces;
  const TopoDS_Face face = section_face(section, surfaces);
  const gp_Ax1 axis(gp_Pnt(0, 0, 0), gp_Dir(0, 0, 1));
  if (finish.seam <= 0.0) {
    return rewritten(BRepPrimAPI_MakeRevol(face, axis).Shape(), finish);
  }
  const TopoDS_Shape first = BRepPrimAPI_MakeRevol(face, axis, finish.seam).Shape();
  const TopoDS_Shape start = moved(face, turn(0, 0, 1, finish.seam));
  const TopoDS_Shape second = BRepPrimAPI_MakeRevol(start, axis, kTurn - finish.seam).Shape();
  return rewritten(fuse(first, second), finish);
}

TopoDS_Shape round_ring(double middle_diameter, double thickness, double z) {
  const gp_Circ section(gp_Ax2(gp_Pnt(middle_diameter / 2, 0, z), gp_Dir(0, 1, 0)), thickness / 2);
  const TopoDS_Wire wire = BRepBuilderAPI_MakeWire(BRepBuilderAPI_MakeEdge(section).Edge()).Wire();
  const gp_Ax1 axis(gp_Pnt(0, 0, 0), gp_Dir(0, 0, 1));
  TopoDS_Solid ring = TopoDS::Solid(
      BRepPrimAPI_MakeRevol(BRepBuilderAPI_MakeFace(wire, true).Face(), axis).Shape());
  BRepLib::OrientClosedSolid(ring);
  return ring;
}

TopoDS_Shape block(const BlockSize& size, const std::vector<Drilled>& holes, const Finish& finish) {
  BRepBuilderAPI_MakePolygon outline(gp_Pnt(size.x.low, size.y.low, size.z.low),
                                     gp_Pnt(size.x.high, size.y.low, size.z.low),
                                     gp_Pnt(size.x.high, size.y.high, size.z.low),
                                     gp_Pnt(size.x.low, size.y.high, size.z.low), true);
  BRepBuilderAPI_MakeFace face(outline.Wire(), true);
  for (const Drilled& hole : holes) {
    face.Add(circle(hole, size.z.low, finish.seam));
  }
  const TopoDS_Shape solid =
      BRepPrimAPI_MakePrism(face.Face(), gp_Vec(0, 0, size.z.high - size.z.low)).Shape();
  return rewritten(solid, finish);
}

double outline_area(const Outline& outline) {
  double twice = 0.0;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Spot& a = outline[i];
    const Spot& b = outline[(i + 1) % outline.size()];
    twice += a.x * b.y - b.x * a.y;
  }
  return twice / 2;
}

TopoDS_Shape prism(const Outline& outline, double from, double to, const Finish& finish) {
  BRepBuilderAPI_MakePolygon corners;
  for (const Spot& spot : outline) {
    corners.Add(gp_Pnt(spot.x, spot.y, from));
  }
  corners.Close();
  const TopoDS_Face face = BRepBuilderAPI_MakeFace(corners.Wire(), true).Face();
  return rewritten(BRepPrimAPI_MakePrism(face, gp_Vec(0, 0, to - from)).Shape(), finish);
}

TopoDS_Shape round_prism(const RoundOutline& outline, double from, double to,
                         const Finish& finish) {
  const TopoDS_Face face = BRepBuilderAPI_MakeFace(round_wire(outline, from), true).Face();
  return rewritten(BRepPrimAPI_MakePrism(face, gp_Vec(0, 0, to - from)).Shape(), finish);
}

TopoDS_Shape round_hub(const RoundOutline& hole, double outer, double from, double to,
                       const Finish& finish) {
  const TopoDS_Wire rim = TopoDS::Wire(circle({0, 0, outer}, from, finish.seam).Reversed());
  BRepBuilderAPI_MakeFace face(rim, true);
  face.Add(TopoDS::Wire(round_wire(hole, from).Reversed()));
  return rewritten(BRepPrimAPI_MakePrism(face.Face(), gp_Vec(0, 0, to - from)).Shape(), finish);
}

Outline polygon(std::size_t sides, double flats) {
  Outline outline;
  const double step = kTurn / static_cast<double>(sides);
  const double radius = flats / 2 / std::cos(step / 2);
  for (std::size_t i = 0; i < sides; ++i) {
    const double angle = step * (static_cast<double>(i) + 0.5);
    outline.push_back({radius * std::cos(angle), radius * std::sin(angle)});
  }
  return outline;
}

TopoDS_Shape hexagon(double flats, double from, double to) {
  return moved(prism(polygon(6, flats), from, to, {}), turn(0, 0, 1, kTurn / 12));
}

TopoDS_Shape sewn(const TopoDS_Shape& solid) {
  BRepBuilderAPI_Sewing sewing(1e-6);
  for (TopExp_Explorer face(solid, TopAbs_FACE); face.More(); face.Next()) {
    sewing.Add(BRepBuilderAPI_Copy(face.Current()).Shape());
  }
  sewing.Perform();
  TopExp_Explorer shell(sewing.SewedShape(), TopAbs_SHELL);
  if (!shell.More() || sewing.NbFreeEdges() > 0) {
    throw std::runtime_error("generator: faces did not sew to a solid");
  }
  TopoDS_Solid whole = BRepBuilderAPI_MakeSolid(TopoDS::Shell(shell.Current())).Solid();
  BRepLib::OrientClosedSolid(whole);
  return whole;
}

TopoDS_Shape cut(const TopoDS_Shape& from, const TopoDS_Shape& tool) {
  return only_solid(BRepAlgoAPI_Cut(from, tool).Shape());
}

TopoDS_Shape fuse(const TopoDS_Shape& a, const TopoDS_Shape& b) {
  return only_solid(BRepAlgoAPI_Fuse(a, b).Shape());
}

TopoDS_Shape common(const TopoDS_Shape& a, const TopoDS_Shape& b) {
  return only_solid(BRepAlgoAPI_Common(a, b).Shape());
}

TopoDS_Shape rewritten(const TopoDS_Shape& shape, const Finish& finish) {
  if (finish.surfaces != Surfaces::spline) {
    return shape;
  }
  return BRepBuilderAPI_NurbsConvert(shape, true).Shape();
}

TopoDS_Shape moved(const TopoDS_Shape& shape, const gp_Trsf& by) {
  return BRepBuilderAPI_Transform(shape, by, true).Shape();
}

gp_Trsf shift(double x, double y, double z) {
  gp_Trsf by;
  by.SetTranslation(gp_Vec(x, y, z));
  return by;
}

gp_Trsf turn(double x, double y, double z, double angle) {
  gp_Trsf by;
  by.SetRotation(gp_Ax1(gp_Pnt(0, 0, 0), gp_Dir(x, y, z)), angle);
  return by;
}

}  // namespace spotblue::test
