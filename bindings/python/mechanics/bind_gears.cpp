#include "python/values/numbers.hpp"
#include "spotblue/mechanics/gear_mesh.hpp"
#include "spotblue/mechanics/involute.hpp"
#include "spotblue/mechanics/tooth_form.hpp"
#include "spotblue/mechanics/tooth_thickness.hpp"

namespace spotblue::python {
namespace {

void bind_tooth_form(py::module_& module) {
  bind_records<ToothForm, TransverseForm, GearCircles>(module);
  module.def("form_of_diametral_pitch", &form_of_diametral_pitch, py::arg("per_inch"),
             py::arg("pressure_angle_deg") = 20.0, py::kw_only(), py::arg("helix_angle_deg") = 0.0,
             R"(A form by its normal diametral pitch.

Args:
    per_inch: teeth per inch of diameter, > 0.
    pressure_angle_deg: normal, 5 to 45 degrees.
    helix_angle_deg: 0 to 60 degrees.
Raises: BadInputError unless the pitch is > 0.)");
  module.def("transverse_form", &transverse_form, py::arg("form"),
             "The same teeth seen square to the axis, ISO 21771.\n\nRaises: BadInputError when the "
             "form breaks a range.");
  module.def("gear_circles", &gear_circles, py::arg("form"), py::arg("teeth"), py::kw_only(),
             py::arg("shift") = 0.0, R"(Diameters of one gear, basic rack of ISO 53 profile A.

Args:
    form: mm, degrees.
    teeth: 5 or more.
    shift: profile shift coefficient x.
Raises: BadInputError naming the argument out of range.)");
  module.def(
      "require_teeth",
      [](int teeth, const std::string& argument) { require_teeth(teeth, argument.c_str()); },
      py::arg("teeth"), py::arg("argument"),
      "Refuses fewer than 5 teeth.\n\nRaises: BadInputError naming `argument`.");
  module.def("involute", &involute, py::arg("angle_rad"), R"(inv(x) = tan(x) - x.

Args:
    angle_rad: 0 up to, not including, pi/2.
Raises: BadInputError outside that range.)");
  module.def("involute_inverse", &involute_inverse, py::arg("value"),
             "The angle whose involute function this is.\n\nArgs:\n    value: 0 or more.\nReturns: "
             "rad.\nRaises: BadInputError when it is negative or not finite.");
}

void bind_tooth_thickness(py::module_& module) {
  choice<Pins>(module);
  module.def("standard_thickness_mm", &standard_thickness_mm, py::arg("form"),
             "pi m / 2, half the pitch, no backlash taken off.\n\nReturns: mm.");
  module.def("shift_of_thickness", &shift_of_thickness, py::arg("form"), py::arg("thickness_mm"),
             "Profile shift coefficient x of a tooth of this thickness, mm, normal plane.");
  module.def("teeth_to_span", &teeth_to_span, py::arg("form"), py::arg("teeth"),
             "Teeth to span so that the anvils bear near the reference circle.\n\nReturns: 2 or "
             "more.");
}

void bind_spans(py::module_& module) {
  module.def("span_mm", &span_mm, py::arg("form"), py::arg("teeth"), py::kw_only(),
             py::arg("spanned"), py::arg("thickness_mm"), R"(Size over spanned teeth, ISO 21771.

Args:
    form: mm, degrees.
    teeth: 5 or more.
    spanned: 2 up to half the teeth.
    thickness_mm: of a tooth on the reference circle, normal plane, mm.
Returns: mm.
Raises: BadInputError naming the argument out of range.)");
  module.def("thickness_from_span_mm", &thickness_from_span_mm, py::arg("form"), py::arg("teeth"),
             py::kw_only(), py::arg("spanned"), py::arg("span_mm"),
             R"(Thickness of a tooth from a size over spanned teeth.

Args:
    form: mm, degrees.
    teeth: 5 or more.
    spanned: 2 up to half the teeth.
    span_mm: as measured, mm.
Returns: mm.
Raises: BadInputError also when the tooth would have no thickness or fill the pitch.)");
}

void bind_pins(py::module_& module) {
  module.def("over_pins_mm", &over_pins_mm, py::arg("form"), py::arg("teeth"), py::kw_only(),
             py::arg("pin_mm"), py::arg("thickness_mm"), py::arg("pins"),
             R"(Size over pins laid in opposite spaces, ISO 21771.

Args:
    form: mm, degrees.
    teeth: 5 or more.
    pin_mm: diameter of the pins, mm, > 0.
    thickness_mm: of a tooth on the reference circle, normal plane, mm.
    pins: two or three.
Returns: mm.
Raises: BadInputError when the pin falls through or bears below the base circle.)");
  module.def("thickness_from_pins_mm", &thickness_from_pins_mm, py::arg("form"), py::arg("teeth"),
             py::kw_only(), py::arg("pin_mm"), py::arg("over_mm"), py::arg("pins"),
             R"(Thickness of a tooth from a size over pins.

Args:
    form: mm, degrees.
    teeth: 5 or more.
    pin_mm: diameter of the pins, mm, > 0.
    over_mm: as measured, mm.
    pins: two or three.
Returns: mm.
Raises: BadInputError also when the tooth would have no thickness or fill the pitch.)");
}

void bind_mesh_values(py::module_& module) {
  bind_records<MeshedGear, GearMesh, LeastBacklash>(module);
}

void bind_mesh(py::module_& module) {
  module.def("standard_gear", &standard_gear, py::arg("form"), py::arg("teeth"), py::kw_only(),
             py::arg("thickness_mm"), R"(A gear with the basic rack's unshifted tip and root.

Args:
    form: mm, degrees.
    teeth: 5 or more.
    thickness_mm: of a tooth on the reference circle, normal plane, mm.
Raises: BadInputError naming the argument out of range.)");
  module.def("least_centre_mm", &least_centre_mm, py::arg("form"), py::arg("teeth_a"),
             py::kw_only(), py::arg("teeth_b"),
             "The sum of the base radii; a centre distance must be greater.\n\nReturns: mm.");
  module.def("gear_mesh", &gear_mesh, py::arg("form"), py::arg("a"), py::kw_only(), py::arg("b"),
             py::arg("centre_mm"), py::arg("face_mm"),
             R"(Two external involute gears at the centre distance they really have.

Args:
    form: mm, degrees.
    a, b: the gears, mm.
    centre_mm: distance of the axes, mm, > least_centre_mm.
    face_mm: length over which the faces overlap, mm, 0 or more.
Raises: BadInputError naming the argument out of range.)");
  module.def("undercut_below_teeth", &undercut_below_teeth, py::arg("form"),
             "Fewest teeth cut without undercut, unshifted; not a whole number.");
  module.def("least_backlash", &least_backlash, py::arg("module_mm"), py::arg("centre_mm"),
             R"(Least backlash recommended.

Args:
    module_mm: normal module, mm, > 0.
    centre_mm: mm, > 0.
Raises: BadInputError unless both are > 0.)");
}

}  // namespace

void bind_gears(py::module_& module) {
  bind_tooth_form(module);
  bind_tooth_thickness(module);
  bind_spans(module);
  bind_pins(module);
  bind_mesh_values(module);
  bind_mesh(module);
}

}  // namespace spotblue::python
