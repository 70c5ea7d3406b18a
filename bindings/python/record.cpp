#include "record.hpp"

namespace spotblue::python {
namespace {

py::tuple fields(const py::object& value) { return value.attr("_fields").cast<py::tuple>(); }

}  // namespace

std::string record_text(const py::object& value) {
  std::string text = py::type::of(value).attr("__name__").cast<std::string>() + "(";
  const char* between = "";
  for (const py::handle name : fields(value)) {
    text += between + name.cast<std::string>() + "=" +
            py::repr(value.attr(name.cast<py::str>())).cast<std::string>();
    between = ", ";
  }
  return text + ")";
}

bool records_alike(const py::object& one, const py::object& other) {
  if (!py::type::of(one).is(py::type::of(other))) {
    return false;
  }
  return fields_of(one).equal(fields_of(other));
}

void set_fields(const py::object& value, const py::kwargs& given) {
  const py::tuple known = fields(value);
  for (const auto& [name, item] : given) {
    if (!known.contains(name)) {
      throw py::type_error(py::type::of(value).attr("__name__").cast<std::string>() +
                           " has no field " + py::repr(name).cast<std::string>() + "; it has " +
                           py::str(", ").attr("join")(known).cast<std::string>());
    }
    py::setattr(value, name, item);
  }
}

py::dict fields_of(const py::object& value) {
  py::dict result;
  for (const py::handle name : fields(value)) {
    result[name] = value.attr(name.cast<py::str>());
  }
  return result;
}

}  // namespace spotblue::python
