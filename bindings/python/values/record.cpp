#include "python/values/record.hpp"

#include <string_view>
#include <vector>

#include "spotblue/base/nearest.hpp"

namespace spotblue::python {
namespace {

py::tuple fields(const py::object& value) { return value.attr("_fields").cast<py::tuple>(); }

std::string type_name(const py::handle& type) { return type.attr("__name__").cast<std::string>(); }

[[noreturn]] void raise_error(PyObject* kind, const std::string& text) {
  PyErr_SetString(kind, text.c_str());
  throw py::error_already_set();
}

std::string unknown_field(const py::handle& type, const py::handle& name) {
  const auto known = type.attr("_fields").cast<std::vector<std::string>>();
  return type_name(type) + " has no field " + py::repr(name).cast<std::string>() +
         "; the nearest is " + nearest_word(name.cast<std::string>(), known) + "; it has " +
         py::str(", ").attr("join")(type.attr("_fields")).cast<std::string>();
}

// What the setter's own signature says: "(arg0: ...Job, arg1: List[...FitWant]) -> None"; pybind11
// from 2.12 on writes list.
std::string taken(const py::object& type, const py::str& name) {
  const auto text = type.attr(name).attr("fset").attr("__doc__").cast<std::string>();
  constexpr std::string_view before = "arg1: ";
  const std::size_t start = text.rfind(before) + before.size();
  const py::str said(text.substr(start, text.rfind(") -> ") - start));
  const py::object replaced = py::module_::import("re").attr("sub");
  py::object plain = replaced(R"(spotblue\._(?:kernel|numbers)\.(\w+\.(?=[A-Z]))?)", "", said);
  plain = replaced(R"(^[Ll]ist\[(.*)\]$)", R"(several \1 values)", plain);
  plain = replaced(R"(Optional\[(.*)\])", R"(\1 or None)", plain);
  return plain.cast<std::string>();
}

std::string short_text(const py::object& value) {
  constexpr std::size_t most = 80;
  const auto text = py::repr(value).cast<std::string>();
  return text.size() <= most ? text : "a " + type_name(py::type::of(value));
}

std::string field_text(const py::object& field) {
  constexpr std::size_t few = 3;
  constexpr std::size_t few_numbers = 12;
  const bool many = py::isinstance<py::tuple>(field) && py::len(field) > few;
  if (many && (py::hasattr(field[py::int_(0)], "_fields") || py::len(field) > few_numbers)) {
    return "<" + std::to_string(py::len(field)) + " of them>";
  }
  return py::repr(field).cast<std::string>();
}

py::object frozen(const py::object& value) {
  if (!py::isinstance<py::list>(value)) {
    return value;
  }
  py::tuple items(py::len(value));
  for (std::size_t i = 0; i < items.size(); ++i) {
    items[i] = frozen(value[py::int_(i)]);
  }
  return items;
}

// A text is an iterable of letters, which is never meant.
py::list listed(const py::object& given) {
  if (py::isinstance<py::str>(given) || py::isinstance<py::bytes>(given)) {
    throw py::type_error("a text is no list of values");
  }
  return py::list(given);
}

}  // namespace

std::string record_text(const py::object& value) {
  std::string text = py::type::of(value).attr("__name__").cast<std::string>() + "(";
  const char* between = "";
  for (const py::handle name : fields(value)) {
    text += between + name.cast<std::string>() + "=" + field_text(value.attr(name.cast<py::str>()));
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

void set_field(const py::object& value, const py::str& name, const py::object& given) {
  const py::object type = py::type::of(value);
  if (!type.attr("_fields").contains(name)) {
    raise_error(PyExc_AttributeError, unknown_field(type, name));
  }
  if (PyObject_GenericSetAttr(value.ptr(), name.ptr(), given.ptr()) == 0) {
    return;
  }
  const py::error_already_set raised;
  if (!raised.matches(PyExc_TypeError)) {
    throw raised;
  }
  raise_error(PyExc_TypeError, type_name(type) + "." + name.cast<std::string>() + " takes " +
                                   taken(type, name) + ", not " + short_text(given));
}

void set_fields(const py::object& value, const py::kwargs& given) {
  const py::tuple known = fields(value);
  for (const auto& [name, item] : given) {
    if (!known.contains(name)) {
      throw py::type_error(unknown_field(py::type::of(value), name));
    }
    set_field(value, py::reinterpret_borrow<py::str>(name),
              py::reinterpret_borrow<py::object>(item));
  }
}

void read_as_tuple(const py::object& type, const char* name) {
  const py::object property = type.attr("__dict__")[name];
  const py::object get = property.attr("fget");
  const py::object set = property.attr("fset");
  const std::string hands_out = get.attr("__doc__").cast<std::string>();
  const py::cpp_function read([get](const py::object& self) { return frozen(get(self)); },
                              py::is_method(type), py::doc(hands_out.c_str()));
  py::object write = py::none();
  if (!set.is_none()) {
    const std::string takes = set.attr("__doc__").cast<std::string>();
    write = py::cpp_function(
        [set](const py::object& self, const py::object& given) { set(self, listed(given)); },
        py::is_method(type), py::doc(takes.c_str()));
  }
  type.attr(name) = py::module_::import("builtins")
                        .attr("property")(read, write, py::none(), property.attr("__doc__"));
}

py::dict fields_of(const py::object& value) {
  py::dict result;
  for (const py::handle name : fields(value)) {
    result[name] = value.attr(name.cast<py::str>());
  }
  return result;
}

}  // namespace spotblue::python
