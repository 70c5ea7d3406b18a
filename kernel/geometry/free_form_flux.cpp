#include "geometry/free_form_flux.hpp"

#include <BRepBuilderAPI_Copy.hxx>
#include <BRepGProp_Domain.hxx>
#include <BRepGProp_Face.hxx>
#include <BRepGProp_Vinert.hxx>
#include <BRep_Tool.hxx>
#include <ShapeFix_Shape.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>

#include "geometry/occt_values.hpp"

namespace spotblue {
namespace {

bool has_parameter_curves(const TopoDS_Face& face) {
  for (TopExp_Explorer it(face, TopAbs_EDGE); it.More(); it.Next()) {
    double first = 0.0;
    double last = 0.0;
    if (BRep_Tool::CurveOnSurface(TopoDS::Edge(it.Current()), face, first, last).IsNull()) {
      return false;
    }
  }
  return true;
}

// Mending the face itself would change its neighbours.
TopoDS_Shape repaired_copy(const TopoDS_Face& face) {
  BRepBuilderAPI_Copy copy(face, Standard_False);
  ShapeFix_Shape fix(copy.Shape());
  fix.Perform();
  return fix.Shape();
}

}  // namespace

double free_form_flux(const TopoDS_Face& face, Point origin) {
  double flux = 0.0;
  const TopoDS_Shape measured =
      has_parameter_curves(face) ? TopoDS_Shape(face) : repaired_copy(face);
  for (TopExp_Explorer it(measured, TopAbs_FACE); it.More(); it.Next()) {
    BRepGProp_Face integrand(TopoDS::Face(it.Current()));
    BRepGProp_Domain domain(TopoDS::Face(it.Current()));
    BRepGProp_Vinert volume;
    volume.SetLocation(to_pnt(origin));
    volume.Perform(integrand, domain);
    flux += 3.0 * volume.Mass();
  }
  return flux;
}

}  // namespace spotblue
