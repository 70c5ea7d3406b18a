#include "geometry/faces/drawn_far.hpp"

#include <BRepBuilderAPI_Transform.hxx>
#include <BRep_Tool.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>
#include <cmath>
#include <gp_Trsf.hxx>

#include "geometry/occt/occt_values.hpp"

namespace spotblue {
namespace {

// mm. From there on what squares coordinates on its way, as Open CASCADE does, is 1e-8 mm off, and
// a direction's last digit moves what lies there by more than a surface may be off. Choice of this
// program, no source.
constexpr double kFar = 1e4;

}  // namespace

Point middle_of_corners(const TopoDS_Shape& shape) {
  Box box;
  for (TopExp_Explorer it(shape, TopAbs_VERTEX); it.More(); it.Next()) {
    extend(box, from_occt(BRep_Tool::Pnt(TopoDS::Vertex(it.Current()))));
  }
  return is_empty(box) ? Point{} : 0.5 * (box.low + box.high);
}

Point drawn_at(const TopoDS_Shape& shape) {
  const Point middle = middle_of_corners(shape);
  const double away = norm(middle);
  if (!std::isfinite(away) || away <= kFar) {
    return {};
  }
  // Taking whole mm off a coordinate loses no digit of it.
  return {std::round(middle.x), std::round(middle.y), std::round(middle.z)};
}

TopoDS_Shape brought_near(const TopoDS_Shape& shape, Point origin) {
  if (origin == Point{}) {
    return shape;
  }
  gp_Trsf back;
  back.SetTranslation(gp_Vec(-origin.x, -origin.y, -origin.z));
  return BRepBuilderAPI_Transform(shape, back, Standard_True).Shape();
}

Frame place_near(const Frame& as_drawn, const Product& product) {
  Frame shift;
  shift.rows[0][3] = product.drawn_at.x;
  shift.rows[1][3] = product.drawn_at.y;
  shift.rows[2][3] = product.drawn_at.z;
  return product.drawn_at == Point{} ? as_drawn : compose(as_drawn, shift);
}

}  // namespace spotblue
