#pragma once
// Why a finding has its outcome.

#include <vector>

#include "spotblue/base/outcome.hpp"
#include "spotblue/group/sentence.hpp"

namespace spotblue {

/// The outcome so far with its reasons; the worst outcome and every reason of it count.
class Reasons {
 public:
  void add(Outcome outcome, Saying advice);
  [[nodiscard]] Outcome outcome() const;
  [[nodiscard]] Saying advice(const Saying& when_conforming) const;

 private:
  struct Reason {
    Outcome outcome = Outcome::conforming;
    Saying advice;
  };
  std::vector<Reason> reasons_;
};

}  // namespace spotblue
