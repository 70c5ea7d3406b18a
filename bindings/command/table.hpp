#pragma once
/// @file
/// The one table of the program's verbs and options. Reading the command line, --help, the man
/// pages, completion and what the Python verbs are handed all come from it.

#include <span>
#include <string_view>

namespace spotblue::command {

/// What stands behind an option.
enum class Takes { nothing, text, path, unit, number, positive, count };

struct Option {
  const char* name;  ///< "--unit"
  Takes takes;
  const char* value;  ///< what help calls its value; empty when it takes nothing
  const char* help;   ///< one sentence without a full stop
};

/// One way to call a verb.
struct Use {
  const char* operands;  ///< "JOB.toml"
  const char* summary;
};

/// Who does the work of a verb.
enum class DoneBy {
  kernel,  ///< the module library beside the program, which loads Open CASCADE
  python,  ///< the package spotblue.shelf
};

struct Verb {
  const char* name;
  DoneBy done_by;
  const char* summary;  ///< for the list of verbs
  std::span<const Use> uses;
  unsigned least_operands;
  unsigned most_operands;
  const char* about;  ///< paragraphs; a line that begins with blanks stays as it is
  std::span<const Option> options;
  const char* ends;      ///< what it ends with
  const char* examples;  ///< a command a line
};

[[nodiscard]] std::span<const Verb> verbs();
/// nullptr when there is none of that name.
[[nodiscard]] const Verb* find_verb(std::string_view name);
/// What the program takes without a verb, and every verb takes --help of it.
[[nodiscard]] std::span<const Option> program_options();
/// What the program is, in a few words, and how its verbs go together.
extern const char* const kProgramSummary;
extern const char* const kProgramExample;
extern const char* const kProgramEnds;
/// What --unit takes; the first two are shown.
inline constexpr const char* kUnitWords[] = {"mm", "in", "inch"};

}  // namespace spotblue::command
