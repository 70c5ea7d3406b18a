#pragma once
// What every command of the plug-in has in common: its words, its mistakes and its result.

#include <nlohmann/json_fwd.hpp>
#include <string>
#include <vector>

#include "spotblue/base/error.hpp"

class Draw_Interpretor;

namespace spotblue::plugin {

class Session;

/// A mistake of the caller: "what is wrong; cure".
[[nodiscard]] Error mistake(const std::string& about, const std::string& what,
                            const std::string& cure);

/// The words after a command's name: options begin with '-', the others stand in order; behind "--"
/// there are no more options.
class Arguments {
 public:
  /// @param usage    "sblook TARGET ?-text? ?-unit UNIT?": every option that is allowed stands in
  ///                 it, those that take a value with its name in capitals behind.
  /// @throws Error bad_input for an unknown option or one without its value.
  Arguments(std::vector<std::string> words, std::string usage);

  /// @throws Error bad_input when there are fewer or more words than that.
  void expect(std::size_t least, std::size_t most) const;
  [[nodiscard]] const std::vector<std::string>& words() const { return words_; }
  [[nodiscard]] bool has(const std::string& option) const;
  /// Empty when the option is not given.
  [[nodiscard]] std::string value(const std::string& option) const;

 private:
  std::string usage_;
  std::vector<std::string> words_;
  std::vector<std::pair<std::string, std::string>> options_;
};

using Body = nlohmann::ordered_json (*)(Session&, const Arguments&);

struct Command {
  const char* name;
  const char* arguments;
  const char* help;
  Body body;
};

/// Runs a command's body and leaves its result in the interpreter: 0, or 1 with words when it could
/// not be done.
int run(Draw_Interpretor& interpreter, const Command& command, int count, const char** words);

}  // namespace spotblue::plugin
