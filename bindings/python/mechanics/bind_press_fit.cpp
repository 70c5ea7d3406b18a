#include "python/values/numbers.hpp"
#include "spotblue/mechanics/press_fit.hpp"
#include "spotblue/mechanics/shrink_in.hpp"

namespace spotblue::python {
namespace {

void bind_press_values(py::module_& module) {
  bind_records<PressStretch, PressFit>(module);
  choice<PressSurface>(module);
  bind_records<StretchState, Governing, PressState>(module);
}

void bind_slip_in(py::module_& module) {
  module.attr("DRY_ICE_C") = kDryIce_c;
  module.attr("LIQUID_NITROGEN_C") = kLiquidNitrogen_c;
  module.attr("DRY_ICE_SHARE") = kDryIceShare;
  module.attr("LIQUID_NITROGEN_SHARE") = kLiquidNitrogenShare;
  module.attr("TEMPER_LIMIT_C") = kTemperLimit_c;
  bind_records<SlipBounds, SlipIn>(module);
  module.def("slip_bounds", &slip_bounds, py::arg("fit"), py::arg("bench_c"),
             R"(How hot and cold hub and inner part may be together before one of them yields.

Args:
    fit: mm, at its greatest interference once roughness is pressed flat.
    bench_c: degrees C, at which the interference is.
Raises: BadInputError as press_fit.)");
  module.def("slip_in", &slip_in, py::arg("hub"), py::arg("inner"), py::kw_only(),
             py::arg("joint_mm"), py::arg("interference_mm"), py::arg("clearance_mm"),
             py::arg("bench_c"), py::arg("bounds"),
             R"(Temperatures at which hub and inner part slip together.

Args:
    hub, inner: elastic values; only the expansion counts.
    joint_mm: diameter, mm, > 0.
    interference_mm: greatest, diametral, mm, 0 or more.
    clearance_mm: wanted while slipping in, mm, 0 or more.
    bench_c: temperature of the other part, degrees C.
    bounds: as slip_bounds gives them; no temperature past them is named.
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
  module.def("press_fit", &press_fit, py::arg("fit"),
             R"(Pressure, stresses, force, hold and change of size of a press fit, elastic.

Args:
    fit: mm; with a utilisation above 1 pressure and hold are upper bounds.
Raises: BadInputError naming the argument out of range.)");
  bind_slip_in(module);
}

}  // namespace spotblue::python
