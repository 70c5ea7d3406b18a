#include "spotblue/check/finding.hpp"

namespace spotblue {

OutcomeCount count_outcomes(const std::vector<Finding>& findings) {
  OutcomeCount count;
  for (const Finding& finding : findings) {
    switch (finding.outcome) {
      case Outcome::conforming:
        ++count.conforming;
        break;
      case Outcome::nonconforming:
        ++count.nonconforming;
        break;
      case Outcome::undecided:
        ++count.undecided;
        break;
    }
  }
  return count;
}

}  // namespace spotblue
