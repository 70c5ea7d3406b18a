#pragma once
// Models made in memory from shapes of Open CASCADE, for tests of features and seats.

#include <BRepAlgoAPI_Cut.hxx>
#include <BRepPrimAPI_MakeBox.hxx>
#include <BRepPrimAPI_MakeCone.hxx>
#include <BRepPrimAPI_MakeCylinder.hxx>
#include <TopoDS_Shape.hxx>
#include <gp_Ax2.hxx>
#include <string>
#include <vector>

#include "geometry/faces/product_features.hpp"
#include "spotblue/geometry/model.hpp"

namespace spotblue::testing {

inline gp_Ax2 up_from(double z, double x = 0.0, double y = 0.0) {
  return gp_Ax2(gp_Pnt(x, y, z), gp_Dir(0, 0, 1));
}
inline TopoDS_Shape rod(double diameter, double from, double to, double x = 0.0, double y = 0.0) {
  return BRepPrimAPI_MakeCylinder(up_from(from, x, y), 0.5 * diameter, to - from).Shape();
}
inline TopoDS_Shape cut(const TopoDS_Shape& from, const TopoDS_Shape& what) {
  return BRepAlgoAPI_Cut(from, what).Shape();
}
inline TopoDS_Shape tube(double outside, double bore, double from, double to) {
  return cut(rod(outside, from, to), rod(bore, from - 1.0, to + 1.0));
}
inline TopoDS_Shape block(double x, double y, double from, double to) {
  return BRepPrimAPI_MakeBox(gp_Pnt(-0.5 * x, -0.5 * y, from), gp_Pnt(0.5 * x, 0.5 * y, to))
      .Shape();
}

struct PlacedShape {
  std::string name;
  TopoDS_Shape shape;
  Frame frame;
};

// One product and one occurrence for each; products are named as given.
inline Model model_of(const std::vector<PlacedShape>& parts) {
  Model model;
  for (const PlacedShape& part : parts) {
    Product product;
    product.id = product.name = part.name;
    analyse_shape(part.shape, product);
    Occurrence occurrence;
    occurrence.id = occurrence.path = part.name;
    occurrence.product = ProductId(model.products.size());
    occurrence.frame = part.frame;
    occurrence.mirrored = is_mirror(part.frame);
    occurrence.box = place_box(part.frame, product.box);
    model.products.push_back(std::move(product));
    model.occurrences.push_back(std::move(occurrence));
  }
  return model;
}

}  // namespace spotblue::testing
