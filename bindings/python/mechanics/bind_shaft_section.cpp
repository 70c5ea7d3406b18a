#include "python/values/numbers.hpp"
#include "spotblue/mechanics/shaft_section.hpp"
#include "spotblue/mechanics/stress_concentration.hpp"

namespace spotblue::python {
namespace {

void bind_section(py::module_& module) {
  bind_records<RoundSection, NominalStress>(module);
  module.def("bending_modulus_mm3", &bending_modulus_mm3, py::arg("section"),
             "pi (D^4 - d^4) / (32 D).\n\nReturns: mm3.\nRaises: BadInputError for an impossible "
             "section.");
  module.def("polar_modulus_mm3", &polar_modulus_mm3, py::arg("section"),
             "pi (D^4 - d^4) / (16 D).\n\nReturns: mm3.\nRaises: BadInputError for an impossible "
             "section.");
  module.def("polar_moment_mm4", &polar_moment_mm4, py::arg("section"),
             "pi (D^4 - d^4) / 32.\n\nReturns: mm4.\nRaises: BadInputError for an impossible "
             "section.");
  module.def("nominal_stress", &nominal_stress, py::arg("section"), py::arg("torque_nm"),
             py::kw_only(), py::arg("bending_nm"), R"(Nominal stresses under torque and bending.

Args:
    section: mm.
    torque_nm, bending_nm: N m, whichever way.
Raises: BadInputError for an impossible section.)");
  module.def("equivalent_mpa", &equivalent_mpa, py::arg("stress"),
             "sqrt(bending^2 + 3 torsion^2), distortion energy.\n\nReturns: MPa.");
  module.def("strength_left", &strength_left, py::arg("before"), py::arg("after"),
             R"(Load that the new section bears per unit of the old one's at the same stress.

Args:
    before, after: sections, mm.
Raises: BadInputError for an impossible section.)");
  module.def("corner_over_fillet_mm", &corner_over_fillet_mm, py::arg("corner_mm"),
             py::arg("fillet_mm"), R"(Whether a part reaches a shoulder: its corner less the fillet.

Args:
    corner_mm: radius, or leg of a 45 degree chamfer, mm, 0 or more.
    fillet_mm: radius, mm, 0 or more.
Returns: mm, negative when it fouls.
Raises: BadInputError for a negative size.)");
}

void bind_stress_concentration(py::module_& module) {
  choice<ShaftLoad>(module);
  choice<ShaftNotch>(module);
  bind_records<SteppedShaft, StressFactor>(module);
  module.def("shoulder_factor", &shoulder_factor, py::arg("step"), py::arg("load"),
             R"(Stress concentration of a shoulder, Peterson's curve fits, good to some 2 %.

Args:
    step: mm.
    load: bending and tension 0.1 <= h/r <= 20, torsion 0.25 <= h/r <= 4.
Returns: no factor outside the range, with the reason.
Raises: BadInputError for an impossible step.)");
  module.def("shoulder_bending_factor_roark", &shoulder_bending_factor_roark, py::arg("step"),
             R"(Stress concentration of a shoulder in bending, Roark's fits.

Args:
    step: mm, 0.25 <= h/r <= 20.
Returns: no factor outside the range, with the reason.
Raises: BadInputError for an impossible step.)");
  module.def(
      "keyseat_factor",
      [](double diameter_mm, double bottom_radius_mm, ShaftLoad load) {
        return keyseat_factor(Diameter(Length::mm(diameter_mm)),
                              Radius(Length::mm(bottom_radius_mm)), load);
      },
      py::arg("diameter_mm"), py::arg("bottom_radius_mm"), py::kw_only(), py::arg("load"),
      R"(Stress concentration of an end-milled keyseat, Peterson (from memory).

Args:
    diameter_mm: of the shaft, mm, > 0.
    bottom_radius_mm: mm, > 0; 0.005 to 0.07 of the diameter.
    load: bending or torsion.
Returns: no factor outside the range or for tension, with the reason.
Raises: BadInputError naming the argument out of range.)");
  module.def("first_pass_factor", &first_pass_factor, py::arg("notch"), py::arg("load"),
             "Factors before the details are known, Shigley, table 7-1.\n\nReturns: no factor "
             "where the source has none.");
}

}  // namespace

void bind_shaft_section(py::module_& module) {
  bind_section(module);
  bind_stress_concentration(module);
}

}  // namespace spotblue::python
