#include "python/values/choices.hpp"

#include <string>

#include "spotblue/base/ascii.hpp"

namespace spotblue::python {

namespace py = pybind11;

namespace {

// "no load, slow" -> "NO_LOAD_SLOW"
std::string member_name(std::string_view word) {
  std::string name;
  for (const char letter : word) {
    if (is_ascii_letter(letter) || is_ascii_digit(letter)) {
      name += ascii_upper(letter);
    } else if (!name.empty() && name.back() != '_') {
      name += '_';
    }
  }
  return name;
}

std::string shared_name(const char* type) { return std::string("spotblue choice ") + type; }

}  // namespace

ChoiceClass* make_choice(py::module_& module, std::string_view name, const char* doc,
                         std::span<const std::string_view> words, const char* type) {
  // Never freed: modules may outlive it no more than the interpreter does.
  auto* const made = new ChoiceClass;
  py::list members;
  for (const std::string_view word : words) {
    members.append(py::make_tuple(member_name(word), word));
    made->numbers[py::str(word)] = made->numbers.size();
  }
  const py::object base = py::module_::import("spotblue.choice").attr("Choice");
  made->type = base(name, members, py::arg("module") = module.attr("__name__"));
  made->type.attr("__doc__") = doc;
  for (const std::string_view word : words) {
    made->members.push_back(made->type(word));
  }
  module.attr(py::str(name)) = made->type;
  py::set_shared_data(shared_name(type), made);
  return made;
}

ChoiceClass* shared_choice(const char* type) {
  return static_cast<ChoiceClass*>(py::get_shared_data(shared_name(type)));
}

std::optional<std::size_t> choice_number(const ChoiceClass* choices, py::handle given) {
  if (!py::isinstance<py::str>(given)) {
    return std::nullopt;
  }
  if (!choices->numbers.contains(given)) {
    choices->type(given);  // raises, naming the nearest word
  }
  return choices->numbers[given].cast<std::size_t>();
}

}  // namespace spotblue::python
