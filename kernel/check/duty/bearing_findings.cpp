#include "check/duty/bearing_findings.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cstddef>
#include <map>
#include <optional>
#include <set>

#include "check/findings/unsound.hpp"
#include "check/fits/reasons.hpp"
#include "check/running/pair_limits.hpp"
#include "check/running/running.hpp"
#include "check/words/words.hpp"
#include "group/joints/part_material.hpp"
#include "group/turning/rubbing.hpp"
#include "group/turning/turns.hpp"
#include "group/words/said_cautions.hpp"
#include "group/words/size_text.hpp"
#include "spotblue/geometry/wall.hpp"

namespace spotblue {
namespace {

// A hole this much larger than its shaft, per diameter, lets it through and carries nothing, unless
// the fit that is wanted says otherwise. Choice of this program, common practice, no source.
constexpr double kPassingHole = 0.01;

struct Bearing {
  std::size_t seat = 0;
  Rubbing rub;
  /// As the two meet once everything is pressed; as made where what pressing does is not known.
  Limits clearance;
  std::string unknown;
};

bool is_bearing(const SeatSizes& sizes, Length diameter) {
  if (sizes.wanted) {
    return sizes.wanted->clearance.upper > Length() &&
           sizes.wanted->clearance.lower < kPassingHole * diameter;
  }
  return sizes.found.clearance.upper > Length() &&
         sizes.found.clearance.lower < kPassingHole * diameter;
}

std::vector<Bearing> bearings(const WorkedGroup& worked) {
  std::vector<Bearing> all;
  const std::vector<RadialSeat>& seats = worked.declared.look->seats.radial;
  for (std::size_t i = 0; i < seats.size(); ++i) {
    const auto rub =
        rubbing(worked.joints, worked.turns, seats[i].hole.occurrence, seats[i].shaft.occurrence);
    if (!rub || !(seats[i].engaged > 0.0)) {
      continue;
    }
    const SurfaceSizes& surface = worked.surfaces[i];
    if (is_bearing(surface.sizes, Length::mm(seats[i].shaft_diameter))) {
      all.push_back({i, *rub, assembled_clearance(surface), why_not_assembled(surface)});
    }
  }
  return all;
}

// How many bearings a group that turns hangs in.
std::map<std::size_t, int> count_by_group(const Groups& groups, const std::vector<Bearing>& all) {
  std::map<std::size_t, int> counts;
  for (const Bearing& bearing : all) {
    ++counts[groups.turns_with.at(bearing.rub.turning)];
  }
  return counts;
}

bool nameless(const DeclaredJob& declared, const Bearing& bearing) {
  const RadialSeat& seat = declared.look->seats.radial[bearing.seat];
  return material_name(declared, seat.hole.occurrence).empty() &&
         material_name(declared, seat.shaft.occurrence).empty();
}

// Groups that turn in at least one bearing of a known material.
std::set<std::size_t> groups_with_material(const DeclaredJob& declared, const Groups& groups,
                                           const std::vector<Bearing>& all) {
  std::set<std::size_t> known;
  for (const Bearing& bearing : all) {
    if (!nameless(declared, bearing)) {
      known.insert(groups.turns_with.at(bearing.rub.turning));
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
  if (ratios.clearance_least <= 0.0) {
    reasons.add(Outcome::undecided, "it may have no running clearance at all");
  } else if (ratios.clearance_least < guide.least - rounding) {
    reasons.add(
        Outcome::undecided,
        fmt::format("clearance may be only {:.4f} of the diameter, common practice is {:.4f}"
                    " or more: it may bind warm or dry",
                    ratios.clearance_least, guide.least));
  }
  if (ratios.clearance_greatest > guide.greatest + rounding) {
    const bool always = ratios.clearance_least > guide.greatest + rounding;
    reasons.add(always ? Outcome::nonconforming : Outcome::undecided,
                fmt::format("clearance may be {:.4f} of the diameter, common practice is {:.4f} or "
                            "less: it knocks and loses its oil",
                            ratios.clearance_greatest, guide.greatest));
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
    reasons.add(
        Outcome::undecided,
        fmt::format("only {:.2f} of its diameter long, usual is {:.1f} to {:.1f}: the edges "
                    "carry the load",
                    ratios.length, usual.length_least, usual.length_greatest));
  }
  if (works && ratios.length > usual.length_greatest) {
    reasons.add(Outcome::undecided,
                fmt::format("{:.2f} of its diameter long, usual is {:.1f} to {:.1f}: relieve the "
                            "middle and line up the ends",
                            ratios.length, usual.length_least, usual.length_greatest));
  }
  if (!sizes.wall) {
    return;
  }
  const Length least = std::max(usual.wall_floor, usual.wall_least * sizes.diameter.length());
  finding.found.push_back({"wall", measure(*sizes.wall)});
  finding.wanted.push_back({"wall", measure(least), RangeEnd::least});
  if (*sizes.wall < least) {
    reasons.add(Outcome::undecided, "the wall is thinner than a solid bush is usually made");
  }
}

std::string groove_advice(const DeclaredJob& declared, const BearingSizes& sizes) {
  const BearingProportions& usual = bearing_proportions();
  const LengthUnit unit = declared.job->unit;
  std::string depth;
  if (sizes.wall && *sizes.wall < 0.3 * sizes.diameter.length()) {
    depth = fmt::format(", {} deep", length_text(usual.groove_depth * *sizes.wall, unit));
  }
  return fmt::format(
      "feed hole in the unloaded side, one groove {} long stopping short of both ends, {} wide{}, "
      "edges rounded (common practice, no source)",
      length_text(usual.groove_length * sizes.length, unit),
      length_text(usual.groove_width_least * sizes.diameter.length(), unit), depth);
}

std::string bearing_basis(const Bearing& bearing, const PairLimits& pair, const Guide& guide,
                          int shared, Duty duty) {
  std::string basis = "pressure = load/(diameter x length), speed = pi x diameter x rpm; ";
  basis += pair.basis.empty() ? "no limits of the materials" : "limits: " + pair.basis;
  if (!pair.note.empty()) {
    basis += " (" + pair.note + ")";
  }
  if (bearing.rub.load_n && shared > 1) {
    basis += fmt::format("; load shared evenly by {} bearings: overhung, one carries more", shared);
  }
  if (bearing.rub.both) {
    basis += "; both turn: taken as against each other";
  }
  basis += fmt::format("; clearance per diameter: {}; length: {}; wall: {}", guide.source,
                       bearing_proportions().length_source, bearing_proportions().wall_source);
  return basis + "; what counts for \"" + std::string(word_of(duty)) +
         "\": common practice, no source";
}

Finding judge_bearing(const WorkedGroup& worked, const Bearing& bearing, int shared) {
  const DeclaredJob& declared = worked.declared;
  const RadialSeat& seat = declared.look->seats.radial[bearing.seat];
  const Rubbing& rub = bearing.rub;
  const Limits clearance = bearing.clearance;
  const Limits shaft = worked.surfaces[bearing.seat].sizes.found.shaft.limits;
  BearingSizes sizes{Diameter(0.5 * (shaft.lower + shaft.upper)), Length::mm(seat.engaged),
                     clearance, least_wall(declared, seat)};
  const BearingRatios ratios = bearing_ratios(sizes);
  const Guide guide = clearance_guide(rub.duty);
  const std::optional<double> load =
      rub.load_n ? std::optional(*rub.load_n / shared) : std::nullopt;
  const PairLimits pair = pair_limits(declared, seat.hole.occurrence, seat.shaft.occurrence);

  Finding finding;
  finding.kind = "plain bearing";
  finding.about = {declared.names.reference(seat.hole), declared.names.reference(seat.shaft)};
  finding.found = {{"turns", declared.names.id_of(rub.turning)},
                   {"turning", turns_per_minute(rub.rpm)}};
  add_range(finding.found, "clearance", clearance);
  Reasons reasons;
  judge_clearance(finding, reasons, ratios, guide);
  if (!bearing.unknown.empty()) {
    reasons.add(Outcome::undecided,
                "pressing moves its sizes, by how much is not known: " + bearing.unknown);
  }
  judge_proportions(finding, reasons, sizes, ratios, rub.duty);
  judge_running(finding, reasons, bearing_load(sizes.diameter, sizes.length, rub.rpm, load), pair,
                rub.duty,
                fmt::format("no load is given for {}: pressure is not known",
                            declared.names.id_of(rub.turning)));
  if (load) {
    finding.found.push_back({"load", newtons(*load)});
  }
  finding.outcome = reasons.outcome();
  finding.basis = bearing_basis(bearing, pair, guide, shared, rub.duty);
  finding.advice = reasons.advice(groove_advice(declared, sizes));
  if (!pair.unknown.empty() && pair.basis.empty()) {
    finding.advice += "; a rolling bearing goes by its maker's table";
  }
  finding.caution = said::kTurningCaution;
  leave_missing_open(declared, finding);
  return finding;
}

}  // namespace

std::vector<Finding> bearing_findings(const WorkedGroup& worked) {
  const DeclaredJob& declared = worked.declared;
  const Groups& groups = worked.joints;
  const std::vector<Bearing> all = bearings(worked);
  const std::map<std::size_t, int> counts = count_by_group(groups, all);
  std::vector<Finding> findings;
  findings.reserve(all.size());
  const std::set<std::size_t> known = groups_with_material(declared, groups, all);
  for (const Bearing& bearing : all) {
    const std::size_t group = groups.turns_with.at(bearing.rub.turning);
    // Rings without a material beside a bearing that has one stand for a rolling bearing: it takes
    // its share of the load, and nothing here can judge it.
    if (!nameless(declared, bearing) || !known.contains(group)) {
      findings.push_back(judge_bearing(worked, bearing, counts.at(group)));
    }
  }
  return findings;
}

}  // namespace spotblue
