#pragma once
/// @file
/// A tolerance class taken apart, and the letters and grades it can be made of.

#include <array>
#include <optional>
#include <string>
#include <string_view>

#include "spotblue/standards/iso286.hpp"

namespace spotblue {

// ISO 286-1:2010, 4.1.2.5: identifiers of the fundamental deviations, from loose to tight.
inline constexpr std::array<std::string_view, 28> kDeviationLetters = {
    "a", "b", "c", "cd", "d", "e", "ef", "f", "fg", "g", "h", "js", "j",  "k",
    "m", "n", "p", "r",  "s", "t", "u",  "v", "x",  "y", "z", "za", "zb", "zc"};

inline constexpr int kGrade01 = -1;  // IT01, finer than IT0
inline constexpr int kGradeLast = 18;

struct ToleranceClass {
  SizeKind kind = SizeKind::hole;
  std::string letters;  // small letters for holes too
  int grade = 0;        // kGrade01, 0, 1 .. 18

  [[nodiscard]] std::string text() const;
};

// "7", "01"; empty for anything else.
[[nodiscard]] std::optional<int> parse_grade(std::string_view text);

// Throws Error bad_input naming `argument` when the text is no class.
[[nodiscard]] ToleranceClass parse_class(std::string_view text, const std::string& argument);

}  // namespace spotblue
