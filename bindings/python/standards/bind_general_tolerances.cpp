#include "python/values/numbers.hpp"
#include "spotblue/standards/clearance_holes.hpp"
#include "spotblue/standards/general_tolerances.hpp"

namespace spotblue::python {
namespace {

void bind_tolerance_classes(py::module_& module) {
  choice<GeneralTolerance>(module);
  bind_record<GeneralToleranceStep>(module);
  module.def(
      "general_tolerance_steps", [] { return listed(general_tolerance_steps()); },
      "ISO 2768-1:1989, table 1 (linear sizes), smallest step first, mm.");
  module.def(
      "broken_edge_steps", [] { return listed(broken_edge_steps()); },
      "ISO 2768-1:1989, table 2 (external radii, chamfer heights), smallest step first, mm.");
  module.def(
      "parse_general_tolerance",
      [](const std::string& letter) { return parse_general_tolerance(letter); }, py::arg("letter"),
      R"(Class by its letter.

Args:
    letter: f, m, c or v.
Raises: BadInputError for anything else.)");
  module.def(
      "general_tolerance_letter",
      [](GeneralTolerance tolerance) { return std::string(general_tolerance_letter(tolerance)); },
      py::arg("tolerance"), "The letter of a class: f, m, c or v.");
}

void bind_general_deviations(py::module_& module) {
  module.def(
      "general_deviation",
      [](double nominal_mm, GeneralTolerance tolerance) {
        return general_deviation(Length::mm(nominal_mm), tolerance).in_mm();
      },
      py::arg("nominal_mm"), py::arg("tolerance"),
      R"(How far a length without limits of its own may be off, either way, by ISO 2768-1.

Args:
    nominal_mm: 0.5 up to 4000 mm.
    tolerance: the drawing's class.
Returns: mm.
Raises: BadInputError for no size; NotInStandardError outside the table.)");
  module.def(
      "broken_edge_deviation",
      [](double nominal_mm, GeneralTolerance tolerance) {
        return broken_edge_deviation(Length::mm(nominal_mm), tolerance).in_mm();
      },
      py::arg("nominal_mm"), py::arg("tolerance"),
      R"(How far an external radius or chamfer height may be off, either way, by ISO 2768-1.

Args:
    nominal_mm: 0.5 mm and up.
    tolerance: the drawing's class.
Returns: mm.
Raises: BadInputError for no size; NotInStandardError under 0.5 mm.)");
}

}  // namespace

void bind_general_tolerances(py::module_& module) {
  bind_tolerance_classes(module);
  bind_general_deviations(module);
  bind_record<ClearanceHole>(module);
  module.def(
      "clearance_holes", [] { return listed(clearance_holes()); },
      "Clearance holes for M1 to M64, ISO 273:1979, smallest first, mm.");
  module.def(
      "clearance_hole", [](double thread_mm) { return clearance_hole(Length::mm(thread_mm)); },
      py::arg("thread_mm"),
      R"(Clearance holes for one nominal thread diameter, ISO 273:1979.

Args:
    thread_mm: exact to 0.001 mm.
Returns: None where the standard has no row.)");
}

}  // namespace spotblue::python
