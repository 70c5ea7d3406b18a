#include "check/running/running.hpp"

#include <fmt/format.h>

#include <optional>

namespace spotblue {
namespace {

struct Judged {
  const char* key;        // of the quantity, unit last
  const char* limit_key;  // of its limit
  const char* word;       // for the advice
  const char* cure;       // what makes it less
  const char* unit;
};

constexpr Judged kPressure{"pressure_mpa", "pressure_max_mpa", "pressure",
                           "a longer or larger bearing, or less load", "MPa"};
constexpr Judged kSpeed{"speed_m_s", "speed_max_m_s", "surface speed",
                        "a smaller diameter or fewer turns", "m/s"};
constexpr Judged kProduct{"pressure_speed_mpa_m_s", "pressure_speed_max_mpa_m_s",
                          "pressure x speed", "a longer bearing, less load or fewer turns",
                          "MPa m/s"};

void judge_one(Finding& finding, Reasons& reasons, const Judged& judged,
               const std::optional<double>& value, const std::optional<double>& limit,
               LimitCounts counts) {
  if (!value) {
    return;
  }
  finding.found.push_back({judged.key, *value});
  if (!limit || counts == LimitCounts::no) {
    return;
  }
  finding.wanted.push_back({judged.limit_key, *limit});
  finding.margin.push_back({judged.key, *limit - *value});
  if (*value <= *limit) {
    return;
  }
  if (counts == LimitCounts::as_average) {
    const double percent = 100.0 * *limit / *value;
    finding.found.push_back({"running_time_max_percent", percent});
    reasons.add(Outcome::undecided,
                fmt::format("{} {:.3g} {} is over {:.3g} {}: it heats too much unless it runs no "
                            "more than {:.0f} percent of the time",
                            judged.word, *value, judged.unit, *limit, judged.unit, percent));
    return;
  }
  reasons.add(Outcome::nonconforming,
              fmt::format("{} {:.3g} {} is over {:.3g} {}: {}", judged.word, *value, judged.unit,
                          *limit, judged.unit, judged.cure));
}

}  // namespace

RunningDuty running_duty(Duty duty) {
  switch (duty) {
    case Duty::no_load_slow:
      return RunningDuty::no_load_slow;
    case Duty::intermittent:
      return RunningDuty::intermittent;
    case Duty::continuous:
      break;
  }
  return RunningDuty::continuous;
}

void judge_running(Finding& finding, Reasons& reasons, const RunningLoad& load,
                   const PairLimits& pair, Duty duty, const std::string& missing_load) {
  const CountingLimits counts = counting_limits(running_duty(duty));
  finding.wanted.push_back({"duty", std::string(word_of(duty))});
  judge_one(finding, reasons, kPressure, load.pressure_mpa, pair.limits.pressure_mpa,
            counts.pressure);
  judge_one(finding, reasons, kSpeed, load.speed_m_s, pair.limits.speed_m_s, counts.speed);
  judge_one(finding, reasons, kProduct, load.pressure_speed_mpa_m_s,
            pair.limits.pressure_speed_mpa_m_s, counts.pressure_speed);
  if (!pair.unknown.empty()) {
    reasons.add(Outcome::undecided, pair.unknown);
  }
  if (!load.pressure_mpa && counts.pressure != LimitCounts::no) {
    reasons.add(Outcome::undecided, missing_load);
  }
  const bool speed_open = pair.unknown.empty() && !pair.limits.speed_m_s;
  if (speed_open) {
    reasons.add(Outcome::undecided, "no greatest speed is known for this pair of materials");
  }
}

}  // namespace spotblue
