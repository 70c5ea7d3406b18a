#pragma once
// The text of a STEP file (ISO 10303-21) as a list of its entities, without understanding them.

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "spotblue/geometry/settings.hpp"

namespace spotblue {

// Splits what stands between two brackets at its top-level commas; each piece without blanks and
// comments round it. "'a',(#1,#2),$" gives three.
[[nodiscard]] std::vector<std::string_view> split_arguments(std::string_view inside);

// 12 for "#12", nothing for anything else.
[[nodiscard]] std::optional<int> reference(std::string_view argument);

// All references of a list "(#1,#2)" or of one reference "#1".
[[nodiscard]] std::vector<int> references(std::string_view argument);

// What stands between the quotes of "'it''s'", with '' as ' and coded letters as UTF-8; empty for
// anything else.
[[nodiscard]] std::string quoted(std::string_view argument);

class StepText {
 public:
  struct Entity {
    std::size_t begin = 0;  // of its keyword, or of the bracket of a complex one
    int id = 0;             // 12 for #12
  };

  // Reads in one pass, in linear time, and refuses what Open CASCADE does not survive: no STEP,
  // binary, truncated, scopes, tokens over limits.token_kb, brackets deeper than
  // limits.nesting_depth, endless lists, entities given twice and references to none.
  // `text` must outlive this; `file` is for messages.
  // Throws Error unreadable with the line.
  StepText(std::string_view text, const std::string& file, const ReadLimits& limits);

  // In the order of their numbers.
  [[nodiscard]] const std::vector<Entity>& entities() const { return entities_; }
  // Null when there is none of that number.
  [[nodiscard]] const Entity* find(int id) const;
  // Empty for a complex entity.
  [[nodiscard]] std::string_view keyword(const Entity& entity) const;
  // The arguments of an entity, or of the part of a complex one that has this keyword; nothing
  // when it has no such part.
  [[nodiscard]] std::optional<std::vector<std::string_view>> arguments(
      const Entity& entity, std::string_view keyword) const;
  // The same for a simple entity of whatever keyword; nothing for a complex one.
  [[nodiscard]] std::optional<std::vector<std::string_view>> arguments(const Entity& entity) const;
  // The arguments of the header's entity of this keyword; nothing when it has none.
  [[nodiscard]] std::optional<std::vector<std::string_view>> header(std::string_view keyword) const;
  // The first schema the header names, with its quotes; empty when it names none.
  [[nodiscard]] std::string_view quoted_schema() const;
  // The same as text.
  [[nodiscard]] std::string schema() const;
  // Where the ENDSEC of the last data section begins.
  [[nodiscard]] std::size_t data_end() const { return data_end_; }
  [[nodiscard]] std::size_t line_of(const Entity& entity) const;

 private:
  std::string_view text_;
  std::vector<Entity> entities_;
  std::string_view header_;
  std::size_t data_end_ = 0;
};

}  // namespace spotblue
