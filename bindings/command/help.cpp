#include "command/help.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace spotblue::command {
namespace {

constexpr std::size_t kWidth = 100;
constexpr std::size_t kOptionWidth = 24;

// "  --unit mm|in           show lengths ...", later lines under the first word of the text.
std::string option_lines(const Option& option) {
  std::string text;
  std::string line = fmt::format("  {:<{}}", shown_option(option), kOptionWidth - 2);
  std::string_view left = option.help;
  while (!left.empty()) {
    const std::size_t end = std::min(left.find(' '), left.size());
    if (line.size() + 1 + end > kWidth) {
      text += line + "\n";
      line.assign(kOptionWidth, ' ');
    }
    line += line.back() == ' ' ? "" : " ";
    line += left.substr(0, end);
    left.remove_prefix(std::min(end + 1, left.size()));
  }
  return text + line + "\n";
}

std::string option_list(std::span<const Option> options) {
  std::string text;
  for (const Option& option : options) {
    text += option_lines(option);
  }
  return text;
}

}  // namespace

std::vector<std::string_view> lines_of(std::string_view text) {
  std::vector<std::string_view> lines;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find('\n'), text.size());
    lines.push_back(text.substr(0, end));
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return lines;
}

std::string shown_option(const Option& option) {
  return option.takes == Takes::nothing ? option.name
                                        : fmt::format("{} {}", option.name, option.value);
}

std::string program_help() {
  std::string text = fmt::format("spotblue: {}\n\n", kProgramSummary);
  for (const Verb& verb : verbs()) {
    for (const Use& use : verb.uses) {
      text += fmt::format("  {:<37} {}\n", fmt::format("spotblue {} {}", verb.name, use.operands),
                          verb.uses.size() == 1 ? verb.summary : use.summary);
    }
  }
  text += "\n" + option_list(program_options());
  text += "  spotblue look --help  what a verb takes, with examples; likewise the others\n";
  return text + "\n" + kProgramExample + "\n" + kProgramEnds;
}

std::string verb_help(const Verb& verb) {
  std::string text;
  for (const Use& use : verb.uses) {
    text += fmt::format("spotblue {} {}: {}\n", verb.name, use.operands, use.summary);
  }
  text += fmt::format("\n{}", verb.about);
  if (!verb.options.empty()) {
    text += "\n" + option_list(verb.options);
  }
  text += fmt::format("\n{}\nExamples:\n", verb.ends);
  for (const std::string_view line : lines_of(verb.examples)) {
    text += fmt::format("  {}\n", line);
  }
  return text;
}

}  // namespace spotblue::command
