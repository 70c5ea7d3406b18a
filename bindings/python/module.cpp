#include <pybind11/pybind11.h>

#include "bind.hpp"
#include "errors.hpp"
#include "numbers.hpp"

PYBIND11_MODULE(_kernel, module) {
  module.doc() = "The C++ kernel of spotblue; import spotblue instead.";
  spotblue::python::translate_errors();
  spotblue::python::bind_numbers(module);
  spotblue::python::bind_look(module);
  spotblue::python::bind_check(module);
  spotblue::python::bind_shelf(module);
}
