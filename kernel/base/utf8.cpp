#include "base/utf8.hpp"

namespace spotblue {

std::size_t utf8_length(std::string_view text) {
  const auto byte = [&](std::size_t i) {
    return i < text.size() ? static_cast<std::uint8_t>(text[i]) : std::uint8_t{0};
  };
  const std::uint8_t first = byte(0);
  if (text.empty() || first < 0x80) {
    return text.empty() ? 0 : 1;
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

std::uint32_t code_point(std::string_view letter) {
  const auto byte = [&](std::size_t i) { return static_cast<std::uint8_t>(letter[i]); };
  if (letter.size() == 1) {
    return byte(0);
  }
  std::uint32_t code = byte(0) & (0x7FU >> letter.size());
  for (std::size_t i = 1; i < letter.size(); ++i) {
    code = (code << 6U) | (byte(i) & 0x3FU);
  }
  return code;
}

bool is_unshown(std::string_view letter) {
  const auto byte = [&](std::size_t i) { return static_cast<std::uint8_t>(letter[i]); };
  switch (letter.size()) {
    case 1:
      return byte(0) < 0x20 || byte(0) == 0x7F;
    case 2:  // U+0080 to U+009F, U+061C
      return (byte(0) == 0xC2 && byte(1) < 0xA0) || letter == "\xD8\x9C";
    case 3:  // U+20xx is E2 80 xx or E2 81 xx
      return byte(0) == 0xE2 && ((byte(1) == 0x80 && (byte(2) == 0x8E || byte(2) == 0x8F ||
                                                      (byte(2) >= 0xA8 && byte(2) <= 0xAE))) ||
                                 (byte(1) == 0x81 && byte(2) >= 0xA6 && byte(2) <= 0xA9));
    default:
      return false;
  }
}

}  // namespace spotblue
