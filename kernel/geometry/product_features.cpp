#include "geometry/product_features.hpp"

#include <BRepBndLib.hxx>
#include <Bnd_Box.hxx>
#include <TopExp_Explorer.hxx>

namespace spotblue {

void analyse_shape(const TopoDS_Shape& shape, Product& product) {
  for (TopExp_Explorer each(shape, TopAbs_SOLID); each.More(); each.Next()) {
    ++product.solids;
  }
  for (TopExp_Explorer each(shape, TopAbs_FACE); each.More(); each.Next()) {
    ++product.faces;
  }
  Bnd_Box box;
  BRepBndLib::Add(shape, box, Standard_False);
  if (!box.IsVoid()) {
    const gp_Pnt low = box.CornerMin();
    const gp_Pnt high = box.CornerMax();
    product.box = {{low.X(), low.Y(), low.Z()}, {high.X(), high.Y(), high.Z()}};
  }
}

}  // namespace spotblue
