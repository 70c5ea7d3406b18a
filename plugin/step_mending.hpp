#pragma once
// What the kernel's STEP writer gets wrong about classes, put right in its entities before they are
// written.

#include <StepData_StepModel.hxx>
#include <cstddef>

namespace spotblue::plugin {

struct Written {
  std::size_t classes = 0;  ///< limits and fits
  std::size_t sizes = 0;    ///< those with their words beside them
};

/// Puts right the grades, puts limits beside classes that the kernel would not read again, and
/// signs the file as not the kernel's own work.
Written mend_sizes(const Handle(StepData_StepModel) & model);

}  // namespace spotblue::plugin
