#include "python/job/bind_job_entries.hpp"
#include "python/values/record_fields.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue::python {
namespace {

void bind_pairs(py::module_& module) {
  Record<AllowedOverlap>(module, "AllowedOverlap", "An overlap of two parts that is meant.")
      .field("a", &AllowedOverlap::a, "product id or occurrence path")
      .field("b", &AllowedOverlap::b, "product id or occurrence path")
      .field("reason", &AllowedOverlap::reason, "for the report")
      .length("depth_mm", &AllowedOverlap::depth, "greatest")
      .field("line", &AllowedOverlap::line, "of the job file; 0 in code")
      .done();
  Record<Join>(module, "Join", "Two parts held to each other by something no fit shows.")
      .field("a", &Join::a, "product id or occurrence path")
      .field("b", &Join::b, "product id or occurrence path")
      .field("by", &Join::by, "\"set screw\", \"pin\"")
      .field("line", &Join::line, "of the job file; 0 in code")
      .done();
  Record<KeepOff>(module, "KeepOff", "Two parts that must stay off each other.")
      .field("a", &KeepOff::a, "product id or occurrence path")
      .field("b", &KeepOff::b, "product id or occurrence path")
      .length("least_mm", &KeepOff::least, "more than 0")
      .field("reason", &KeepOff::reason, "for the report")
      .field("line", &KeepOff::line, "of the job file; 0 in code")
      .done();
}

void bind_meshes(py::module_& module) {
  Record<ToothSpan>(module, "ToothSpan", "A span over several teeth.")
      .field("teeth", &ToothSpan::teeth, "spanned, 2 or more")
      .length("over_mm", &ToothSpan::over, "mm")
      .done();
  Record<OverPins>(module, "OverPins", "A size over two pins, or three where the teeth are odd.")
      .length("pin_mm", &OverPins::pin, "diameter")
      .length("over_mm", &OverPins::over, "mm")
      .done();
  Record<MeshGear> gear(module, "MeshGear", "One gear of a mesh.");
  gear.field("part", &MeshGear::part, "product id or occurrence path")
      .field("teeth", &MeshGear::teeth, "number");
  optional_length(gear, "thickness_mm", &MeshGear::thickness, "of a tooth, or None");
  gear.field("span", &MeshGear::span, "ToothSpan or None")
      .field("pins", &MeshGear::pins, "OverPins or None");
  optional_length(gear, "tip_diameter_mm", &MeshGear::tip_diameter, "None: from the module");
  optional_length(gear, "root_diameter_mm", &MeshGear::root_diameter, "None: from the module");
  gear.done();
  Record<Mesh> mesh(module, "Mesh", "Two external involute gears that run together.");
  mesh.field("a", &Mesh::a, "one gear")
      .field("b", &Mesh::b, "the other")
      .length("module_mm", &Mesh::module, "normal; 25.4 / diametral pitch")
      .field("pressure_angle_deg", &Mesh::pressure_angle_deg, "degrees")
      .field("helix_angle_deg", &Mesh::helix_angle_deg, "degrees");
  maybe_limits(mesh, "backlash_mm", &Mesh::backlash, "(least, greatest) wanted, or None");
  mesh.field("line", &Mesh::line, "of the job file; 0 in code").done();
}

void bind_turning(py::module_& module) {
  choice<Duty>(module, "Duty", "How hard a part is run.",
               {"no load, slow", "intermittent", "continuous"});
  Record<Turning> turning(module, "Turning", "A part that turns, with all that is joined to it.");
  turning.field("part", &Turning::part, "product id or occurrence path")
      .field("rpm", &Turning::rpm, "1/min, more than 0");
  turning.field("duty", &Turning::duty, "\"no load, slow\", \"intermittent\" or \"continuous\"");
  turning.field("load_n", &Turning::load_n, "across the axis, or None")
      .field("thrust_n", &Turning::thrust_n, "along the axis, or None")
      .field("line", &Turning::line, "of the job file; 0 in code")
      .done();
}

void bind_cut(py::module_& module) {
  Record<Cut> cut(module, "Cut", "Metal that comes off a part that exists.");
  cut.field("feature", &Cut::feature, "as it will be")
      .length("before_mm", &Cut::before, "diameter before the cut; 0 for a face")
      .length("depth_mm", &Cut::depth, "faced off; 0 for a diameter");
  optional_length(cut, "fillet_mm", &Cut::fillet, "radius in the new shoulder's corner, or None");
  optional_length(cut, "mate_corner_mm", &Cut::mate_corner, "of the part against it, or None");
  cut.field("torque_nm", &Cut::torque_nm, "N m, or None")
      .field("bending_nm", &Cut::bending_nm, "N m, or None")
      .field("line", &Cut::line, "of the job file; 0 in code")
      .done();
}

}  // namespace

void bind_job_running(py::module_& module) {
  bind_pairs(module);
  bind_meshes(module);
  bind_turning(module);
  bind_cut(module);
}

}  // namespace spotblue::python
