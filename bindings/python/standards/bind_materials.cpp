#include "python/values/numbers.hpp"
#include "spotblue/standards/bearing_materials.hpp"
#include "spotblue/standards/materials.hpp"

namespace spotblue::python {
namespace {

void bind_material(py::module_& module) {
  Record<Material> material(module, "Material", "One material in one condition, typical values.");
  text_field(material, "name", &Material::name, "Full name.");
  text_field(material, "condition", &Material::condition, "As rolled, quenched, cast ...");
  material.field("youngs_modulus_gpa", &Material::youngs_modulus_gpa, "GPa, > 0.")
      .field("poisson_ratio", &Material::poisson_ratio, "0 to 0.5.")
      .field("expansion_per_mk", &Material::expansion_per_mk,
             "Linear, micrometres per metre kelvin.")
      .field("yield_mpa", &Material::yield_mpa, "MPa; None for grey iron.");
  text_field(material, "yield_basis", &Material::yield_basis, "What yield means here.");
  material
      .field("tensile_strength_mpa", &Material::tensile_strength_mpa,
             "MPa; given where there is no yield.")
      .field("density_kg_m3", &Material::density_kg_m3, "kg/m3.");
  text_field(material, "source", &Material::source, "Where the values are from.");
  material.done();
  module.def(
      "materials", [] { return listed(materials()); },
      "Every material of the table: values to compare and to warn, not to prove strength.");
  module.def(
      "find_material",
      [](const std::string& name) {
        const Material* found = find_material(name);
        return found == nullptr ? std::optional<Material>() : std::optional(*found);
      },
      py::arg("name"), R"(A material by its full name or a short one, letter case aside.

Args:
    name: such as "mild steel", "grey iron", "C93200".
Returns: None when there is none; a short name gives one usual grade, so show the name found.)");
  module.def(
      "material_names",
      [] {
        std::vector<std::string> names;
        for (const std::string_view name : material_names()) {
          names.emplace_back(name);
        }
        return names;
      },
      "Full names and short names of all materials.");
}

void bind_bearing_material(py::module_& module) {
  Record<BearingLimits>(module, "BearingLimits",
                        "Greatest values a material bears when it runs; None where none is known.")
      .field("pressure_mpa", &BearingLimits::pressure_mpa, "Load over diameter x length, MPa.")
      .field("speed_m_s", &BearingLimits::speed_m_s, "Of the surfaces against each other, m/s.")
      .field("pressure_speed_mpa_m_s", &BearingLimits::pressure_speed_mpa_m_s,
             "Their product, MPa m/s.")
      .done();
  Record<BearingMaterial> row(module, "BearingMaterial", "What a plain bearing material bears.");
  text_field(row, "name", &BearingMaterial::name, "Of materials() where that table has it.");
  row.field("limits", &BearingMaterial::limits, "Pressure, speed and their product.")
      .field("hottest_c", &BearingMaterial::hottest_c, "Printed ceiling, degrees C, or None.");
  text_field(row, "source", &BearingMaterial::source, "Where the values are from.");
  text_field(row, "note", &BearingMaterial::note, "What other tables print.");
  row.done();
  module.def(
      "bearing_materials", [] { return listed(bearing_materials()); },
      "Every plain bearing material of the table.");
  module.def(
      "find_bearing_material",
      [](const std::string& name) {
        const BearingMaterial* found = find_bearing_material(name);
        return found == nullptr ? std::optional<BearingMaterial>() : std::optional(*found);
      },
      py::arg("name"), R"(The bearing limits of a material by any of its names, letter case aside.

Returns: None for materials that are no bearing material, steel among them.)");
  module.def(
      "is_journal_material", [](const std::string& name) { return is_journal_material(name); },
      py::arg("name"), "Whether shafts are made of it and it sets no limit: steel, wrought iron.");
  module.def("weaker", &weaker, py::arg("a"), py::arg("b"),
             "The lesser of each limit; one that only the other has is taken from it.");
}

void bind_proportions(py::module_& module) {
  Record<ClearanceGuide> guide(module, "ClearanceGuide",
                               "Running clearance of shop practice, per unit of diameter.");
  text_field(guide, "service", &ClearanceGuide::service, "What kind of running.");
  guide.field("least", &ClearanceGuide::least, "Diametral, per unit of diameter, > 0.")
      .field("greatest", &ClearanceGuide::greatest, "Diametral, per unit of diameter.");
  text_field(guide, "source", &ClearanceGuide::source, "Where it is from.");
  guide.done();
  module.def(
      "clearance_guides", [] { return listed(clearance_guides()); },
      "Running clearances of shop practice, tightest first.");
  using P = BearingProportions;
  Record<P> record(module, "BearingProportions", "Proportions of a plain bearing.");
  record.field("length_least", &P::length_least, "Length per diameter.")
      .field("length_usual", &P::length_usual, "Length per diameter.")
      .field("length_greatest", &P::length_greatest, "Length per diameter.")
      .field("length_relieved", &P::length_relieved,
             "Length per diameter above which the middle is relieved.")
      .field("wall_least", &P::wall_least, "Wall of a solid bronze bush per its bore.")
      .length("wall_floor_mm", &P::wall_floor, "Least wall, mm.")
      .field("groove_length", &P::groove_length, "Per length.")
      .field("groove_depth", &P::groove_depth, "Per wall.")
      .field("groove_width_least", &P::groove_width_least, "Per diameter.")
      .field("groove_width_most", &P::groove_width_most, "Per diameter.");
  text_field(record, "length_source", &P::length_source, "Where the lengths are from.");
  text_field(record, "wall_source", &P::wall_source, "Where the walls are from.");
  text_field(record, "groove_source", &P::groove_source, "Where the grooves are from.");
  record.done();
  module.def(
      "bearing_proportions", [] { return P(bearing_proportions()); },
      "The proportions that shop practice gives a plain bearing.");
}

}  // namespace

void bind_materials(py::module_& module) {
  bind_material(module);
  bind_bearing_material(module);
  bind_proportions(module);
}

}  // namespace spotblue::python
