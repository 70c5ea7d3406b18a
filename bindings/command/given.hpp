#pragma once
/// @file
/// A command line that was understood: what the verbs work from.

#include <map>
#include <string>
#include <vector>

#include "command/table.hpp"

namespace spotblue::command {

struct Given {
  const Verb* verb = nullptr;
  std::vector<std::string> operands;
  std::map<std::string, std::string> options;  ///< by name; empty text where it takes nothing

  [[nodiscard]] bool has(const std::string& option) const { return options.count(option) != 0; }
  /// Empty when it was not given.
  [[nodiscard]] std::string text(const std::string& option) const {
    const auto found = options.find(option);
    return found == options.end() ? std::string() : found->second;
  }
};

/// Reads what stands behind the verb by the table.
/// @param words  as the shell gave them, without program and verb.
/// @return       nothing to run but help wanted when `verb` is nullptr.
/// @throws Error bad_input for what the table does not have, with the nearest that it has.
[[nodiscard]] Given read_words(const Verb& verb, const std::vector<std::string>& words);

}  // namespace spotblue::command
