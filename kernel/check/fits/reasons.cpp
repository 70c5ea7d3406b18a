#include "check/fits/reasons.hpp"

#include <utility>

#include "check/fits/fit_verdict.hpp"

namespace spotblue {

void Reasons::add(Outcome outcome, Saying advice) {
  reasons_.push_back({outcome, std::move(advice)});
}

Outcome Reasons::outcome() const {
  Outcome worst = Outcome::conforming;
  for (const Reason& reason : reasons_) {
    worst = worse(worst, reason.outcome);
  }
  return worst;
}

Saying Reasons::advice(const Saying& when_conforming) const {
  Saying text;
  for (const Reason& reason : reasons_) {
    if (reason.outcome == outcome() && !reason.advice.empty()) {
      text += reason.advice;
    }
  }
  return text.empty() ? when_conforming : text;
}

}  // namespace spotblue
