#include <pybind11/pybind11.h>
#include <pybind11/stl/filesystem.h>

#include "bind.hpp"
#include "spotblue/geometry/look.hpp"
#include "spotblue/report/json.hpp"

namespace spotblue::python {

namespace py = pybind11;

void bind_look(py::module_& module) {
  py::class_<Look>(module, "Look", "What was found on a STEP file.")
      .def("to_json", &look_json, py::call_guard<py::gil_scoped_release>(),
           "The whole result as JSON text, schema 1: lengths in mm, angles in degrees.");
  module.def(
      "look", [](const std::filesystem::path& file) { return look(file, LookSettings{}); },
      py::arg("file"), py::call_guard<py::gil_scoped_release>(),
      "Reads a STEP file and finds parts, features, centre lines, seats, threads and clashes.");
}

}  // namespace spotblue::python
