#include "job/named_file.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <system_error>

#include "spotblue/base/shown_name.hpp"

namespace spotblue {
namespace {

namespace fs = std::filesystem;

bool lies_below(const fs::path& file, const fs::path& folder) {
  const auto [of_folder, of_file] =
      std::mismatch(folder.begin(), folder.end(), file.begin(), file.end());
  return of_folder == folder.end() && of_file != file.end();
}

}  // namespace

fs::path named_file(const fs::path& by, const TomlTable& table, std::string_view key,
                    const std::string& name, Outside outside) {
  const fs::path from = by.parent_path();
  fs::path file = from / path_of_shown(name);
  if (file.native().find('\0') != std::string::npos) {
    throw table.error(key, fmt::format("\"{}\" has a zero byte, and no file's name has one", name),
                      "take it out");
  }
  if (outside == Outside::allowed) {
    return file;
  }
  std::error_code trouble;
  const fs::path folder = fs::canonical(from.empty() ? fs::path(".") : from, trouble);
  const fs::path target = trouble ? fs::path() : fs::weakly_canonical(fs::absolute(file), trouble);
  if (trouble) {
    throw table.error(key,
                      fmt::format("where \"{}\" lies can not be told: {}", name, trouble.message()),
                      "check the path and its links");
  }
  if (!lies_below(target, folder)) {
    throw table.error(
        key,
        fmt::format("\"{}\" is {}, outside this file's own folder {}", name, shown_name(target),
                    shown_name(folder)),
        "put it below that folder, or allow it with --allow-outside (allow_outside=True in "
        "Python)");
  }
  return file;
}

}  // namespace spotblue
