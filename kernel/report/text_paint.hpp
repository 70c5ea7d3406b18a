#pragma once
/// @file
/// Colour on a terminal, beside words that say the same.

#include <string>

#include "spotblue/base/outcome.hpp"
#include "spotblue/report/text.hpp"

namespace spotblue {

/// ECMA-48 SGR sequences, or the text as it is.
class Paint {
 public:
  explicit Paint(Colour colour) : colour_(colour) {}

  [[nodiscard]] std::string heading(const std::string& text) const { return sgr("1", text); }
  [[nodiscard]] std::string outcome(Outcome outcome, const std::string& text) const {
    switch (outcome) {
      case Outcome::conforming:
        return sgr("32", text);
      case Outcome::nonconforming:
        return sgr("1;31", text);
      case Outcome::undecided:
        break;
    }
    return sgr("33", text);
  }

 private:
  [[nodiscard]] std::string sgr(const char* code, const std::string& text) const {
    return colour_ == Colour::never ? text : "\x1b[" + std::string(code) + "m" + text + "\x1b[0m";
  }
  Colour colour_;
};

}  // namespace spotblue
