#pragma once
/// @file
/// Ids of the kernel as plain numbers in Python, and lists of what they number as tuples.

#include <pybind11/pybind11.h>
#include <pybind11/stl.h>

#include "spotblue/geometry/ids.hpp"

namespace pybind11::detail {

template <class Of>
struct type_caster<spotblue::Id<Of>> {
  PYBIND11_TYPE_CASTER(spotblue::Id<Of>, make_caster<std::size_t>::name);

  bool load(handle given, bool convert) {
    make_caster<std::size_t> index;
    if (!index.load(given, convert)) {
      return false;
    }
    value = spotblue::Id<Of>(cast_op<std::size_t>(index));
    return true;
  }
  static handle cast(spotblue::Id<Of> id, return_value_policy policy, handle parent) {
    return make_caster<std::size_t>::cast(std::size_t{id}, policy, parent);
  }
};

template <class Of>
struct type_caster<spotblue::List<Of>> : list_caster<spotblue::List<Of>, Of> {};

}  // namespace pybind11::detail
