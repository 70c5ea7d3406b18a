#include "geometry/step_name.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <cstdint>

namespace spotblue {
namespace {

bool is_digit(char c) { return std::isdigit(static_cast<unsigned char>(c)) != 0; }

// Bytes of the UTF-8 letter at the front, 0 when there is none.
std::size_t letter_length(std::string_view text) {
  const auto byte = [&](std::size_t i) {
    return i < text.size() ? static_cast<std::uint8_t>(text[i]) : std::uint8_t{0};
  };
  const std::uint8_t first = byte(0);
  if (first < 0x80) {
    return 1;
  }
  const std::size_t length = first >= 0xC2 && first <= 0xDF   ? 2
                             : first >= 0xE0 && first <= 0xEF ? 3
                             : first >= 0xF0 && first <= 0xF4 ? 4
                                                              : 0;
  for (std::size_t i = 1; i < length; ++i) {
    if ((byte(i) & 0xC0U) != 0x80) {
      return 0;
    }
  }
  const bool overlong = (first == 0xE0 && byte(1) < 0xA0) || (first == 0xF0 && byte(1) < 0x90);
  const bool no_letter = (first == 0xED && byte(1) > 0x9F) || (first == 0xF4 && byte(1) > 0x8F);
  return overlong || no_letter ? 0 : length;
}

void add_latin_1(std::string& to, char byte) {
  const auto value = static_cast<std::uint8_t>(byte);
  to += static_cast<char>(0xC0U | (value >> 6U));
  to += static_cast<char>(0x80U | (value & 0x3FU));
}

}  // namespace

std::string clean_name(std::string_view raw) {
  std::string name;
  while (!raw.empty()) {
    const std::size_t length = letter_length(raw);
    if (length == 0) {
      add_latin_1(name, raw.front());
    } else if (length == 1 && (static_cast<std::uint8_t>(raw.front()) < 0x20 || raw[0] == 0x7F)) {
      name += ' ';
    } else {
      name += raw.substr(0, length);
    }
    raw.remove_prefix(std::max<std::size_t>(length, 1));
  }
  const std::size_t from = name.find_first_not_of(' ');
  return from == std::string::npos ? std::string()
                                   : name.substr(from, name.find_last_not_of(' ') - from + 1);
}

std::string component_name(const std::string& own, const std::string& product,
                           const std::string& otherwise) {
  std::string_view rest = own;
  for (const std::string_view label : {"NAUO", "nauo", "=>", "NONE", "none"}) {
    if (rest.starts_with(label)) {
      rest.remove_prefix(label.size());
      break;
    }
  }
  const bool no_name = std::all_of(rest.begin(), rest.end(), [](char c) {
    return is_digit(c) || c == '[' || c == ']' || c == ':' || c == ' ' || c == '.';
  });
  if (!no_name) {
    return own;
  }
  return product.empty() ? otherwise : product;
}

std::string UniqueNames::take(const std::string& name) {
  if (taken_.insert(name).second) {
    last_[name] = 1;
    return name;
  }
  while (true) {
    std::string next = fmt::format("{} ({})", name, ++last_[name]);
    if (taken_.insert(next).second) {
      return next;
    }
  }
}

}  // namespace spotblue
