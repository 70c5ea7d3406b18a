#include "python/values/numbers.hpp"
#include "spotblue/mechanics/elastic.hpp"
#include "spotblue/mechanics/sleeve_chain.hpp"
#include "spotblue/mechanics/thick_ring.hpp"

namespace spotblue::python {
namespace {

void bind_ring(py::module_& module) {
  bind_records<Ring, RingLoad, SurfaceStress, RingState>(module);
  module.def("loaded_ring", &loaded_ring, py::arg("ring"), py::arg("load"),
             R"(Stresses and growth of one ring under even pressure, Lame in plane stress.

Args:
    ring: diameters in mm.
    load: pressures in MPa, 0 or more.
Raises: BadInputError naming the argument out of range.)");
  module.def("utilisation", &utilisation, py::arg("stress"), py::arg("material"),
             R"(Share of its strength that a surface uses, 1 at the limit.

Args:
    stress: MPa.
    material: ductile ones by von Mises and yield, brittle ones by the greatest tension.
Returns: None where the strength is not known.)");
}

void bind_chain(py::module_& module) {
  bind_records<ChainRing, ChainRingState, InterfaceState, ChainState>(module);
  module.def(
      "sleeve_chain", [](const std::vector<ChainRing>& rings) { return sleeve_chain(rings); },
      py::arg("rings"), R"(Solves rings one in another: which touch, at what pressure, what sizes.

Args:
    rings: from the innermost out, at least one; only the innermost may be solid.
Raises: BadInputError naming the ring and value out of range.)");
}

}  // namespace

void bind_elastic(py::module_& module) {
  choice<GivesWay>(module);
  bind_record<Elastic>(module);
  module.def("elastic_of", &elastic_of, py::arg("material"),
             "The values of a material of the table, in MPa and 1/K; brittle when it has a tensile "
             "strength and no yield.");
  module.def("require_elastic", &require_elastic, py::arg("elastic"), py::arg("argument"),
             R"(Refuses values that break their rule.

Args:
    elastic: MPa and 1/K.
    argument: its name in the error's text.
Raises: BadInputError naming `argument`.)");
  bind_ring(module);
  bind_chain(module);
}

}  // namespace spotblue::python
