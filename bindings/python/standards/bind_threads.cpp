#include "python/values/numbers.hpp"
#include "spotblue/standards/threads.hpp"

namespace spotblue::python {

void bind_threads(py::module_& module) {
  bind_record<ThreadSize>(module);
  module.def("threads", &threads, "Every thread of the tables, smallest first.");
  module.def(
      "find_thread", [](const std::string& designation) { return find_thread(designation); },
      py::arg("designation"), R"(A thread by its designation, letter case aside.

Args:
    designation: as threads() writes it.
Returns: None when the tables have no such thread.)");
  module.def(
      "thread_of",
      [](double hole_diameter_mm, double screw_diameter_mm) {
        return thread_of(Diameter(Length::mm(hole_diameter_mm)),
                         Diameter(Length::mm(screw_diameter_mm)));
      },
      py::arg("hole_diameter_mm"), py::arg("screw_diameter_mm"),
      R"(The screw thread whose screw and tapped hole have these two plain diameters.

Args:
    hole_diameter_mm: of the internal cylinder, mm.
    screw_diameter_mm: of the external cylinder, mm.
Returns: a designation such as "M10"; None when no thread fits.)");
  module.def(
      "possible_threads",
      [](double hole_diameter_mm, double screw_diameter_mm) {
        return possible_threads(Diameter(Length::mm(hole_diameter_mm)),
                                Diameter(Length::mm(screw_diameter_mm)));
      },
      py::arg("hole_diameter_mm"), py::arg("screw_diameter_mm"),
      R"(Every thread that two such plain diameters may be, the one that thread_of gives first.

Args:
    hole_diameter_mm: of the internal cylinder, mm.
    screw_diameter_mm: of the external cylinder, mm.)");
  module.def("usual_engagement", &usual_engagement, py::arg("tapped"),
             R"(Thread that is usually engaged at least, in diameters of the screw; common practice.

Args:
    tapped: the material of the hole, a MaterialKind.)");
}

}  // namespace spotblue::python
