#include "check/duty/end_play_judge.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "check/words/words.hpp"
#include "group/words/at_line.hpp"
#include "group/words/said.hpp"
#include "group/words/said_cautions.hpp"
#include "group/words/said_end_play.hpp"
#include "group/words/said_fits.hpp"
#include "group/words/said_unseen.hpp"
#include "spotblue/mechanics/play_draw.hpp"

namespace spotblue {
namespace {

Saying members(const EndPlayCase& found) {
  const auto& group_of = found.groups.moves_with;
  Saying told = say(said::kPartNamed, found.declared.names.reference(found.part));
  std::size_t more = 0;
  for (OccurrenceId part; part < group_of.size(); ++part) {
    if (group_of[part] == found.play.of && part != found.part) {
      if (more < 7) {
        told += say(said::kPartNamed, found.declared.names.reference(part));
      }
      ++more;
    }
  }
  return more > 7 ? told + say(said::kAndMore, more - 7) : told;
}

// "Wheel: face 55 @ 40 by Keeper: face 48 @ 0", through whatever floats between.
Saying stop_told(const EndPlayCase& found, const std::vector<AxialStop>& stops,
                 FeatureRef AxialStop::*moving, FeatureRef AxialStop::*standing) {
  Saying told;
  for (const AxialStop& stop : stops) {
    told += say(said::kStopBy, found.declared.names.reference(stop.*moving),
                found.declared.names.reference(stop.*standing));
  }
  return told;
}

// "+ 42.8 mm Stud: face 28.97 to face 27.97: 42.798 to 42.802 mm, as found".
Saying length_told(const StackLength& length) {
  return say(length.dimension.sense == StackSense::opens ? said::kOpensBy : said::kClosesPlayBy,
             DrawnSize{length.dimension.nominal}, Reference(length.dimension.name),
             length.dimension.limits, length.how);
}

// The net of all stops does not always go together: told of the loop, which may be another's.
void add_tight(const EndPlayCase& found, Finding& finding) {
  const RelativePlay& play = found.play.play;
  if (play.go_together == GoTogether::always || !play.lacking) {
    return;
  }
  Saying faces;
  for (const std::size_t stop : play.tight) {
    const AxialStop& one = found.play.net->stops[stop].stop;
    faces += say(said::kStopOn, found.declared.names.reference(one.a),
                 found.declared.names.reference(one.b));
  }
  finding.found.push_back(
      {"does_not_go_together",
       say(play.go_together == GoTogether::never ? said::kLacksAlways : said::kLacksAtSome, faces,
           *play.lacking)});
}

void add_stack(const EndPlayCase& found, Finding& finding) {
  const BodyPlay& play = found.play;
  add_range(finding.found, "end_play", *play.play.worst);
  add_range(finding.found, "root_sum_square", *play.play.root_sum_square);
  if (play.warm) {
    add_range(finding.found, "warm", *play.warm);
  } else if (!play.warm_unknown.empty()) {
    finding.found.push_back({"warm", say(said::kWarmNotKnown, play.warm_unknown)});
  }
  int number = 0;
  for (const StackLength& length : play.lengths) {
    finding.found.push_back({fmt::format("length_{}", ++number), length_told(length)});
  }
  add_tight(found, finding);
}

void add_draw(const BodyPlay& play, Limits wanted, bool judged, Finding& finding) {
  const StackDraw draw;
  const PlayOutcome drawn = draw_plays(play.net->bench, play.net->body_of(play.of),
                                       play.net->body_of(play.on), wanted, draw);
  if (!drawn.plays) {
    finding.found.push_back({"by_lot", said::kNoSetTogether});
    return;
  }
  add_range(finding.found, "by_lot", {drawn.plays->low, drawn.plays->high});
  if (judged) {
    finding.found.push_back({"by_lot_outside", say(said::kDrawnOutside, draw.samples,
                                                   Figure{100.0 * drawn.plays->share_below, 2},
                                                   Figure{100.0 * drawn.plays->share_above, 2})});
  }
}

// A cone that seats the group on another part: it may stop it before any plane face does.
Saying cones(const EndPlayCase& found) {
  Saying told;
  for (const TaperSeat& seat : found.declared.look->seats.taper) {
    const bool hole = found.groups.moves_with[seat.hole.occurrence] == found.play.of;
    const bool shaft = found.groups.moves_with[seat.shaft.occurrence] == found.play.of;
    if (hole != shaft) {
      told += say(said::kConeIn, found.declared.names.reference(seat.shaft),
                  found.declared.names.reference(seat.hole));
    }
  }
  return told;
}

Finding describe(const EndPlayCase& found) {
  const BodyPlay& play = found.play;
  const DeclaredJob& declared = found.declared;
  Finding finding;
  finding.kind = "end play";
  finding.about = {declared.names.reference(found.part),
                   declared.names.reference(play.back.front().a),
                   declared.names.reference(play.ahead.front().b)};
  finding.found = {{"moves", members(found)},
                   {play.on_stands ? "stands" : "plays_on",
                    say(said::kPartNamed, declared.names.reference(found.on_part))},
                   {"as_modelled", millimetres(travel_mm(play.back) + travel_mm(play.ahead))},
                   {"stopped_back", stop_told(found, play.back, &AxialStop::b, &AxialStop::a)},
                   {"back", millimetres(travel_mm(play.back))},
                   {"stopped_ahead", stop_told(found, play.ahead, &AxialStop::a, &AxialStop::b)},
                   {"ahead", millimetres(travel_mm(play.ahead))}};
  if (play.carrier) {
    const Reference carrier =
        declared.names.reference(main_part(declared, found.groups, *play.carrier));
    finding.found.push_back({"carried_by", say(said::kCarriedBy, carrier, carrier)});
  }
  if (const Saying seated = cones(found); !seated.empty()) {
    finding.found.push_back({"not_seen", say(said::kConeMayStop, seated)});
  }
  return finding;
}

// As it is modelled the group may stand in what should stop it.
Saying overlaps(const EndPlayCase& found) {
  const Length same = Length::mm(found.declared.look->settings.seats.same_length_mm);
  Saying told;
  for (const auto* stops : {&found.play.back, &found.play.ahead}) {
    for (const AxialStop& stop : *stops) {
      const Length gap = Length::mm(stop.gap);
      if (gap < -same) {
        told += say(said::kOverlapsAsModelled, found.declared.names.reference(stop.a),
                    found.declared.names.reference(stop.b), -gap);
      }
    }
  }
  return told;
}

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
    if (room && room->lower > Length()) {
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
  if (const Saying seated = cones(found); !seated.empty()) {
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

bool binds_warm(const BodyPlay& play) { return play.warm && play.warm->lower < Length(); }

void decide(const EndPlayCase& found, Limits wanted, Finding& finding) {
  const Length same = Length::mm(found.declared.look->settings.seats.same_length_mm);
  const BodyPlay& play = found.play;
  finding.outcome = judge(*play.play.worst, {wanted.lower - same, wanted.upper + same});
  const Saying doubt = doubt_of(found);
  if (finding.outcome == Outcome::nonconforming) {
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

Finding judge_end_play(const EndPlayCase& found, Limits wanted, std::optional<int> line) {
  Finding finding = describe(found);
  add_range(finding.wanted, "end_play", wanted);
  finding.basis = say(said::kEndPlayWanted, at_line(line));
  if (lengths_missing(found.play, finding)) {
    return finding;
  }
  add_stack(found, finding);
  add_draw(found.play, wanted, true, finding);
  finding.margin = {{"end_play", measure(margin(*found.play.play.worst, wanted))}};
  finding.basis += lengths_basis(found.play) + said::kJudgedByStandard;
  decide(found, wanted, finding);
  return finding;
}

Finding tell_end_play(const EndPlayCase& found, Draw draw) {
  Finding finding = describe(found);
  finding.outcome = Outcome::undecided;
  finding.basis = said::kNoEndPlayDeclared;
  if (lengths_missing(found.play, finding)) {
    return finding;
  }
  const Limits& worst = *found.play.play.worst;
  add_stack(found, finding);
  if (draw == Draw::yes) {
    add_draw(found.play, worst, false, finding);
  }
  finding.basis += lengths_basis(found.play);
  const StackLength* const widest = widest_of(found.play);
  finding.advice =
      overlaps(found) +
      (widest == nullptr ? say(said::kCanMove, found.declared.names.reference(found.part), worst)
                         : say(said::kCanMoveMostly, found.declared.names.reference(found.part),
                               worst, Reference(widest->dimension.name)));
  if (binds_warm(found.play)) {
    finding.caution = said::kBindCaution;
  }
  return finding;
}

}  // namespace spotblue
