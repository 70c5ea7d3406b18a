#include "record_fields.hpp"

#include <cmath>

#include "spotblue/base/error.hpp"

namespace spotblue::python {

std::size_t choice_index(const std::string& name, const char* const* names, std::size_t count) {
  std::string known;
  for (std::size_t i = 0; i < count; ++i) {
    if (name == names[i]) {
      return i;
    }
    known += (i == 0 ? "\"" : ", \"") + std::string(names[i]) + "\"";
  }
  throw Error(ErrorCode::bad_input, {}, "there is no \"" + name + "\" here", "use one of " + known);
}

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
