#pragma once
// The one door to the CAD kernel: its exceptions come out as ours.

#include <Standard_OutOfMemory.hxx>
#include <new>
#include <string>
#include <string_view>
#include <utility>

#include "geometry/occt_versions.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {

/// Runs `action` and gives back its answer; a kernel exception becomes Error kernel_failure that
/// says what was being done, with the kernel's own words. Want of memory is std::bad_alloc, as it
/// is everywhere else.
template <typename Action>
auto guarded(std::string_view doing, Action&& action) {
  try {
    return std::forward<Action>(action)();
  } catch (const Standard_OutOfMemory&) {
    throw std::bad_alloc();
  } catch (const Standard_Failure& failure) {
    const std::string words = occt::words_of(failure);
    std::string text = "the CAD kernel failed: ";
    text += occt::kind_of(failure);
    if (!words.empty()) {
      text += " (" + words + ")";
    }
    throw Error(ErrorCode::kernel_failure, {"", std::string(doing)}, text,
                "check the sizes there; report it with the file if they are sound");
  }
}

}  // namespace spotblue
