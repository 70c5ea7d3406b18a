#include "check/duty/bearing_findings.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <optional>
#include <set>

#include "check/findings/unsound.hpp"
#include "check/fits/reasons.hpp"
#include "check/running/pair_limits.hpp"
#include "check/running/running.hpp"
#include "check/words/words.hpp"
#include "group/joints/part_material.hpp"
#include "group/rings/assembled_clearance.hpp"
#include "group/turning/bearings.hpp"
#include "group/words/said.hpp"
#include "group/words/said_cautions.hpp"
#include "group/words/said_turning.hpp"
#include "spotblue/base/angle.hpp"
#include "spotblue/geometry/wall.hpp"

namespace spotblue {
namespace {

bool nameless(const DeclaredJob& declared, const Bearing& bearing) {
  return material_name(declared, bearing.hole.occurrence).empty() &&
         material_name(declared, bearing.shaft.occurrence).empty();
}

// Bodies that turn in at least one bearing of a known material.
std::set<std::size_t> bodies_with_material(const WorkedGroup& worked) {
  std::set<std::size_t> known;
  for (const Bearing& bearing : worked.running.bearings) {
    if (!nameless(worked.declared, bearing)) {
      known.insert(worked.joints.turns_with.at(bearing.turning));
    }
  }
  return known;
}

std::optional<Length> least_wall(const DeclaredJob& declared, const RadialSeat& seat) {
  std::optional<Length> least;
  for (const WallStretch& stretch : wall_of_hub(declared.look->model, seat).stretches) {
    const Length wall = Length::mm(0.5 * (stretch.outer - stretch.inner));
    if (wall > Length()) {
      least = least ? std::min(*least, wall) : wall;
    }
  }
  return least;
}

struct Guide {
  double least = 0.0, greatest = 0.0;
  std::string source;
};

// From the tightest practice a duty allows to the loosest.
Guide clearance_guide(Duty duty) {
  const std::span<const ClearanceGuide> guides = clearance_guides();
  const ClearanceGuide& fine = guides[0];
  const ClearanceGuide& easy = guides[2];
  const ClearanceGuide& slow = guides[4];
  switch (duty) {
    case Duty::no_load_slow:
      return {0.0, slow.greatest, std::string(slow.source)};
    case Duty::intermittent:
      return {fine.least, slow.greatest, fmt::format("{}; {}", fine.source, slow.source)};
    case Duty::continuous:
      break;
  }
  return {fine.least, easy.greatest, fmt::format("{}; {}", fine.source, easy.source)};
}

void judge_clearance(Finding& finding, Reasons& reasons, const BearingRatios& ratios,
                     const Guide& guide) {
  constexpr double rounding = 1e-9;
  finding.found.push_back(
      {"clearance_per_diameter", percent(100.0 * ratios.clearance_least), RangeEnd::least});
  finding.found.push_back(
      {"clearance_per_diameter", percent(100.0 * ratios.clearance_greatest), RangeEnd::greatest});
  finding.wanted.push_back(
      {"clearance_per_diameter", percent(100.0 * guide.least), RangeEnd::least});
  finding.wanted.push_back(
      {"clearance_per_diameter", percent(100.0 * guide.greatest), RangeEnd::greatest});
  if (ratios.clearance_greatest <= 0.0) {
    reasons.add(Outcome::nonconforming, said::kNoClearanceAtAll);
  } else if (ratios.clearance_least <= 0.0) {
    reasons.add(Outcome::undecided, said::kNoRunningClearance);
  } else if (ratios.clearance_least < guide.least - rounding) {
    reasons.add(Outcome::undecided, say(said::kClearanceSmall, Figure{ratios.clearance_least, 4},
                                        Figure{guide.least, 4}));
  }
  if (ratios.clearance_greatest > guide.greatest + rounding) {
    const bool always = ratios.clearance_least > guide.greatest + rounding;
    reasons.add(always ? Outcome::nonconforming : Outcome::undecided,
                say(said::kClearanceLarge, Figure{ratios.clearance_greatest, 4},
                    Figure{guide.greatest, 4}));
  }
}

void judge_proportions(Finding& finding, Reasons& reasons, const BearingSizes& sizes,
                       const BearingRatios& ratios, Duty duty) {
  const BearingProportions& usual = bearing_proportions();
  finding.found.push_back({"diameter", measure(sizes.diameter.length())});
  finding.found.push_back({"length", measure(sizes.length)});
  finding.found.push_back({"length_per_diameter", percent(100.0 * ratios.length)});
  finding.wanted.push_back(
      {"length_per_diameter", percent(100.0 * usual.length_least), RangeEnd::least});
  finding.wanted.push_back(
      {"length_per_diameter", percent(100.0 * usual.length_greatest), RangeEnd::greatest});
  const bool works = duty != Duty::no_load_slow;
  if (works && ratios.length < usual.length_least) {
    reasons.add(Outcome::undecided,
                say(said::kBearingShort, Figure{ratios.length, 2}, Figure{usual.length_least, 1},
                    Figure{usual.length_greatest, 1}));
  }
  if (works && ratios.length > usual.length_greatest) {
    reasons.add(Outcome::undecided,
                say(said::kBearingLong, Figure{ratios.length, 2}, Figure{usual.length_least, 1},
                    Figure{usual.length_greatest, 1}));
  }
  if (!sizes.wall) {
    return;
  }
  const Length least = std::max(usual.wall_floor, usual.wall_least * sizes.diameter.length());
  finding.found.push_back({"wall", measure(*sizes.wall)});
  finding.wanted.push_back({"wall", measure(least), RangeEnd::least});
  if (*sizes.wall < least) {
    reasons.add(Outcome::undecided, said::kWallThin);
  }
}

Saying groove_advice(const BearingSizes& sizes) {
  const BearingProportions& usual = bearing_proportions();
  const Length length = usual.groove_length * sizes.length;
  const Length width = usual.groove_width_least * sizes.diameter.length();
  return sizes.wall && *sizes.wall < 0.3 * sizes.diameter.length()
             ? say(said::kGrooveDeep, length, width, usual.groove_depth * *sizes.wall)
             : say(said::kGroove, length, width);
}

Saying bearing_basis(const Bearing& bearing, const PairLimits& pair, const Guide& guide) {
  Saying basis = said::kBearingFormula;
  basis += limits_told(pair);
  if (bearing.load_n) {
    basis += bearing.how;
  }
  if (bearing.load_n && bearing.moment_nm) {
    basis += said::kHarderEnd;
  }
  if (bearing.load_n && *bearing.load_n < 0.0) {
    basis += said::kLifted;
  }
  if (is_open(bearing)) {
    basis += say(said::kGoesRound, angle(bearing.covered));
  }
  if (bearing.both) {
    basis += said::kBothTurn;
  }
  basis += say(said::kGuides, guide.source, bearing_proportions().length_source,
               bearing_proportions().wall_source);
  return basis + say(said::kDutyCounts, word_of(bearing.duty));
}

// A bearing that is open on one side cannot bear there when its load tilts it.
void judge_moment(Finding& finding, Reasons& reasons, const Bearing& bearing) {
  if (!bearing.load_n || !bearing.moment_nm) {
    return;
  }
  finding.found.push_back({"moment", newton_metres(*bearing.moment_nm)});
  const Length off = Length::mm(1000.0 * std::abs(*bearing.moment_nm / *bearing.load_n));
  if (*bearing.load_n != 0.0 && is_open(bearing) && off > Length::mm(bearing.length) / 6.0) {
    reasons.add(Outcome::undecided, say(said::kLoadOffMiddle, off));
  }
}

// What presses as hard as its harder end is pressed.
std::optional<double> pressing_load(const Bearing& bearing) {
  if (!bearing.load_n) {
    return std::nullopt;
  }
  return edge_load_n(std::abs(*bearing.load_n), bearing.moment_nm.value_or(0.0),
                     Length::mm(bearing.length));
}

Finding judge_bearing(const WorkedGroup& worked, const Bearing& bearing) {
  const DeclaredJob& declared = worked.declared;
  const RadialSeat& seat = declared.look->seats.radial[bearing.seat];
  const SurfaceSizes& surface = worked.surfaces[bearing.seat];
  const Limits clearance = assembled_clearance(surface);
  const Limits shaft = surface.sizes.found.shaft.limits;
  const BearingSizes sizes{Diameter(0.5 * (shaft.lower + shaft.upper)), Length::mm(bearing.length),
                           clearance, least_wall(declared, seat)};
  const BearingRatios ratios = bearing_ratios(sizes);
  const Guide guide = clearance_guide(bearing.duty);
  const PairLimits pair = pair_limits(declared, seat.hole.occurrence, seat.shaft.occurrence);

  Finding finding;
  finding.kind = "plain bearing";
  finding.about = {declared.names.reference(bearing.hole), declared.names.reference(bearing.shaft)};
  finding.found = {{"turns", say(said::kPartNamed, declared.names.reference(bearing.turning))},
                   {"turning", turns_per_minute(bearing.rpm)}};
  add_range(finding.found, "clearance", clearance);
  Reasons reasons;
  judge_clearance(finding, reasons, ratios, guide);
  const Saying unknown = why_not_assembled(surface);
  if (!unknown.empty()) {
    reasons.add(Outcome::undecided, say(said::kMovesNotKnown, unknown));
  }
  judge_proportions(finding, reasons, sizes, ratios, bearing.duty);
  judge_running(finding, reasons,
                bearing_load(sizes.diameter, sizes.length, bearing.rpm, pressing_load(bearing),
                             std::min(degrees(bearing.covered), 360.0)),
                pair, bearing.duty, say(said::kPressureNotKnown, bearing.how));
  if (bearing.load_n) {
    finding.found.push_back({"load", newtons(std::abs(*bearing.load_n))});
  }
  judge_moment(finding, reasons, bearing);
  if (!bearing.doubt.empty()) {
    reasons.add(Outcome::undecided, bearing.doubt);
  }
  finding.outcome = reasons.outcome();
  finding.basis = bearing_basis(bearing, pair, guide);
  finding.advice = reasons.advice(groove_advice(sizes));
  if (!pair.unknown.empty() && pair.basis.empty()) {
    finding.advice += said::kRollingBearing;
  }
  finding.caution = said::kTurningCaution;
  leave_missing_open(declared, finding);
  return finding;
}

}  // namespace

std::vector<Finding> bearing_findings(const WorkedGroup& worked) {
  std::vector<Finding> findings;
  const std::set<std::size_t> known = bodies_with_material(worked);
  for (const Bearing& bearing : worked.running.bearings) {
    const std::size_t body = worked.joints.turns_with.at(bearing.turning);
    // Rings without a material beside a bearing that has one stand for a rolling bearing: it takes
    // its share of the load, and nothing here can judge it.
    if (!nameless(worked.declared, bearing) || !known.contains(body)) {
      findings.push_back(judge_bearing(worked, bearing));
    }
  }
  return findings;
}

}  // namespace spotblue
