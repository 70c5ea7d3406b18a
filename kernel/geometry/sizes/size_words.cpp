#include "spotblue/geometry/size_words.hpp"

#include <algorithm>
#include <optional>
#include <string>

#include "spotblue/base/ascii.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

constexpr std::string_view kPlusMinus = "\u00b1";

std::string_view bare(std::string_view text) {
  const auto first = text.find_first_not_of(" \t");
  const auto last = text.find_last_not_of(" \t");
  return first == std::string_view::npos ? std::string_view()
                                         : text.substr(first, last - first + 1);
}

bool is_sign(char letter) { return letter == '+' || letter == '-'; }

// "+0.025/0" and "0/-0.016", but not the fraction "5/16".
bool is_pair(std::string_view word) {
  const auto slash = word.find('/');
  return slash != std::string_view::npos && slash > 0 && slash + 1 < word.size() &&
         (is_sign(word.front()) || is_sign(word[slash + 1]));
}

double deviation_mm(std::string_view text, LengthUnit unit) {
  text = text.starts_with('+') ? text.substr(1) : text;
  return parse_length(text, unit).in_mm();
}

std::optional<SizeLimits> deviations_in(std::string_view word, LengthUnit unit) {
  if (word.starts_with("+-") || word.starts_with(kPlusMinus)) {
    if (word.size() > 2 && is_sign(word[2])) {
      return std::nullopt;
    }
    const double half = deviation_mm(word.substr(2), unit);
    return SizeLimits{-half, half};
  }
  if (!is_pair(word)) {
    return std::nullopt;
  }
  const auto slash = word.find('/');
  const double one = deviation_mm(word.substr(0, slash), unit);
  const double other = deviation_mm(word.substr(slash + 1), unit);
  return SizeLimits{std::min(one, other), std::max(one, other)};
}

LengthUnit unit_behind(std::string_view nominal, LengthUnit otherwise) {
  return nominal.ends_with("in") || nominal.ends_with("inch") || nominal.ends_with('"')
             ? LengthUnit::inch
         : nominal.ends_with("mm") ? LengthUnit::mm
                                   : otherwise;
}

bool looks_like_class(std::string_view word) {
  return !word.empty() && is_ascii_letter(word.front()) && !is_ascii_letter(word.back());
}

}  // namespace

SemanticSize parse_size(std::string_view words, LengthUnit unit) {
  SemanticSize size;
  std::string_view text = bare(words);
  constexpr std::string_view kRadius = " radius";
  if (text.ends_with(kRadius)) {
    size.characteristic = SizeCharacteristic::radius;
    text = bare(text.substr(0, text.size() - kRadius.size()));
  }
  constexpr std::string_view kTo = " to ";
  if (const auto to = text.find(kTo); to != std::string_view::npos) {
    const std::string_view upper = text.substr(to + kTo.size());
    size.limits = {
        parse_length(text.substr(0, to), unit_behind(text.substr(0, to), unit_behind(upper, unit)))
            .in_mm(),
        parse_length(upper, unit).in_mm()};
    if (size.limits->lower_mm > size.limits->upper_mm) {
      throw Error(ErrorCode::bad_input, {"", std::string(words)}, "its limits are reversed",
                  "write the lower one first: \"37.9 to 38.1\"");
    }
    return size;
  }
  const auto blank = text.find_last_of(" \t");
  const std::string_view nominal =
      blank == std::string_view::npos ? std::string_view() : bare(text.substr(0, blank));
  const std::string_view tolerance =
      blank == std::string_view::npos ? text : text.substr(blank + 1);
  size.deviations = deviations_in(tolerance, unit_behind(nominal, unit));
  if (!size.deviations) {
    if (!looks_like_class(tolerance)) {
      throw Error(ErrorCode::bad_input, {"", std::string(words)},
                  "is neither class, deviations nor limits",
                  "write \"38 H7\", \"38 +0.025/0\", \"38 +-0.1\" or \"37.9 to 38.1\"");
    }
    size.tolerance_class = tolerance;
  }
  if (!nominal.empty()) {
    size.nominal_mm = parse_length(nominal, unit).in_mm();
  }
  return size;
}

bool needs_limits(std::string_view tolerance_class) {
  const std::string_view letters =
      tolerance_class.substr(0, tolerance_class.find_first_of("0123456789"));
  return letters == "J" || letters == "j";
}

}  // namespace spotblue
