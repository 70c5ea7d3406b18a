#include "command/output.hpp"
#include "command/verbs.hpp"
#include "command/view_options.hpp"
#include "spotblue/report/materials_text.hpp"

namespace spotblue::command {

ExitCode run_materials(const Given& given) {
  const ViewOptions options = view_options(given);
  const LengthUnit unit = options.unit.empty() ? LengthUnit::mm : parse_unit(options.unit);
  return write_result(materials_text(style_for(options, unit)), options.output, kAllWell);
}

}  // namespace spotblue::command
