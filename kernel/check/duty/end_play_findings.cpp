#include "check/duty/end_play_findings.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <set>
#include <utility>

#include "check/duty/end_play_judge.hpp"
#include "check/findings/unsound.hpp"
#include "check/words/words.hpp"
#include "group/turning/turns.hpp"
#include "group/words/at_line.hpp"
#include "group/words/said_end_play.hpp"
#include "group/words/said_seats.hpp"
#include "spotblue/geometry/seat_limits.hpp"

namespace spotblue {
namespace {

// Beyond so many loops only those that something is wanted of are drawn by lot.
constexpr std::size_t kMostDrawn = 32;

// Whether the play of a group that nobody asked about is worth a line: it moves a little, as a part
// does that is meant to be held, or it turns and might bind.
bool worth_telling(const DeclaredJob& declared, const Groups& groups, const Turns& turns,
                   const BodyPlay& play) {
  const SeatSettings& settings = declared.look->settings.seats;
  const double travel = std::abs(travel_mm(play.back) + travel_mm(play.ahead));
  if (travel > settings.same_length_mm && !is_past(travel, settings.axial_gap_most_mm, settings)) {
    return true;
  }
  for (std::size_t part = 0; part < turns.of.size(); ++part) {
    if (groups.moves_with[part] == play.of && turns.of[part]) {
      return true;
    }
  }
  return false;
}

// The lengths of a loop, whichever of its groups it is told of.
std::set<std::string> lengths_of(const BodyPlay& play) {
  std::set<std::string> lengths;
  for (const StackLength& length : play.lengths) {
    lengths.insert(length.dimension.name);
  }
  return lengths;
}

// A wanted end play of a part that can not be judged, and why.
Finding without_loop(const EndPlayWant& want, const Saying& why) {
  Finding finding;
  finding.kind = "end play";
  finding.about = {want.of};
  finding.outcome = Outcome::undecided;
  add_range(finding.wanted, "end_play", want.gap);
  finding.found = {{"loop", said::kNone}};
  finding.basis = say(said::kEndPlayWanted, at_line(want.line));
  finding.advice = why;
  return finding;
}

Saying why_open(const DeclaredJob& declared, const BodyPlays& plays, std::size_t group,
                std::optional<std::size_t> on) {
  if (group == on) {
    return said::kHeldToEachOther;
  }
  if (!on && group == plays.heaviest) {
    return said::kHeldToStanding;
  }
  for (const Uncaptured& open : plays.open) {
    if (open.of == group && (!on || open.on == on)) {
      const Saying told = say(open.back || open.ahead ? said::kStoppedOneWay : said::kStoppedNoWay,
                              declared.look->seats.centre_lines[open.centre_line].id);
      return on ? told : told + said::kOnAsks;
    }
  }
  return on ? said::kNoLineTogether : said::kNoLineWithAnother;
}

// The groups that a want's part plays on; nothing for what stands still.
std::vector<std::optional<std::size_t>> on_groups(const WorkedGroup& worked,
                                                  const EndPlayWant& want) {
  if (!want.on) {
    return {std::nullopt};
  }
  std::set<std::optional<std::size_t>> groups;
  for (const OccurrenceId part :
       worked.declared.names.part(*want.on, {"wants", "on", want.line}).occurrences) {
    groups.insert(worked.joints.moves_with[part]);
  }
  return {groups.begin(), groups.end()};
}

// Wants of parts that no loop was found for. A part that stands several times plays on one of those
// that it is wanted to play on.
std::vector<Finding> unmet_wants(const WorkedGroup& worked) {
  const BodyPlays& plays = worked.plays;
  std::vector<Finding> findings;
  for (const EndPlayWant& want : worked.declared.job->end_play) {
    const auto on = on_groups(worked, want);
    for (const OccurrenceId part :
         worked.declared.names.part(want.of, {"wants", "of", want.line}).occurrences) {
      const std::size_t group = worked.joints.moves_with[part];
      const auto is_it = [&](const BodyPlay& play) {
        return play.of == group && std::any_of(on.begin(), on.end(), [&play](const auto& one) {
                 return !one || play.on == *one;
               });
      };
      if (std::none_of(plays.captured.begin(), plays.captured.end(), is_it)) {
        findings.push_back(without_loop(want, why_open(worked.declared, plays, group, on.front())));
      }
    }
  }
  return findings;
}

}  // namespace

std::vector<Finding> end_play_findings(const WorkedGroup& worked) {
  const DeclaredJob& declared = worked.declared;
  const Groups& groups = worked.joints;
  const Turns& turns = worked.turns;
  const BodyPlays& plays = worked.plays;
  std::vector<Finding> findings;
  std::set<std::set<std::string>> told;
  for (const BodyPlay& play : plays.captured) {
    if (!play.wants.empty()) {
      told.insert(lengths_of(play));
    }
  }
  for (const BodyPlay& play : plays.captured) {
    if (play.of_mesh) {
      continue;
    }
    const OccurrenceId part = main_part(declared, groups, play.of);
    const EndPlayCase found{declared, groups, play, part, main_part(declared, groups, play.on)};
    const auto add = [&](Finding finding) {
      leave_neighbours_open(
          declared, declared.look->seats.centre_lines[play.centre_line].occurrences, finding);
      leave_missing_open(declared, finding);
      findings.push_back(std::move(finding));
    };
    for (const PlayWanted& want : play.wants) {
      add(judge_end_play(found, want.limits, want.line));
    }
    // Two groups that float one behind the other have one play between them.
    if (play.wants.empty() && worth_telling(declared, groups, turns, play) &&
        (!play.closed || told.insert(lengths_of(play)).second)) {
      add(tell_end_play(found, plays.captured.size() <= kMostDrawn ? Draw::yes : Draw::no));
    }
  }
  std::vector<Finding> unmet = unmet_wants(worked);
  std::move(unmet.begin(), unmet.end(), std::back_inserter(findings));
  return findings;
}

}  // namespace spotblue
