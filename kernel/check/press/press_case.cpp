#include "check/press/press_case.hpp"

#include <algorithm>
#include <numbers>

#include "group/joints/part_material.hpp"
#include "group/rings/beyond_joint.hpp"
#include "group/words/said_press.hpp"

namespace spotblue {
namespace {

constexpr double kNoLength_mm = 1e-6;  // shorter stretches come from rounding

// Stretches where one has a groove are left out: nothing is pressed on anything there.
std::vector<JointStretch> shared_stretches(const Wall& hub, const Wall& inner,
                                           const RadialSeat& seat) {
  // The larger of the two sizes: the rings must enclose the joint whatever the sizes turn out.
  const double joint = std::max(seat.hole_diameter, seat.shaft_diameter);
  std::vector<JointStretch> shared;
  for (const WallStretch& outside : hub.stretches) {
    for (const WallStretch& inside : inner.stretches) {
      const double from = std::max(outside.from, inside.from);
      const double to = std::min(outside.to, inside.to);
      const bool touch = outside.inner < seat.hole_diameter + kNoLength_mm &&
                         inside.outer > seat.shaft_diameter - kNoLength_mm;
      if (touch && to - from > kNoLength_mm && outside.outer > joint && inside.inner < joint) {
        shared.push_back({from, to, outside.outer, inside.inner});
      }
    }
  }
  return shared;
}

PressCase press_case(const DeclaredJob& declared, std::size_t index, const SurfaceSizes& surface) {
  const Model& model = declared.look->model;
  const RadialSeat& seat = declared.look->seats.radial[index];
  PressCase pressed;
  pressed.seat = index;
  pressed.must_hold = surface.pressing == Pressing::always;
  pressed.sizes = surface.sizes;
  pressed.hub = part_material(declared, seat.hole.occurrence);
  pressed.inner = part_material(declared, seat.shaft.occurrence);
  const Wall hub = wall_of_hub(model, seat);
  const Wall inner = wall_of_shaft(model, seat);
  pressed.stretches = shared_stretches(hub, inner, seat);
  pressed.blind_spots = hub.blind_spots;
  pressed.blind_spots.insert(pressed.blind_spots.end(), inner.blind_spots.begin(),
                             inner.blind_spots.end());
  pressed.rz_hub_um = rz_um_of(declared, seat.hole);
  pressed.rz_inner_um = rz_um_of(declared, seat.shaft);
  return pressed;
}

Saying third_of(const WorkedGroup& worked, std::size_t number) {
  const std::vector<RadialSeat>& seats = worked.declared.look->seats.radial;
  const RadialSeat& own = seats[number];
  for (std::size_t i = 0; i < seats.size(); ++i) {
    const bool outside = seats[i].shaft.occurrence == own.hole.occurrence;
    const bool inside = seats[i].hole.occurrence == own.shaft.occurrence;
    if ((outside || inside) && worked.surfaces[i].pressing != Pressing::none &&
        seats[i].centre_line == own.centre_line && shared_stretch(own, seats[i]) > kNoLength_mm) {
      return say(said::kPressedThereToo,
                 worked.declared.names.reference(outside ? seats[i].hole.occurrence
                                                         : seats[i].shaft.occurrence));
    }
  }
  return {};
}

}  // namespace

double shared_stretch(const RadialSeat& a, const RadialSeat& b) {
  return shared_length({a.from, a.to}, ordered(station(a.axis, at_station(b.axis, b.from)),
                                               station(a.axis, at_station(b.axis, b.to))));
}

std::vector<PressCase> press_cases(const WorkedGroup& worked) {
  std::vector<PressCase> cases;
  for (std::size_t i = 0; i < worked.surfaces.size(); ++i) {
    if (worked.surfaces[i].pressing != Pressing::none) {
      cases.push_back(press_case(worked.declared, i, worked.surfaces[i]));
      cases.back().third = third_of(worked, i);
    }
  }
  return cases;
}

double interference_mm(const PressCase& pressed, FitEnd end) {
  const Limits clearance = pressed.sizes.found.clearance;
  switch (end) {
    case FitEnd::tightest:
      return -clearance.lower.in_mm();
    case FitEnd::loosest:
      return -clearance.upper.in_mm();
    case FitEnd::middle:
      break;
  }
  return -0.5 * (clearance.lower + clearance.upper).in_mm();
}

double roughness_loss(FitEnd end) {
  return end == FitEnd::loosest ? kGreatRoughnessLoss : kSmallRoughnessLoss;
}

double effective_mm(const PressCase& pressed, FitEnd end) {
  return effective_interference_mm(interference_mm(pressed, end), pressed.rz_hub_um,
                                   pressed.rz_inner_um, roughness_loss(end));
}

Saying not_computable(const DeclaredJob& declared, const PressCase& pressed) {
  const RadialSeat& seat = declared.look->seats.radial.at(pressed.seat);
  Saying why = pressed.hub.unknown;
  why += pressed.inner.unknown;
  if (pressed.stretches.empty()) {
    why += said::kWallsNotFound;
  }
  if (!is_whole_ring(seat)) {
    why += say(said::kGoesRoundOnly, angle(seat.coverage));
  }
  return why;
}

PressFit press_fit_at(const DeclaredJob& declared, const PressCase& pressed, FitEnd end) {
  const RadialSeat& seat = declared.look->seats.radial.at(pressed.seat);
  PressFit fit;
  fit.joint_mm = 0.5 * (seat.hole_diameter + seat.shaft_diameter);
  fit.interference_mm = effective_mm(pressed, end);
  fit.hub = *pressed.hub.elastic;
  fit.inner = *pressed.inner.elastic;
  fit.friction_least = declared.job->conditions.friction_least;
  fit.friction_greatest = declared.job->conditions.friction_greatest;
  for (const JointStretch& stretch : pressed.stretches) {
    fit.stretches.push_back(
        {stretch.to - stretch.from, stretch.hub_outside_mm, stretch.inner_bore_mm});
  }
  return fit;
}

PressFit stiffest_press_fit(const DeclaredJob& declared, const PressCase& pressed) {
  const Model& model = declared.look->model;
  const RadialSeat& seat = declared.look->seats.radial.at(pressed.seat);
  PressFit fit = press_fit_at(declared, pressed, FitEnd::tightest);
  double hub = 1.0;
  double inner = 1.0;
  for (const JointStretch& stretch : pressed.stretches) {
    hub = std::max(hub, stiffness_beyond(model, seat.hole.occurrence, seat,
                                         {fit.joint_mm, stretch.hub_outside_mm, fit.hub})
                            .high);
    inner = std::max(inner, stiffness_beyond(model, seat.shaft.occurrence, seat,
                                             {stretch.inner_bore_mm, fit.joint_mm, fit.inner})
                                .high);
  }
  fit.hub.youngs_modulus_mpa *= hub;
  fit.inner.youngs_modulus_mpa *= inner;
  return fit;
}

PressState press_state(const DeclaredJob& declared, const PressCase& pressed, FitEnd end) {
  return press_fit(press_fit_at(declared, pressed, end));
}

}  // namespace spotblue
