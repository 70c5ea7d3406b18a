#pragma once
// The one door to the CAD kernel: its exceptions come out as ours.

#include <Standard_Failure.hxx>
#include <Standard_Type.hxx>
#include <string>
#include <string_view>
#include <utility>

#include "spotblue/base/error.hpp"

namespace spotblue {

/// Runs `action` and gives back its answer; a kernel exception becomes Error kernel_failure that
/// says what was being done, with the kernel's own words.
template <typename Action>
auto guarded(std::string_view doing, Action&& action) {
  try {
    return std::forward<Action>(action)();
  } catch (const Standard_Failure& failure) {
    const char* words = failure.GetMessageString();
    std::string text = "the CAD kernel failed: ";
    text += failure.DynamicType()->Name();
    if (words != nullptr && *words != '\0') {
      text += std::string(" (") + words + ")";
    }
    throw Error(ErrorCode::kernel_failure, {"", std::string(doing)}, text,
                "check the sizes there; report it with the file if they are sound");
  }
}

}  // namespace spotblue
