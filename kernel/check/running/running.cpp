#include "check/running/running.hpp"

#include <fmt/format.h>

#include <optional>

namespace spotblue {
namespace {

struct Judged {
  const char* name;  // of the quantity
  Dimension dimension;
  const char* word;  // for the advice
  const char* cure;  // what makes it less
  const char* unit;
};

constexpr Judged kPressure{"pressure", Dimension::pressure, "pressure",
                           "a longer or larger bearing, or less load", "MPa"};
constexpr Judged kSpeed{"speed", Dimension::speed, "surface speed",
                        "a smaller diameter or fewer turns", "m/s"};
constexpr Judged kProduct{"pressure_speed", Dimension::pressure_speed, "pressure x speed",
                          "a longer bearing, less load or fewer turns", "MPa m/s"};

void judge_one(Finding& finding, Reasons& reasons, const Judged& judged,
               const std::optional<double>& value, const std::optional<double>& limit,
               LimitCounts counts) {
  if (!value) {
    return;
  }
  finding.found.push_back({judged.name, {*value, judged.dimension}});
  if (!limit || counts == LimitCounts::no) {
    return;
  }
  finding.wanted.push_back({judged.name, {*limit, judged.dimension}, RangeEnd::greatest});
  finding.margin.push_back({judged.name, {*limit - *value, judged.dimension}});
  if (*value <= *limit) {
    return;
  }
  if (counts == LimitCounts::as_average) {
    const double share = 100.0 * *limit / *value;
    finding.found.push_back({"running_time", percent(share), RangeEnd::greatest});
    reasons.add(Outcome::undecided,
                fmt::format("{} {:.3g} {} is over {:.3g} {}: it heats too much unless it runs no "
                            "more than {:.0f} percent of the time",
                            judged.word, *value, judged.unit, *limit, judged.unit, share));
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
