#pragma once
// A solid on the bench: cut and joined step by step, each step checked.

#include <TopTools_ListOfShape.hxx>
#include <TopoDS_Shape.hxx>
#include <gp_Ax2.hxx>

#include "geometry/mockup/mockup_check.hpp"

namespace spotblue {

class Workpiece {
 public:
  explicit Workpiece(TopoDS_Shape solid);

  /// Takes the tools away. Throws Error bad_input when they miss the part, leave nothing, or leave
  /// it in pieces; open_cascade_failed when Open CASCADE cannot do it.
  void cut(const MockupPlace& place, const TopTools_ListOfShape& tools);
  /// Adds the tools. Throws Error bad_input when one of them does not touch the part.
  void join(const MockupPlace& place, const TopTools_ListOfShape& tools);
  /// Makes one face of faces that lie on one surface.
  void merge_faces();

  [[nodiscard]] const TopoDS_Shape& solid() const { return solid_; }

 private:
  void replace(const MockupPlace& place, const TopoDS_Shape& result);

  TopoDS_Shape solid_;
  double volume_ = 0.0;
};

/// Right-handed axes: z along the part, x at `angle` from the part's x.
[[nodiscard]] gp_Ax2 turned_axes(double x, double y, double z, double angle);
[[nodiscard]] TopoDS_Shape cylinder_tool(const gp_Ax2& axes, double radius, double height);
/// A box between two corners in the coordinates of `axes`.
[[nodiscard]] TopoDS_Shape box_tool(const gp_Ax2& axes, Point low, Point high);
/// A key shape in the coordinates of `axes`: length along z, width centred on y, height along x.
[[nodiscard]] TopoDS_Shape key_tool(const gp_Ax2& axes, Point low, Point high, EndShape ends);

}  // namespace spotblue
