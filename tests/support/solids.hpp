#pragma once
/// @file
/// Solids for generated assemblies: turned parts and blocks with holes, whose faces can be whole,
/// in pieces, or written as B-spline or revolved surfaces.

#include <TopoDS_Shape.hxx>
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

/// The section turned about z.
TopoDS_Shape turned(const Section& section, const Finish& finish);

struct Drilled {
  double x = 0.0, y = 0.0, diameter = 0.0;
};
/// A block along the axes with holes through it along z.
struct BlockSize {
  double x_low = 0.0, x_high = 0.0, y_low = 0.0, y_high = 0.0, z_low = 0.0, z_high = 0.0;
};
TopoDS_Shape block(const BlockSize& size, const std::vector<Drilled>& holes, const Finish& finish);
/// A hexagon across flats `flats` about z.
TopoDS_Shape hexagon(double flats, double from, double to);

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
