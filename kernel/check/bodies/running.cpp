#include "check/bodies/running.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "check/bodies/turns.hpp"
#include "check/sizes/fit_verdict.hpp"

namespace spotblue {
namespace {

Duty harder(Duty a, Duty b) { return std::max(a, b); }

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

struct OneMaterial {
  std::string name;
  const BearingMaterial* row = nullptr;
  bool journal = false;
};

OneMaterial one_material(const DeclaredJob& declared, OccurrenceId occurrence) {
  OneMaterial one;
  one.name = material_name(declared, occurrence);
  one.row = find_bearing_material(one.name);
  one.journal = is_journal_material(one.name);
  return one;
}

std::string why_unknown(const DeclaredJob& declared, OccurrenceId occurrence,
                        const OneMaterial& one) {
  const std::string& part = declared.names.id_of(occurrence);
  if (one.name.empty()) {
    return fmt::format("no material is given for {}", part);
  }
  return one.row == nullptr && !one.journal
             ? fmt::format("no limits are known for {} of {}", one.name, part)
             : std::string();
}

}  // namespace

std::optional<Rubbing> rubbing(const Groups& groups, const Turns& turns, OccurrenceId a,
                               OccurrenceId b) {
  const std::optional<Turn>& first = turns.of.at(a);
  const std::optional<Turn>& second = turns.of.at(b);
  if (groups.turns_with.at(a) == groups.turns_with.at(b) || (!first && !second)) {
    return std::nullopt;
  }
  const bool first_faster = first && (!second || first->rpm >= second->rpm);
  const Turn& faster = first_faster ? *first : *second;
  Rubbing found{faster.rpm,      faster.duty,          faster.load_n,
                faster.thrust_n, first_faster ? a : b, first.has_value() && second.has_value()};
  if (found.both) {
    const Turn& other = first_faster ? *second : *first;
    found.rpm += other.rpm;
    found.duty = harder(faster.duty, other.duty);
    found.load_n = std::max(faster.load_n, other.load_n);
    found.thrust_n = std::max(faster.thrust_n, other.thrust_n);
  }
  return found;
}

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

std::string duty_text(Duty duty) {
  switch (duty) {
    case Duty::no_load_slow:
      return "no load, slow";
    case Duty::intermittent:
      return "intermittent";
    case Duty::continuous:
      break;
  }
  return "continuous";
}

std::string material_name(const DeclaredJob& declared, OccurrenceId occurrence) {
  const JobPart* part = declared.parts.at(occurrence);
  return part == nullptr ? std::string() : part->material;
}

PairLimits pair_limits(const DeclaredJob& declared, OccurrenceId a, OccurrenceId b) {
  const OneMaterial first = one_material(declared, a);
  const OneMaterial second = one_material(declared, b);
  PairLimits pair;
  for (const auto& [occurrence, one] : {std::pair{a, &first}, {b, &second}}) {
    const std::string why = why_unknown(declared, occurrence, *one);
    pair.unknown += (pair.unknown.empty() || why.empty() ? "" : " and ") + why;
    if (one->row != nullptr) {
      pair.limits = weaker(pair.limits, one->row->limits);
      pair.basis +=
          fmt::format("{}{}: {}", pair.basis.empty() ? "" : "; ", one->row->name, one->row->source);
      if (!one->row->note.empty()) {
        pair.note += fmt::format("{}{}", pair.note.empty() ? "" : "; ", one->row->note);
      }
    }
  }
  if (pair.unknown.empty() && first.journal && second.journal) {
    pair.unknown = "steel on steel has no limits to go by: it galls; bush one of the two";
  }
  return pair;
}

void Reasons::add(Outcome outcome, std::string advice) {
  reasons_.push_back({outcome, std::move(advice)});
}

Outcome Reasons::outcome() const {
  Outcome worst = Outcome::conforming;
  for (const Reason& reason : reasons_) {
    worst = worse(worst, reason.outcome);
  }
  return worst;
}

std::string Reasons::advice(const std::string& when_conforming) const {
  std::string text;
  for (const Reason& reason : reasons_) {
    if (reason.outcome == outcome() && !reason.advice.empty()) {
      text += (text.empty() ? "" : "; ") + reason.advice;
    }
  }
  return text.empty() ? when_conforming : text;
}

void judge_running(Finding& finding, Reasons& reasons, const RunningLoad& load,
                   const PairLimits& pair, Duty duty, const std::string& missing_load) {
  const CountingLimits counts = counting_limits(running_duty(duty));
  finding.wanted.push_back({"duty", duty_text(duty)});
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
