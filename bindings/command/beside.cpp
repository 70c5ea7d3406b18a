#include "command/beside.hpp"

#include "spotblue/base/error.hpp"
#include "spotblue/base/shown_name.hpp"

namespace spotblue::command {

namespace fs = std::filesystem;

fs::path folder_beside_program(std::initializer_list<const char*> folders, const fs::path& file,
                               const std::string& cure) {
  const fs::path here = fs::read_symlink("/proc/self/exe").parent_path();
  for (const char* const beside : folders) {
    fs::path folder = (here / beside).lexically_normal();
    std::error_code ignored;
    if (fs::exists(folder / file, ignored)) {
      return folder;
    }
  }
  throw Error(ErrorCode::file_access,
              {shown_name((here / *folders.begin() / file).lexically_normal()), ""}, "is not there",
              cure);
}

}  // namespace spotblue::command
