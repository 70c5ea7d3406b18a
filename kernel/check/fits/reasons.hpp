#pragma once
// Why a finding has its outcome.

#include <string>
#include <vector>

#include "spotblue/base/outcome.hpp"

namespace spotblue {

/// The outcome so far with its reasons; the worst outcome and every reason of it count.
class Reasons {
 public:
  void add(Outcome outcome, std::string advice);
  [[nodiscard]] Outcome outcome() const;
  [[nodiscard]] std::string advice(const std::string& when_conforming) const;

 private:
  struct Reason {
    Outcome outcome = Outcome::conforming;
    std::string advice;
  };
  std::vector<Reason> reasons_;
};

}  // namespace spotblue
