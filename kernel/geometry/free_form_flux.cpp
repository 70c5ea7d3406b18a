#include "geometry/free_form_flux.hpp"

#include <BRepBuilderAPI_Copy.hxx>
#include <BRepGProp_Domain.hxx>
#include <BRepGProp_Face.hxx>
#include <BRepGProp_VinertGK.hxx>
#include <ShapeBuild_Edge.hxx>
#include <ShapeFix_Shape.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>

#include "geometry/occt_values.hpp"

namespace spotblue {
namespace {

constexpr double kRelativeError = 1e-7;

TopoDS_Shape with_new_parameter_curves(const TopoDS_Face& face) {
  BRepBuilderAPI_Copy copy(face, Standard_False);
  const TopoDS_Face own = TopoDS::Face(copy.Shape());
  const ShapeBuild_Edge strip;
  for (TopExp_Explorer it(own, TopAbs_EDGE); it.More(); it.Next()) {
    strip.RemovePCurve(TopoDS::Edge(it.Current()), own);
  }
  ShapeFix_Shape fix(own);
  fix.Perform();
  return fix.Shape();
}

}  // namespace

double free_form_flux(const TopoDS_Face& face, Point origin) {
  double flux = 0.0;
  const TopoDS_Shape measured = with_new_parameter_curves(face);
  for (TopExp_Explorer it(measured, TopAbs_FACE); it.More(); it.Next()) {
    BRepGProp_Face integrand(TopoDS::Face(it.Current()));
    BRepGProp_Domain domain(TopoDS::Face(it.Current()));
    BRepGProp_VinertGK volume;
    volume.SetLocation(to_pnt(origin));
    volume.Perform(integrand, domain, kRelativeError);
    flux += 3.0 * volume.Mass();
  }
  return flux;
}

}  // namespace spotblue
