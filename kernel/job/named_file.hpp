#pragma once
// Files that a job or a mock-up names.

#include <filesystem>
#include <string>
#include <string_view>

#include "job/toml_table.hpp"
#include "spotblue/job/outside.hpp"

namespace spotblue {

// The file that `name` (in its shown form) stands for, seen from the folder of `by`, in whose
// `table` it stands. It need not be there. Throws Error bad_input at the key where the file lies
// elsewhere than below that folder, links followed, and this is not allowed.
[[nodiscard]] std::filesystem::path named_file(const std::filesystem::path& by,
                                               const TomlTable& table, std::string_view key,
                                               const std::string& name, Outside outside);

}  // namespace spotblue
