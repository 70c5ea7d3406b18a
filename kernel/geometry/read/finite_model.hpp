#pragma once
// The one place where numbers that are infinite or none, and places absurdly far away, are kept out
// of a model.

#include <string>

#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/settings.hpp"

namespace spotblue {

// Throws Error unreadable by the first part, place or stated size that has such a number, or by the
// first component that stands absurdly far away (far_places.hpp). Under
// accept_partial these are left out with a note each: of the part its features and occurrences, so
// that nothing is paired with it; it is thrown all the same when no other part remains.
//
// `file` is for the message; empty for what a host program holds, which it then says.
void require_finite(Model& model, const std::string& file, Completeness completeness);

}  // namespace spotblue
