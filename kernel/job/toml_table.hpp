#pragma once
// Typed reading of a TOML file written by hand: every error names file, line, key and cure, and a
// key that nobody asked for is refused with the nearest one that was.

#include <toml++/toml.h>

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "spotblue/base/error.hpp"
#include "spotblue/base/length.hpp"
#include "spotblue/base/unit.hpp"
#include "spotblue/job/job_line.hpp"

namespace spotblue {

/// One table of a TOML file. Asking for a key makes it known; once everything has been asked for,
/// refuse_unknown() finds what is left. Copies are cheap and share the parsed file, but each copy
/// remembers its own keys.
class TomlTable {
 public:
  /// Parses a file and gives its top table.
  /// @throws Error file_access when it cannot be opened, bad_input with the line when it is no
  /// TOML.
  [[nodiscard]] static TomlTable read_file(const std::filesystem::path& file);
  /// The same from text; `file`, in its shown form, is only named in errors.
  [[nodiscard]] static TomlTable read_text(std::string_view text, const std::string& file);

  /// Where this table is, in words for errors: `part "Wheel"`, `part "Wheel", outside 2`.
  [[nodiscard]] const std::string& place() const { return place_; }
  void set_place(std::string place) { place_ = std::move(place); }
  [[nodiscard]] const std::string& file() const { return file_; }
  /// Line where this table begins, 1-based.
  [[nodiscard]] int line() const { return static_cast<int>(table_->source().begin.line); }
  /// The same for what is told of entries: with the file, where that is one that another includes.
  [[nodiscard]] JobLine job_line() const { return {line(), included_ ? file_ : std::string()}; }
  /// From here on, and in the tables within, lines are those of a file that another includes.
  void set_included() { included_ = true; }

  [[nodiscard]] bool has(std::string_view key) const;
  [[nodiscard]] bool is_text(std::string_view key) const;

  // find_: absent is fine. Without find_: absent is an error. A wrong type is always an error.
  [[nodiscard]] std::optional<std::string> find_text(std::string_view key) const;
  /// The same, which is not empty where it is there.
  [[nodiscard]] std::optional<std::string> find_name(std::string_view key) const;
  [[nodiscard]] std::string text(std::string_view key) const;
  [[nodiscard]] std::optional<double> find_number(std::string_view key) const;
  [[nodiscard]] double number(std::string_view key) const;
  [[nodiscard]] std::optional<int> find_whole(std::string_view key) const;
  [[nodiscard]] std::optional<bool> find_flag(std::string_view key) const;
  /// A number in `unit`, or a text as parse_length takes it ("1 5/16", "12 mm").
  [[nodiscard]] std::optional<Length> find_length(std::string_view key, LengthUnit unit) const;
  [[nodiscard]] Length length(std::string_view key, LengthUnit unit) const;

  /// A list; a single value counts as a list of one. Absent: empty.
  [[nodiscard]] std::vector<std::string> texts(std::string_view key) const;
  [[nodiscard]] std::vector<Length> lengths(std::string_view key, LengthUnit unit) const;

  [[nodiscard]] std::optional<TomlTable> find_table(std::string_view key) const;
  /// A list of tables ([[key]] or key = [{...}, ...]); each one's place ends in `<key> <n>`.
  [[nodiscard]] std::vector<TomlTable> tables(std::string_view key) const;
  /// Every key of this table with its table, in file order, for tables whose keys are names of the
  /// writer's own ([parts.Wheel]). Makes all keys known. Each one's place is the key in quotes.
  [[nodiscard]] std::vector<std::pair<std::string, TomlTable>> named_tables() const;

  /// Refuses the first key, in file order, that was never asked for.
  void refuse_unknown() const;
  /// An Error bad_input at the key's line (or the table's own when the key is absent or empty).
  [[nodiscard]] Error error(std::string_view key, const std::string& rule, std::string cure) const;
  /// An Error bad_input for a key that must be there; names the one that was likely meant to be it.
  [[nodiscard]] Error missing(std::string_view key) const;
  /// The key not asked for that was likely meant to be this one; empty without any.
  [[nodiscard]] std::string mistyped(std::string_view key) const;

 private:
  TomlTable(std::shared_ptr<const toml::table> root, const toml::table* table, std::string file,
            std::string place);
  [[nodiscard]] const toml::node* find(std::string_view key) const;
  [[nodiscard]] std::string inside(const std::string& name) const;
  [[nodiscard]] double finite_number(std::string_view key, const toml::node& node) const;
  [[nodiscard]] Length to_length(std::string_view key, const toml::node& node,
                                 LengthUnit unit) const;

  std::shared_ptr<const toml::table> root_;
  const toml::table* table_;
  std::string file_;
  std::string place_;
  bool included_ = false;
  mutable std::vector<std::string> asked_;
};

}  // namespace spotblue
