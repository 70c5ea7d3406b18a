#include "command/view_options.hpp"

#include <charconv>
#include <optional>

#include "command/output.hpp"
#include "command/progress.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/job/bare_job.hpp"

namespace spotblue::command {

namespace {

// The table has seen that it is a number.
std::optional<double> number_of(const Given& given, const char* option) {
  if (!given.has(option)) {
    return std::nullopt;
  }
  const std::string text = given.text(option);
  double number = 0.0;
  std::from_chars(text.data(), text.data() + text.size(), number);
  return number;
}

}  // namespace

ViewOptions view_options(const Given& given) {
  return {.file = given.operands.empty() ? std::string() : given.operands.front(),
          .output = given.text("--output"),
          .unit = given.text("--unit"),
          .json = given.has("--json"),
          .bounds = {.seconds = number_of(given, "--seconds"),
                     .memory_mb = number_of(given, "--memory"),
                     .accept_partial = given.has("--accept-partial")},
          .outside = outside_of(given)};
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
  const Progress progress("looking at " + shown_name(options.file.filename()));
  return look(options.file, bounded({}, options.bounds));
}

ExitCode code_of(const Look& look) { return is_whole(look) ? kAllWell : kUndecided; }

}  // namespace spotblue::command
