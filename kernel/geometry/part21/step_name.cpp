#include "geometry/part21/step_name.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cstdint>

#include "base/utf8.hpp"
#include "geometry/part21/step_letters.hpp"
#include "spotblue/base/ascii.hpp"

namespace spotblue {

std::string clean_name(std::string_view raw) {
  std::string name;
  while (!raw.empty()) {
    const std::size_t length = utf8_length(raw);
    if (length == 0) {
      add_letter(name, static_cast<std::uint8_t>(raw.front()));
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
    return is_ascii_digit(c) || c == '[' || c == ']' || c == ':' || c == ' ' || c == '.';
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
