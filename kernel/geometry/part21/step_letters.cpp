#include "geometry/part21/step_letters.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cstdint>
#include <fstream>
#include <iterator>
#include <limits>
#include <optional>

#include "base/utf8.hpp"
#include "spotblue/base/file_bytes.hpp"
#include "spotblue/base/whole_file.hpp"

namespace spotblue {
namespace {

// A string's inside, coded; `inside` has no line ends.
void add_coded(std::string& to, std::string_view inside) {
  std::string_view open;  // the code that is open, "\X2\" or "\X4\"
  const auto turn = [&](std::string_view code) {
    if (code != open) {
      to += open.empty() ? "" : "\\X0\\";
      to += code;
      open = code;
    }
  };
  while (!inside.empty()) {
    const std::size_t length = utf8_length(inside);
    const std::uint32_t code = length > 1 ? code_point(inside.substr(0, length)) : 0;
    if (length < 2) {
      turn("");
      to += inside.front();
    } else if (code < 0x10000U) {
      turn("\\X2\\");
      fmt::format_to(std::back_inserter(to), "{:04X}", code);
    } else {
      turn("\\X4\\");
      fmt::format_to(std::back_inserter(to), "{:08X}", code);
    }
    inside.remove_prefix(length > 1 ? length : 1);
  }
  turn("");
}

// Where the string whose inside begins at `from` ends: at its closing quote, or at the text's end.
std::size_t end_of_string(std::string_view step, std::size_t from) {
  std::size_t at = step.find('\'', from);
  while (at != std::string_view::npos && at + 1 < step.size() && step[at + 1] == '\'') {
    at = step.find('\'', at + 2);
  }
  return at == std::string_view::npos ? step.size() : at;
}

std::optional<std::uint32_t> hexadecimal(std::string_view digits) {
  std::uint32_t value = 0;
  const auto [end, trouble] =
      std::from_chars(digits.data(), digits.data() + digits.size(), value, 16);
  return trouble == std::errc() && end == digits.data() + digits.size() ? std::optional(value)
                                                                        : std::nullopt;
}

// The letters of \X2\ (4 digits each, UTF-16) or \X4\ (8) up to \X0\; nothing when they make none.
std::optional<std::string> wide_letters(std::string_view digits, std::size_t each) {
  std::string letters;
  std::uint32_t high = 0;
  if (digits.size() % each != 0) {
    return std::nullopt;
  }
  for (; !digits.empty(); digits.remove_prefix(each)) {
    const std::optional<std::uint32_t> code = hexadecimal(digits.substr(0, each));
    if (!code || *code > 0x10FFFFU) {
      return std::nullopt;
    }
    const bool low = *code >= 0xDC00U && *code < 0xE000U;
    if (low != (high != 0)) {
      return std::nullopt;
    }
    if (*code >= 0xD800U && *code < 0xDC00U) {
      high = *code;
      continue;
    }
    add_letter(letters, low ? 0x10000U + ((high - 0xD800U) << 10U) + (*code - 0xDC00U) : *code);
    high = 0;
  }
  return high == 0 ? std::optional(letters) : std::nullopt;
}

// Decodes what stands at the front of `rest` after a backslash's first letters, takes it off and
// adds it; false when it is no code.
bool add_decoded(std::string& to, std::string_view& rest) {
  if (rest.starts_with("\\\\")) {
    to += '\\';
    rest.remove_prefix(2);
    return true;
  }
  if (rest.starts_with("\\S\\") && rest.size() > 3) {
    add_letter(to, static_cast<std::uint8_t>(rest[3]) | 0x80U);
    rest.remove_prefix(4);
    return true;
  }
  if (rest.starts_with("\\X\\") && rest.size() > 4) {
    if (const auto code = hexadecimal(rest.substr(3, 2))) {
      add_letter(to, *code);
      rest.remove_prefix(5);
      return true;
    }
  }
  const bool two = rest.starts_with("\\X2\\");
  if (two || rest.starts_with("\\X4\\")) {
    // Not by searching for \X0\, which a text of many codes without one would make go on for long.
    const std::size_t end =
        std::min(rest.find_first_not_of("0123456789ABCDEFabcdef", 4), rest.size());
    const auto letters = !rest.substr(end).starts_with("\\X0\\")
                             ? std::nullopt
                             : wide_letters(rest.substr(4, end - 4), two ? 4 : 8);
    if (letters) {
      to += *letters;
      rest.remove_prefix(end + 4);
      return true;
    }
  }
  return false;
}

}  // namespace

void add_letter(std::string& to, std::uint32_t code) {
  const auto tail = [&](unsigned shift) {
    to += static_cast<char>(0x80U | ((code >> shift) & 0x3FU));
  };
  if (code < 0x80U) {
    to += static_cast<char>(code);
  } else if (code < 0x800U) {
    to += static_cast<char>(0xC0U | (code >> 6U));
    tail(0);
  } else if (code < 0x10000U) {
    to += static_cast<char>(0xE0U | (code >> 12U));
    tail(6);
    tail(0);
  } else {
    to += static_cast<char>(0xF0U | (code >> 18U));
    tail(12);
    tail(6);
    tail(0);
  }
}

std::optional<std::string> in_utf8(std::string_view step) {
  std::size_t sound = 0;
  while (sound < step.size()) {
    const std::size_t length = utf8_length(step.substr(sound));
    if (length == 0) {
      break;
    }
    sound += length;
  }
  if (sound == step.size()) {
    return std::nullopt;
  }
  std::string out(step.substr(0, sound));
  for (std::string_view rest = step.substr(sound); !rest.empty();) {
    const std::size_t length = utf8_length(rest);
    if (length == 0) {
      add_letter(out, static_cast<std::uint8_t>(rest.front()));
    } else {
      out += rest.substr(0, length);
    }
    rest.remove_prefix(std::max<std::size_t>(length, 1));
  }
  return out;
}

std::string with_coded_letters(std::string_view step) {
  std::string out;
  out.reserve(step.size());
  std::size_t at = 0;
  while (at < step.size()) {
    const std::size_t quote = step.find('\'', at);
    if (quote == std::string_view::npos) {
      break;
    }
    out += step.substr(at, quote + 1 - at);
    at = end_of_string(step, quote + 1);
    std::string inside(step.substr(quote + 1, at - quote - 1));
    std::erase_if(inside, [](char c) { return c == '\n' || c == '\r'; });
    add_coded(out, inside);
    if (at < step.size()) {
      out += step[at++];
    }
  }
  return out += step.substr(std::min(at, step.size()));
}

void code_letters_in(const std::filesystem::path& file) {
  write_whole(file, with_coded_letters(
                        read_bytes(file, std::numeric_limits<double>::max(), "a STEP file")));
}

bool ends_as_step(const std::filesystem::path& file) {
  constexpr std::size_t kTail = 64;
  std::ifstream in(file, std::ios::binary);
  std::string tail(kTail, '\0');
  in.seekg(-static_cast<std::streamoff>(kTail), std::ios::end);
  in.read(tail.data(), static_cast<std::streamsize>(kTail));
  return in.good() && tail.find("END-ISO-10303-21;") != std::string::npos;
}

std::string decoded_letters(std::string_view value) {
  std::string out;
  while (!value.empty()) {
    if (!add_decoded(out, value)) {
      out += value.front();
      value.remove_prefix(1);
    }
  }
  return out;
}

}  // namespace spotblue
