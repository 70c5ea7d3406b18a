#include "geometry/occt/brep_text.hpp"

#include <fmt/format.h>

#include <TopTools_FormatVersion.hxx>
#include <algorithm>
#include <array>
#include <charconv>
#include <string>

#include "spotblue/base/ascii.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/shown_name.hpp"

namespace spotblue {
namespace {

constexpr std::string_view kBetweenWords = " \t\r\n\v\f";
constexpr std::string_view kFirstWords = "CASCADE Topology V";

Error at_line(std::string_view text, std::size_t at, const std::string& what,
              const std::string& cure) {
  const auto line =
      1 + std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(at), '\n');
  return {ErrorCode::unreadable, {"", fmt::format("line {}", line)}, what, cure};
}

bool is_word_of_format(std::string_view word) {
  constexpr std::array<std::string_view, 17> kWords{"*",         "Ve",
                                                    "Ed",        "Wi",
                                                    "Fa",        "Sh",
                                                    "So",        "CS",
                                                    "Co",        "Locations",
                                                    "Curve2ds",  "Curves",
                                                    "Polygon3D", "PolygonOnTriangulations",
                                                    "Surfaces",  "Triangulations",
                                                    "TShapes"};
  return std::ranges::find(kWords, word) != kWords.end();
}

// An edge's smoothness, which stands right behind the number before it: "4CN".
std::string_view without_smoothness(std::string_view word) {
  constexpr std::array<std::string_view, 7> kKinds{"C0", "C1", "C2", "C3", "CN", "G1", "G2"};
  for (const std::string_view kind : kKinds) {
    if (word.ends_with(kind)) {
      const std::string_view before = word.substr(0, word.size() - kind.size());
      const bool whole = std::ranges::all_of(before, is_ascii_digit);
      return whole && !before.empty() ? before : whole ? "0" : word;
    }
  }
  return word;
}

// Infinite ones too: which part they spoil is found out later.
bool is_number(std::string_view word) {
  word.remove_prefix(word.starts_with('+') ? 1 : 0);
  double value = 0.0;
  const char* const end = word.data() + word.size();
  return !word.empty() && std::from_chars(word.data(), end, value).ptr == end;
}

// Where the first list of shapes' data begins.
std::size_t behind_header(std::string_view text) {
  const std::size_t header = text.find(kFirstWords);
  if (header == std::string_view::npos) {
    return 0;
  }
  const std::string_view version = text.substr(header + kFirstWords.size());
  int number = 0;
  std::from_chars(version.data(), version.data() + version.size(), number);
  if (number < TopTools_FormatVersion_LOWER || number > TopTools_FormatVersion_UPPER) {
    throw at_line(
        text, header,
        fmt::format("this is version {} of the format, and Open CASCADE here knows {} to {}",
                    number, static_cast<int>(TopTools_FormatVersion_LOWER),
                    static_cast<int>(TopTools_FormatVersion_UPPER)),
        "save it in one of these");
  }
  return std::min(text.find('\n', header), text.size());
}

}  // namespace

void check_brep_text(std::string_view text) {
  std::size_t at = behind_header(text);
  while ((at = text.find_first_not_of(kBetweenWords, at)) != std::string_view::npos) {
    const std::size_t end = std::min(text.find_first_of(kBetweenWords, at), text.size());
    const std::string_view word = text.substr(at, end - at);
    if (!is_number(without_smoothness(word)) && !is_word_of_format(word)) {
      constexpr std::size_t kShown = 40;
      throw at_line(text, at,
                    fmt::format("'{}' is neither a number nor a word of the format",
                                shown_text(word.substr(0, kShown))),
                    word.find(',') == std::string_view::npos
                        ? "the file is damaged: save it again"
                        : "numbers take a point: save it again with a program set to that");
    }
    at = end;
  }
}

}  // namespace spotblue
