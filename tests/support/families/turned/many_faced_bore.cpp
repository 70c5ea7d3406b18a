// A bore whose surface comes in a dozen faces or more, as several programs write it.

#include <BRepBuilderAPI_MakeEdge.hxx>
#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRepBuilderAPI_MakeWire.hxx>
#include <BRepPrimAPI_MakePrism.hxx>
#include <TopoDS.hxx>
#include <gp_Ax2.hxx>
#include <gp_Circ.hxx>

#include "support/families/family.hpp"

namespace spotblue::test {
namespace {

TopoDS_Wire arcs(double diameter, double z, std::size_t count, double first) {
  const gp_Circ round(gp_Ax2(gp_Pnt(0, 0, z), gp_Dir(0, 0, 1)), diameter / 2);
  BRepBuilderAPI_MakeWire wire;
  const double step = kFullTurn / static_cast<double>(count);
  for (std::size_t i = 0; i < count; ++i) {
    const double from = first + step * static_cast<double>(i);
    wire.Add(BRepBuilderAPI_MakeEdge(round, from, from + step).Edge());
  }
  return wire.Wire();
}

TopoDS_Shape layer(double inner, double outer, double from, double to, std::size_t faces,
                   double first) {
  BRepBuilderAPI_MakeFace face(arcs(outer, from, 2, first), true);
  face.Add(TopoDS::Wire(arcs(inner, from, faces, first).Reversed()));
  return BRepPrimAPI_MakePrism(face.Face(), gp_Vec(0, 0, to - from)).Shape();
}

}  // namespace

Station many_faced_bore(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"many faced bore", {}, {}, {}};
  const double shaft = chance.size(8.0, 50.0);
  const double hole = shaft + some_clearance(chance, shaft);
  const double length = chance.size(15.0, 40.0);
  const std::size_t layers = 1 + chance.below(3);
  const std::size_t faces = 12 / layers;
  TopoDS_Shape hub;
  for (std::size_t i = 0; i < layers; ++i) {
    const double share = length / static_cast<double>(layers);
    const double from = share * static_cast<double>(i);
    const TopoDS_Shape one =
        layer(hole, hole + 18.0, from, from + share, faces, chance.between(0.0, 1.0));
    hub = i == 0 ? one : fuse(hub, one);
  }
  const Finish b = shop.finish();
  const auto house = station.add("Many faced hub", hub, {});
  const auto pin = station.add("Pin", turned(bar(0.0, shaft, -9.0, length + 7.0), b), b);
  station.truth.radial.push_back(centred(house, pin, hole, shaft, length));
  return station;
}

}  // namespace spotblue::test
