#include "module.hpp"

#include <array>
#include <string_view>

#include "failure.hpp"
#include "output.hpp"
#include "spotblue/base/version.hpp"
#include "verbs.hpp"

namespace spotblue::command {
namespace {

struct Runner {
  std::string_view verb;
  ExitCode (*run)(const Given&);
};
constexpr std::array<Runner, 5> kRunners{{{"model", run_model},
                                          {"look", run_look},
                                          {"draft", run_draft},
                                          {"check", run_check},
                                          {"compare", run_compare}}};

ExitCode run(const Given& given) {
  for (const Runner& runner : kRunners) {
    if (runner.verb == given.verb->name) {
      return runner.run(given);
    }
  }
  say_failure(std::string("the module library does not have the verb ") + given.verb->name);
  return kBadInput;
}

}  // namespace
}  // namespace spotblue::command

#define SPOTBLUE_DOOR __attribute__((visibility("default")))

extern "C" SPOTBLUE_DOOR const char* spotblue_verbs_version() { return spotblue::kVersion; }

extern "C" SPOTBLUE_DOOR int spotblue_verbs_run(const spotblue::command::Given& given) {
  // What was written to is known on this side of the door only.
  return spotblue::command::ended_with(spotblue::command::contained(
      [&given] { return static_cast<int>(spotblue::command::run(given)); }));
}
