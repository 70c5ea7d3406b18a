#include "python/values/record_fields.hpp"

#include <cmath>

#include "spotblue/base/error.hpp"

namespace spotblue::python {

Limits from_pair(const LimitsMm& pair) {
  if (!std::isfinite(pair.first) || !std::isfinite(pair.second) || pair.first > pair.second) {
    throw Error(ErrorCode::bad_input, {},
                "limits are two lengths in mm, the lower first, got " +
                    py::repr(py::cast(pair)).cast<std::string>(),
                "give (lower, upper)");
  }
  return {Length::mm(pair.first), Length::mm(pair.second)};
}

}  // namespace spotblue::python
