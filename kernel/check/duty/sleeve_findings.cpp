#include "check/duty/sleeve_findings.hpp"

// What pressing and warming leave of the running clearance in a bush.
//
// Which size is which: the bore of a bush is its free size as long as the bush or its hub is still
// to be made, whether modelled, limited by a class or measured; pressing closes it. A bush and a
// hub that both exist as found sit in each other already: their sizes are as they are, and only
// warming moves them. The running fit wanted is always that of the bore after pressing.

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <utility>

#include "check/fits/reasons.hpp"
#include "check/press/press_case.hpp"
#include "check/running/running.hpp"
#include "check/words/words.hpp"
#include "group/joints/part_material.hpp"
#include "group/words/size_text.hpp"
#include "spotblue/base/interval.hpp"
#include "spotblue/mechanics/sleeve_chain.hpp"

namespace spotblue {
namespace {

constexpr double kReference_c = 20.0;  // at which the chain takes its free sizes
constexpr double kRounding_mm = 1e-7;
constexpr int kRefinements = 4;  // each adds some three digits

/// A seat that runs in the bore of a pressed part.
struct SleeveCase {
  const PressCase* pressed = nullptr;
  std::size_t running = 0;  ///< number of the radial seat
  SeatSizes sizes;
  std::vector<JointStretch> stretches;  ///< of the joint, where the shaft runs behind them
  bool sits_already = false;
  PartMaterial shaft;
};

// Ends of the running seat as stations on the pressed seat's axis.
Interval on_axis_of(const RadialSeat& pressed, const RadialSeat& running) {
  const auto station = [&](double along_running) {
    const Point point = running.axis.at + along_running * running.axis.along;
    return dot(point - pressed.axis.at, pressed.axis.along);
  };
  return ordered(station(running.from), station(running.to));
}

std::vector<JointStretch> behind(const PressCase& pressed, const RadialSeat& joint,
                                 const RadialSeat& running) {
  const auto [from, to] = on_axis_of(joint, running);
  std::vector<JointStretch> shared;
  for (JointStretch stretch : pressed.stretches) {
    stretch.from = std::max(stretch.from, from);
    stretch.to = std::min(stretch.to, to);
    if (stretch.to > stretch.from && stretch.inner_bore_mm > 0.0) {
      shared.push_back(stretch);
    }
  }
  return shared;
}

bool runs(const SeatSizes& sizes) {
  const Limits clearance = sizes.wanted ? sizes.wanted->clearance : sizes.found.clearance;
  return clearance.upper > Length() && clearance.lower > -Length::mm(kRounding_mm);
}

std::vector<SleeveCase> sleeve_cases(const DeclaredJob& declared,
                                     const std::vector<PressCase>& cases) {
  const std::vector<RadialSeat>& seats = declared.look->seats.radial;
  std::vector<SleeveCase> all;
  for (const PressCase& pressed : cases) {
    const RadialSeat& joint = seats[pressed.seat];
    for (std::size_t i = 0; i < seats.size(); ++i) {
      if (seats[i].hole.occurrence != joint.shaft.occurrence) {
        continue;
      }
      SleeveCase sleeve;
      sleeve.sizes = seat_sizes(declared, i);
      sleeve.stretches = behind(pressed, joint, seats[i]);
      if (!runs(sleeve.sizes) || sleeve.stretches.empty()) {
        continue;
      }
      sleeve.pressed = &pressed;
      sleeve.running = i;
      sleeve.sits_already = state_of(declared, joint.hole.occurrence) == PartState::as_found &&
                            state_of(declared, joint.shaft.occurrence) == PartState::as_found;
      sleeve.shaft = part_material(declared, seats[i].shaft.occurrence);
      all.push_back(std::move(sleeve));
    }
  }
  return all;
}

struct Temperatures {
  double hub = kReference_c, bush = kReference_c, shaft = kReference_c;
};

Temperatures running_temperatures(const DeclaredJob& declared, const SleeveCase& sleeve) {
  const std::vector<RadialSeat>& seats = declared.look->seats.radial;
  const RadialSeat& joint = seats[sleeve.pressed->seat];
  // Sizes hold at the bench, whatever its temperature.
  const double shift = kReference_c - declared.job->conditions.bench_c;
  return {running_temperature_c(declared, joint.hole.occurrence) + shift,
          running_temperature_c(declared, joint.shaft.occurrence) + shift,
          running_temperature_c(declared, seats[sleeve.running].shaft.occurrence) + shift};
}

// Free sizes of one end of the fit over one stretch.
struct Stack {
  ChainRing bush, hub, shaft;
};

double bore_of(const Stack& stack) {
  return sleeve_chain(std::array{stack.bush, stack.hub}).rings.front().bore_mm;
}

Stack free_stack(const DeclaredJob& declared, const SleeveCase& sleeve, const JointStretch& stretch,
                 FitEnd end) {
  const PressCase& pressed = *sleeve.pressed;
  const RadialSeat& joint = declared.look->seats.radial.at(pressed.seat);
  const bool tight = end == FitEnd::tightest;
  const FoundFit& running = sleeve.sizes.found;
  const double bore = (tight ? running.hole.limits.lower : running.hole.limits.upper).in_mm();
  const double shaft = (tight ? running.shaft.limits.upper : running.shaft.limits.lower).in_mm();
  // Both sizes half the interference off the joint's middle; roughness taken off, clearance kept.
  const double meant = interference_mm(pressed, end);
  const double half = 0.5 * (meant > 0.0 ? effective_mm(pressed, end) : meant);
  const double middle = 0.5 * (joint.hole_diameter + joint.shaft_diameter);
  Stack stack;
  stack.bush = {{bore, middle + half, *pressed.inner.elastic}, kReference_c};
  stack.hub = {{middle - half, stretch.hub_outside_mm, *pressed.hub.elastic}, kReference_c};
  stack.shaft = {{0.0, shaft, *sleeve.shaft.elastic}, kReference_c};
  if (sleeve.sits_already) {
    // The bore as it is has closed in already: the free one is larger by that, which itself hangs
    // on the free one by a few parts in a thousand.
    for (int i = 0; i < kRefinements; ++i) {
      stack.bush.free.inner_mm += bore - bore_of(stack);
    }
  }
  return stack;
}

struct Clearance {
  double close_in = 0.0, bore = 0.0, bench = 0.0, warm = 0.0;
};

Clearance clearance_of(Stack stack, const Temperatures& warm) {
  Clearance found;
  found.bore = bore_of(stack);
  found.close_in = stack.bush.free.inner_mm - found.bore;
  found.bench = found.bore - stack.shaft.free.outer_mm;
  stack.bush.temperature_c = warm.bush;
  stack.hub.temperature_c = warm.hub;
  stack.shaft.temperature_c = warm.shaft;
  found.warm = bore_of(stack) - sleeve_chain(std::array{stack.shaft}).rings.front().outside_mm;
  return found;
}

struct Range {
  Clearance tightest, loosest;
};

Range range_of(const DeclaredJob& declared, const SleeveCase& sleeve) {
  const Temperatures warm = running_temperatures(declared, sleeve);
  std::optional<Range> range;
  for (const JointStretch& stretch : sleeve.stretches) {
    const Clearance tight =
        clearance_of(free_stack(declared, sleeve, stretch, FitEnd::tightest), warm);
    const Clearance loose =
        clearance_of(free_stack(declared, sleeve, stretch, FitEnd::loosest), warm);
    if (!range) {
      range = Range{tight, loose};
    }
    range->tightest.bench = std::min(range->tightest.bench, tight.bench);
    range->tightest.warm = std::min(range->tightest.warm, tight.warm);
    range->tightest.bore = std::min(range->tightest.bore, tight.bore);
    range->tightest.close_in = std::max(range->tightest.close_in, tight.close_in);
    range->loosest.bench = std::max(range->loosest.bench, loose.bench);
    range->loosest.warm = std::max(range->loosest.warm, loose.warm);
    range->loosest.bore = std::max(range->loosest.bore, loose.bore);
    range->loosest.close_in = std::min(range->loosest.close_in, loose.close_in);
  }
  return *range;
}

Limits limits(double lower, double upper) { return {Length::mm(lower), Length::mm(upper)}; }

// What the bush's bore must be turned to before pressing; nothing when no size suits all.
std::optional<Limits> bore_to_turn(const SleeveCase& sleeve, const Range& range) {
  const Limits want = sleeve.sizes.wanted->clearance;
  const Limits shaft = sleeve.sizes.found.shaft.limits;
  const Limits window{want.lower + shaft.upper + Length::mm(range.tightest.close_in),
                      want.upper + shaft.lower + Length::mm(range.loosest.close_in)};
  return window.lower <= window.upper ? std::optional(window) : std::nullopt;
}

std::string cure_of_bench(const DeclaredJob& declared, const SleeveCase& sleeve,
                          const Range& range) {
  const std::string bore =
      declared.names.id_of(declared.look->seats.radial.at(sleeve.running).hole);
  if (sleeve.sits_already) {
    return fmt::format("ream {} in place, or make its shaft to suit", bore);
  }
  if (const auto window = bore_to_turn(sleeve, range)) {
    return fmt::format("turn {} {} before pressing, or finish it after", bore,
                       range_text(*window, declared.job->unit));
  }
  return fmt::format("no size of {} before pressing suits every case: finish it after pressing",
                     bore);
}

void judge_bench(Finding& finding, Reasons& reasons, const DeclaredJob& declared,
                 const SleeveCase& sleeve, const Range& range) {
  const Limits bench = limits(range.tightest.bench, range.loosest.bench);
  if (!sleeve.sizes.wanted) {
    reasons.add(Outcome::undecided, fmt::format("no running fit is wanted; after pressing {} "
                                                "is left",
                                                range_text(bench, declared.job->unit)));
    return;
  }
  const WantedFit& wanted = *sleeve.sizes.wanted;
  finding.wanted.push_back({"fit", wanted.text});
  add_range(finding.wanted, "clearance", wanted.clearance);
  if (const auto window = bore_to_turn(sleeve, range); window && !sleeve.sits_already) {
    add_range(finding.wanted, "bore_before_pressing", *window);
  }
  finding.margin.push_back(millimetres("clearance_mm", margin(bench, wanted.clearance)));
  const Length rounding = Length::mm(kRounding_mm);
  const Outcome outcome =
      judge(bench, {wanted.clearance.lower - rounding, wanted.clearance.upper + rounding});
  if (outcome == Outcome::conforming) {
    return;
  }
  // A bore still to be turned is turned to suit; one that exists must be measured closer first.
  const bool to_make = sleeve.sizes.found.hole.to_make || sleeve.sizes.found.shaft.to_make;
  reasons.add(to_make ? Outcome::nonconforming : outcome,
              fmt::format("after pressing {} clearance is left, wanted {}: {}",
                          range_text(bench, declared.job->unit),
                          range_text(wanted.clearance, declared.job->unit),
                          cure_of_bench(declared, sleeve, range)));
}

void judge_warm(Reasons& reasons, const DeclaredJob& declared, const Range& range) {
  const LengthUnit unit = declared.job->unit;
  if (range.loosest.warm <= 0.0) {
    reasons.add(Outcome::nonconforming,
                fmt::format("it binds when warm, by up to {}: allow more clearance",
                            length_text(Length::mm(-range.tightest.warm), unit)));
  } else if (range.tightest.warm <= 0.0) {
    reasons.add(Outcome::nonconforming,
                fmt::format("it may bind when warm: {} clearance at the tightest; allow more",
                            length_text(Length::mm(range.tightest.warm), unit)));
  }
}

// Shaft, bush and hub as one, where the bush closes on the shaft: how hard.
void add_binding(Finding& finding, const DeclaredJob& declared, const SleeveCase& sleeve) {
  const Temperatures warm = running_temperatures(declared, sleeve);
  double pressure = 0.0;
  for (const JointStretch& stretch : sleeve.stretches) {
    Stack stack = free_stack(declared, sleeve, stretch, FitEnd::tightest);
    stack.shaft.temperature_c = warm.shaft;
    stack.bush.temperature_c = warm.bush;
    stack.hub.temperature_c = warm.hub;
    const ChainState state = sleeve_chain(std::array{stack.shaft, stack.bush, stack.hub});
    pressure = std::max(pressure, state.interfaces.front().pressure_mpa);
  }
  if (pressure > 0.0) {
    finding.found.push_back({"warm_binding_pressure_max_mpa", pressure});
  }
}

std::string sleeve_basis(const DeclaredJob& declared, const SleeveCase& sleeve) {
  const Conditions& conditions = declared.job->conditions;
  const char* sizes = sleeve.sits_already
                          ? "bush and hub are as found: their sizes are those in place"
                          : "the bush's bore is its size before pressing";
  return fmt::format(
      "rings one in another, plane stress (Lame), free expansion of each; {}; bench {} C, running "
      "{} C where a part has none of its own; elastic, the shaft taken as solid",
      sizes, conditions.bench_c, conditions.running_c);
}

std::string why_unknown(const DeclaredJob& declared, const SleeveCase& sleeve) {
  std::string why = not_computable(declared, *sleeve.pressed);
  if (!sleeve.shaft.unknown.empty()) {
    why += (why.empty() ? "" : " and ") + sleeve.shaft.unknown;
  }
  return why;
}

Finding judge_sleeve(const DeclaredJob& declared, const SleeveCase& sleeve) {
  const std::vector<RadialSeat>& seats = declared.look->seats.radial;
  const RadialSeat& running = seats.at(sleeve.running);
  Finding finding;
  finding.kind = "running clearance";
  finding.about = {declared.names.id_of(running.hole), declared.names.id_of(running.shaft),
                   declared.names.id_of(seats.at(sleeve.pressed->seat).hole)};
  finding.basis = sleeve_basis(declared, sleeve);
  finding.caution = std::string(kTurningCaution);
  const std::string unknown = why_unknown(declared, sleeve);
  if (!unknown.empty()) {
    finding.outcome = Outcome::undecided;
    finding.advice = unknown;
    return finding;
  }
  const Range range = range_of(declared, sleeve);
  add_range(finding.found, "bore_close_in",
            limits(range.loosest.close_in, range.tightest.close_in));
  add_range(finding.found, "bore_after_pressing", limits(range.tightest.bore, range.loosest.bore));
  add_range(finding.found, "clearance", limits(range.tightest.bench, range.loosest.bench));
  add_range(finding.found, "warm_clearance", limits(range.tightest.warm, range.loosest.warm));
  add_binding(finding, declared, sleeve);
  Reasons reasons;
  judge_bench(finding, reasons, declared, sleeve, range);
  judge_warm(reasons, declared, range);
  finding.outcome = reasons.outcome();
  finding.advice = reasons.advice(
      fmt::format("leave it so: {} clearance after pressing, {} warm",
                  range_text(limits(range.tightest.bench, range.loosest.bench), declared.job->unit),
                  range_text(limits(range.tightest.warm, range.loosest.warm), declared.job->unit)));
  return finding;
}

}  // namespace

std::vector<Finding> sleeve_findings(const DeclaredJob& declared) {
  const std::vector<PressCase> cases = press_cases(declared);
  std::vector<Finding> findings;
  for (const SleeveCase& sleeve : sleeve_cases(declared, cases)) {
    findings.push_back(judge_sleeve(declared, sleeve));
  }
  return findings;
}

}  // namespace spotblue
