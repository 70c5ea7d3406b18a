#pragma once
// The one door to Open CASCADE: its exceptions come out as ours.

#include <Standard_OutOfMemory.hxx>
#include <new>
#include <string>
#include <string_view>
#include <utility>

#include "geometry/occt/occt_versions.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {

/// Runs `action` and gives back its answer; an exception of Open CASCADE becomes Error
/// open_cascade_failed that says what was being done, with Open CASCADE's own words. Want of memory
/// is std::bad_alloc, as it is everywhere else.
template <typename Action>
auto guarded(std::string_view doing, Action&& action) {
  try {
    return std::forward<Action>(action)();
  } catch (const Standard_OutOfMemory&) {
    throw std::bad_alloc();
  } catch (const Standard_Failure& failure) {
    const std::string words = occt::words_of(failure);
    std::string text = "Open CASCADE failed: ";
    text += occt::kind_of(failure);
    if (!words.empty()) {
      text += " (" + words + ")";
    }
    throw Error(ErrorCode::open_cascade_failed, {"", std::string(doing)}, text,
                "check the sizes there; report it with the file if they are sound");
  }
}

}  // namespace spotblue
