#pragma once
// What Open CASCADE's STEP writer gets wrong about sizes, put right in its entities before they are
// written.

#include <StepData_StepModel.hxx>
#include <cstddef>

namespace spotblue::plugin {

struct Written {
  std::size_t sizes = 0;    ///< dimensions of any kind
  std::size_t classes = 0;  ///< limits and fits
};

/// Puts right grades and the signs of lower deviations, puts limits beside classes that Open
/// CASCADE would not read again and words beside deviations, and signs the file as not Open
/// CASCADE's own.
Written mend_sizes(const Handle(StepData_StepModel) & model);

}  // namespace spotblue::plugin
