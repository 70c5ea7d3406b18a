#include "check/press/press_warm.hpp"

#include <algorithm>
#include <optional>

#include "check/words/words.hpp"
#include "group/words/said_press.hpp"
#include "spotblue/mechanics/loosening.hpp"

namespace spotblue {
namespace {

// Beyond this the materials of the table are no longer themselves, and nothing is said. Common
// practice, no source.
constexpr double kHighest_c = 400.0;

void earliest(std::optional<double>& so_far, const std::optional<double>& next) {
  if (next) {
    so_far = std::min(so_far.value_or(*next), *next);
  }
}

BushInHub pair_of(const DeclaredJob& declared, const PressCase& pressed,
                  const JointStretch& stretch, FitEnd end) {
  const RadialSeat& seat = declared.look->seats.radial.at(pressed.seat);
  BushInHub pair;
  pair.bore_mm = stretch.inner_bore_mm;
  pair.joint_mm = 0.5 * (seat.hole_diameter + seat.shaft_diameter);
  pair.hub_outside_mm = stretch.hub_outside_mm;
  pair.interference_mm = effective_mm(pressed, end);
  pair.bush = *pressed.inner.elastic;
  pair.hub = *pressed.hub.elastic;
  pair.bench_c = declared.job->conditions.bench_c;
  return pair;
}

// The earliest of every stretch and of both ends of the fit.
Loosening earliest_loosening(const DeclaredJob& declared, const PressCase& pressed) {
  Loosening found;
  for (const JointStretch& stretch : pressed.stretches) {
    for (const FitEnd end : {FitEnd::tightest, FitEnd::loosest}) {
      if (!(stretch.inner_bore_mm > 0.0) || effective_mm(pressed, end) <= 0.0) {
        continue;
      }
      const Loosening one = loosening(pair_of(declared, pressed, stretch, end), kHighest_c);
      earliest(found.first_yield_c, one.first_yield_c);
      earliest(found.whole_wall_c, one.whole_wall_c);
      earliest(found.loose_c, one.loose_c);
    }
  }
  return found;
}

void add_temperature(Finding& finding, const std::string& name,
                     const std::optional<double>& celsius) {
  if (celsius) {
    finding.found.push_back({name, degrees_celsius(*celsius)});
  }
}

void judge_loosening(Finding& finding, Reasons& reasons, const DeclaredJob& declared,
                     const PressCase& pressed, double running_c) {
  const Elastic& bush = *pressed.inner.elastic;
  if (!bush.yield_mpa || bush.expansion_per_k <= pressed.hub.elastic->expansion_per_k) {
    return;
  }
  const Loosening found = earliest_loosening(declared, pressed);
  add_temperature(finding, "first_yield_at", found.first_yield_c);
  add_temperature(finding, "whole_wall_yields_at", found.whole_wall_c);
  add_temperature(finding, "comes_back_loose_above", found.loose_c);
  const Reference part =
      declared.names.reference(declared.look->seats.radial.at(pressed.seat).shaft.occurrence);
  if (found.loose_c && running_c >= *found.loose_c) {
    reasons.add(Outcome::nonconforming,
                say(said::kComesBackLoose, degrees_celsius(running_c), part) +
                    say(said::kLooseFrom, degrees_celsius(*found.loose_c)));
  } else if (found.first_yield_c && running_c > *found.first_yield_c) {
    reasons.add(Outcome::undecided,
                say(said::kYieldsWarm, part, degrees_celsius(*found.first_yield_c),
                    degrees_celsius(running_c)));
  }
}

}  // namespace

void judge_warm_press(Finding& finding, Reasons& reasons, const DeclaredJob& declared,
                      const PressCase& pressed) {
  const RadialSeat& seat = declared.look->seats.radial.at(pressed.seat);
  const double bench = declared.job->conditions.bench_c;
  const double hub_c = running_temperature_c(declared, seat.hole.occurrence);
  const double inner_c = running_temperature_c(declared, seat.shaft.occurrence);
  const double joint = 0.5 * (seat.hole_diameter + seat.shaft_diameter);
  const double more = joint * (pressed.inner.elastic->expansion_per_k * (inner_c - bench) -
                               pressed.hub.elastic->expansion_per_k * (hub_c - bench));
  if (hub_c != bench || inner_c != bench) {
    const double least = interference_mm(pressed, FitEnd::loosest) + more;
    add_range(finding.found, "warm_interference",
              {Length::mm(least), Length::mm(interference_mm(pressed, FitEnd::tightest) + more)});
    const double left = effective_interference_mm(least, pressed.rz_hub_um, pressed.rz_inner_um,
                                                  kGreatRoughnessLoss);
    const double most = interference_mm(pressed, FitEnd::tightest) + more;
    const bool certain = effective_interference_mm(std::max(most, 0.0), pressed.rz_hub_um,
                                                   pressed.rz_inner_um, kSmallRoughnessLoss) <= 0.0;
    if (pressed.must_hold && certain) {
      reasons.add(Outcome::nonconforming, say(said::kLetsGoWarm, Length::mm(most)));
    } else if (pressed.must_hold && left <= 0.0 && effective_mm(pressed, FitEnd::loosest) > 0.0) {
      reasons.add(Outcome::undecided, said::kMayLetGoWarm);
    }
  }
  judge_loosening(finding, reasons, declared, pressed, std::max(hub_c, inner_c));
}

}  // namespace spotblue
