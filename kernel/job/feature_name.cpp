#include "spotblue/job/feature_name.hpp"

#include <array>
#include <charconv>
#include <utility>

#include "spotblue/base/ascii.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

struct Word {
  FeatureWord word;
  std::string_view between;  // what stands between two sizes; empty for words with one size
  std::string_view text = word_of(word);
};

// "taper bore" before "taper": the longer word is tried first.
constexpr std::array<Word, 7> kWords{{{FeatureWord::bore, ""},
                                      {FeatureWord::outside, ""},
                                      {FeatureWord::taper_bore, "/"},
                                      {FeatureWord::taper, "/"},
                                      {FeatureWord::face, "x"},
                                      {FeatureWord::slot, ""},
                                      {FeatureWord::width, ""}}};

// Cuts `text` at the last `mark` and gives what stood behind it.
std::optional<std::string_view> cut_tail(std::string_view& text, std::string_view mark) {
  const auto at = text.rfind(mark);
  if (at == std::string_view::npos) {
    return std::nullopt;
  }
  const std::string_view tail = text.substr(at + mark.size());
  text = text.substr(0, at);
  return tail;
}

std::optional<Length> length_of(std::string_view text, LengthUnit unit) {
  try {
    return parse_length(text, unit);
  } catch (const Error&) {
    return std::nullopt;
  }
}

std::optional<int> ordinal_of(std::string_view text) {
  int ordinal = 0;
  const auto [end, status] = std::from_chars(text.data(), text.data() + text.size(), ordinal);
  const bool whole = status == std::errc() && end == text.data() + text.size();
  return whole && ordinal >= 1 ? std::optional(ordinal) : std::nullopt;
}

std::optional<std::vector<Length>> sizes_of(std::string_view text, std::string_view between,
                                            LengthUnit unit) {
  std::vector<std::string_view> pieces;
  const auto at = between.empty() ? std::string_view::npos : text.find(between);
  if (at == std::string_view::npos) {
    pieces = {text};
  } else {
    pieces = {text.substr(0, at), text.substr(at + between.size())};
  }
  std::vector<Length> sizes;
  for (const std::string_view piece : pieces) {
    const auto size = length_of(piece, unit);
    if (!size) {
      return std::nullopt;
    }
    sizes.push_back(*size);
  }
  return sizes;
}

// What no feature begins with, but what a person says of two faces.
constexpr std::string_view kDistance = "length";
// A spreadsheet's own blank, U+00A0.
constexpr std::string_view kHardBlank = "\xC2\xA0";

std::string_view without_blanks(std::string_view text) {
  std::size_t before = text.size() + 1;
  while (text.size() < before) {
    before = text.size();
    text = trimmed(text);
    text.remove_prefix(text.starts_with(kHardBlank) ? kHardBlank.size() : 0);
    text.remove_suffix(text.ends_with(kHardBlank) ? kHardBlank.size() : 0);
  }
  return text;
}

bool starts_blank(std::string_view text) {
  return without_blanks(text).data() != text.data() || text.empty();
}

// Takes the mark and what stands behind it off the end of `text`.
std::optional<std::string_view> cut_at(std::string_view& text, char mark) {
  const auto at = text.find(mark);
  if (at == std::string_view::npos) {
    return std::nullopt;
  }
  const std::string_view tail = without_blanks(text.substr(at + 1));
  text = without_blanks(text.substr(0, at));
  return tail;
}

struct SaidOfFeature {
  PartialFeatureName name;
  std::string_view sizes;    // as written
  std::string_view between;  // as of a Word
};

// Of what stands behind the part.
std::optional<SaidOfFeature> said_of_feature(std::string_view text) {
  SaidOfFeature said;
  if (const auto tail = cut_at(text, '#')) {
    said.name.ordinal = ordinal_of(*tail);
    if (!said.name.ordinal) {
      return std::nullopt;
    }
  }
  if (const auto tail = cut_at(text, '@')) {
    said.name.position = length_of(*tail, LengthUnit::mm);
    if (!said.name.position) {
      return std::nullopt;
    }
  }
  const auto begins_with = [&](std::string_view word) {
    const bool begins = text.starts_with(word) && starts_blank(text.substr(word.size()));
    said.sizes = begins ? without_blanks(text.substr(word.size())) : std::string_view();
    return begins;
  };
  for (const Word& known : kWords) {
    if (begins_with(known.text)) {
      said.name.word = known.word;
      said.between = known.between;
      return said;
    }
  }
  return begins_with(kDistance) ? std::optional(said) : std::nullopt;
}

}  // namespace

std::string_view feature_word_name(FeatureWord word) { return word_of(word); }

std::optional<FeatureName> parse_feature_name(std::string_view text, LengthUnit unit) {
  FeatureName name;
  const auto described = cut_tail(text, ": ");
  if (!described || text.empty()) {
    return std::nullopt;
  }
  name.part = std::string(text);
  std::string_view rest = *described;
  if (const auto tail = cut_tail(rest, " #")) {
    name.ordinal = ordinal_of(*tail);
    if (!name.ordinal) {
      return std::nullopt;
    }
  }
  if (const auto tail = cut_tail(rest, " @ ")) {
    name.position = length_of(*tail, unit);
    if (!name.position) {
      return std::nullopt;
    }
  }
  for (const Word& known : kWords) {
    if (rest.starts_with(known.text) && rest.substr(known.text.size()).starts_with(' ')) {
      if (auto sizes = sizes_of(rest.substr(known.text.size() + 1), known.between, unit)) {
        name.word = known.word;
        name.sizes = *std::move(sizes);
        return name;
      }
    }
  }
  return std::nullopt;
}

std::string feature_size_text(std::string_view sized_name, LengthUnit unit) {
  const auto name = parse_feature_name("part: " + std::string(sized_name), LengthUnit::mm);
  std::string text;
  if (!name) {
    return text;
  }
  for (const Length size : name->sizes) {
    if (!text.empty()) {
      text += name->word == FeatureWord::face ? "x" : "/";
    }
    text += format_size(size, unit);
  }
  if (name->word == FeatureWord::face && name->position) {
    text += " at " + format_size(*name->position, unit);
  }
  return text;
}

std::string part_of_feature(std::string_view name) {
  const auto at = name.rfind(": ");
  return at == std::string_view::npos ? std::string() : std::string(name.substr(0, at));
}

std::optional<PartialFeatureName> parse_partial_feature_name(std::string_view text,
                                                             LengthUnit unit) {
  text = without_blanks(text);
  std::optional<SaidOfFeature> said;
  std::string_view part;
  for (auto at = text.rfind(':'); at != std::string_view::npos && at > 0 && !said;
       at = text.rfind(':', at - 1)) {
    part = without_blanks(text.substr(0, at));
    const std::string_view rest = text.substr(at + 1);
    if (!part.empty() && starts_blank(rest)) {
      said = said_of_feature(without_blanks(rest));
    }
  }
  if (!said) {
    part = {};
    said = said_of_feature(text);
  }
  if (!said) {
    return std::nullopt;
  }
  said->name.part = std::string(part);
  if (said->sizes.empty()) {
    return said->name;
  }
  // "taper 1 1/2" is one size, "taper 20/24" are two.
  auto sizes = sizes_of(said->sizes, said->between, unit);
  said->name.sizes = sizes ? *std::move(sizes) : std::vector{parse_length(said->sizes, unit)};
  return said->name;
}

}  // namespace spotblue
