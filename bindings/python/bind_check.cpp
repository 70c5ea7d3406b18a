#include <pybind11/pybind11.h>
#include <pybind11/stl/filesystem.h>

#include "bind.hpp"
#include "spotblue/check/check.hpp"
#include "spotblue/job/job_file.hpp"
#include "spotblue/report/json.hpp"

namespace spotblue::python {

namespace py = pybind11;

void bind_check(py::module_& module) {
  py::class_<CheckResult>(module, "CheckResult", "A job, what was found, and what was judged.")
      .def("to_json", &check_json, py::call_guard<py::gil_scoped_release>(),
           "The whole result as JSON text, schema 1: lengths in mm, angles in degrees.");
  module.def(
      "check", [](const std::filesystem::path& job) { return check(read_job(job)); },
      py::arg("job"), py::call_guard<py::gil_scoped_release>(),
      "Reads a job file, looks at its model and judges every seat and want.");
}

}  // namespace spotblue::python
