#include <fmt/format.h>

#include <csignal>
#include <string>
#include <vector>

#include "command/failure.hpp"
#include "command/given.hpp"
#include "command/help.hpp"
#include "command/output.hpp"
#include "command/verbs.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/nearest.hpp"
#include "spotblue/base/version.hpp"

namespace spotblue::command {
namespace {

constexpr const char* kShown = "spotblue --help shows how";

[[noreturn]] void refuse_verb(const std::string& word) {
  std::vector<std::string> known;
  for (const Option& option : program_options()) {
    known.emplace_back(option.name);
  }
  if (word.front() == '-') {
    throw Error(ErrorCode::bad_input, {},
                fmt::format("there is no option '{}' without a verb, did you mean {}?", word,
                            nearest_word(word, known)),
                kShown);
  }
  known.clear();
  for (const Verb& verb : verbs()) {
    known.emplace_back(verb.name);
  }
  throw Error(ErrorCode::bad_input, {}, fmt::format("there is no verb '{}'", word),
              fmt::format("did you mean {}?", nearest_word(word, known)));
}

int run_verb(const Verb& verb, const std::vector<std::string>& words) {
  const Given given = read_words(verb, words);
  if (given.verb == nullptr) {
    return write_result(verb_help(verb), {}, kAllWell);
  }
  return verb.done_by == DoneBy::python ? run_in_python(given) : run_in_module(given);
}

int run(const std::vector<std::string>& words) {
  if (words.empty() || words.front().empty()) {
    throw Error(ErrorCode::bad_input, {}, "a verb is needed", kShown);
  }
  const std::string& first = words.front();
  if (const Verb* const verb = find_verb(first)) {
    return run_verb(*verb, {words.begin() + 1, words.end()});
  }
  if (first == "--help") {
    return write_result(program_help(), {}, kAllWell);
  }
  if (first == "--version") {
    return write_result(
        fmt::format("spotblue {} (Open CASCADE {})\n", kVersion, SPOTBLUE_OCCT_VERSION), {},
        kAllWell);
  }
  refuse_verb(first);
}

}  // namespace
}  // namespace spotblue::command

int main(int argc, char** argv) {
  namespace command = spotblue::command;
  return command::contained([argc, argv] {
    command::hold_standard_streams();
    // A reader that goes away must not end what else there is to write; see ended_with.
    std::signal(SIGPIPE, SIG_IGN);
    std::signal(SIGXFSZ, SIG_IGN);  // a file that may grow no more is an error like others
    return command::ended_with(command::run({argv + 1, argv + argc}));
  });
}
