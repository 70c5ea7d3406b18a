#include "view_options.hpp"

#include <charconv>

#include "output.hpp"
#include "progress.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/job/bare_job.hpp"

namespace spotblue::command {

ViewOptions view_options(const Given& given) {
  ViewOptions options{.file = given.operands.front(),
                      .output = given.text("--output"),
                      .unit = given.text("--unit"),
                      .json = given.has("--json"),
                      .accept_partial = given.has("--accept-partial"),
                      .outside = outside_of(given)};
  if (given.has("--seconds")) {
    const std::string text = given.text("--seconds");  // the table has seen that it is a number
    std::from_chars(text.data(), text.data() + text.size(), options.seconds);
  }
  return options;
}

Outside outside_of(const Given& given) {
  return given.has("--allow-outside") ? Outside::allowed : Outside::refused;
}

std::vector<std::filesystem::path> files_of(const Model& model) {
  std::vector<std::filesystem::path> files;
  for (const std::string& name : model.file.files) {
    files.push_back(path_of_shown(name));
  }
  return files;
}

LengthUnit unit_for(const ViewOptions& options, const FileInfo& file) {
  if (!options.unit.empty()) {
    return parse_unit(options.unit);
  }
  return unit_of(file);
}

TextStyle style_for(const ViewOptions& options, LengthUnit unit) {
  if (!options.output.empty()) {
    return {.unit = unit};
  }
  return {unit, shows_colour() ? Colour::terminal : Colour::never, terminal_width()};
}

Look look_with_progress(const ViewOptions& options) {
  LookSettings settings;
  settings.completeness =
      options.accept_partial ? Completeness::accept_partial : Completeness::all_or_error;
  settings.seconds = options.seconds;
  const Progress progress("looking at " + shown_name(options.file.filename()));
  return look(options.file, settings);
}

}  // namespace spotblue::command
