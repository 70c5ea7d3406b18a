#include "spotblue/job/toml_screen.hpp"

#include <fmt/format.h>

#include "base/utf8.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

constexpr int kDeepest = 32;
constexpr int kMostDots = 15;

class Screen {
 public:
  Screen(std::string_view text, const std::string& file) : rest_(text), file_(file) {}

  void run() {
    while (!rest_.empty()) {
      const char letter = rest_.front();
      if (letter == '#') {
        skip_comment();
      } else if (letter == '"' || letter == '\'') {
        skip_text(letter);
      } else {
        look_at(letter);
        step();
      }
    }
  }

 private:
  [[noreturn]] void refuse(const char* rule, const std::string& cure) const {
    throw Error(ErrorCode::bad_input, {file_, fmt::format("line {}", line_)}, rule, cure);
  }

  // Over one letter, whole.
  void step() {
    const std::size_t length = utf8_length(rest_);
    if (length == 0 || rest_.front() == '\0') {
      refuse("a letter there is no UTF-8", "save the file as UTF-8 in your editor");
    }
    line_ += rest_.front() == '\n' ? 1 : 0;
    rest_.remove_prefix(length);
  }

  void skip_comment() {
    while (!rest_.empty() && rest_.front() != '\n') {
      step();
    }
  }

  // A text that does not end is for the parser to tell.
  void skip_text(char quote) {
    const std::string three(3, quote);
    const bool of_lines = rest_.starts_with(three);
    const std::string_view end = std::string_view(three).substr(0, of_lines ? 3 : 1);
    for (std::size_t i = 0; i < end.size(); ++i) {
      step();
    }
    while (!rest_.empty() && !rest_.starts_with(end) && (of_lines || rest_.front() != '\n')) {
      if (quote == '"' && rest_.front() == '\\') {
        step();
      }
      if (!rest_.empty()) {
        step();
      }
    }
    for (std::size_t i = 0; i < end.size() && !rest_.empty() && rest_.front() == quote; ++i) {
      step();
    }
  }

  void look_at(char letter) {
    switch (letter) {
      case '[':
      case '{':
        dots_ = 0;
        if (++depth_ > kDeepest) {
          refuse("brackets nest too deep there",
                 fmt::format("no more than {} may stand open", kDeepest));
        }
        break;
      case ']':
      case '}':
        dots_ = 0;
        depth_ = depth_ > 0 ? depth_ - 1 : 0;
        break;
      case '=':
      case ',':
      case '\n':
        dots_ = 0;
        break;
      case '.':
        if (++dots_ > kMostDots) {
          refuse("a key there has too many parts",
                 fmt::format("no more than {} may be joined by points", kMostDots + 1));
        }
        break;
      default:
        if (static_cast<unsigned char>(letter) >= 0x80 && utf8_length(rest_) > 0) {
          refuse("a letter there stands outside quotes", "put the text in quotes: \"...\"");
        }
    }
  }

  std::string_view rest_;
  const std::string& file_;
  int line_ = 1;
  int depth_ = 0;
  int dots_ = 0;
};

}  // namespace

void screen_toml(std::string_view text, const std::string& file) {
  if (static_cast<double>(text.size()) > kMostTomlMb * 1e6) {
    throw Error(ErrorCode::bad_input, {file, ""},
                fmt::format("the text has {:.1f} MB, more than {:g} MB",
                            static_cast<double>(text.size()) / 1e6, kMostTomlMb),
                "split it");
  }
  Screen(text, file).run();
}

}  // namespace spotblue
