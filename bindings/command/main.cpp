#include <fmt/format.h>

#include <csignal>
#include <exception>
#include <new>
#include <sstream>

#include "failure.hpp"
#include "help.hpp"
#include "output.hpp"
#include "spotblue/base/version.hpp"
#include "spotblue/geometry/kernel_version.hpp"
#include "verbs.hpp"

namespace spotblue::command {
namespace {

// Help and version go to standard output and end well; everything else is one line and bad input.
ExitCode answer(const CLI::App& app, const CLI::ParseError& asked) {
  if (asked.get_exit_code() != static_cast<int>(CLI::ExitCodes::Success)) {
    say_failure(fmt::format("{}; spotblue --help shows how", asked.what()));
    return kBadInput;
  }
  std::ostringstream text;
  std::ostringstream none;
  app.exit(asked, text, none);
  write_result(text.str(), {});
  return kAllWell;
}

ExitCode run(int argc, const char* const* argv) {
  CLI::App app;
  set_help(app, kProgramHelp);
  app.set_version_flag("--version",
                       fmt::format("spotblue {} (Open CASCADE {})", kVersion, kernel_version()));
  app.require_subcommand(1);
  Run chosen;
  add_model(app, chosen);
  add_look(app, chosen);
  add_draft(app, chosen);
  add_check(app, chosen);
  add_compare(app, chosen);
  add_shelf(app, chosen);
  try {
    app.parse(argc, argv);
  } catch (const CLI::ParseError& asked) {
    return answer(app, asked);
  }
  return chosen();
}

}  // namespace
}  // namespace spotblue::command

int main(int argc, char** argv) {
  namespace command = spotblue::command;
  try {
    command::hold_standard_streams();
    // A reader that goes away must not end what else there is to write; see ended_with.
    std::signal(SIGPIPE, SIG_IGN);
    return command::ended_with(command::run(argc, argv));
  } catch (const std::bad_alloc&) {
    command::say_failure("out of memory");
  } catch (const std::exception& error) {
    command::say_failure(error.what());
  } catch (...) {
    command::say_failure("failed for a reason unknown");
  }
  return command::kBadInput;
}
