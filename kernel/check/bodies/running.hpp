#pragma once
// What findings on parts that run on each other have in common: how they turn, and what their
// materials bear.

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "check/bodies/groups.hpp"
#include "check/bodies/turns.hpp"
#include "check/match/declared.hpp"
#include "spotblue/check/finding.hpp"
#include "spotblue/mechanics/plain_bearing.hpp"

namespace spotblue {

/// How two parts turn against each other.
struct Rubbing {
  double rpm = 0.0;  ///< > 0; of both together where both turn, taken as against each other
  Duty duty = Duty::intermittent;
  std::optional<double> load_n, thrust_n;
  OccurrenceId turning{};  ///< the occurrence that turns, the faster where both do
  bool both = false;
};

/// Nothing where the two turn together or both stand still.
[[nodiscard]] std::optional<Rubbing> rubbing(const Groups& groups, const Turns& turns,
                                             OccurrenceId a, OccurrenceId b);

[[nodiscard]] RunningDuty running_duty(Duty duty);
/// "no load, slow", "intermittent", "continuous".
[[nodiscard]] std::string duty_text(Duty duty);

/// The material as the job names it; empty when it names none.
[[nodiscard]] std::string material_name(const DeclaredJob& declared, OccurrenceId occurrence);

/// What a pair bears, or why that is not known.
struct PairLimits {
  BearingLimits limits;
  std::string basis;    ///< "bronze: Mott, table 16-1; its journal is steel"
  std::string unknown;  ///< why there are none: "no material is given for Wheel"; empty when known
  std::string note;     ///< what other tables print
};
[[nodiscard]] PairLimits pair_limits(const DeclaredJob& declared, OccurrenceId a, OccurrenceId b);

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

/// Adds pressure, speed and product to found, the limits to wanted and the room to margin, and
/// judges them; `missing_load` is the advice where a load that counts is not given.
void judge_running(Finding& finding, Reasons& reasons, const RunningLoad& load,
                   const PairLimits& pair, Duty duty, const std::string& missing_load);

inline constexpr std::string_view kTurningCaution =
    "Stop, lock out and block the machine before touching parts that turn; guards go back on "
    "before "
    "it runs; your local rules and licensed practice come before this advice.";

}  // namespace spotblue
