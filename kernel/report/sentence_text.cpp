#include "spotblue/report/sentence_text.hpp"

#include <fmt/args.h>
#include <fmt/format.h>

#include "report/measure_text.hpp"
#include "report/text_words.hpp"

namespace spotblue {
namespace {

class ArgumentText {
 public:
  explicit ArgumentText(LengthUnit unit) : unit_(unit) {}

  std::string operator()(const Length& length) const { return (*this)(measure(length)); }
  std::string operator()(const Limits& limits) const {
    const std::string least = (*this)(measure(limits.lower));
    return fmt::format("{} to {}", least.substr(0, least.find(' ')),
                       (*this)(measure(limits.upper)));
  }
  std::string operator()(const DrawnSize& size) const {
    return fmt::format("{} {}", format_size(size.length, unit_), unit_name(unit_));
  }
  std::string operator()(const Measure& measure) const { return measure_text(measure, unit_); }
  std::string operator()(const Figure& figure) const {
    return without_minus_zero(fmt::format("{:.{}f}", figure.value, figure.decimals));
  }
  std::string operator()(const Reference& reference) const { return reference.name; }
  std::string operator()(const std::string& words) const { return words; }
  std::string operator()(const Saying& saying) const { return text_of(saying, unit_); }

 private:
  LengthUnit unit_;
};

std::string text_of(const Sentence& sentence, LengthUnit unit) {
  fmt::dynamic_format_arg_store<fmt::format_context> arguments;
  for (const Argument& argument : sentence.arguments) {
    arguments.push_back(std::visit(ArgumentText(unit), argument.value));
  }
  return fmt::vformat(sentence.said->words, arguments);
}

}  // namespace

std::string text_of(const Saying& saying, LengthUnit unit) {
  std::string text;
  for (const Sentence& sentence : saying.sentences()) {
    text += (text.empty() ? "" : "; ") + text_of(sentence, unit);
  }
  return text;
}

std::string text_of(const Saying& saying) { return text_of(saying, saying.unit); }

}  // namespace spotblue
