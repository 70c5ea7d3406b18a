#include <memory>

#include "help.hpp"
#include "output.hpp"
#include "progress.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/job/mockup_file.hpp"
#include "verbs.hpp"

namespace spotblue::command {
namespace {

struct ModelOptions {
  std::filesystem::path mockup;
  std::filesystem::path out;
};

ExitCode run_model(const ModelOptions& options) {
  refuse_overwriting(options.out, options.mockup);
  const Mockup mockup = read_mockup(options.mockup);
  const Progress progress("making " + shown_name(options.out.filename()));
  write_mockup(mockup, options.out);
  return kAllWell;
}

}  // namespace

void add_model(CLI::App& app, Run& chosen) {
  const auto options = std::make_shared<ModelOptions>();
  CLI::App* verb = app.add_subcommand("model");
  set_help(*verb, kModelHelp);
  verb->add_option("MOCKUP.toml", options->mockup)->required();
  verb->add_option("OUT.step", options->out)->required();
  verb->callback([options, &chosen] { chosen = [options] { return run_model(*options); }; });
}

}  // namespace spotblue::command
