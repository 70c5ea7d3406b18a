#include "check/duty/way_in_findings.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
#include <string>
#include <utility>
#include <vector>

#include "check/findings/unsound.hpp"
#include "check/words/words.hpp"
#include "group/making/way_order.hpp"
#include "group/words/said.hpp"
#include "group/words/said_cautions.hpp"
#include "group/words/said_ways.hpp"
#include "spotblue/geometry/way_in.hpp"

namespace spotblue {
namespace {

/// "+z", "-x", or "(0.500, 0.866, 0.000)".
Saying said_direction(Direction d) {
  const std::array<std::pair<double, char>, 3> parts{{{d.x(), 'x'}, {d.y(), 'y'}, {d.z(), 'z'}}};
  for (const auto& [along, name] : parts) {
    if (std::abs(along) > 1.0 - 1e-9) {
      return fmt::format("{}{}", along > 0.0 ? '+' : '-', name);
    }
  }
  return say(said::kDirection, Figure{d.x(), 3}, Figure{d.y(), 3}, Figure{d.z(), 3});
}

Saying said_parts(const DeclaredJob& declared, const std::vector<OccurrenceId>& parts) {
  Saying all;
  for (const OccurrenceId part : parts) {
    all = all.empty() ? say(said::kAsItIs, declared.names.reference(part))
                      : say(said::kAndPart, all, declared.names.reference(part));
  }
  return all;
}

// Into a bore, over a shaft, to anything else.
const Said& step_said(const Seats& seats, const WayStep& step) {
  const auto moves = [&](const FeatureRef& feature) {
    return std::ranges::find(step.parts, feature.occurrence) != step.parts.end();
  };
  const auto among = [&](const auto& pairs, auto hole, auto shaft) -> const Said* {
    for (const auto& pair : pairs) {
      if (moves(pair.*shaft) && (pair.*hole).occurrence == step.onto) {
        return &said::kStepInto;
      }
      if (moves(pair.*hole) && (pair.*shaft).occurrence == step.onto) {
        return &said::kStepOver;
      }
    }
    return nullptr;
  };
  for (const Said* const found : {among(seats.threads, &Thread::hole, &Thread::screw),
                                  among(seats.radial, &RadialSeat::hole, &RadialSeat::shaft),
                                  among(seats.taper, &TaperSeat::hole, &TaperSeat::shaft),
                                  among(seats.width, &WidthSeat::slot, &WidthSeat::key)}) {
    if (found != nullptr) {
      return *found;
    }
  }
  return said::kStepTo;
}

Saying said_step(const DeclaredJob& declared, const WayStep& step) {
  const Saying goes =
      say(step_said(declared.look->seats, step), said_parts(declared, step.parts),
          declared.names.reference(step.onto), word_of(step.how), said_direction(step.along));
  return step.holds.empty() ? goes : goes + say(said::kHoldsIn, said_parts(declared, step.holds));
}

Saying said_blocked(const DeclaredJob& declared, const Blockage& blockage) {
  const Reference part = declared.names.reference(blockage.part);
  const Reference by = declared.names.reference(blockage.by);
  const Saying leaving = said_direction(blockage.leaving);
  const Length needs = Length::mm(blockage.needs);
  return blockage.has
             ? say(said::kHoleTooSmall, part, by, leaving, needs, Length::mm(*blockage.has))
             : say(said::kNoHole, part, by, leaving, needs);
}

void judge_blocked(const DeclaredJob& declared, WayIn way, Finding& finding) {
  true_blocks_first(way.blocked);
  const Model& model = declared.look->model;
  const auto held = std::ranges::find_if_not(
      way.blocked, [&](const Blockage& one) { return may_come_from_the_side(model, one); });
  finding.outcome = held != way.blocked.end() ? Outcome::nonconforming : Outcome::undecided;
  double least = 0.0;
  for (std::size_t i = 0; i < way.blocked.size(); ++i) {
    finding.found.push_back(
        {fmt::format("blocked_{}", i + 1), said_blocked(declared, way.blocked[i])});
    least = std::min(least, way.blocked[i].has.value_or(0.0) - way.blocked[i].needs);
  }
  finding.margin = {{"passing", millimetres(least)}};
  const Blockage& first = held != way.blocked.end() ? *held : way.blocked.front();
  finding.advice = say(held == way.blocked.end() ? said::kNoWayAlong : said::kNoWayIn,
                       declared.names.reference(first.part), declared.names.reference(first.by)) +
                   (held == way.blocked.end() ? said::kFromTheSide : said::kSayItSprings);
}

void judge_untold(const DeclaredJob& declared, const WayIn& way, Finding& finding) {
  finding.outcome = Outcome::undecided;
  for (std::size_t i = 0; i < way.not_told.size(); ++i) {
    const NotTold& pair = way.not_told[i];
    finding.found.push_back({fmt::format("not_told_{}", i + 1),
                             say(said::kPast, declared.names.reference(pair.part),
                                 declared.names.reference(pair.by), said_direction(pair.leaving))});
  }
  finding.advice =
      way.too_many ? Saying(said::kTooManyOrders)
                   : say(said::kPassesNotTold, declared.names.reference(way.not_told.front().part),
                         declared.names.reference(way.not_told.front().by)) +
                         said::kSayItSprings;
}

// What stands in the way stands there whatever else is missing.
void leave_unseen_open(const DeclaredJob& declared, const WayIn& way, Finding& finding) {
  if (finding.outcome == Outcome::nonconforming) {
    std::vector<OccurrenceId> in_the_way;
    for (const Blockage& one : way.blocked) {
      in_the_way.insert(in_the_way.end(), {one.part, one.by});
    }
    leave_parts_open(declared, in_the_way, finding);
    return;
  }
  leave_neighbours_open(declared, way.parts, finding);
  leave_missing_open(declared, finding);
}

Saying said_together(const DeclaredJob& declared, const WayIn& way) {
  Saying all;
  for (const auto& [a, b] : way.together) {
    all += say(said::kStandTogether, declared.names.reference(a), declared.names.reference(b));
  }
  return all;
}

Finding judge_way(const DeclaredJob& declared, const std::vector<WayIn>& ways, const WayIn& way) {
  Finding finding;
  finding.kind = "way in";
  finding.about = {declared.look->seats.centre_lines.at(way.centre_lines.front()).id,
                   declared.names.reference(way.base)};
  finding.wanted = {{"want", said::kWayForAll}};
  finding.basis = Saying(said::kAlongCentreLine) + said::kOwnGeometry + said::kOtherGroupsAway;
  if (!way.together.empty()) {
    finding.found.push_back({"together_before", said_together(declared, way)});
  }
  std::vector<const WayStep*> steps;
  for (const WayStep& step : way.steps) {
    steps.push_back(&step);
  }
  std::ranges::copy(steps_across(ways, way), std::back_inserter(steps));
  for (std::size_t i = 0; i < steps.size(); ++i) {
    finding.found.push_back({fmt::format("step_{}", i + 1), said_step(declared, *steps[i])});
  }
  const bool presses =
      std::ranges::any_of(way.steps, [](const WayStep& step) { return step.how == WayHow::press; });
  finding.caution = presses ? Saying(said::kPressCaution) : Saying();
  if (!way.blocked.empty()) {
    judge_blocked(declared, way, finding);
  } else if (!way.not_told.empty() || way.too_many) {
    judge_untold(declared, way, finding);
  } else {
    finding.outcome = Outcome::conforming;
    finding.advice = say(said::kInThisOrder, declared.names.reference(way.base)) + said::kInReverse;
  }
  leave_unseen_open(declared, way, finding);
  return finding;
}

}  // namespace

std::vector<Finding> way_in_findings(const WorkedGroup& worked) {
  const DeclaredJob& declared = worked.declared;
  std::vector<Finding> findings;
  const Look& look = *declared.look;
  const std::vector<WayIn> ways = ways_in(look.model, look.seats, way_options(worked));
  findings.reserve(ways.size());
  for (const WayIn& way : ways) {
    findings.push_back(judge_way(declared, ways, way));
  }
  return findings;
}

}  // namespace spotblue
