#include "standards/tolerance_class.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <vector>

#include "spotblue/base/ascii.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/nearest.hpp"

namespace spotblue {
namespace {

bool is_letter(std::string_view letters) {
  return std::find(kDeviationLetters.begin(), kDeviationLetters.end(), letters) !=
         kDeviationLetters.end();
}

[[noreturn]] void throw_no_class(std::string_view text, const std::string& argument) {
  // As the writer meant it: holes for a capital, shafts for a small letter.
  const bool hole = text.empty() || is_ascii_capital(text.front());
  std::vector<std::string> known;
  for (const int grade : {7, 6, 8, 9, 5, 10, 11, 4, 12, 13, 3, 14, 15, 16, 2, 1, 17, 18, 0}) {
    for (const std::string_view letters : kDeviationLetters) {
      const std::string small(letters);
      known.push_back(fmt::format("{}{}", hole ? ascii_upper(small) : small, grade));
    }
  }
  throw Error(ErrorCode::bad_input, {"", argument},
              fmt::format("\"{}\" is not an ISO 286 class", text),
              fmt::format("write letters and grade, capitals for a hole and small letters for a "
                          "shaft, like H7 or g6; nearest is {}",
                          nearest_word(text, known)));
}

}  // namespace

std::string ToleranceClass::text() const {
  return (kind == SizeKind::hole ? ascii_upper(letters) : letters) +
         (grade == kGrade01 ? "01" : std::to_string(grade));
}

std::optional<int> parse_grade(std::string_view text) {
  if (text == "01") {
    return kGrade01;
  }
  int grade = 0;
  const auto [end, status] = std::from_chars(text.data(), text.data() + text.size(), grade);
  const bool plain =
      !text.empty() && is_ascii_digit(text.front()) && (text.size() == 1 || text.front() != '0');
  if (!plain || status != std::errc() || end != text.data() + text.size() || grade > kGradeLast) {
    return std::nullopt;
  }
  return grade;
}

ToleranceClass parse_class(std::string_view text, const std::string& argument) {
  const std::size_t split = std::min(text.find_first_of("0123456789"), text.size());
  const std::string letters(text.substr(0, split));
  const std::string small = ascii_lower(letters);
  const auto grade = parse_grade(text.substr(split));
  const bool one_case = letters == small || letters == ascii_upper(letters);
  if (!grade || !one_case || !is_letter(small)) {
    throw_no_class(text, argument);
  }
  return {letters == small ? SizeKind::shaft : SizeKind::hole, small, *grade};
}

}  // namespace spotblue
