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
  // Face by face: BRepBndLib throws "Bnd_Box is void" on some whole unhealed solids.
  Bnd_Box box;
  for (TopExp_Explorer each(shape, TopAbs_FACE); each.More(); each.Next()) {
    Bnd_Box of_face;
    BRepBndLib::Add(each.Current(), of_face, Standard_False);
    box.Add(of_face);
  }
  if (!box.IsVoid()) {
    const gp_Pnt low = box.CornerMin();
    const gp_Pnt high = box.CornerMax();
    product.box = {{low.X(), low.Y(), low.Z()}, {high.X(), high.Y(), high.Z()}};
  }
}

}  // namespace spotblue
