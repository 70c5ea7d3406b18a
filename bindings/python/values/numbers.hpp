#pragma once
/// @file
/// Binding of the layers that know numbers and no CAD: one function for each group of their public
/// headers, and the ways their fields cross into Python.

#include <optional>
#include <span>
#include <string>
#include <string_view>
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
void bind_plain_bearing(py::module_& module);
void bind_shaft_section(py::module_& module);
void bind_gears(py::module_& module);
void bind_stack(py::module_& module);
void bind_stock(py::module_& module);
void bind_make_to_suit(py::module_& module);

/// Adds the submodules base, standards and mechanics.
void bind_numbers(py::module_& module);

/// A text that lives as long as the program, as those of the kernel's tables do.
[[nodiscard]] std::string_view kept_text(const std::string& text);

/// A text that the kernel holds as a view.
template <class T>
void text_field(Record<T>& record, const char* name, std::string_view T::*member, const char* doc) {
  record.computed(
      name, [member](const T& value) { return std::string(value.*member); },
      [member](T& value, const std::string& given) { value.*member = kept_text(given); }, doc);
}

/// A length that may be absent; the name must end in _mm.
template <class T>
void optional_length(Record<T>& record, const char* name, std::optional<Length> T::*member,
                     const char* doc) {
  record.computed(
      name,
      [member](const T& value) -> std::optional<double> {
        return value.*member ? std::optional((value.*member)->in_mm()) : std::nullopt;
      },
      [member](T& value, std::optional<double> given) {
        value.*member = given ? std::optional(Length::mm(*given)) : std::nullopt;
      },
      doc);
}

/// The rows of a table as a list of their own.
template <class T>
[[nodiscard]] std::vector<T> listed(std::span<const T> rows) {
  return {rows.begin(), rows.end()};
}

}  // namespace spotblue::python
