#include <pybind11/pybind11.h>

#include "python/values/errors.hpp"
#include "python/values/numbers.hpp"

PYBIND11_MODULE(_numbers, module) {
  module.doc() = "What spotblue knows without CAD; import spotblue.base, standards or mechanics.";
  // These layers write no log: Python's logging takes longer to import than all that is here.
  spotblue::python::translate_errors();
  spotblue::python::bind_numbers(module);
}
