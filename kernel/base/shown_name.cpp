#include "spotblue/base/shown_name.hpp"

#include <algorithm>
#include <charconv>
#include <cstddef>
#include <cstdint>
#include <optional>

#include "base/utf8.hpp"

namespace spotblue {
namespace {

constexpr std::size_t kEscape = 4;  // letters of \xNN

void add_escape(std::string& to, char byte) {
  constexpr std::string_view kDigits = "0123456789ABCDEF";
  const auto value = static_cast<std::uint8_t>(byte);
  to += {'\\', 'x', kDigits[value >> 4U], kDigits[value & 0xFU]};
}

// The byte that \xNN at the front stands for.
std::optional<char> escaped(std::string_view text) {
  unsigned int value = 0;
  if (text.size() < kEscape || !text.starts_with("\\x")) {
    return std::nullopt;
  }
  const char* const end = text.data() + kEscape;
  const auto read = std::from_chars(text.data() + 2, end, value, 16);
  return read.ec == std::errc{} && read.ptr == end ? std::optional(static_cast<char>(value))
                                                   : std::nullopt;
}

// Not in the middle of a letter.
std::size_t letter_end(std::string_view text, std::size_t at) {
  while (at > 0 && at < text.size() && (static_cast<std::uint8_t>(text[at]) & 0xC0U) == 0x80) {
    --at;
  }
  return at;
}

}  // namespace

std::string shown_text(std::string_view text) {
  std::string shown;
  shown.reserve(text.size());
  while (!text.empty()) {
    const std::size_t length = utf8_length(text);
    const std::string_view letter = text.substr(0, std::max<std::size_t>(length, 1));
    if (length == 0 || is_unshown(letter)) {
      std::for_each(letter.begin(), letter.end(), [&](char byte) { add_escape(shown, byte); });
    } else {
      shown += letter;
    }
    text.remove_prefix(letter.size());
  }
  return shown;
}

std::string shortened(std::string_view text, std::size_t most) {
  constexpr std::string_view kBetween = " ... ";
  if (text.size() <= most) {
    return std::string(text);
  }
  const std::size_t room = most - std::min(most, kBetween.size());
  const std::size_t tail = room / 3;  // the end tells of a path or a list more than its middle
  std::string cut(text.substr(0, letter_end(text, room - tail)));
  cut += kBetween;
  std::size_t from = text.size() - tail;
  while (from < text.size() && (static_cast<std::uint8_t>(text[from]) & 0xC0U) == 0x80) {
    ++from;
  }
  return cut += text.substr(from);
}

std::string shown_name(const std::filesystem::path& file) {
  const std::string& name = file.native();
  std::string guarded;
  for (std::size_t i = 0; i < name.size(); ++i) {
    const bool at_an_end = i == 0 || i + 1 == name.size();
    if ((name[i] == ' ' && at_an_end) || escaped(std::string_view(name).substr(i))) {
      add_escape(guarded, name[i]);
    } else {
      guarded += name[i];
    }
  }
  return shown_text(guarded);
}

std::filesystem::path path_of_shown(std::string_view shown) {
  std::string name;
  while (!shown.empty()) {
    const std::optional<char> byte = escaped(shown);
    name += byte.value_or(shown.front());
    shown.remove_prefix(byte ? kEscape : 1);
  }
  return name;
}

}  // namespace spotblue
