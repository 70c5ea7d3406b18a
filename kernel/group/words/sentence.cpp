#include "spotblue/group/sentence.hpp"

#include <utility>

#include "group/words/said.hpp"

namespace spotblue {

Sentence::Sentence(const Said& says) : said(&says) {}
Sentence::Sentence(const Said& says, std::vector<Argument> about)
    : said(&says), arguments(std::move(about)) {}
Sentence::Sentence(const Sentence&) = default;
Sentence::Sentence(Sentence&&) noexcept = default;
Sentence& Sentence::operator=(const Sentence&) = default;
Sentence& Sentence::operator=(Sentence&&) noexcept = default;
Sentence::~Sentence() = default;

bool operator==(const Sentence& a, const Sentence& b) {
  return a.said->code == b.said->code && a.arguments == b.arguments;
}

Saying::Saying(std::string words) {
  if (!words.empty()) {
    sentences_.push_back({said::kAsItIs, {Argument(std::move(words))}});
  }
}

Saying::Saying(const Said& said, std::initializer_list<Argument> arguments)
    : sentences_{Sentence(said, arguments)} {}

Saying::Saying(const Said& said) : sentences_{Sentence(said)} {}

Saying& Saying::operator+=(const Saying& more) {
  sentences_.insert(sentences_.end(), more.sentences_.begin(), more.sentences_.end());
  return *this;
}

std::string key_of(const Quantity& quantity) {
  std::string key = quantity.name;
  key += quantity.end == RangeEnd::least      ? "_min"
         : quantity.end == RangeEnd::greatest ? "_max"
                                              : "";
  const auto* const measure = std::get_if<Measure>(&quantity.value);
  const std::string_view unit = measure != nullptr ? word_of(measure->dimension) : "";
  return unit.empty() ? key : key.append("_").append(unit);
}

}  // namespace spotblue
