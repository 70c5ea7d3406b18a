#include <memory>

#include "help.hpp"
#include "output.hpp"
#include "spotblue/report/json.hpp"
#include "spotblue/report/text.hpp"
#include "verbs.hpp"
#include "view_options.hpp"

namespace spotblue::command {
namespace {

ExitCode run_look(const ViewOptions& options) {
  refuse_overwriting(options.output, options.file);
  const Look found = look_with_progress(options);
  const std::string text =
      options.json ? look_json(found)
                   : look_text(found, style_for(options, unit_for(options, found.model.file)));
  write_result(text, options.output);
  return kAllWell;
}

}  // namespace

void add_look(CLI::App& app, Run& chosen) {
  const auto options = std::make_shared<ViewOptions>();
  CLI::App* verb = app.add_subcommand("look");
  set_help(*verb, kLookHelp);
  verb->add_option("FILE.step", options->file)->required();
  add_json(*verb, *options);
  add_unit(*verb, *options);
  add_accept_partial(*verb, *options);
  add_output(*verb, *options);
  verb->callback([options, &chosen] { chosen = [options] { return run_look(*options); }; });
}

}  // namespace spotblue::command
