#include "python/values/numbers.hpp"
#include "spotblue/mechanics/press_fit.hpp"
#include "spotblue/mechanics/shrink_in.hpp"

namespace spotblue::python {
namespace {

void bind_press_values(py::module_& module) {
  Record<PressStretch>(module, "PressStretch", "A length of the joint with plain walls, mm.")
      .field("length_mm", &PressStretch::length_mm, "mm, > 0.")
      .field("hub_outside_mm", &PressStretch::hub_outside_mm, "Diameter, mm, > the joint's.")
      .field("inner_bore_mm", &PressStretch::inner_bore_mm, "Diameter, mm; 0 is solid.")
      .done();
  Record<PressFit>(module, "PressFit", "A press or shrink fit at one interference.")
      .field("joint_mm", &PressFit::joint_mm, "Nominal diameter, mm, > 0.")
      .field("interference_mm", &PressFit::interference_mm, "Effective, diametral, mm, 0 or more.")
      .field("hub", &PressFit::hub, "Elastic values of the hub.")
      .field("inner", &PressFit::inner, "Elastic values of the inner part.")
      .field("friction_least", &PressFit::friction_least, "Of the joint, > 0.")
      .field("friction_greatest", &PressFit::friction_greatest, "No less than the least.")
      .field("stretches", &PressFit::stretches, "At least one; set the whole list.")
      .done();
  choice<PressSurface>(module, "PressSurface", "The four surfaces that can give way.",
                       {"hub bore", "hub outside", "inner outside", "inner bore"});
  Record<StretchState>(module, "StretchState", "One stretch of a pressed joint.")
      .field("pressure_mpa", &StretchState::pressure_mpa, "MPa.")
      .field("hub", &StretchState::hub, "Stresses of the hub, MPa.")
      .field("inner", &StretchState::inner, "Stresses of the inner part, MPa.")
      .done();
  Record<Governing>(module, "Governing", "The surface of a part that is nearest to giving way.")
      .field("surface", &Governing::surface, "Which one.")
      .field("stress", &Governing::stress, "MPa.")
      .field("utilisation", &Governing::utilisation, "1 at the limit; None: strength not known.")
      .done();
  Record<PressState>(module, "PressState", "What a press fit does to its parts.")
      .field("stretches", &PressState::stretches, "As given.")
      .field("least_pressure_mpa", &PressState::least_pressure_mpa, "MPa.")
      .field("greatest_pressure_mpa", &PressState::greatest_pressure_mpa, "MPa.")
      .field("hub", &PressState::hub, "Its worst surface.")
      .field("inner", &PressState::inner, "Its worst surface.")
      .field("force_to_press_n", &PressState::force_to_press_n, "N, with the greatest friction.")
      .field("axial_hold_n", &PressState::axial_hold_n, "N, with the least friction.")
      .field("holding_torque_nm", &PressState::holding_torque_nm, "N m, with the least friction.")
      .field("bore_close_in_mm", &PressState::bore_close_in_mm, "Of the inner bore, diametral, mm.")
      .field("hub_growth_mm", &PressState::hub_growth_mm, "Of the hub's outside, diametral, mm.")
      .done();
}

void bind_slip_in(py::module_& module) {
  module.attr("DRY_ICE_C") = kDryIce_c;
  module.attr("LIQUID_NITROGEN_C") = kLiquidNitrogen_c;
  module.attr("DRY_ICE_SHARE") = kDryIceShare;
  module.attr("LIQUID_NITROGEN_SHARE") = kLiquidNitrogenShare;
  module.attr("TEMPER_LIMIT_C") = kTemperLimit_c;
  Record<SlipIn>(module, "SlipIn", "Heating the hub or chilling the inner part to slip together.")
      .field("heat_hub_to_c", &SlipIn::heat_hub_to_c, "Degrees C.")
      .field("chill_inner_to_c", &SlipIn::chill_inner_to_c,
             "Degrees C, by the room-temperature expansion.")
      .field("dry_ice_will_do", &SlipIn::dry_ice_will_do, "Whether dry ice is cold enough.")
      .field("liquid_nitrogen_will_do", &SlipIn::liquid_nitrogen_will_do,
             "Whether liquid nitrogen is cold enough.")
      .field("may_soften_hub", &SlipIn::may_soften_hub, "Hotter than TEMPER_LIMIT_C.")
      .done();
  module.def("slip_in", &slip_in, py::arg("hub"), py::arg("inner"), py::kw_only(),
             py::arg("joint_mm"), py::arg("interference_mm"), py::arg("clearance_mm"),
             py::arg("bench_c"), R"(Temperatures at which hub and inner part slip together.

Args:
    hub, inner: elastic values; only the expansion counts.
    joint_mm: diameter, mm, > 0.
    interference_mm: greatest, diametral, mm, 0 or more.
    clearance_mm: wanted while slipping in, mm, 0 or more.
    bench_c: temperature of the other part, degrees C.
Raises: BadInputError naming the argument out of range.)");
}

}  // namespace

void bind_press_fit(py::module_& module) {
  module.attr("GREAT_ROUGHNESS_LOSS") = kGreatRoughnessLoss;
  module.attr("SMALL_ROUGHNESS_LOSS") = kSmallRoughnessLoss;
  module.def("effective_interference_mm", &effective_interference_mm, py::arg("interference_mm"),
             py::arg("rz_hub_um"), py::kw_only(), py::arg("rz_inner_um"), py::arg("loss"),
             R"(Diametral interference left once the roughness is pressed flat; never below 0.

Args:
    interference_mm: diametral, mm; negative is a clearance.
    rz_hub_um, rz_inner_um: peak-to-valley heights, micrometres, 0 or more.
    loss: share of their sum lost, GREAT_ROUGHNESS_LOSS or SMALL_ROUGHNESS_LOSS.
Returns: mm.
Raises: BadInputError naming the argument out of range.)");
  bind_press_values(module);
  module.def(
      "press_surface_text",
      [](PressSurface surface) { return std::string(press_surface_text(surface)); },
      py::arg("surface"), "The surface in words: the hub's bore.");
  module.def("press_fit", &press_fit, py::arg("fit"),
             R"(Pressure, stresses, force, hold and change of size of a press fit, elastic.

Args:
    fit: mm; with a utilisation above 1 pressure and hold are upper bounds.
Raises: BadInputError naming the argument out of range.)");
  bind_slip_in(module);
}

}  // namespace spotblue::python
