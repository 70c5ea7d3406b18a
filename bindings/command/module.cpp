#include "command/module.hpp"

#include <array>
#include <exception>
#include <new>
#include <string>
#include <string_view>

#include "command/ending.hpp"
#include "command/failure.hpp"
#include "command/output.hpp"
#include "command/verbs.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/base/version.hpp"

namespace spotblue::command {
namespace {

struct Runner {
  std::string_view verb;
  ExitCode (*run)(const Given&);
};
constexpr std::array<Runner, 6> kRunners{{{"model", run_model},
                                          {"look", run_look},
                                          {"draft", run_draft},
                                          {"check", run_check},
                                          {"compare", run_compare},
                                          {"materials", run_materials}}};

// "press.step" or "a.toml, b.toml".
std::string files_in(const Given& given) {
  std::string files;
  for (const std::string& operand : given.operands) {
    files += (files.empty() ? "" : ", ") + shown_name(operand);
  }
  return files;
}

// What is thrown and names no file shall name it all the same.
ExitCode run_naming_files(const Runner& runner, const Given& given) {
  try {
    return runner.run(given);
  } catch (const Error& error) {
    if (error.file().empty()) {
      throw Error(error.code(), {files_in(given), error.place()}, error.rule(), error.cure());
    }
    throw;
  } catch (const std::bad_alloc&) {
    throw Error(ErrorCode::system, {},
                "the machine lacks the memory for " + std::string(given.verb->name) + " of " +
                    files_in(given),
                "close other programs and try again");
  } catch (const std::exception& error) {
    throw Error(ErrorCode::open_cascade_failed, {files_in(given), ""}, error.what(),
                "report it with the file");
  }
}

ExitCode run(const Given& given) {
  for (const Runner& runner : kRunners) {
    if (runner.verb == given.verb->name) {
      return run_naming_files(runner, given);
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
  return spotblue::command::ended_with(spotblue::command::contained([&given] {
    return spotblue::command::run_until_ended(
        [&given] { return static_cast<int>(spotblue::command::run(given)); });
  }));
}
