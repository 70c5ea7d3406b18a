#include <pybind11/pybind11.h>

#include "python/bind.hpp"
#include "python/values/errors.hpp"

PYBIND11_MODULE(_kernel, module) {
  module.doc() = "The C++ kernel of spotblue; import spotblue instead.";
  // Its values go in and out of functions here.
  pybind11::module_::import("spotblue._numbers");
  spotblue::python::translate_errors();
  spotblue::python::bind_log(module);
  spotblue::python::bind_region(module);
  spotblue::python::bind_settings(module);
  spotblue::python::bind_semantic_size(module);
  spotblue::python::bind_model(module);
  spotblue::python::bind_seats(module);
  spotblue::python::bind_look(module);
  spotblue::python::bind_ways(module);
  spotblue::python::bind_job(module);
  spotblue::python::bind_group(module);
  spotblue::python::bind_check(module);
  spotblue::python::bind_semantic(module);
  spotblue::python::bind_compare(module);
  spotblue::python::bind_mockup(module);
  spotblue::python::bind_shelf(module);
}
