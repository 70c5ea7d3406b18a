#include "spotblue/check/draft.hpp"

#include "command/output.hpp"
#include "command/verbs.hpp"
#include "command/view_options.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/base/whole_file.hpp"

namespace spotblue::command {
namespace {

namespace fs = std::filesystem;

// A job file that someone has filled in is worth more than any draft.
void refuse_replacing(const fs::path& output) {
  std::error_code ignored;
  if (!output.empty() && fs::is_regular_file(output, ignored)) {
    throw Error(ErrorCode::file_access, {shown_name(output), ""},
                "is there already and may be filled in", "give another name, or remove it first");
  }
}

// The model as the job file will name it: from the folder that the job file will lie in.
std::string model_path(const ViewOptions& options) {
  const fs::path folder = options.output.empty() ? fs::path() : options.output.parent_path();
  if (options.file.is_absolute() || folder.empty()) {
    return options.file.string();
  }
  std::error_code failed;
  const fs::path path = fs::proximate(options.file, folder, failed);
  return (failed ? fs::absolute(options.file) : path).string();
}

}  // namespace

ExitCode run_draft(const Given& given) {
  const ViewOptions options = view_options(given);
  refuse_overwriting(options.output, {options.file});
  refuse_replacing(options.output);
  const Look found = look_with_progress(options);
  const LengthUnit unit = unit_for(options, found.model.file);
  return write_result(draft_job(found, model_path(options), unit), options.output, code_of(found));
}

}  // namespace spotblue::command
