#include "report/fitted_text.hpp"

#include <utf8proc.h>

#include <algorithm>
#include <string_view>

#include "spotblue/report/text.hpp"

namespace spotblue {
namespace {

/// One letter, or a sequence for colour, at the front of a text, and how many columns it takes.
struct Shown {
  std::size_t bytes = 1;
  std::size_t columns = 1;
};

Shown first_shown(std::string_view text) {
  if (text.starts_with("\x1b[")) {
    return {std::min(text.find('m'), text.size() - 1) + 1, 0};
  }
  utf8proc_int32_t letter = 0;
  const auto bytes = utf8proc_iterate(reinterpret_cast<const utf8proc_uint8_t*>(text.data()),
                                      static_cast<utf8proc_ssize_t>(text.size()), &letter);
  return bytes > 0 ? Shown{static_cast<std::size_t>(bytes),
                           static_cast<std::size_t>(utf8proc_charwidth(letter))}
                   : Shown{};
}

// Bytes of the longest front that takes no more than so many columns; one letter at the least.
std::size_t fitting(std::string_view text, std::size_t columns) {
  std::size_t at = 0;
  for (std::size_t taken = 0; at < text.size();) {
    const Shown next = first_shown(text.substr(at));
    taken += next.columns;
    if (taken > columns && at > 0) {
      break;
    }
    at += next.bytes;
  }
  return at;
}

// Adds the line broken at blanks, further lines indented more than the first.
void add_broken(std::string& to, std::string_view line, std::size_t width) {
  constexpr std::size_t kFurtherIn = 4;
  const std::size_t indent = std::min(line.find_first_not_of(' '), line.size());
  const std::string margin(std::min(indent + kFurtherIn, width / 2), ' ');
  std::size_t room = width;
  // Not by the width of all that is left, which would be counted anew for each line of it.
  for (std::size_t end = fitting(line, room); end < line.size(); end = fitting(line, room)) {
    const std::size_t blank = line.rfind(' ', end);
    const std::size_t words = line.find_first_not_of(' ');
    if (blank != std::string_view::npos && blank > words) {
      end = blank;
    }
    const std::string_view piece = line.substr(0, end);
    to += piece.substr(0, piece.find_last_not_of(' ') + 1);
    to += '\n' + margin;
    line.remove_prefix(std::min(line.find_first_not_of(' ', end), line.size()));
    room = width - margin.size();
  }
  to += line;
}

}  // namespace

std::size_t shown_width(std::string_view text) {
  std::size_t columns = 0;
  while (!text.empty()) {
    const Shown next = first_shown(text);
    columns += next.columns;
    text.remove_prefix(next.bytes);
  }
  return columns;
}

std::string fitted_text(std::string_view text, std::size_t width) {
  if (width == 0) {
    return std::string(text);
  }
  std::string fitted;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find('\n'), text.size());
    add_broken(fitted, text.substr(0, end), std::max<std::size_t>(width, kLeastWidth));
    fitted.append(end < text.size() ? 1 : 0, '\n');
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return fitted;
}

}  // namespace spotblue
