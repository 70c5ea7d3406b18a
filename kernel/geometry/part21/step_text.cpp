#include "geometry/part21/step_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>

#include "geometry/part21/step_letters.hpp"
#include "geometry/part21/step_scanner.hpp"
#include "geometry/part21/step_token.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

// Past the closing bracket of the one at `at`, or the end.
std::size_t past_brackets(std::string_view text, std::size_t at) {
  int depth = 0;
  while (at < text.size()) {
    if (text[at] == '(') {
      ++depth;
    } else if (text[at] == ')' && --depth == 0) {
      return at + 1;
    }
    at = next_token(text, at);
  }
  return text.size();
}

std::string_view inside_brackets(std::string_view text, std::size_t open) {
  const std::size_t past = past_brackets(text, open);
  return text.substr(open + 1, past - open - 2);
}

std::string_view word_at(std::string_view text, std::size_t at) {
  std::size_t end = at;
  while (end < text.size() && is_word(text[end])) {
    ++end;
  }
  return text.substr(at, end - at);
}

}  // namespace

std::vector<std::string_view> split_arguments(std::string_view inside) {
  std::vector<std::string_view> pieces;
  std::string_view piece = inside.substr(0, 0);
  int depth = 0;
  for (std::size_t at = skip_blank(inside, 0); at < inside.size();) {
    const char c = inside[at];
    const std::size_t past = past_token(inside, at);
    depth += c == '(' ? 1 : c == ')' ? -1 : 0;
    if (c == ',' && depth == 0) {
      pieces.push_back(piece);
      piece = inside.substr(past, 0);
    } else {
      const std::size_t from =
          piece.empty() ? at : static_cast<std::size_t>(piece.data() - inside.data());
      piece = inside.substr(from, past - from);
    }
    at = skip_blank(inside, past);
  }
  if (!piece.empty() || !pieces.empty()) {
    pieces.push_back(piece);
  }
  return pieces;
}

std::optional<int> reference(std::string_view argument) {
  int id = 0;
  if (argument.size() < 2 || argument.front() != '#' ||
      std::from_chars(argument.data() + 1, argument.data() + argument.size(), id).ec !=
          std::errc{}) {
    return std::nullopt;
  }
  return id;
}

std::vector<int> references(std::string_view argument) {
  std::vector<int> ids;
  if (argument.starts_with('(') && argument.ends_with(')')) {
    argument.remove_prefix(1);
    argument.remove_suffix(1);
  }
  for (const std::string_view piece : split_arguments(argument)) {
    if (const auto id = reference(piece)) {
      ids.push_back(*id);
    }
  }
  return ids;
}

std::string quoted(std::string_view argument) {
  if (argument.size() < 2 || argument.front() != '\'' || argument.back() != '\'') {
    return {};
  }
  std::string value;
  for (std::size_t i = 1; i + 1 < argument.size(); ++i) {
    value += argument[i];
    i += argument[i] == '\'' ? 1 : 0;
  }
  return decoded_letters(value);
}

StepText::StepText(std::string_view text, const std::string& file, const ReadLimits& limits)
    : text_(text) {
  ScannedText scanned = scan_step(text, file, limits);
  header_ = scanned.header;
  data_end_ = scanned.data_end;
  entities_ = std::move(scanned.entities);
}

const StepText::Entity* StepText::find(int id) const {
  const auto at = std::lower_bound(entities_.begin(), entities_.end(), id,
                                   [](const Entity& e, int wanted) { return e.id < wanted; });
  return at != entities_.end() && at->id == id ? &*at : nullptr;
}

std::string_view StepText::keyword(const Entity& entity) const {
  return word_at(text_, entity.begin);
}

std::optional<std::vector<std::string_view>> StepText::arguments(const Entity& entity,
                                                                 std::string_view keyword) const {
  if (text_[entity.begin] != '(') {
    return this->keyword(entity) == keyword ? arguments(entity) : std::nullopt;
  }
  const std::string_view parts = inside_brackets(text_, entity.begin);
  for (std::size_t at = skip_blank(parts, 0); at < parts.size();) {
    const std::string_view word = word_at(parts, at);
    if (word.empty()) {
      at = next_token(parts, at);
      continue;
    }
    const std::size_t open = next_token(parts, at);
    if (open >= parts.size() || parts[open] != '(') {
      at = open;  // no part: the scan lets values stand there
      continue;
    }
    if (word == keyword) {
      return split_arguments(inside_brackets(parts, open));
    }
    at = skip_blank(parts, past_brackets(parts, open));
  }
  return std::nullopt;
}

std::optional<std::vector<std::string_view>> StepText::arguments(const Entity& entity) const {
  if (text_[entity.begin] == '(') {
    return std::nullopt;
  }
  const std::size_t open = next_token(text_, entity.begin);
  return split_arguments(inside_brackets(text_, open));
}

std::optional<std::vector<std::string_view>> StepText::header(std::string_view keyword) const {
  for (std::size_t at = 0; at < header_.size(); at = next_token(header_, at)) {
    const std::size_t open = next_token(header_, at);
    if (word_at(header_, at) == keyword && open < header_.size() && header_[open] == '(') {
      return split_arguments(inside_brackets(header_, open));
    }
  }
  return std::nullopt;
}

std::string_view StepText::quoted_schema() const {
  const auto schemas = header("FILE_SCHEMA");
  if (!schemas || schemas->empty() || !schemas->front().starts_with('(')) {
    return {};
  }
  const auto names = split_arguments(inside_brackets(schemas->front(), 0));
  return names.empty() ? std::string_view() : names.front();
}

std::string StepText::schema() const { return quoted(quoted_schema()); }

std::size_t StepText::line_of(const Entity& entity) const { return line_at(text_, entity.begin); }

}  // namespace spotblue
