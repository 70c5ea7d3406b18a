#include "group/axial/end_play_stack.hpp"

#include <fmt/format.h>

#include <cmath>

#include "group/joints/part_growth.hpp"
#include "group/words/size_text.hpp"

namespace spotblue {
namespace {

std::string name_of(const DeclaredJob& declared, const PathLength& path) {
  return declared.names.id_of(path.from) + " to " + declared.names.id_of(path.to);
}

StackLength stack_length(const DeclaredJob& declared, const LoopLength& loop) {
  const PathLength& path = loop.path;
  const PartGrowth growth = growth_of(declared, path.from.occurrence);
  StackLength length;
  length.dimension = {name_of(declared, path), path.known.nominal,
                      path.known.limits,       loop.sense,
                      path.known.spread,       growth.expansion_per_k.value_or(0.0),
                      growth.warmer_by_k};
  length.source = path.known.source;
  length.how = path.known.how;
  length.part = path.from.occurrence;
  length.to_make = state_of(declared, length.part) == PartState::to_make;
  return length;
}

// The gap taken at a stop, where there is one.
const MeasuredGap* measured_at(const DeclaredJob& declared, const std::vector<AxialStop>& stops) {
  return stops.size() == 1 && stops.front().seat ? declared.axial_gaps.at(*stops.front().seat)
                                                 : nullptr;
}

StackLength gap_length(const DeclaredJob& declared, const AxialStop& stop,
                       const MeasuredGap& measured) {
  const Length either_way =
      measured.uncertainty.value_or(declared.job->settings.default_uncertainty);
  StackLength length;
  length.dimension = {"gap " + declared.names.id_of(stop.a) + " to " + declared.names.id_of(stop.b),
                      measured.value,
                      {measured.value - either_way, measured.value + either_way},
                      StackSense::opens,
                      StackSpread::normal};
  length.source = LengthSource::measured;
  length.how = "measured" + from_line(measured.line);
  length.part = stop.a.occurrence;
  return length;
}

// The play itself, taken with a feeler: all of it, when the other side is closed or taken too.
std::vector<StackLength> measured_play(const DeclaredJob& declared, const EndPlay& play) {
  const double same_mm = declared.look->settings.seats.same_length_mm;
  std::vector<StackLength> gaps;
  for (const auto* stops : {&play.back, &play.ahead}) {
    if (const MeasuredGap* measured = measured_at(declared, *stops)) {
      gaps.push_back(gap_length(declared, stops->front(), *measured));
    } else if (std::abs(travel_mm(*stops)) > same_mm) {
      return {};
    }
  }
  return gaps;
}

// Parts that are not at bench temperature and whose material is not known.
std::string unknown_materials(const DeclaredJob& declared, const EndPlay& play) {
  std::string unknown;
  for (const LoopLength& length : play.loop) {
    const OccurrenceId part = length.path.from.occurrence;
    const PartGrowth growth = growth_of(declared, part);
    const std::string& id = declared.names.id_of(part);
    if (growth.warmer_by_k != 0.0 && !growth.expansion_per_k &&
        unknown.find(id) == std::string::npos) {
      unknown += (unknown.empty() ? "" : ", ") + id;
    }
  }
  return unknown;
}

}  // namespace

std::vector<StackDimension> dimensions_of(const EndPlayStack& stack) {
  std::vector<StackDimension> dimensions;
  dimensions.reserve(stack.lengths.size());
  for (const StackLength& length : stack.lengths) {
    dimensions.push_back(length.dimension);
  }
  return dimensions;
}

EndPlayStack stack_of(const DeclaredJob& declared, const EndPlay& play) {
  EndPlayStack stack;
  for (const LoopLength& length : play.loop) {
    stack.lengths.push_back(stack_length(declared, length));
  }
  const std::vector<StackDimension> loop = dimensions_of(stack);
  const std::vector<StackDimension> warm = warmed(loop);
  const Length growth = nominal_gap(warm) - nominal_gap(loop);
  stack.worst = worst_case_gap(loop);
  Limits warm_worst = worst_case_gap(warm);
  if (auto gaps = measured_play(declared, play); !gaps.empty()) {
    stack.lengths = std::move(gaps);
    stack.worst = worst_case_gap(dimensions_of(stack));
    warm_worst = {stack.worst.lower + growth, stack.worst.upper + growth};
  }
  stack.root_sum_square = root_sum_square_gap(dimensions_of(stack));
  bool warmer = false;
  for (const LoopLength& length : play.loop) {
    warmer = warmer || growth_of(declared, length.path.from.occurrence).warmer_by_k != 0.0;
  }
  stack.warm_unknown = unknown_materials(declared, play);
  if (warmer && stack.warm_unknown.empty()) {
    stack.warm = warm_worst;
  }
  return stack;
}

Limits room_for(const EndPlayStack& stack, std::size_t length, Limits wanted) {
  const StackDimension& own = stack.lengths.at(length).dimension;
  const bool opens = own.sense == StackSense::opens;
  // What the others leave: the worst play less this length's own part in it.
  const Length least =
      opens ? stack.worst.lower - own.limits.lower : stack.worst.lower + own.limits.upper;
  const Length most =
      opens ? stack.worst.upper - own.limits.upper : stack.worst.upper + own.limits.lower;
  return opens ? Limits{wanted.lower - least, wanted.upper - most}
               : Limits{most - wanted.upper, least - wanted.lower};
}

}  // namespace spotblue
