#include "python/values/numbers.hpp"
#include "spotblue/mechanics/loosening.hpp"

namespace spotblue::python {

void bind_loosening(py::module_& module) {
  Record<BushInHub>(module, "BushInHub", "A bush held in a stiffer hub.")
      .field("bore_mm", &BushInHub::bore_mm, "Free, mm, > 0.")
      .field("joint_mm", &BushInHub::joint_mm, "Diameter, mm, > bore.")
      .field("hub_outside_mm", &BushInHub::hub_outside_mm, "Diameter, mm, > joint.")
      .field("interference_mm", &BushInHub::interference_mm,
             "Effective, diametral, at the bench, mm, 0 or more.")
      .field("bush", &BushInHub::bush, "Elastic values, with a yield.")
      .field("hub", &BushInHub::hub, "Elastic values.")
      .field("bench_c", &BushInHub::bench_c, "Degrees C.")
      .done();
  Record<WarmedBush>(module, "WarmedBush", "Warm at one temperature, and cold again after it.")
      .field("interference_mm", &WarmedBush::interference_mm, "Of free sizes when warm, mm.")
      .field("pressure_mpa", &WarmedBush::pressure_mpa, "MPa.")
      .field("yielded_to_mm", &WarmedBush::yielded_to_mm, "Diameter the yield reaches, mm.")
      .field("set_outside_mm", &WarmedBush::set_outside_mm, "Outside lost for good, mm.")
      .field("set_bore_mm", &WarmedBush::set_bore_mm, "Bore lost for good, mm.")
      .field("left_mm", &WarmedBush::left_mm, "Interference left at the bench, mm.")
      .field("bore_after_mm", &WarmedBush::bore_after_mm, "The bore at the bench afterwards, mm.")
      .done();
  Record<Loosening>(module, "Loosening", "Temperatures at which a bush works loose, degrees C.")
      .field("first_yield_c", &Loosening::first_yield_c, "Its bore begins to yield; or None.")
      .field("whole_wall_c", &Loosening::whole_wall_c, "It yields right through; or None.")
      .field("loose_c", &Loosening::loose_c, "Warmed above this it comes back loose; or None.")
      .field("lets_go_c", &Loosening::lets_go_c, "No grip above this; or None.")
      .done();
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
