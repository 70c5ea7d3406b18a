#pragma once
/// @file
/// The entries of a job as records.

#include <pybind11/pybind11.h>

namespace spotblue::python {

/// Parts, stock, materials and what was measured.
void bind_job_parts(pybind11::module_& module);
/// Fits, sizes, gaps and tapers that are wanted.
void bind_job_wants(pybind11::module_& module);
/// What turns, meshes, is joined, kept off or cut.
void bind_job_running(pybind11::module_& module);

}  // namespace spotblue::python
