#pragma once
/// @file
/// How Python holds a judged job: shared, so that its parts keep it alive, and a finding's
/// quantities as a dict in their order.

#include <pybind11/pybind11.h>
#include <pybind11/stl.h>

#include <memory>
#include <string>
#include <vector>

#include "python/values/crossing.hpp"
#include "python/values/typed.hpp"
#include "spotblue/check/check.hpp"
#include "spotblue/report/sentence_text.hpp"

namespace spotblue::python {

using SharedCheck = std::shared_ptr<CheckResult>;
using Quantities = Typed<"dict[str, float | str]">;

[[nodiscard]] inline Quantities quantities(const std::vector<Quantity>& held) {
  pybind11::dict result;
  for (const Quantity& quantity : held) {
    const double* const number = number_in(quantity);
    result[pybind11::str(key_of(quantity))] =
        number != nullptr ? pybind11::cast(*number)
                          : pybind11::cast(text_of(std::get<Saying>(quantity.value)));
  }
  return result;
}

/// Only handed out: results are not made in Python.
template <>
struct Crossing<std::vector<Quantity>> {
  static Quantities out(const std::vector<Quantity>& held) { return quantities(held); }
};

/// Told in the unit of the job.
template <>
struct Crossing<Saying> {
  static std::string out(const Saying& held) { return text_of(held); }
};
template <>
struct Crossing<std::vector<Reference>> {
  static std::vector<std::string> out(const std::vector<Reference>& held) {
    std::vector<std::string> names;
    names.reserve(held.size());
    for (const Reference& reference : held) {
      names.push_back(reference.name);
    }
    return names;
  }
};

}  // namespace spotblue::python
