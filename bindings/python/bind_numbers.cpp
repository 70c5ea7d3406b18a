#include "numbers.hpp"

namespace spotblue::python {

void bind_numbers(py::module_& module) {
  py::module_ base = module.def_submodule("base", "Lengths, limits and outcomes.");
  bind_base(base);
  py::module_ standards = module.def_submodule("standards", "Tables and rules of the standards.");
  bind_fits(standards);
  bind_general_tolerances(standards);
  bind_keys(standards);
  bind_materials(standards);
  bind_threads(standards);
}

}  // namespace spotblue::python
