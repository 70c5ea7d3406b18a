#pragma once
// A STEP file of an older protocol written anew as AP242 by Open CASCADE.

#include <filesystem>
#include <string_view>

namespace spotblue {

// Parts, names, places, colours and layers go along; what Open CASCADE does not know does not.
//
// Changes the process's settings of Open CASCADE: only for a contained child, once.
// Throws Error open_cascade_failed; exceptions of Open CASCADE pass through.
void rewrite_as_ap242(std::string_view text, const std::filesystem::path& out);

}  // namespace spotblue
