
#include "command/output.hpp"
#include "command/progress.hpp"
#include "command/verbs.hpp"
#include "command/view_options.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/geometry/mockup_write.hpp"
#include "spotblue/job/mockup_file.hpp"

namespace spotblue::command {
ExitCode run_model(const Given& given) {
  const std::filesystem::path mockup_file = given.operands[0];
  const std::filesystem::path out = given.operands[1];
  const Mockup mockup = read_mockup(mockup_file, outside_of(given));
  const Progress progress("making " + shown_name(out.filename()));
  write_mockup(mockup, out);
  return kAllWell;
}

}  // namespace spotblue::command
