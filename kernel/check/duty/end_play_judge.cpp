#include "check/duty/end_play_judge.hpp"

#include <algorithm>

#include "check/duty/end_play_told.hpp"
#include "check/words/words.hpp"
#include "group/joints/part_material.hpp"
#include "group/words/at_line.hpp"
#include "group/words/said.hpp"
#include "group/words/said_cautions.hpp"
#include "group/words/said_end_play.hpp"
#include "group/words/said_fits.hpp"

namespace spotblue {
namespace {

// The standards that the lengths lean on, and what was taken for granted.
Saying lengths_basis(const BodyPlay& play) {
  const auto any = [&play](LengthSource source) {
    return std::any_of(play.lengths.begin(), play.lengths.end(),
                       [source](const StackLength& length) { return length.source == source; });
  };
  Saying basis = said::kPlayFormula;
  if (any(LengthSource::general_tolerance)) {
    basis += said::kGeneralTolerances;
  }
  if (any(LengthSource::as_set)) {
    basis += said::kJointAsSet;
  }
  return basis;
}

// Nothing where all lengths of the loop cancel.
const StackLength* widest_of(const BodyPlay& play) {
  const auto widest = std::max_element(
      play.lengths.begin(), play.lengths.end(), [](const StackLength& a, const StackLength& b) {
        return a.dimension.limits.width() < b.dimension.limits.width();
      });
  return widest == play.lengths.end() ? nullptr : &*widest;
}

Saying closer(const EndPlayCase& found, Limits wanted) {
  const StackLength* const widest = widest_of(found.play);
  if (widest == nullptr) {
    return said::kMeasurePlay;
  }
  const auto room = room_for(found.play, *widest, wanted);
  const Reference length(widest->dimension.name);
  if (room && !leaves_room(*room)) {
    return say(said::kNothingLeftFor, length, 0.5 * (room->lower + room->upper));
  }
  if (widest->to_make && room) {
    return say(said::kMakeLengthMost, length, *room);
  }
  const Saying told = say(widest->to_make ? said::kHoldCloser : said::kMeasureLengthCloser, length,
                          widest->dimension.limits);
  return room ? told : told + said::kOthersTakeMore;
}

Saying mending(const EndPlayCase& found, Limits wanted) {
  for (const StackLength& length : found.play.lengths) {
    if (!length.to_make || !length.of_one_part) {
      continue;
    }
    const auto room = room_for(found.play, length, wanted);
    if (room && room->lower > Length() && leaves_room(*room)) {
      return say(said::kMakeLength, Reference(length.dimension.name), *room);
    }
  }
  const Limits& worst = *found.play.play.worst;
  if (worst.upper < wanted.lower) {
    return say(said::kTakeOffLoop, wanted.lower - worst.upper);
  }
  return say(said::kTakeUpLoop, worst.lower - wanted.upper);
}

// What stands against calling it conforming although the numbers at the bench are inside.
Saying doubt_of(const EndPlayCase& found) {
  const BodyPlay& play = found.play;
  if (const Saying seated = cones_that_seat(found); !seated.empty()) {
    return say(said::kConeDoubt, seated);
  }
  if (play.play.go_together == GoTogether::never) {
    return said::kDoNotGoTogether;
  }
  for (const StackLength& length : play.lengths) {
    if (length.source == LengthSource::assumed) {
      return say(said::kGiveLimits, Reference(length.dimension.name));
    }
  }
  if (!play.warm_unknown.empty()) {
    return say(said::kSayMaterialForPlay, play.warm_unknown);
  }
  return {};
}

// What a soft part in the loop leaves open, whatever the play comes out as.
Saying softness_open(const EndPlayCase& found) {
  for (const StackLength& length : found.play.lengths) {
    if (length.source == LengthSource::soft) {
      return say(said::kSaySoftness, softness_missing(found.declared, length.part),
                 found.declared.names.reference(length.part));
    }
  }
  return {};
}

bool binds_warm(const BodyPlay& play) { return play.warm && play.warm->lower < Length(); }

void decide(const EndPlayCase& found, Limits wanted, Finding& finding) {
  const Length same = Length::mm(found.declared.look->settings.seats.same_length_mm);
  const BodyPlay& play = found.play;
  finding.outcome = judge(*play.play.worst, {wanted.lower - same, wanted.upper + same});
  const Saying doubt = doubt_of(found);
  if (const Saying soft = softness_open(found); !soft.empty()) {
    finding.outcome = Outcome::undecided;
    finding.advice = soft;
  } else if (finding.outcome == Outcome::nonconforming) {
    finding.advice = mending(found, wanted);
  } else if (finding.outcome == Outcome::undecided) {
    const bool likely = judge(*play.play.root_sum_square, wanted) == Outcome::conforming;
    finding.advice = closer(found, wanted) + (likely ? Saying(said::kMostSetsDo) : Saying());
  } else if (binds_warm(play)) {
    finding.outcome = play.warm->upper < Length() ? Outcome::nonconforming : Outcome::undecided;
    finding.advice = said::kBindsWarm;
  } else if (!doubt.empty()) {
    finding.outcome = Outcome::undecided;
    finding.advice = doubt;
  } else {
    finding.advice = said::kLeaveAsItIs;
  }
  finding.caution = binds_warm(play) ? Saying(said::kBindCaution) : Saying();
}

// Why the loop's lengths say nothing; whether they do is told.
bool lengths_missing(const BodyPlay& play, Finding& finding) {
  if (play.closed && play.play.worst) {
    return false;
  }
  finding.outcome = Outcome::undecided;
  if (!play.play.settled) {
    finding.found.push_back({"loop", said::kTooManyStops});
    finding.advice = said::kJoinOrMeasure;
    return true;
  }
  finding.found.push_back({"loop", said::kLoopNotClosed});
  finding.advice = said::kNoChainRound;
  return true;
}

}  // namespace

Finding judge_end_play(const EndPlayCase& found, Limits wanted,
                       const std::optional<JobLine>& line) {
  Finding finding = end_play_described(found);
  add_range(finding.wanted, "end_play", wanted);
  finding.basis = say(said::kEndPlayWanted, at_line(line));
  if (lengths_missing(found.play, finding)) {
    return finding;
  }
  add_play_stack(found, finding);
  add_play_draw(found.play, wanted, true, finding);
  finding.margin = {{"end_play", measure(margin(*found.play.play.worst, wanted))}};
  finding.basis += lengths_basis(found.play) + said::kJudgedByStandard;
  decide(found, wanted, finding);
  return finding;
}

Finding tell_end_play(const EndPlayCase& found, Draw draw) {
  Finding finding = end_play_described(found);
  finding.outcome = Outcome::undecided;
  finding.basis = said::kNoEndPlayDeclared;
  if (lengths_missing(found.play, finding)) {
    return finding;
  }
  const Limits& worst = *found.play.play.worst;
  add_play_stack(found, finding);
  if (draw == Draw::yes) {
    add_play_draw(found.play, worst, false, finding);
  }
  finding.basis += lengths_basis(found.play);
  const StackLength* const widest = widest_of(found.play);
  finding.advice =
      overlaps_as_modelled(found) +
      (widest == nullptr ? say(said::kCanMove, found.declared.names.reference(found.part), worst)
                         : say(said::kCanMoveMostly, found.declared.names.reference(found.part),
                               worst, Reference(widest->dimension.name)));
  if (binds_warm(found.play)) {
    finding.caution = said::kBindCaution;
  }
  return finding;
}

}  // namespace spotblue
