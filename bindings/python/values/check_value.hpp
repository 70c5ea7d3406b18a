#pragma once
/// @file
/// How Python holds a judged job: shared, so that its parts keep it alive, and a finding's
/// quantities as a dict in their order.

#include <pybind11/pybind11.h>
#include <pybind11/stl.h>

#include <memory>
#include <vector>

#include "python/values/crossing.hpp"
#include "python/values/typed.hpp"
#include "spotblue/check/check.hpp"

namespace spotblue::python {

using SharedCheck = std::shared_ptr<CheckResult>;
using Quantities = Typed<"dict[str, float | str]">;

[[nodiscard]] inline Quantities quantities(const std::vector<Quantity>& held) {
  pybind11::dict result;
  for (const Quantity& quantity : held) {
    result[pybind11::str(quantity.key)] = pybind11::cast(quantity.value);
  }
  return result;
}

/// Only handed out: results are not made in Python.
template <>
struct Crossing<std::vector<Quantity>> {
  static Quantities out(const std::vector<Quantity>& held) { return quantities(held); }
};

}  // namespace spotblue::python
