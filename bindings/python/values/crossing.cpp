#include "python/values/crossing.hpp"

#include <pybind11/pybind11.h>
#include <pybind11/stl.h>

#include <cmath>
#include <functional>
#include <set>

#include "spotblue/base/error.hpp"

namespace spotblue::python {

std::string_view kept_text(const std::string& text) {
  // Called under Python's lock; a set's strings never move. Left alive for values that outlive it.
  static auto* const kept = new std::set<std::string, std::less<>>;
  return *kept->insert(text).first;
}

Limits from_pair(const LimitsMm& pair) {
  if (!std::isfinite(pair.first) || !std::isfinite(pair.second) || pair.first > pair.second) {
    throw Error(ErrorCode::bad_input, {},
                "limits are two lengths in mm, the lower first, got " +
                    pybind11::repr(pybind11::cast(pair)).cast<std::string>(),
                "give (lower, upper)");
  }
  return {Length::mm(pair.first), Length::mm(pair.second)};
}

}  // namespace spotblue::python
