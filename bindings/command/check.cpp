#include "spotblue/check/check.hpp"

#include <fmt/format.h>

#include <map>
#include <optional>
#include <string>
#include <utility>

#include "command/output.hpp"
#include "command/progress.hpp"
#include "command/verbs.hpp"
#include "command/view_options.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/base/whole_file.hpp"
#include "spotblue/check/decided_sizes.hpp"
#include "spotblue/report/check_text.hpp"
#include "spotblue/report/group_text.hpp"
#include "spotblue/report/json.hpp"

namespace spotblue::command {
namespace {

ExitCode exit_code(const CheckResult& result) {
  const OutcomeCount count = count_outcomes(result.findings);
  if (count.nonconforming > 0) {
    return kNonconforming;
  }
  return count.undecided > 0 ? kUndecided : kAllWell;
}

CheckResult checked(const ViewOptions& options, const std::filesystem::path& with_sizes) {
  const auto unit = options.unit.empty() ? std::nullopt : std::optional(parse_unit(options.unit));
  Judging asked = judging_of(options.file, options.outside, unit);
  for (const auto* out : {&options.output, &with_sizes}) {
    refuse_overwriting(*out, {asked.job.model});
    refuse_overwriting(*out, asked.job.read_from);
  }
  const Progress progress("checking " + shown_name(asked.job.model.filename()));
  return check(std::move(asked), options.bounds);
}

std::string sizes_written(const CheckResult& result, const std::filesystem::path& out) {
  const DecidedSizes decided = decided_sizes(result.job, result.look);
  if (decided.sizes.empty()) {
    throw Error(ErrorCode::bad_input, {result.job.file, ""},
                "the job decides no size that could be written onto the model",
                "give a class in [[fits]] or a class or limits in [[sizes]]");
  }
  std::vector<Note> notes = write_semantic_sizes(result.job.model, out, decided.sizes,
                                                 result.job.unit, result.job.settings.look.limits);
  const std::size_t there = notes.size();
  notes.insert(notes.end(), decided.left_out.begin(), decided.left_out.end());
  std::string text = fmt::format("{} of {} sizes written to {}\n", decided.sizes.size() - there,
                                 decided.sizes.size() + decided.left_out.size(), shown_name(out));
  std::map<std::string, std::string> by_reason;
  for (const Note& note : notes) {
    std::string& names = by_reason[note.text];
    names += (names.empty() ? "" : ", ") + note.about;
  }
  for (const auto& [reason, names] : by_reason) {
    text += fmt::format("not written, {}: {}\n", shown_text(reason), shown_text(names));
  }
  return text;
}

std::string shown(const CheckResult& result, const ViewOptions& options, bool with_group) {
  const LengthUnit unit = options.unit.empty() ? result.job.unit : parse_unit(options.unit);
  const TextStyle style = style_for(options, unit);
  return (with_group ? group_text(result, style) : std::string()) + check_text(result, style);
}

}  // namespace

ExitCode run_check(const Given& given) {
  const ViewOptions options = view_options(given);
  const std::filesystem::path with_sizes = given.text("--with-sizes");
  refuse_overwriting(options.output, {options.file});
  refuse_overwriting(with_sizes, {options.file});
  refuse_one_for_both(options.output, with_sizes);
  const CheckResult result = checked(options, with_sizes);
  refuse_overwriting(options.output, files_of(result.look.model));
  refuse_overwriting(with_sizes, files_of(result.look.model));
  const ExitCode code =
      write_result(options.json ? check_json(result) : shown(result, options, given.has("--group")),
                   options.output, exit_code(result));
  if (!with_sizes.empty()) {
    fmt::print(stderr, "{}", sizes_written(result, with_sizes));
  }
  return code;
}

}  // namespace spotblue::command
