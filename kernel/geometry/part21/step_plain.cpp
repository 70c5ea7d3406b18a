#include "geometry/part21/step_plain.hpp"

#include "geometry/part21/step_token.hpp"

namespace spotblue {
namespace {

class PlainStep {
 public:
  explicit PlainStep(std::string_view step) : step_(step) {}

  std::optional<std::string> made() {
    for (std::size_t past = 0; past < step_.size();) {
      const std::size_t at = skip_blank(step_, past);
      if (at == step_.size()) {
        break;
      }
      close_gap(past, at);
      past = past_token(step_, at);
      if (step_[at] == '\'') {
        code_quotes(at, past);
      }
    }
    return kept_ == 0 ? std::nullopt : std::optional(plain_.append(step_.substr(kept_)));
  }

 private:
  void close_gap(std::size_t from, std::size_t to) {
    const std::string_view gap = step_.substr(from, to - from);
    const char next = step_[to];
    const std::string_view harmless = next == '=' ? " \t" : next == ';' ? "" : " \r\n";
    if (gap.find_first_not_of(harmless) != std::string_view::npos) {
      replace(from, to, next == '=' || next == ';' ? "" : " ");
    }
  }

  // Those of a text, of which it has two for each of its letters.
  void code_quotes(std::size_t from, std::size_t past) {
    for (std::size_t at = from + 1; at + 2 < past; ++at) {
      if (step_[at] != '\'') {
        continue;
      }
      const std::size_t behind = step_.find_first_not_of(" \r\n\t", at + 2);
      if (behind != std::string_view::npos && (step_[behind] == ',' || step_[behind] == ')')) {
        replace(at, at + 2, "\\X\\27");
      }
      ++at;
    }
  }

  void replace(std::size_t from, std::size_t to, std::string_view by) {
    plain_ += step_.substr(kept_, from - kept_);
    plain_ += by;
    kept_ = to;
  }

  std::string_view step_;
  std::string plain_;
  std::size_t kept_ = 0;  // up to here it is in `plain_`
};

}  // namespace

std::optional<std::string> plain_step(std::string_view step) { return PlainStep(step).made(); }

}  // namespace spotblue
