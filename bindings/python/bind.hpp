#pragma once
/// @file
/// One function for each public header of the kernel; each adds that header's values and functions
/// to the module.

#include <pybind11/pybind11.h>

namespace spotblue::python {

void bind_look(pybind11::module_& module);
void bind_check(pybind11::module_& module);
/// Not a header of its own: what the Python package's library runner needs of several.
void bind_shelf(pybind11::module_& module);

}  // namespace spotblue::python
