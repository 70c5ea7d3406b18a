#include "python/values/numbers.hpp"
#include "spotblue/mechanics/loosening.hpp"

namespace spotblue::python {

void bind_loosening(py::module_& module) {
  bind_records<BushInHub, WarmedBush, Loosening>(module);
  module.def("warmed_bush", &warmed_bush, py::arg("pair"), py::arg("temperature_c"),
             R"(A bush in its hub warm at one temperature, and cold again after it.

Args:
    pair: mm.
    temperature_c: of both, degrees C, at or above the bench's.
Raises: BadInputError naming the argument out of range, or a bush without a yield.)");
  module.def("loosening", &loosening, py::arg("pair"), py::arg("highest_c"),
             R"(The temperatures at which a bush yields, comes back loose and lets go.

Args:
    pair: mm.
    highest_c: degrees C, the search ends there.
Raises: BadInputError as warmed_bush.)");
}

}  // namespace spotblue::python
