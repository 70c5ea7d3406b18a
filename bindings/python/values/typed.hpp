#pragma once
/// @file
/// Objects of Python with their type in the signature, for help() and the stubs made of it.

#include <pybind11/pybind11.h>

#include <cstddef>
#include <utility>

namespace spotblue::python {

/// A type as Python writes it: "dict[str, float | str]".
template <std::size_t N>
struct TypeText {
  // NOLINTNEXTLINE(google-explicit-constructor): a literal is what it is given as
  constexpr TypeText(const char (&given)[N]) {
    for (std::size_t i = 0; i < N; ++i) {
      text[i] = given[i];
    }
  }
  char text[N]{};
};

/// Any object; the text is told and not checked.
template <TypeText kText>
class Typed : public pybind11::object {
 public:
  // NOLINTNEXTLINE(google-explicit-constructor): a result becomes what its return type says
  Typed(pybind11::object given) : pybind11::object(std::move(given)) {}
  Typed(pybind11::handle given, borrowed_t how) : pybind11::object(given, how) {}
  Typed(pybind11::handle given, stolen_t how) : pybind11::object(given, how) {}
  static bool check_(pybind11::handle given) { return given.ptr() != nullptr; }
};

}  // namespace spotblue::python

namespace pybind11::detail {

template <spotblue::python::TypeText kText>
struct handle_type_name<spotblue::python::Typed<kText>> {
  static constexpr auto name = const_name(kText.text);
};

}  // namespace pybind11::detail
