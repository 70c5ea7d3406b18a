#include "check/duty/end_play_findings.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <set>
#include <utility>

#include "check/duty/end_play_judge.hpp"
#include "check/findings/unsound.hpp"
#include "check/words/words.hpp"
#include "group/turning/turns.hpp"
#include "group/words/size_text.hpp"
#include "spotblue/geometry/seat_limits.hpp"

namespace spotblue {
namespace {

// Beyond so many loops only those that something is wanted of are drawn by lot.
constexpr std::size_t kMostDrawn = 32;

// What the job wants of one end play.
struct Want {
  Limits limits;
  std::optional<int> line;
};

// The part that gives a group its name: the one with the greatest volume, the first of several.
OccurrenceId main_part(const DeclaredJob& declared, const Groups& groups, std::size_t group) {
  const Model& model = declared.look->model;
  OccurrenceId chosen(model.occurrences.size());
  const auto volume = [&model](OccurrenceId part) {
    return model.products[model.occurrences[part].product].volume;
  };
  for (OccurrenceId part; part < model.occurrences.size(); ++part) {
    if (groups.moves_with[part] == group &&
        (chosen == model.occurrences.size() || volume(part) > volume(chosen))) {
      chosen = part;
    }
  }
  return chosen;
}

std::vector<Want> wants_of(const DeclaredJob& declared, const Groups& groups, const EndPlay& play) {
  std::vector<Want> wants;
  for (const EndPlayWant& want : declared.job->end_play) {
    const auto named = declared.names.part(want.of, {"wants", "of", want.line});
    if (std::any_of(named.occurrences.begin(), named.occurrences.end(),
                    [&](OccurrenceId part) { return groups.moves_with[part] == play.group; })) {
      wants.push_back({want.gap, want.line});
    }
  }
  // A want between two faces is one of the group that has the face, not of what it pushes on.
  std::set<const AxialWant*> taken;
  for (const AxialStop* stop : {&play.back.front(), &play.ahead.front()}) {
    const AxialWant* want = stop->seat ? declared.axial_wants.at(*stop->seat) : nullptr;
    if (want == nullptr || want->kind != AxialWantKind::end_play || !taken.insert(want).second) {
      continue;
    }
    // The same said twice, of the part and of its faces, is one thing to decide.
    const Limits limits{want->least, want->greatest};
    if (std::none_of(wants.begin(), wants.end(),
                     [&limits](const Want& known) { return known.limits == limits; })) {
      wants.push_back({limits, want->line});
    }
  }
  return wants;
}

// Whether the play of a group that nobody asked about is worth a line: it moves a little, as a part
// does that is meant to be held, or it turns and might bind.
bool worth_telling(const DeclaredJob& declared, const Groups& groups, const Turns& turns,
                   const EndPlay& play) {
  const SeatSettings& settings = declared.look->settings.seats;
  const double travel = std::abs(travel_mm(play.back) + travel_mm(play.ahead));
  if (travel > settings.same_length_mm && !is_past(travel, settings.axial_gap_most_mm, settings)) {
    return true;
  }
  for (std::size_t part = 0; part < turns.of.size(); ++part) {
    if (groups.moves_with[part] == play.group && turns.of[part]) {
      return true;
    }
  }
  return false;
}

// The lengths of a loop, whichever of its groups it is told of.
std::set<std::pair<Subject, Subject>> lengths_of(const EndPlay& play) {
  std::set<std::pair<Subject, Subject>> lengths;
  for (const LoopLength& length : play.loop) {
    lengths.insert(std::minmax({subject_of(length.path.from), subject_of(length.path.to)}));
  }
  return lengths;
}

// A wanted end play of a part that can not be judged, and why.
Finding without_loop(const EndPlayWant& want, const std::string& why) {
  Finding finding;
  finding.kind = "end play";
  finding.about = {want.of};
  finding.outcome = Outcome::undecided;
  add_range(finding.wanted, "end_play", want.gap);
  finding.found = {{"loop", "none"}};
  finding.basis = "end play wanted" + from_line(want.line);
  finding.advice = why;
  return finding;
}

std::string open_text(const DeclaredJob& declared, const EndPlays& plays, std::size_t group) {
  if (group == plays.heaviest) {
    return "it is held to the parts that stand still (the group with the greatest volume): it has "
           "no "
           "play of its own";
  }
  for (const Uncaptured& open : plays.open) {
    if (open.group == group) {
      return fmt::format(
          "no plane face stops it {} on {}; cones, rounded collars, springs and ball bearings are "
          "not seen: declare what holds it in [[joins]], or judge it by hand",
          open.back || open.ahead ? "one way" : "either way",
          declared.look->seats.centre_lines[open.centre_line].id);
    }
  }
  return "it lies on no centre line with another part: nothing is known of what stops it";
}

// Wants of parts that no loop was found for.
std::vector<Finding> unmet_wants(const DeclaredJob& declared, const Groups& groups,
                                 const EndPlays& plays) {
  std::vector<Finding> findings;
  for (const EndPlayWant& want : declared.job->end_play) {
    for (const OccurrenceId part :
         declared.names.part(want.of, {"wants", "of", want.line}).occurrences) {
      const std::size_t group = groups.moves_with[part];
      const auto is_it = [group](const EndPlay& play) { return play.group == group; };
      if (std::none_of(plays.captured.begin(), plays.captured.end(), is_it)) {
        findings.push_back(without_loop(want, open_text(declared, plays, group)));
      }
    }
  }
  return findings;
}

}  // namespace

std::vector<Finding> end_play_findings(const WorkedGroup& worked) {
  const DeclaredJob& declared = worked.declared;
  const Groups& groups = worked.joints;
  const PartLengths lengths(declared);
  const Turns& turns = worked.turns;
  const EndPlays plays = find_end_plays(declared, groups, turns, lengths);
  std::vector<Finding> findings;
  std::set<std::set<std::pair<Subject, Subject>>> told;
  for (const EndPlay& play : plays.captured) {
    const OccurrenceId part = main_part(declared, groups, play.group);
    const EndPlayCase found{declared, groups, play, part, main_part(declared, groups, play.ground)};
    const auto add = [&](Finding finding) {
      leave_neighbours_open(
          declared, declared.look->seats.centre_lines[play.centre_line].occurrences, finding);
      leave_missing_open(declared, finding);
      findings.push_back(std::move(finding));
    };
    const std::vector<Want> wants = wants_of(declared, groups, play);
    if (!wants.empty()) {
      told.insert(lengths_of(play));
    }
    for (const Want& want : wants) {
      add(judge_end_play(found, want.limits, want.line));
    }
    // Two groups that float one behind the other have one play between them.
    if (wants.empty() && worth_telling(declared, groups, turns, play) &&
        (!play.closed || told.insert(lengths_of(play)).second)) {
      add(tell_end_play(found, plays.captured.size() <= kMostDrawn ? Draw::yes : Draw::no));
    }
  }
  std::vector<Finding> unmet = unmet_wants(declared, groups, plays);
  std::move(unmet.begin(), unmet.end(), std::back_inserter(findings));
  return findings;
}

}  // namespace spotblue
