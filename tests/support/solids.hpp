#pragma once
/// @file
/// Solids for generated assemblies: turned parts and blocks with holes, whose faces can be whole,
/// in pieces, or written as B-spline or revolved surfaces.

#include <TopoDS_Shape.hxx>
#include <cstddef>
#include <gp_Trsf.hxx>
#include <vector>

#include "support/chance.hpp"

namespace spotblue::test {

enum class Surfaces { analytic, spline, revolved };

/// How a part's faces are written; never changes its form.
struct Finish {
  double seam = 0.0;  ///< angle of a second seam, rad; 0 leaves round faces whole
  Surfaces surfaces = Surfaces::analytic;
};

enum class FaceStyle { plain, split, spline, mixed };

/// A finish of the given style.
Finish choose_finish(FaceStyle style, Chance& chance);

/// A corner of a turned part's half section; `hollow` rounds it with that radius.
struct Corner {
  double r = 0.0, z = 0.0;
  double fillet = 0.0;
};
using Section = std::vector<Corner>;

/// The half section of a plain ring or (inner = 0) bar.
Section bar(double inner, double outer, double from, double to);
/// A ring with a 45 degree chamfer of the given leg at both ends of its bore.
Section chamfered_ring(double inner, double outer, double from, double to, double chamfer);

/// A ring of round section about z, as an O-ring.
TopoDS_Shape round_ring(double middle_diameter, double thickness, double z);

/// The section turned about z.
TopoDS_Shape turned(const Section& section, const Finish& finish);

struct Drilled {
  double x = 0.0, y = 0.0, diameter = 0.0;
};
/// A block along the axes with holes through it along z.
struct BlockSize {
  struct Side {
    double low = 0.0, high = 0.0;
  };
  Side x, y, z;
};
TopoDS_Shape block(const BlockSize& size, const std::vector<Drilled>& holes, const Finish& finish);
struct Spot {
  double x = 0.0, y = 0.0;
};
/// A closed outline in x and y, corners counter-clockwise.
using Outline = std::vector<Spot>;

/// The outline's area, mm2; negative where it runs clockwise.
double outline_area(const Outline& outline);
/// The outline raised along z.
TopoDS_Shape prism(const Outline& outline, double from, double to, const Finish& finish);
/// A corner of an outline of lines and arcs about the origin: `round` joins it to the next by an
/// arc, counter-clockwise.
struct RoundCorner {
  double x = 0.0, y = 0.0;
  bool round = false;
};
using RoundOutline = std::vector<RoundCorner>;

/// The outline raised along z.
TopoDS_Shape round_prism(const RoundOutline& outline, double from, double to, const Finish& finish);
/// A round bar with the outline as a hole through it.
TopoDS_Shape round_hub(const RoundOutline& hole, double outer, double from, double to,
                       const Finish& finish);
/// A regular polygon about z, `flats` across opposite sides (or twice the middle's distance from a
/// side), one side square to x.
Outline polygon(std::size_t sides, double flats);
/// A hexagon across flats `flats` about z, one corner on x.
TopoDS_Shape hexagon(double flats, double from, double to);

/// The same solid made of its loose faces, sewn edge to edge.
TopoDS_Shape sewn(const TopoDS_Shape& solid);

TopoDS_Shape cut(const TopoDS_Shape& from, const TopoDS_Shape& tool);
TopoDS_Shape fuse(const TopoDS_Shape& a, const TopoDS_Shape& b);
/// What both solids cover.
TopoDS_Shape common(const TopoDS_Shape& a, const TopoDS_Shape& b);
/// The same solid with its faces rewritten as the finish wants (after cuts).
TopoDS_Shape rewritten(const TopoDS_Shape& shape, const Finish& finish);
TopoDS_Shape moved(const TopoDS_Shape& shape, const gp_Trsf& by);

gp_Trsf shift(double x, double y, double z);
/// A turn about an axis through the origin.
gp_Trsf turn(double x, double y, double z, double angle);

}  // namespace spotblue::test
