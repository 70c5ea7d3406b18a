#pragma once
/// @file
/// Binding of a result of the kernel as a read-only Python value: its fields are seen where they
/// are, without a copy, and keep the result they are part of alive.

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "python/values/columns.hpp"
#include "python/values/record.hpp"
#include "spotblue/base/angle.hpp"

namespace spotblue::python {

/// Whether a part of a result is handed out shared, as the functions that take one want it, and
/// keeps the whole alive.
template <class M>
inline constexpr bool kShared = false;

/// Binds what is to be seen of a struct; call done() last. Angles leave in degrees.
template <class T, class Holder = std::unique_ptr<T>>
class View {
 public:
  explicit View(py::module_& module) : module_(module) {}
  View(py::module_& module, const char* name, const char* doc) : module_(module) {
    value(name, doc);
  }

  View& value(const char* name, const char* doc) {
    class_.emplace(module_, name, doc);
    return *this;
  }
  template <class M>
  View& member(const char* name, M T::*member, const char* doc) {
    column<M>(name);
    if constexpr (Crosses<M>) {
      return computed(
          name, [member](const T& value) { return Crossing<M>::out(value.*member); }, doc);
    } else if constexpr (kShared<M>) {
      return computed(
          name,
          [member](const Holder& whole) {
            return std::shared_ptr<M>(whole, &(whole.get()->*member));
          },
          doc);
    } else {
      return computed(
          name, [member](const T& value) -> const M& { return value.*member; }, doc);
    }
  }
  template <class M>
  View& pair(const char* name, M T::*member, const char* doc) {
    return computed(
        name, [member](const T& value) { return PairCrossing<M>::out(value.*member); }, doc);
  }
  View& or_0(const char* name, std::optional<double> T::*member, const char* doc) {
    column<double>(name);
    return computed(
        name, [member](const T& value) { return (value.*member).value_or(0.0); },
        (doc + std::string("; 0: none")).c_str());
  }
  View& degrees(const char* name, double T::*member, const char* doc) {
    column<double>(name);
    return computed(
        name, [member](const T& value) { return spotblue::degrees(value.*member); }, doc);
  }
  template <class M>
  View& held(M /*member*/) {
    return *this;
  }
  View& range(const NumberRange& /*numbers*/) { return *this; }
  template <class Get>
  View& derived(const char* name, Get get, const char* doc) {
    return computed(name, get, doc);
  }

  template <class Get>
  View& computed(const char* name, Get get, const char* doc) {
    class_->def_property_readonly(name, get, doc);
    if constexpr (is_many<Handed<Get>>) {
      read_as_tuple(*class_, name);
    }
    fields_.append(name);
    return *this;
  }

  /// In place of all fields, for what is too much to show.
  View& shown_by(std::string (*text)(const T&)) {
    class_->def("__repr__", text);
    shown_ = true;
    return *this;
  }

  py::class_<T, Holder>& done() {
    class_->attr("_fields") = py::tuple(fields_);
    class_->attr("_columns") = columns_;
    if (!shown_) {
      class_->def("__repr__", [](const py::object& self) { return record_text(self); });
    }
    class_->def("__eq__", [](const py::object& self, const py::object& other) {
      return records_alike(self, other);
    });
    class_->attr("__hash__") = py::none();
    return *class_;
  }

 private:
  template <class M>
  void column(const char* name) {
    if constexpr (!kColumn<M>.empty()) {
      columns_[name] = kColumn<M>;
    }
  }

  py::module_ module_;
  std::optional<py::class_<T, Holder>> class_;
  py::list fields_;
  py::dict columns_;
  bool shown_ = false;
};

/// Binds a result as it is described; `text`, where there is one, shows it in place of its fields.
template <class T, class Holder = std::unique_ptr<T>>
py::class_<T, Holder> bind_view(py::module_& module, std::string (*text)(const T&) = nullptr) {
  static_assert(wholly_described<T>(), "a member of this value has no description");
  View<T, Holder> view(module);
  describe_value<T>(view);
  if (text != nullptr) {
    view.shown_by(text);
  }
  return view.done();
}

template <class... T>
void bind_views(py::module_& module) {
  (bind_view<T>(module), ...);
}

}  // namespace spotblue::python
