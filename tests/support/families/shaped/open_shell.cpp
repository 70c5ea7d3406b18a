// A pin in its hub, and beside them loose faces that bound no solid: a box without a lid round the
// pin's end, or the hub's own bore once more as a skin.

#include <BRep_Builder.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS_Shell.hxx>

#include "support/families/family.hpp"

namespace spotblue::test {
namespace {

TopoDS_Shape without_face(const TopoDS_Shape& solid, int left_out) {
  TopoDS_Shell shell;
  const BRep_Builder builder;
  builder.MakeShell(shell);
  int number = 0;
  for (TopExp_Explorer face(solid, TopAbs_FACE); face.More(); face.Next()) {
    if (number++ != left_out) {
      builder.Add(shell, face.Current());
    }
  }
  return shell;
}

}  // namespace

Station open_shell(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"open shell", {}, {}, {}};
  const double shaft = chance.size(8.0, 30.0);
  const double hole = shaft + some_clearance(chance, shaft);
  const double length = chance.size(10.0, 24.0);
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const auto hub = station.add("Hub", turned(bar(hole, hole + 16.0, 0.0, length), a), a);
  const auto rod = station.add("Pin", turned(bar(0.0, shaft, -9.0, length + 9.0), b), b);
  station.truth.radial.push_back(centred(hub, rod, hole, shaft, length));
  const double half = shaft / 2 + 0.5;
  station.open.push_back(
      chance.in(0.5)
          ? without_face(
                block({.x = {-half, half}, .y = {-half, half}, .z = {-20.0, -2.0}}, {}, {}), 1)
          : without_face(turned(bar(hole, hole + 16.0, 0.0, length), {}), 0));
  return station;
}

}  // namespace spotblue::test
