// Two spur gears with true involute flanks: with backlash they are clear of one another, with teeth
// too thick they overlap.

#include <BRepBuilderAPI_MakeEdge.hxx>
#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRepBuilderAPI_MakeWire.hxx>
#include <BRepPrimAPI_MakePrism.hxx>
#include <GeomAPI_Interpolate.hxx>
#include <Geom_BSplineCurve.hxx>
#include <TColgp_HArray1OfPnt.hxx>
#include <cmath>
#include <gp_Ax2.hxx>
#include <gp_Circ.hxx>

#include "support/families/family.hpp"

namespace spotblue::test {
namespace {

constexpr double kPressure = kFullTurn / 18.0;  // 20 degrees

struct Gear {
  double module = 0.0, teeth = 0.0, thickness = 0.0;  // of a tooth on the pitch circle
  [[nodiscard]] double pitch() const { return module * teeth / 2; }
  [[nodiscard]] double base() const { return pitch() * std::cos(kPressure); }
  [[nodiscard]] double tip() const { return pitch() + 0.8 * module; }  // stub teeth
  [[nodiscard]] double root() const { return pitch() - module; }
  // Half the angle a tooth fills at a radius, by the involute of the base circle.
  [[nodiscard]] double half_angle(double r) const {
    const double at = std::acos(std::min(1.0, base() / r));
    return thickness / (2.0 * pitch()) + std::tan(kPressure) - kPressure - (std::tan(at) - at);
  }
};

gp_Pnt polar(double r, double angle, double z) {
  return {r * std::cos(angle), r * std::sin(angle), z};
}

// From where the involute begins, on the base circle or the root circle, to the tip or back.
TopoDS_Edge flank(const Gear& gear, double middle, double side, double z) {
  constexpr int kPoints = 9;
  const double from = std::max(gear.base(), gear.root());
  const Handle(TColgp_HArray1OfPnt) points = new TColgp_HArray1OfPnt(1, kPoints);
  for (int i = 0; i < kPoints; ++i) {
    const double share = static_cast<double>(side < 0.0 ? i : kPoints - 1 - i) / (kPoints - 1);
    const double r = from + (gear.tip() - from) * share * share;
    points->SetValue(i + 1, polar(r, middle + side * gear.half_angle(r), z));
  }
  GeomAPI_Interpolate curve(points, false, 1e-9);
  curve.Perform();
  return BRepBuilderAPI_MakeEdge(curve.Curve()).Edge();
}

TopoDS_Shape gear_solid(const Gear& gear, double bore, double wide) {
  BRepBuilderAPI_MakeWire wire;
  const double step = kFullTurn / gear.teeth;
  const double start = std::max(gear.base(), gear.root());
  const auto arc = [&](double r, double from, double to) {
    const gp_Circ circle(gp_Ax2(gp_Pnt(0, 0, 0), gp_Dir(0, 0, 1)), r);
    wire.Add(BRepBuilderAPI_MakeEdge(circle, polar(r, from, 0), polar(r, to, 0)).Edge());
  };
  const auto radial = [&](double from, double to, double angle) {
    if (gear.base() > gear.root()) {
      wire.Add(BRepBuilderAPI_MakeEdge(polar(from, angle, 0), polar(to, angle, 0)).Edge());
    }
  };
  for (int i = 0; i < static_cast<int>(gear.teeth); ++i) {
    const double middle = step * i;
    const double foot = gear.half_angle(start);
    const double crest = gear.half_angle(gear.tip());
    radial(gear.root(), start, middle - foot);
    wire.Add(flank(gear, middle, -1.0, 0.0));
    arc(gear.tip(), middle - crest, middle + crest);
    wire.Add(flank(gear, middle, 1.0, 0.0));
    radial(start, gear.root(), middle + foot);
    arc(gear.root(), middle + foot, middle + step - foot);
  }
  BRepBuilderAPI_MakeFace face(wire.Wire(), true);
  BRepBuilderAPI_MakeWire hole(
      BRepBuilderAPI_MakeEdge(gp_Circ(gp_Ax2(gp_Pnt(0, 0, 0), gp_Dir(0, 0, -1)), bore / 2)).Edge());
  face.Add(hole.Wire());
  return BRepPrimAPI_MakePrism(face.Face(), gp_Vec(0, 0, wide)).Shape();
}

}  // namespace

Station involute_gears(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"involute gears", {}, {}, {}};
  const double module = chance.size(1.0, 2.0);
  const double pinion = 14.0 + static_cast<double>(chance.below(4));
  const double wheel = 16.0 + static_cast<double>(chance.below(6));
  const bool clear = chance.in(0.6);
  const double backlash = clear ? chance.between(0.05, 0.2) : -chance.between(0.1, 0.3);
  const double thickness = std::acos(-1.0) * module / 2 - backlash / 2;
  const Gear one{module, pinion, thickness};
  const Gear two{module, wheel, thickness};
  // A tooth of the pinion points at a gap of the wheel.
  const double apart = one.pitch() + two.pitch();
  const auto a = station.add("Pinion", gear_solid(one, 6.0, 8.0), {});
  const auto b =
      station.add("Wheel", gear_solid(two, 8.0, 6.0), {},
                  shift(apart, 0, 1.0) * turn(0, 0, 1, kFullTurn / 2 - kFullTurn / 2 / wheel));
  if (!clear) {
    station.truth.fouls.push_back({a, b, {}, 0.0, true});
  }
  return station;
}

}  // namespace spotblue::test
