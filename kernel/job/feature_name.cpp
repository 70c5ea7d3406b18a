#include "spotblue/job/feature_name.hpp"

#include <array>
#include <charconv>
#include <utility>

#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

struct Word {
  std::string_view text;
  FeatureWord word;
  std::string_view between;  // what stands between two sizes; empty for words with one size
};

// "taper bore" before "taper": the longer word is tried first.
constexpr std::array<Word, 7> kWords{{{"bore", FeatureWord::bore, ""},
                                      {"outside", FeatureWord::outside, ""},
                                      {"taper bore", FeatureWord::taper_bore, "/"},
                                      {"taper", FeatureWord::taper, "/"},
                                      {"face", FeatureWord::face, "x"},
                                      {"slot", FeatureWord::slot, ""},
                                      {"width", FeatureWord::width, ""}}};

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

}  // namespace

std::string_view feature_word_name(FeatureWord word) {
  for (const Word& known : kWords) {
    if (known.word == word) {
      return known.text;
    }
  }
  return "";
}

std::optional<FeatureName> parse_feature_name(std::string_view text, LengthUnit unit) {
  FeatureName name;
  const auto described = cut_tail(text, ": ");
  if (!described || text.empty()) {
    return std::nullopt;
  }
  name.part = std::string(text);
  std::string_view rest = *described;
  if (const auto tail = cut_tail(rest, " #")) {
    int ordinal = 0;
    const auto [end, status] = std::from_chars(tail->data(), tail->data() + tail->size(), ordinal);
    if (status != std::errc() || end != tail->data() + tail->size() || ordinal < 1) {
      return std::nullopt;
    }
    name.ordinal = ordinal;
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

}  // namespace spotblue
