// Writes the man pages and the completion for bash from the table: spotblue_pages MAN COMPLETIONS.
#include <fmt/format.h>

#include <filesystem>
#include <string>

#include "command/failure.hpp"
#include "command/help.hpp"
#include "spotblue/base/version.hpp"
#include "spotblue/base/whole_file.hpp"

namespace spotblue::command {
namespace {

namespace fs = std::filesystem;

std::string troff(std::string_view text) {
  std::string made;
  for (const char letter : text) {
    made += letter == '\\' ? "\\e" : letter == '-' ? "\\-" : std::string(1, letter);
  }
  return made.starts_with('.') || made.starts_with('\'') ? "\\&" + made : made;
}

// Lines that begin with blanks stay as they are; an empty line ends a paragraph.
std::string troff_prose(std::string_view text) {
  std::string made;
  bool as_is = false;
  for (const std::string_view line : lines_of(text)) {
    if (line.starts_with(' ') != as_is && !line.empty()) {
      as_is = !as_is;
      made += as_is ? ".nf\n" : ".fi\n";
    }
    made += line.empty() ? ".PP\n" : troff(line) + "\n";
  }
  return made + (as_is ? ".fi\n" : "");
}

std::string troff_options(std::span<const Option> options) {
  std::string made;
  for (const Option& option : options) {
    made += fmt::format(".TP\n.B {}\n", troff(option.name));
    if (option.takes != Takes::nothing) {
      made.pop_back();
      made += fmt::format(" \\fI{}\\fR\n", troff(option.value));
    }
    made += troff(option.help) + ".\n";
  }
  return made;
}

std::string head(const std::string& name, std::string_view summary) {
  return fmt::format(".TH {} 1 \"\" \"spotblue {}\" \"User Commands\"\n.SH NAME\n{} \\- {}\n", name,
                     kVersion, troff(name), troff(summary));
}

std::string program_page() {
  std::string text = head("spotblue", kProgramSummary) + ".SH SYNOPSIS\n";
  for (const Verb& verb : verbs()) {
    for (const Use& use : verb.uses) {
      text += fmt::format(".B spotblue {}\n\\fI{}\\fR\n.br\n", verb.name, troff(use.operands));
    }
  }
  text += ".SH VERBS\n";
  for (const Verb& verb : verbs()) {
    text += fmt::format(".TP\n.B {}\n{}; see\n.BR spotblue\\-{} (1).\n", verb.name,
                        troff(verb.summary), verb.name);
  }
  text += ".SH OPTIONS\n" + troff_options(program_options());
  return text + ".SH EXAMPLES\n" + troff_prose(kProgramExample) + ".SH EXIT STATUS\n" +
         troff_prose(kProgramEnds);
}

std::string verb_page(const Verb& verb) {
  std::string text = head(fmt::format("spotblue-{}", verb.name), verb.summary) + ".SH SYNOPSIS\n";
  for (const Use& use : verb.uses) {
    text += fmt::format(".B spotblue {}\n[\\fIoptions\\fR] \\fI{}\\fR\n.br\n", verb.name,
                        troff(use.operands));
  }
  text += ".SH DESCRIPTION\n";
  for (const Use& use : verb.uses) {
    text += fmt::format(".TP\n.I {}\n{}.\n", troff(use.operands), troff(use.summary));
  }
  text += ".PP\n" + troff_prose(verb.about);
  if (!verb.options.empty()) {
    text += ".SH OPTIONS\n" + troff_options(verb.options);
  }
  text += ".SH EXIT STATUS\n" + troff_prose(verb.ends) + ".SH EXAMPLES\n.nf\n";
  for (const std::string_view line : lines_of(verb.examples)) {
    text += troff(line) + "\n";
  }
  return text + ".fi\n.SH SEE ALSO\n.BR spotblue (1)\n";
}

// Names with a mark between, of all options or of those that take one thing.
template <class Wanted>
std::string names_of(std::span<const Option> options, const char* between, Wanted wanted) {
  std::string names;
  for (const Option& option : options) {
    if (wanted(option.takes)) {
      names += names.empty() ? "" : between;
      names += option.name;
    }
  }
  return names;
}

std::string all_names(std::span<const Option> options) {
  return names_of(options, " ", [](Takes /*any*/) { return true; });
}

std::string verb_names() {
  std::string names;
  for (const Verb& verb : verbs()) {
    names += names.empty() ? "" : " ";
    names += verb.name;
  }
  return names;
}

std::string value_case(const std::string& names, const std::string& reply) {
  return names.empty() ? "" : fmt::format("        {}) {}return ;;\n", names, reply);
}

// What the word before asks for: a unit, a value that only the user knows, or a file.
std::string completed_values(const Verb& verb) {
  const auto named = [&verb](auto wanted) { return names_of(verb.options, "|", wanted); };
  return value_case(named([](Takes takes) { return takes == Takes::unit; }),
                    fmt::format("COMPREPLY=($(compgen -W \"{} {}\" -- \"$word\")); ", kUnitWords[0],
                                kUnitWords[1])) +
         value_case(named([](Takes takes) {
                      return takes == Takes::text || takes == Takes::number ||
                             takes == Takes::positive || takes == Takes::count;
                    }),
                    "") +
         value_case(named([](Takes takes) { return takes == Takes::path; }), "_spotblue_files; ");
}

std::string completion() {
  std::string text = fmt::format(
      "# bash completion for spotblue; made from its table of options\n"
      "_spotblue_files() {{\n  compopt -o filenames 2>/dev/null\n"
      "  local IFS=$'\\n'\n  COMPREPLY=($(compgen -f -- \"$word\"))\n}}\n_spotblue() {{\n"
      "  local word=${{COMP_WORDS[COMP_CWORD]}} before=${{COMP_WORDS[COMP_CWORD-1]}} options\n"
      "  COMPREPLY=()\n  if ((COMP_CWORD == 1)); then\n"
      "    COMPREPLY=($(compgen -W \"{} {}\" -- \"$word\"))\n    return\n  fi\n"
      "  case ${{COMP_WORDS[1]}} in\n",
      verb_names(), all_names(program_options()));
  for (const Verb& verb : verbs()) {
    const std::string values = completed_values(verb);
    text += fmt::format("    {})\n      options=\"--help{}{}\"\n", verb.name,
                        verb.options.empty() ? "" : " ", all_names(verb.options));
    if (!values.empty()) {
      text += "      case $before in\n" + values + "      esac\n";
    }
    text += "      ;;\n";
  }
  return text +
         "    *) return ;;\n  esac\n  if [[ $word == -* ]]; then\n"
         "    COMPREPLY=($(compgen -W \"$options\" -- \"$word\"))\n  else\n"
         "    _spotblue_files\n  fi\n}\ncomplete -F _spotblue spotblue\n";
}

int write_pages(const fs::path& man, const fs::path& completions) {
  fs::create_directories(man);
  fs::create_directories(completions);
  write_whole(man / "spotblue.1", program_page());
  for (const Verb& verb : verbs()) {
    write_whole(man / fmt::format("spotblue-{}.1", verb.name), verb_page(verb));
  }
  write_whole(completions / "spotblue", completion());
  return 0;
}

}  // namespace
}  // namespace spotblue::command

int main(int argc, char** argv) {
  return spotblue::command::contained([argc, argv] {
    if (argc != 3) {
      spotblue::command::say_failure(
          "spotblue_pages takes the folders for man pages and completions");
      return 2;
    }
    return spotblue::command::write_pages(argv[1], argv[2]);
  });
}
