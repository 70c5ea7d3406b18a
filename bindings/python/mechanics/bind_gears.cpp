#include "python/values/numbers.hpp"
#include "spotblue/mechanics/gear_mesh.hpp"
#include "spotblue/mechanics/involute.hpp"
#include "spotblue/mechanics/tooth_form.hpp"
#include "spotblue/mechanics/tooth_thickness.hpp"

namespace spotblue::python {
namespace {

void bind_tooth_form(py::module_& module) {
  Record<ToothForm>(module, "ToothForm", "The basic rack of both gears, in the normal plane.")
      .field("module_mm", &ToothForm::module_mm, "Normal module, mm, > 0.")
      .field("pressure_angle_deg", &ToothForm::pressure_angle_deg, "Normal, 5 to 45 degrees.")
      .field("helix_angle_deg", &ToothForm::helix_angle_deg, "0 (spur) to 60 degrees.")
      .done();
  Record<TransverseForm>(module, "TransverseForm", "The same teeth seen square to the axis.")
      .field("module_mm", &TransverseForm::module_mm, "mm.")
      .field("pressure_angle_rad", &TransverseForm::pressure_angle_rad, "rad.")
      .field("base_helix_rad", &TransverseForm::base_helix_rad, "rad.")
      .done();
  Record<GearCircles>(module, "GearCircles", "Diameters of one gear, mm.")
      .field("reference_mm", &GearCircles::reference_mm, "mm.")
      .field("base_mm", &GearCircles::base_mm, "mm.")
      .field("tip_mm", &GearCircles::tip_mm, "mm.")
      .field("root_mm", &GearCircles::root_mm, "mm.")
      .done();
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
  choice<Pins>(module, "Pins", "How many pins lie in the spaces of a gear.", {"two", "three"});
  module.def("standard_thickness_mm", &standard_thickness_mm, py::arg("form"),
             "pi m / 2, half the pitch, no backlash taken off.\n\nReturns: mm.");
  module.def("shift_of_thickness", &shift_of_thickness, py::arg("form"), py::arg("thickness_mm"),
             "Profile shift coefficient x of a tooth of this thickness, mm, normal plane.");
  module.def("teeth_to_span", &teeth_to_span, py::arg("form"), py::arg("teeth"),
             "Teeth to span so that the anvils bear near the reference circle.\n\nReturns: 2 or "
             "more.");
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
  Record<MeshedGear>(module, "MeshedGear", "One gear of a mesh.")
      .field("teeth", &MeshedGear::teeth, "5 or more.")
      .field("thickness_mm", &MeshedGear::thickness_mm, "On the reference circle, normal, mm.")
      .field("tip_mm", &MeshedGear::tip_mm, "Diameter, mm, > root.")
      .field("root_mm", &MeshedGear::root_mm, "Diameter, mm, > 0.")
      .done();
  using G = GearMesh;
  Record<G>(module, "GearMesh", "What is true of a pair of gears at one centre distance.")
      .field("reference_centre_mm", &G::reference_centre_mm, "Where reference circles touch, mm.")
      .field("working_angle_rad", &G::working_angle_rad, "Transverse, rad.")
      .field("working_a_mm", &G::working_a_mm, "Diameter of a's working circle, mm.")
      .field("working_b_mm", &G::working_b_mm, "Diameter of b's working circle, mm.")
      .field("path_mm", &G::path_mm, "Length of the path of contact, mm.")
      .field("contact_ratio", &G::contact_ratio, "Transverse.")
      .field("overlap_ratio", &G::overlap_ratio, "By the helix; 0 for spur gears.")
      .field("backlash_mm", &G::backlash_mm, "On the working circle, mm; negative: they bind.")
      .field("normal_backlash_mm", &G::normal_backlash_mm, "Square to the flanks, mm.")
      .field("backlash_per_centre", &G::backlash_per_centre, "Derivative by centre distance.")
      .field("tight_centre_mm", &G::tight_centre_mm, "Where there is no backlash, mm; or None.")
      .field("tip_clearance_a_mm", &G::tip_clearance_a_mm, "a's tips from b's roots, mm.")
      .field("tip_clearance_b_mm", &G::tip_clearance_b_mm, "b's tips from a's roots, mm.")
      .field("past_base_of_b_mm", &G::past_base_of_b_mm, "a's tip past b's base point, mm.")
      .field("past_base_of_a_mm", &G::past_base_of_a_mm, "b's tip past a's base point, mm.")
      .done();
  Record<LeastBacklash>(module, "LeastBacklash", "Least backlash, square to the flanks, mm.")
      .field("iso_mm", &LeastBacklash::iso_mm, "ISO/TR 10064-2, annex A (from memory), mm.")
      .field("agma_mm", &LeastBacklash::agma_mm, "The form of AGMA 2002-B88, mm.")
      .done();
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
  bind_mesh_values(module);
  bind_mesh(module);
}

}  // namespace spotblue::python
