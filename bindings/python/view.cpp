#include "view.hpp"

namespace spotblue::python {

std::string view_text(const py::object& value) {
  std::string text = py::type::of(value).attr("__name__").cast<std::string>() + "(";
  const char* between = "";
  for (const py::handle name : value.attr("_fields").cast<py::tuple>()) {
    const py::object field = value.attr(name.cast<py::str>());
    const bool many = py::isinstance<py::tuple>(field) && py::len(field) > 3;
    text += between + name.cast<std::string>() + "=" +
            (many ? "<" + std::to_string(py::len(field)) + " of them>"
                  : py::repr(field).cast<std::string>());
    between = ", ";
  }
  return text + ")";
}

}  // namespace spotblue::python
