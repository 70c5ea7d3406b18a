#pragma once
// A product's features, box and volume from its shape, as read and unrepaired.

#include <TopoDS_Shape.hxx>
#include <vector>

#include "spotblue/geometry/model.hpp"

namespace spotblue {

// What a reader of the product should know besides.
struct Remarks {
  int turned_loops = 0;     // loops and faces that the file holds the wrong way round
  int free_form_faces = 0;  // faces that are no plane, cylinder, cone, torus or sphere
  int threads = 0;          // modelled turn by turn
  int bare_solids = 0;      // that have no faces
  int flat_solids = 0;      // whose faces enclose no volume
  int stray_voids = 0;      // that reach out of the shell that should enclose them
  double ends_off = 0.0;    // mm, how far edges end off their vertices
  double edges_off = 0.0;   // mm, how far lines and circles lie off the plain faces that they bound
};

// Fills everything of `product` but id and name. Faces outside any solid are left out.
Remarks analyse_shape(const TopoDS_Shape& shape, Product& product);

// For a part that is not analysed: of its volume no more is known than that its box holds it.
void leave_unmeasured(const TopoDS_Shape& shape, Product& product);

}  // namespace spotblue
