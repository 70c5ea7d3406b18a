#pragma once
/// @file
/// Binding of a plain struct of the kernel as a Python value: made by keywords, read and changed by
/// fields with units in their names, compared, copied, pickled and shown field by field.

#include <pybind11/pybind11.h>
#include <pybind11/stl.h>

#include <array>
#include <optional>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

#include "python/values/choices.hpp"
#include "python/values/crossing.hpp"
#include "python/values/directions.hpp"
#include "python/values/ids.hpp"
#include "python/values/lines.hpp"
#include "spotblue/base/angle.hpp"
#include "spotblue/base/length.hpp"
#include "spotblue/base/members.hpp"

namespace spotblue::python {

namespace py = pybind11;

/// Text of a value as Python would write it, long tuples by their length:
/// "Fit(hole=Limits(...), least_clearance_mm=-0.059)".
[[nodiscard]] std::string record_text(const py::object& value);
/// Whether all fields of two values of one class are alike.
[[nodiscard]] bool records_alike(const py::object& one, const py::object& other);
/// Sets one field; AttributeError for a name the class does not have, TypeError for a value of
/// another kind, each saying what there is.
void set_field(const py::object& value, const py::str& name, const py::object& given);
/// Sets fields by keyword; TypeError for a name the class does not have, with those it has.
void set_fields(const py::object& value, const py::kwargs& fields);
/// The fields and their values, in order, as a dict.
[[nodiscard]] py::dict fields_of(const py::object& value);
/// Makes a property of a class hand out tuples for lists, and take any iterable that is no text.
void read_as_tuple(const py::object& type, const char* name);

template <class T>
inline constexpr bool is_many = false;
template <class T>
inline constexpr bool is_many<std::vector<T>> = true;
template <class T, std::size_t N>
inline constexpr bool is_many<std::array<T, N>> = true;
template <class T>
inline constexpr bool is_many<List<T>> = true;

template <class R, class... A>
std::remove_cvref_t<R> result_of_signature(R (*)(A...));
/// What a getter hands out.
template <class Get>
using Handed =
    decltype(result_of_signature(static_cast<py::detail::function_signature_t<Get>*>(nullptr)));

/// A struct inside a struct, which Python changes where it is.
template <class T>
concept Nested = std::is_class_v<T> && !requires {
  typename T::value_type;
}
&&!requires { typename T::first_type; }
&&!requires(T t) { t.index(); };

/// Binds the fields of a default-constructible struct one by one, as its description calls for;
/// call done() last.
template <class T>
class Record {
 public:
  explicit Record(py::module_& module) : module_(module) {}
  Record(py::module_& module, const char* name, const char* doc) : module_(module) {
    value(name, doc);
  }

  Record& value(const char* name, const char* doc) {
    class_.emplace(module_, name, doc);
    return *this;
  }

  template <class M>
  Record& member(const char* name, M T::*member, const char* doc) {
    if constexpr (Crosses<M>) {
      return crossing<Crossing<M>>(name, member, doc);
    } else {
      return field(name, member, doc);
    }
  }
  Record& degrees(const char* name, double T::*member, const char* doc) {
    return computed(
        name, [member](const T& value) { return spotblue::degrees(value.*member); },
        [member](T& value, double given) { value.*member = radians(given); }, doc);
  }
  template <class M>
  Record& pair(const char* name, M T::*member, const char* doc) {
    return crossing<PairCrossing<M>>(name, member, doc);
  }
  Record& range(const NumberRange& /*numbers*/) { return *this; }
  /// Seen beside the fields, and none of them.
  template <class Get>
  Record& derived(const char* name, Get get, const char* doc) {
    class_->def_property_readonly(name, get, doc);
    return *this;
  }

  /// A member as it is; `doc` says the unit and range.
  template <class M>
  Record& field(const char* name, M T::*member, const char* doc) {
    return computed(
        name, [member](const T& value) -> const M& { return value.*member; },
        [member](T& value, M given) { value.*member = std::move(given); }, doc,
        Nested<M> ? py::return_value_policy::reference_internal : py::return_value_policy::copy);
  }

  template <class Get, class Set>
  Record& computed(const char* name, Get get, Set set, const char* doc,
                   py::return_value_policy policy = py::return_value_policy::copy) {
    class_->def_property(name, py::cpp_function(get, policy), py::cpp_function(set), doc);
    if constexpr (is_many<Handed<Get>>) {
      read_as_tuple(*class_, name);
    }
    fields_.append(name);
    return *this;
  }

  py::class_<T>& done() {
    class_->def(py::init([](const py::kwargs& fields) {
      py::object value = py::cast(T{});
      set_fields(value, fields);
      return value.cast<T>();
    }));
    class_->attr("_fields") = py::tuple(fields_);
    class_->attr("__match_args__") = py::tuple(fields_);
    class_->def("__repr__", [](const py::object& self) { return record_text(self); });
    class_->def("__eq__", [](const py::object& self, const py::object& other) {
      return records_alike(self, other);
    });
    class_->attr("__hash__") = py::none();
    class_->def("__setattr__", &set_field);
    class_->def("__copy__", [](const T& self) { return T(self); });
    class_->def("__deepcopy__", [](const T& self, const py::dict& /*memo*/) { return T(self); });
    class_->def(py::pickle([](const py::object& self) { return fields_of(self); },
                           [](const py::dict& fields) {
                             py::object value = py::cast(T{});
                             set_fields(value, py::kwargs(fields));
                             return value.cast<T>();
                           }));
    return *class_;
  }

 private:
  template <class Way, class M>
  Record& crossing(const char* name, M T::*member, const char* doc) {
    using Given = decltype(Way::out(std::declval<M>()));
    return computed(
        name, [member](const T& value) { return Way::out(value.*member); },
        [member](T& value, const Given& given) { value.*member = Way::in(given); }, doc);
  }

  py::module_ module_;
  std::optional<py::class_<T>> class_;
  py::list fields_;
};

/// Binds a value as it is described, to be made, changed and compared.
template <class T>
py::class_<T> bind_record(py::module_& module) {
  static_assert(wholly_described<T>(), "a member of this value has no description");
  Record<T> record(module);
  describe_value<T>(record);
  return record.done();
}
template <class... T>
void bind_records(py::module_& module) {
  (bind_record<T>(module), ...);
}

}  // namespace spotblue::python
