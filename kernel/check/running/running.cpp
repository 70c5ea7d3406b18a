#include "check/running/running.hpp"

#include <optional>

#include "group/words/said_running.hpp"
namespace spotblue {
namespace {

struct Judged {
  const char* name;  // of the quantity
  Dimension dimension;
  const Said& over;
  const Said& heats;  // where it may run over it for a time
};

constexpr Judged kPressure{"pressure", Dimension::pressure, said::kPressureOver,
                           said::kPressureHeats};
constexpr Judged kSpeed{"speed", Dimension::speed, said::kSpeedOver, said::kSpeedHeats};
constexpr Judged kProduct{"pressure_speed", Dimension::pressure_speed, said::kProductOver,
                          said::kProductHeats};

void judge_one(Finding& finding, Reasons& reasons, const Judged& judged,
               const std::optional<double>& value, const std::optional<double>& limit,
               LimitCounts counts) {
  if (!value) {
    return;
  }
  const Measure found{*value, judged.dimension};
  finding.found.push_back({judged.name, found});
  if (!limit || counts == LimitCounts::no) {
    return;
  }
  const Measure most{*limit, judged.dimension};
  finding.wanted.push_back({judged.name, most, RangeEnd::greatest});
  finding.margin.push_back({judged.name, {*limit - *value, judged.dimension}});
  if (*value <= *limit) {
    return;
  }
  if (counts == LimitCounts::as_average) {
    const double share = 100.0 * *limit / *value;
    finding.found.push_back({"running_time", percent(share), RangeEnd::greatest});
    reasons.add(Outcome::undecided, say(judged.heats, found, most, percent(share)));
    return;
  }
  reasons.add(Outcome::nonconforming, say(judged.over, found, most));
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
                   const PairLimits& pair, Duty duty, const Saying& missing_load) {
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
    reasons.add(Outcome::undecided, said::kNoSpeedKnown);
  }
}

}  // namespace spotblue
