#pragma once
/// @file
/// The one exception type of the library: every mistake a caller can make, every file that cannot
/// be read and every failure of Open CASCADE arrives as an Error that names file, place and cure.

#include <cstddef>
#include <stdexcept>
#include <string>

#include "spotblue/base/export.hpp"

namespace spotblue {

/// What kind of trouble an Error reports.
enum class ErrorCode {
  bad_input,            ///< A value, name or file content breaks a stated rule.
  file_access,          ///< A file is missing, may not be read or cannot be written.
  unreadable,           ///< A file was opened but no true model can be had from it.
  incomplete,           ///< A file reads, yet less arrives than its text declares.
  not_in_standard,      ///< The standard defines no such class, size or symbol.
  open_cascade_failed,  ///< Open CASCADE failed at an operation it should be able to do.
  stopped,  ///< Ended before it was done: it was asked to, or the time or memory given was up.
  /// The machine lacked memory, disk, processes or what else it takes, or ended one from outside,
  /// which is no file's fault: `file` is then none that was to be read.
  system,
};

inline constexpr std::size_t kMostMessage = 2000;

/// An error with the file, the place in it and the cure; any of the three may be empty.
///
/// Every text of it is shown_text: one line, UTF-8. what() is "file, place: rule and value; cure",
/// kMostMessage bytes at most: of what is longer, the middle is left out.
class SPOTBLUE_EXPORT Error : public std::runtime_error {
 public:
  struct Where {
    std::string file;   ///< As shown_name gives it; see path_of_shown.
    std::string place;  ///< Line, key, entity or argument.
  };

  Error(ErrorCode code, Where where, const std::string& what, std::string cure);

  [[nodiscard]] ErrorCode code() const noexcept { return code_; }
  [[nodiscard]] const std::string& file() const noexcept { return where_.file; }
  [[nodiscard]] const std::string& place() const noexcept { return where_.place; }
  [[nodiscard]] const std::string& cure() const noexcept { return cure_; }
  /// The rule that was broken and the value that broke it, without file, place and cure.
  [[nodiscard]] const std::string& rule() const noexcept { return rule_; }

 private:
  ErrorCode code_;
  Where where_;
  std::string rule_;
  std::string cure_;
};

}  // namespace spotblue
