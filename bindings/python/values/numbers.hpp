#pragma once
/// @file
/// Binding of the layers that know numbers and no CAD: one function for each group of their public
/// headers, and the ways their fields cross into Python.

#include <span>
#include <vector>

#include "python/values/record.hpp"

namespace spotblue::python {

void bind_base(py::module_& module);

void bind_fits(py::module_& module);
void bind_general_tolerances(py::module_& module);
void bind_keys(py::module_& module);
void bind_materials(py::module_& module);
void bind_threads(py::module_& module);

void bind_elastic(py::module_& module);
void bind_press_fit(py::module_& module);
void bind_loosening(py::module_& module);
void bind_bearing_loads(py::module_& module);
void bind_plain_bearing(py::module_& module);
void bind_shaft_section(py::module_& module);
void bind_gears(py::module_& module);
void bind_play(py::module_& module);
void bind_stack(py::module_& module);
void bind_stock(py::module_& module);
void bind_make_to_suit(py::module_& module);

/// Adds the submodules base, standards and mechanics.
void bind_numbers(py::module_& module);

/// The rows of a table as a list of their own.
template <class T>
[[nodiscard]] std::vector<T> listed(std::span<const T> rows) {
  return {rows.begin(), rows.end()};
}

}  // namespace spotblue::python
