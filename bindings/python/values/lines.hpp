#pragma once
/// @file
/// Lines of a job's files as plain numbers in Python.

#include <pybind11/pybind11.h>

#include "spotblue/job/job_line.hpp"

namespace pybind11::detail {

template <>
struct type_caster<spotblue::JobLine> {
  PYBIND11_TYPE_CASTER(spotblue::JobLine, make_caster<int>::name);

  bool load(handle given, bool convert) {
    make_caster<int> number;
    if (!number.load(given, convert)) {
      return false;
    }
    value = spotblue::JobLine(cast_op<int>(number));
    return true;
  }
  static handle cast(const spotblue::JobLine& line, return_value_policy policy, handle parent) {
    return make_caster<int>::cast(line.number, policy, parent);
  }
};

}  // namespace pybind11::detail
