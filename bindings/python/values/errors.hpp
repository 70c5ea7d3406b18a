#pragma once
/// @file
/// The kernel's errors as Python exceptions with file, place and cure.

#include <pybind11/pybind11.h>

namespace spotblue::python {

/// From now on a spotblue::Error reaches Python as spotblue.Error or one of its kinds.
void translate_errors();

}  // namespace spotblue::python
