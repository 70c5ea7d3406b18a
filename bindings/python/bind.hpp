#pragma once
/// @file
/// One function for each public header of the kernel; each adds that header's values and functions
/// to the module.

#include <pybind11/pybind11.h>

#include "spotblue/job/outside.hpp"

namespace spotblue::python {

/// What the keyword allow_outside stands for.
inline Outside outside_of(bool allowed) { return allowed ? Outside::allowed : Outside::refused; }

void bind_log(pybind11::module_& module);
void bind_region(pybind11::module_& module);
/// What a reading and a look may be told: before all that takes it.
void bind_settings(pybind11::module_& module);
void bind_model(pybind11::module_& module);
/// The sizes a file states; their writing comes later, with jobs.
void bind_semantic_size(pybind11::module_& module);
void bind_semantic(pybind11::module_& module);
void bind_seats(pybind11::module_& module);
void bind_look(pybind11::module_& module);
void bind_ways(pybind11::module_& module);
void bind_job(pybind11::module_& module);
void bind_group(pybind11::module_& module);
void bind_check(pybind11::module_& module);
void bind_compare(pybind11::module_& module);
void bind_mockup(pybind11::module_& module);
/// Not a header of its own: what the Python package's library runner needs of several.
void bind_shelf(pybind11::module_& module);

}  // namespace spotblue::python
