#include "python/values/choices.hpp"
#include "python/values/numbers.hpp"
#include "spotblue/standards/bearing_materials.hpp"
#include "spotblue/standards/materials.hpp"

namespace spotblue::python {
namespace {

void bind_material(py::module_& module) {
  choice<MaterialKind>(module);
  bind_record<Material>(module);
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
  module.def(
      "is_soft_material", [](const std::string& name) { return is_soft_material(name); },
      py::arg("name"), "Whether it is felt, paper, cork, leather or rubber, letter case aside.");
  module.def(
      "soft_materials",
      [] {
        std::vector<std::string> names;
        for (const std::string_view name : soft_materials()) {
          names.emplace_back(name);
        }
        return names;
      },
      "The soft materials of seals and packings, known by name only.");
}

void bind_bearing_material(py::module_& module) {
  bind_records<BearingLimits, BearingMaterial>(module);
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
  bind_record<ClearanceGuide>(module);
  module.def(
      "clearance_guides", [] { return listed(clearance_guides()); },
      "Running clearances of shop practice, tightest first.");
  bind_record<BearingProportions>(module);
  module.def(
      "bearing_proportions", [] { return BearingProportions(bearing_proportions()); },
      "The proportions that shop practice gives a plain bearing.");
}

}  // namespace

void bind_materials(py::module_& module) {
  bind_material(module);
  bind_bearing_material(module);
  bind_proportions(module);
}

}  // namespace spotblue::python
