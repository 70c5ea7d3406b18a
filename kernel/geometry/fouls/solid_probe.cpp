#include "geometry/fouls/solid_probe.hpp"

#include <BRepBndLib.hxx>
#include <TopExp_Explorer.hxx>
#include <algorithm>
#include <array>

#include "geometry/occt/occt_values.hpp"

namespace spotblue::proof {

SolidProbe::SolidProbe(const TopoDS_Shape& shape) {
  for (TopExp_Explorer it(shape, TopAbs_SOLID); it.More(); it.Next()) {
    One& one = solids_.emplace_back();
    BRepBndLib::Add(it.Current(), one.box);
    one.classifier.Load(it.Current());
  }
}

bool SolidProbe::inside(Point p, double tolerance) {
  for (One& one : solids_) {
    if (one.box.IsOut(to_pnt(p))) {
      continue;
    }
    one.classifier.Perform(to_pnt(p), tolerance);
    if (one.classifier.State() == TopAbs_IN) {
      return true;
    }
  }
  return false;
}

bool SolidProbe::deep_inside(Point p, double depth) {
  const std::array<Point, 6> round{{{depth, 0, 0},
                                    {-depth, 0, 0},
                                    {0, depth, 0},
                                    {0, -depth, 0},
                                    {0, 0, depth},
                                    {0, 0, -depth}}};
  return inside(p, depth) &&
         std::ranges::all_of(round, [&](Point by) { return inside(p + by, 0.0); });
}

}  // namespace spotblue::proof
