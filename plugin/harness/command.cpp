#include "plugin/harness/command.hpp"

#include <fmt/format.h>

#include <Draw_Interpretor.hxx>
#include <algorithm>
#include <exception>
#include <nlohmann/json.hpp>
#include <utility>

#include "geometry/occt/occt_versions.hpp"
#include "plugin/harness/session.hpp"
#include "plugin/harness/tcl_value.hpp"
#include "spotblue/base/ascii.hpp"
#include "spotblue/base/nearest.hpp"
#include "spotblue/base/shown_name.hpp"

namespace spotblue::plugin {
namespace {

struct Option {
  std::string name;
  bool takes_value = false;
};

// "?-text? ?-unit UNIT?" says that -text stands alone and -unit takes a value.
std::vector<Option> options_in(const std::string& usage) {
  std::vector<Option> options;
  for (std::size_t at = usage.find("?-"); at != std::string::npos; at = usage.find("?-", at + 2)) {
    const std::string inside = usage.substr(at + 1, usage.find('?', at + 1) - at - 1);
    const std::size_t blank = inside.find(' ');
    options.push_back({inside.substr(0, blank), blank != std::string::npos});
  }
  return options;
}

// No option has a blank in it, but names of features have.
bool looks_like_option(const std::string& word) {
  return word.size() > 1 && word[0] == '-' && is_ascii_letter(word[1]) &&
         word.find(' ') == std::string::npos;
}

int fail(Draw_Interpretor& interpreter, const Command& command, const std::string& why) {
  interpreter.Reset();
  interpreter << command.name << ": " << shortened(shown_text(why), kMostMessage).c_str();
  return 1;
}

}  // namespace

Error mistake(const std::string& about, const std::string& what, const std::string& cure) {
  return {ErrorCode::bad_input, {}, about.empty() ? what : about + " " + what, cure};
}

Arguments::Arguments(std::vector<std::string> words, std::string usage) : usage_(std::move(usage)) {
  const std::vector<Option> known = options_in(usage_);
  bool options_ended = false;
  for (std::size_t i = 0; i < words.size(); ++i) {
    const std::string& word = words[i];
    if (word == "--" && !options_ended) {
      options_ended = true;
      continue;
    }
    if (options_ended || !looks_like_option(word)) {
      words_.push_back(word);
      continue;
    }
    const auto option =
        std::ranges::find_if(known, [&](const Option& one) { return one.name == word; });
    if (option == known.end()) {
      std::vector<std::string> names;
      std::ranges::transform(known, std::back_inserter(names), &Option::name);
      throw mistake("", fmt::format("there is no option {}", word),
                    names.empty() ? fmt::format("write: {}", usage_)
                                  : fmt::format("did you mean {}? write: {}",
                                                nearest_word(word, names), usage_));
    }
    if (option->takes_value && i + 1 == words.size()) {
      throw mistake("", fmt::format("nothing stands behind {}", word),
                    fmt::format("write: {}", usage_));
    }
    options_.emplace_back(word, option->takes_value ? words[++i] : "");
  }
}

void Arguments::expect(std::size_t least, std::size_t most) const {
  if (words_.size() < least || words_.size() > most) {
    throw mistake("", words_.size() < least ? "too few arguments" : "too many arguments",
                  fmt::format("write: {}", usage_));
  }
}

bool Arguments::has(const std::string& option) const {
  return std::ranges::any_of(options_, [&](const auto& one) { return one.first == option; });
}

std::string Arguments::value(const std::string& option) const {
  const auto found =
      std::ranges::find_if(options_, [&](const auto& one) { return one.first == option; });
  return found == options_.end() ? std::string() : found->second;
}

int run(Draw_Interpretor& interpreter, const Command& command, int count, const char** words) {
  try {
    const Arguments arguments(std::vector<std::string>(words + 1, words + count),
                              fmt::format("{} {}", command.name, command.arguments));
    const TclValue result(tcl_from(command.body(session_of(interpreter), arguments)));
    Tcl_SetObjResult(interpreter.Interp(), result.get());
    return 0;
  } catch (const Standard_Failure& failure) {
    return fail(
        interpreter, command,
        fmt::format("Open CASCADE failed: {} {}", occt::kind_of(failure), occt::words_of(failure)));
  } catch (const std::exception& failure) {
    return fail(interpreter, command, failure.what());
  }
}

}  // namespace spotblue::plugin
