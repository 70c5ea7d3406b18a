#include "geometry/mockup/workpiece.hpp"

#include <fmt/format.h>

#include <BRepAlgoAPI_Cut.hxx>
#include <BRepAlgoAPI_Fuse.hxx>
#include <BRepBuilderAPI_MakeEdge.hxx>
#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRepBuilderAPI_MakeWire.hxx>
#include <BRepBuilderAPI_Transform.hxx>
#include <BRepGProp.hxx>
#include <BRepPrimAPI_MakeBox.hxx>
#include <BRepPrimAPI_MakeCylinder.hxx>
#include <BRepPrimAPI_MakePrism.hxx>
#include <GC_MakeArcOfCircle.hxx>
#include <GProp_GProps.hxx>
#include <ShapeUpgrade_UnifySameDomain.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>
#include <cmath>
#include <utility>

#include "geometry/model/tolerances.hpp"

namespace spotblue {
namespace {

double volume_of(const TopoDS_Shape& shape) {
  GProp_GProps properties;
  BRepGProp::VolumeProperties(shape, properties);
  return properties.Mass();
}

template <typename Operation>
TopoDS_Shape operate(const MockupPlace& place, const TopoDS_Shape& solid,
                     const TopTools_ListOfShape& tools) {
  TopTools_ListOfShape arguments;
  arguments.Append(solid);
  Operation operation;
  operation.SetArguments(arguments);
  operation.SetTools(tools);
  operation.SetNonDestructive(true);
  operation.Build();
  if (!operation.IsDone() || operation.HasErrors()) {
    throw Error(ErrorCode::open_cascade_failed, {place.file, place.part},
                "Open CASCADE cannot make this cut", "change the sizes a little");
  }
  return operation.Shape();
}

gp_Pnt point_in(const gp_Ax2& axes, double x, double y, double z) {
  return axes.Location().Translated(gp_Vec(axes.XDirection()) * x + gp_Vec(axes.YDirection()) * y +
                                    gp_Vec(axes.Direction()) * z);
}

}  // namespace

Workpiece::Workpiece(TopoDS_Shape solid) : solid_(std::move(solid)), volume_(volume_of(solid_)) {}

void Workpiece::replace(const MockupPlace& place, const TopoDS_Shape& result) {
  int count = 0;
  TopoDS_Shape only;
  for (TopExp_Explorer solids(result, TopAbs_SOLID); solids.More(); solids.Next()) {
    only = solids.Current();
    ++count;
  }
  if (count == 0) {
    throw place.error("nothing is left of the part", "make the cut smaller");
  }
  if (count > 1) {
    throw place.error(fmt::format("the part would be in {} pieces", count),
                      "correct the sizes or the position");
  }
  solid_ = only;
}

void Workpiece::cut(const MockupPlace& place, const TopTools_ListOfShape& tools) {
  replace(place, operate<BRepAlgoAPI_Cut>(place, solid_, tools));
  const double left = volume_of(solid_);
  if (left > volume_ * (1.0 - kSameShare)) {
    throw place.error("cuts nothing: it lies outside the part or in a hole that is there already",
                      "correct its position and sizes");
  }
  volume_ = left;
}

void Workpiece::join(const MockupPlace& place, const TopTools_ListOfShape& tools) {
  replace(place, operate<BRepAlgoAPI_Fuse>(place, solid_, tools));
  volume_ = volume_of(solid_);
}

void Workpiece::merge_faces() {
  ShapeUpgrade_UnifySameDomain merge(solid_, true, true, false);
  merge.Build();
  solid_ = merge.Shape();
}

gp_Ax2 turned_axes(double x, double y, double z, double angle) {
  return {gp_Pnt(x, y, z), gp::DZ(), gp_Dir(std::cos(angle), std::sin(angle), 0.0)};
}

TopoDS_Shape cylinder_tool(const gp_Ax2& axes, double radius, double height) {
  return BRepPrimAPI_MakeCylinder(axes, radius, height).Solid();
}

TopoDS_Shape box_tool(const gp_Ax2& axes, Point low, Point high) {
  const gp_Ax2 corner(point_in(axes, low.x, low.y, low.z), axes.Direction(), axes.XDirection());
  return BRepPrimAPI_MakeBox(corner, high.x - low.x, high.y - low.y, high.z - low.z).Solid();
}

TopoDS_Shape key_tool(const gp_Ax2& axes, Point low, Point high, EndShape ends) {
  if (ends == EndShape::square) {
    return box_tool(axes, low, high);
  }
  const double radius = (high.y - low.y) / 2;
  const double middle = (high.y + low.y) / 2;
  const auto at = [&axes, &low](double y, double z) { return point_in(axes, low.x, y, z); };
  const double first = low.z + radius;
  const double last = high.z - radius;
  BRepBuilderAPI_MakeWire wire;
  const auto arc = [&wire](const gp_Pnt& from, const gp_Pnt& by, const gp_Pnt& to) {
    wire.Add(BRepBuilderAPI_MakeEdge(GC_MakeArcOfCircle(from, by, to).Value()).Edge());
  };
  if (last - first > kConfusion) {
    wire.Add(BRepBuilderAPI_MakeEdge(at(low.y, last), at(low.y, first)).Edge());
  }
  arc(at(low.y, first), at(middle, low.z), at(high.y, first));
  if (last - first > kConfusion) {
    wire.Add(BRepBuilderAPI_MakeEdge(at(high.y, first), at(high.y, last)).Edge());
  }
  arc(at(high.y, last), at(middle, high.z), at(low.y, last));
  const TopoDS_Face face = BRepBuilderAPI_MakeFace(wire.Wire(), true).Face();
  return BRepPrimAPI_MakePrism(face, gp_Vec(axes.XDirection()) * (high.x - low.x)).Shape();
}

}  // namespace spotblue
