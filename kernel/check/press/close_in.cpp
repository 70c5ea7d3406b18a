#include "check/press/close_in.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "check/press/press_case.hpp"
#include "group/joints/part_material.hpp"
#include "group/rings/beyond_joint.hpp"
#include "group/words/said_press.hpp"
#include "spotblue/geometry/wall.hpp"
#include "spotblue/mechanics/press_fit.hpp"

namespace spotblue {
namespace {

std::optional<std::size_t> press_seat_of(const WorkedGroup& worked, std::size_t running) {
  const std::vector<RadialSeat>& seats = worked.declared.look->seats.radial;
  const RadialSeat& bore = seats.at(running);
  for (std::size_t i = 0; i < seats.size(); ++i) {
    const bool same_part = seats[i].shaft.occurrence == bore.hole.occurrence &&
                           seats[i].centre_line == bore.centre_line;
    if (!same_part || shared_stretch(bore, seats[i]) < 0.0) {
      continue;
    }
    if (worked.surfaces[i].pressing == Pressing::always) {
      return i;
    }
  }
  return std::nullopt;
}

Elastic stiffened(Elastic material, double times) {
  material.youngs_modulus_mpa *= times;
  return material;
}

void take_ratios(const DeclaredJob& declared, const RadialSeat& press, Length bore,
                 CloseIn& found) {
  const PartMaterial bush = part_material(declared, press.shaft.occurrence);
  const PartMaterial hub = part_material(declared, press.hole.occurrence);
  if (!bush.elastic || !hub.elastic) {
    found.unknown = bush.elastic ? hub.unknown : bush.unknown;
    return;
  }
  bool any = false;
  const Length seat = Length::mm(press.hole_diameter);
  for (const WallStretch& stretch : wall_of_hub(declared.look->model, press).stretches) {
    const Length outside = Length::mm(stretch.outer);
    if (!(outside > seat) || !(seat > bore)) {
      continue;
    }
    // By itself and as one ring with the metal beyond the joint, either of the two.
    const Model& model = declared.look->model;
    const Interval bush_stiffness = stiffness_beyond(model, press.shaft.occurrence, press,
                                                     {bore.in_mm(), seat.in_mm(), *bush.elastic});
    const Interval hub_stiffness = stiffness_beyond(model, press.hole.occurrence, press,
                                                    {seat.in_mm(), outside.in_mm(), *hub.elastic});
    for (const double of_bush : {bush_stiffness.low, bush_stiffness.high}) {
      for (const double of_hub : {hub_stiffness.low, hub_stiffness.high}) {
        const double ratio =
            close_in_ratio({bore, seat, outside}, stiffened(*bush.elastic, of_bush),
                           stiffened(*hub.elastic, of_hub));
        found.least = any ? std::min(found.least, ratio) : ratio;
        found.greatest = any ? std::max(found.greatest, ratio) : ratio;
        any = true;
      }
    }
  }
  if (!any) {
    found.unknown = say(said::kWallNotKnown, declared.names.reference(press.hole.occurrence));
  }
}

}  // namespace

double close_in_ratio(const PressedRings& rings, const Elastic& bush, const Elastic& hub) {
  if (!(rings.bore > Length()) || !(rings.bore < rings.seat) || !(rings.seat < rings.outside)) {
    throw Error(ErrorCode::bad_input, {"", "rings"},
                fmt::format("need 0 < bore < seat < outside, got {}, {} and {} mm",
                            rings.bore.in_mm(), rings.seat.in_mm(), rings.outside.in_mm()),
                "check the diameters of bush and hub");
  }
  // Any interference will do; one in a thousand is of the size that presses have.
  PressFit fit;
  fit.joint_mm = rings.seat.in_mm();
  fit.interference_mm = 1e-3 * fit.joint_mm;
  fit.hub = hub;
  fit.inner = bush;
  fit.stretches = {{1.0, rings.outside.in_mm(), rings.bore.in_mm()}};
  return press_fit(fit).bore_close_in_mm / fit.interference_mm;
}

std::optional<CloseIn> close_in_of(const WorkedGroup& worked, std::size_t radial_seat) {
  const DeclaredJob& declared = worked.declared;
  const RadialSeat& running = declared.look->seats.radial.at(radial_seat);
  if (state_of(declared, running.hole.occurrence) != PartState::to_make) {
    return std::nullopt;
  }
  const auto number = press_seat_of(worked, radial_seat);
  if (!number) {
    return std::nullopt;
  }
  const RadialSeat& press = declared.look->seats.radial[*number];
  CloseIn found;
  found.press_seat = *number;
  const Length heights =
      Length::um(rz_um_of(declared, press.hole) + rz_um_of(declared, press.shaft));
  found.flattened = {kSmallRoughnessLoss * heights, kGreatRoughnessLoss * heights};
  take_ratios(declared, press, Length::mm(running.hole_diameter), found);
  return found;
}

}  // namespace spotblue
