#pragma once
/// @file
/// The kernel's enumerations as Python sees them: each an enum.StrEnum whose members equal their
/// words; setters and arguments take a member or its word.

#include <pybind11/pybind11.h>

#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <string_view>
#include <type_traits>
#include <typeinfo>
#include <vector>

#include "spotblue/base/words.hpp"

namespace spotblue::python {

/// The Python class of one enumeration and its members in the order of the C++ values.
struct ChoiceClass {
  pybind11::object type;
  std::vector<pybind11::object> members;
  pybind11::dict numbers;  ///< by word
};

/// Makes the class in a module; "end play" becomes the member END_PLAY. It lives for ever, and
/// every module of this package finds it by `type`, the C++ name of the enumeration.
ChoiceClass* make_choice(pybind11::module_& module, std::string_view name, const char* doc,
                         std::span<const std::string_view> words, const char* type);
/// The class that this or another module of the package made; nullptr when none did.
[[nodiscard]] ChoiceClass* shared_choice(const char* type);
/// Number of a member or a word; nothing when it is no text.
/// @throws error_already_set (BadInputError) for a word the class does not have.
[[nodiscard]] std::optional<std::size_t> choice_number(const ChoiceClass* choices,
                                                       pybind11::handle given);

template <class E>
inline ChoiceClass* choice_class = nullptr;

/// The class of an enumeration, whichever module bound it.
template <class E>
[[nodiscard]] ChoiceClass* choices_of() {
  if (choice_class<E> == nullptr) {
    choice_class<E> = shared_choice(typeid(E).name());
  }
  return choice_class<E>;
}

/// "Outcome" of Outcome.
template <class E>
constexpr std::string_view bare_name() {
  const std::string_view signature = __PRETTY_FUNCTION__;
  const std::size_t end = signature.find_first_of(";]", signature.find("E = "));
  const std::size_t start = signature.rfind(':', end) + 1;
  return signature.substr(start, end - start);
}

/// The same for the signatures that help() shows.
template <class E>
constexpr auto choice_name() {
  constexpr std::size_t length = bare_name<E>().size();
  char name[length + 1]{};
  for (std::size_t i = 0; i < length; ++i) {
    name[i] = bare_name<E>()[i];
  }
  return pybind11::detail::descr<length>(name);
}

/// Binds an enumeration by its own name, as it is described.
template <class E>
void choice(pybind11::module_& module) {
  choice_class<E> =
      make_choice(module, bare_name<E>(), kWordsOf<E>.document, kWordsOf<E>.all, typeid(E).name());
}

}  // namespace spotblue::python

namespace pybind11::detail {

template <class E>
struct type_caster<E, std::enable_if_t<std::is_enum_v<E>>> {
  PYBIND11_TYPE_CASTER(E, spotblue::python::choice_name<E>());

  bool load(handle given, bool /*convert*/) {
    const auto number = spotblue::python::choice_number(spotblue::python::choices_of<E>(), given);
    if (number) {
      value = static_cast<E>(*number);
    }
    return number.has_value();
  }
  static handle cast(E given, return_value_policy /*policy*/, handle /*parent*/) {
    const auto number = static_cast<std::size_t>(given);
    return spotblue::python::choices_of<E>()->members.at(number).inc_ref();
  }
};

}  // namespace pybind11::detail
