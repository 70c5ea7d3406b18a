#pragma once
/// @file
/// The parts of a mock-up as records.

#include <pybind11/pybind11.h>

namespace spotblue::python {

void bind_mockup_parts(pybind11::module_& module);

}  // namespace spotblue::python
