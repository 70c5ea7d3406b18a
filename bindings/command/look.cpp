
#include "command/output.hpp"
#include "command/verbs.hpp"
#include "command/view_options.hpp"
#include "spotblue/base/whole_file.hpp"
#include "spotblue/report/json.hpp"
#include "spotblue/report/look_text.hpp"

namespace spotblue::command {
ExitCode run_look(const Given& given) {
  const ViewOptions options = view_options(given);
  refuse_overwriting(options.output, {options.file});
  const Look found = look_with_progress(options);
  refuse_overwriting(options.output, files_of(found.model));
  const std::string text =
      options.json ? look_json(found)
                   : look_text(found, style_for(options, unit_for(options, found.model.file)));
  return write_result(text, options.output, code_of(found));
}

}  // namespace spotblue::command
