#pragma once
// A STEP file of an older protocol written anew as AP242 by the CAD kernel.

#include <filesystem>
#include <string_view>

namespace spotblue {

// Parts, names, places, colours and layers go along; what the kernel does not know does not.
//
// Changes the process's kernel settings: only for a contained child, once.
// Throws Error kernel_failure; kernel exceptions pass through.
void rewrite_as_ap242(std::string_view text, const std::filesystem::path& out);

}  // namespace spotblue
