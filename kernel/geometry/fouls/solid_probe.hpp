#pragma once
/// @file
/// Points asked against a solid, with Open CASCADE's classifier made ready once.

#include <BRepClass3d_SolidClassifier.hxx>
#include <Bnd_Box.hxx>
#include <TopoDS_Shape.hxx>
#include <list>

#include "spotblue/geometry/vector.hpp"

namespace spotblue::proof {

class SolidProbe {
 public:
  explicit SolidProbe(const TopoDS_Shape& shape);
  /// Whether the point lies in one of the solids, farther than `tolerance` from its faces.
  [[nodiscard]] bool inside(Point p, double tolerance);
  /// Whether all within about `depth` of the point lies in them, by six points round it: a ray of
  /// Open CASCADE's may graze the very face that the point lies on.
  [[nodiscard]] bool deep_inside(Point p, double depth);

 private:
  struct One {
    Bnd_Box box;
    BRepClass3d_SolidClassifier classifier;
  };
  std::list<One> solids_;
};

}  // namespace spotblue::proof
