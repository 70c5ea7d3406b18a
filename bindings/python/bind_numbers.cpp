#include "python/values/numbers.hpp"

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
  py::module_ mechanics = module.def_submodule("mechanics", "Mechanics of machine parts.");
  for (const auto bind :
       {bind_elastic, bind_press_fit, bind_loosening, bind_bearing_loads, bind_plain_bearing,
        bind_shaft_section, bind_gears, bind_stack, bind_play, bind_stock, bind_make_to_suit}) {
    bind(mechanics);
  }
}

}  // namespace spotblue::python
