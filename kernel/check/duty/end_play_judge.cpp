#include "check/duty/end_play_judge.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "check/words/words.hpp"
#include "group/words/said_cautions.hpp"
#include "group/words/size_text.hpp"
#include "spotblue/mechanics/play_draw.hpp"

namespace spotblue {
namespace {

constexpr std::string_view kFormula =
    "play = lengths that open it less lengths that close it, worst case of all";

std::string members_text(const EndPlayCase& found) {
  const auto& group_of = found.groups.moves_with;
  std::string text = found.declared.names.id_of(found.part);
  std::size_t more = 0;
  for (OccurrenceId part; part < group_of.size(); ++part) {
    if (group_of[part] == found.play.of && part != found.part) {
      text += more < 7 ? ", " + found.declared.names.id_of(part) : "";
      ++more;
    }
  }
  return more > 7 ? text + fmt::format(" and {} more", more - 7) : text;
}

// "Wheel: face 55 @ 40 by Keeper: face 48 @ 0", through whatever floats between.
std::string stop_text(const EndPlayCase& found, const std::vector<AxialStop>& stops,
                      FeatureRef AxialStop::*moving, FeatureRef AxialStop::*standing) {
  std::string text;
  for (const AxialStop& stop : stops) {
    text += fmt::format("{}{} by {}", text.empty() ? "" : ", ",
                        found.declared.names.id_of(stop.*moving),
                        found.declared.names.id_of(stop.*standing));
  }
  return text;
}

// "+ 42.8 mm Stud: face 28.97 to face 27.97: 42.798 to 42.802 mm, as found".
std::string length_text(const StackLength& length, LengthUnit unit) {
  return fmt::format("{} {} {} {}: {}, {}", length.dimension.sense == StackSense::opens ? "+" : "-",
                     format_size(length.dimension.nominal, unit), unit_name(unit),
                     length.dimension.name, range_text(length.dimension.limits, unit), length.how);
}

// The net of all stops does not always go together: told of the loop, which may be another's.
void add_tight(const EndPlayCase& found, Finding& finding) {
  const RelativePlay& play = found.play.play;
  if (play.go_together == GoTogether::always || !play.lacking) {
    return;
  }
  std::string faces;
  for (const std::size_t stop : play.tight) {
    const AxialStop& one = found.play.net->stops[stop].stop;
    faces += fmt::format("{}{} on {}", faces.empty() ? "" : ", ", found.declared.names.id_of(one.a),
                         found.declared.names.id_of(one.b));
  }
  finding.found.push_back(
      {"does_not_go_together",
       fmt::format("{}: {} lacks up to {}",
                   play.go_together == GoTogether::never ? "whatever the lengths are"
                                                         : "at some lengths within their limits",
                   faces, spotblue::length_text(*play.lacking, found.declared.job->unit))});
}

void add_stack(const EndPlayCase& found, Finding& finding) {
  const LengthUnit unit = found.declared.job->unit;
  const BodyPlay& play = found.play;
  add_range(finding.found, "end_play", *play.play.worst);
  add_range(finding.found, "root_sum_square", *play.play.root_sum_square);
  if (play.warm) {
    add_range(finding.found, "warm", *play.warm);
  } else if (!play.warm_unknown.empty()) {
    finding.found.push_back({"warm", "not known: no material for " + play.warm_unknown});
  }
  int number = 0;
  for (const StackLength& length : play.lengths) {
    finding.found.push_back({fmt::format("length_{}", ++number), length_text(length, unit)});
  }
  add_tight(found, finding);
}

void add_draw(const BodyPlay& play, Limits wanted, bool judged, Finding& finding) {
  const StackDraw draw;
  const PlayOutcome drawn = draw_plays(play.net->bench, play.net->body_of(play.of),
                                       play.net->body_of(play.on), wanted, draw);
  if (!drawn.plays) {
    finding.found.push_back({"by_lot", "no set of parts goes together"});
    return;
  }
  add_range(finding.found, "by_lot", {drawn.plays->low, drawn.plays->high});
  if (judged) {
    finding.found.push_back(
        {"by_lot_outside",
         fmt::format("{:.2f} % of {} loops under, {:.2f} % over", 100.0 * drawn.plays->share_below,
                     draw.samples, 100.0 * drawn.plays->share_above)});
  }
}

// A cone that seats the group on another part: it may stop it before any plane face does.
std::string cones_text(const EndPlayCase& found) {
  std::string text;
  for (const TaperSeat& seat : found.declared.look->seats.taper) {
    const bool hole = found.groups.moves_with[seat.hole.occurrence] == found.play.of;
    const bool shaft = found.groups.moves_with[seat.shaft.occurrence] == found.play.of;
    if (hole != shaft) {
      text += fmt::format("{}{} in {}", text.empty() ? "" : ", ",
                          found.declared.names.id_of(seat.shaft),
                          found.declared.names.id_of(seat.hole));
    }
  }
  return text;
}

Finding describe(const EndPlayCase& found) {
  const BodyPlay& play = found.play;
  const DeclaredJob& declared = found.declared;
  Finding finding;
  finding.kind = "end play";
  finding.about = {declared.names.reference(found.part),
                   declared.names.reference(play.back.front().a),
                   declared.names.reference(play.ahead.front().b)};
  finding.found = {{"moves", members_text(found)},
                   {play.on_stands ? "stands" : "plays_on", declared.names.id_of(found.on_part)},
                   {"as_modelled", millimetres(travel_mm(play.back) + travel_mm(play.ahead))},
                   {"stopped_back", stop_text(found, play.back, &AxialStop::b, &AxialStop::a)},
                   {"back", millimetres(travel_mm(play.back))},
                   {"stopped_ahead", stop_text(found, play.ahead, &AxialStop::a, &AxialStop::b)},
                   {"ahead", millimetres(travel_mm(play.ahead))}};
  if (play.carrier) {
    const std::string carrier =
        declared.names.id_of(main_part(declared, found.groups, *play.carrier));
    finding.found.push_back(
        {"carried_by", fmt::format("{0}, whose own play counts too; on = \"{0}\" in [[wants]] asks "
                                   "for the play on it",
                                   carrier)});
  }
  if (const std::string cones = cones_text(found); !cones.empty()) {
    finding.found.push_back({"not_seen", "the cone " + cones + " may stop it before"});
  }
  return finding;
}

// As it is modelled the group may stand in what should stop it.
std::string overlap_text(const EndPlayCase& found) {
  const Length same = Length::mm(found.declared.look->settings.seats.same_length_mm);
  std::string text;
  for (const auto* stops : {&found.play.back, &found.play.ahead}) {
    for (const AxialStop& stop : *stops) {
      const Length gap = Length::mm(stop.gap);
      if (gap < -same) {
        text += fmt::format("{} overlaps {} by {} as modelled: move it; ",
                            found.declared.names.id_of(stop.a), found.declared.names.id_of(stop.b),
                            spotblue::length_text(-gap, found.declared.job->unit));
      }
    }
  }
  return text;
}

// The standards that the lengths lean on, and what was taken for granted.
std::string lengths_basis(const BodyPlay& play) {
  const auto any = [&play](LengthSource source) {
    return std::any_of(play.lengths.begin(), play.lengths.end(),
                       [source](const StackLength& length) { return length.source == source; });
  };
  std::string basis(kFormula);
  basis += any(LengthSource::general_tolerance) ? "; ISO 2768-1:1989, table 1" : "";
  basis += any(LengthSource::as_set) ? "; a joint without a stop is as it was set" : "";
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

std::string closer_text(const EndPlayCase& found, Limits wanted) {
  const LengthUnit unit = found.declared.job->unit;
  const StackLength* const widest = widest_of(found.play);
  if (widest == nullptr) {
    return "measure the play";
  }
  const auto room = room_for(found.play, *widest, wanted);
  if (widest->to_make && room) {
    return fmt::format("make {} {}: it takes up the most", widest->dimension.name,
                       range_text(*room, unit));
  }
  const std::string_view verb = widest->to_make ? "hold" : "measure";
  return fmt::format("{} {} closer than {}: it takes up the most{}", verb, widest->dimension.name,
                     range_text(widest->dimension.limits, unit),
                     room ? "" : "; the others alone take up more than the limits leave");
}

std::string mend_text(const EndPlayCase& found, Limits wanted) {
  const LengthUnit unit = found.declared.job->unit;
  for (const StackLength& length : found.play.lengths) {
    if (!length.to_make || !length.of_one_part) {
      continue;
    }
    const auto room = room_for(found.play, length, wanted);
    if (room && room->lower > Length()) {
      return fmt::format("make {} {}", length.dimension.name, range_text(*room, unit));
    }
  }
  const Limits& worst = *found.play.play.worst;
  if (worst.upper < wanted.lower) {
    return fmt::format("take {} off a face of the loop that may be cut, or a shim less",
                       length_text(wanted.lower - worst.upper, unit));
  }
  return fmt::format("take up {} with a washer or shim, or a longer part",
                     length_text(worst.lower - wanted.upper, unit));
}

// What stands against calling it conforming although the numbers at the bench are inside.
std::string doubt_of(const EndPlayCase& found) {
  const BodyPlay& play = found.play;
  if (const std::string cones = cones_text(found); !cones.empty()) {
    return fmt::format("the cone {} may stop it before a plane face does: measure the play", cones);
  }
  if (play.play.go_together == GoTogether::never) {
    return "these parts do not go together as they are sized: see what is lacking, and measure it";
  }
  for (const StackLength& length : play.lengths) {
    if (length.source == LengthSource::assumed) {
      return fmt::format("give limits for {} in [[lengths]]", length.dimension.name);
    }
  }
  if (!play.warm_unknown.empty()) {
    return fmt::format("say what {} is made of: the play when warm is not known",
                       play.warm_unknown);
  }
  return {};
}

bool binds_warm(const BodyPlay& play) { return play.warm && play.warm->lower < Length(); }

void decide(const EndPlayCase& found, Limits wanted, Finding& finding) {
  const Length same = Length::mm(found.declared.look->settings.seats.same_length_mm);
  const BodyPlay& play = found.play;
  finding.outcome = judge(*play.play.worst, {wanted.lower - same, wanted.upper + same});
  const std::string doubt = doubt_of(found);
  if (finding.outcome == Outcome::nonconforming) {
    finding.advice = mend_text(found, wanted);
  } else if (finding.outcome == Outcome::undecided) {
    const bool likely = judge(*play.play.root_sum_square, wanted) == Outcome::conforming;
    finding.advice = closer_text(found, wanted) +
                     (likely ? "; most sets of parts would do, the worst would not" : "");
  } else if (binds_warm(play)) {
    finding.outcome = play.warm->upper < Length() ? Outcome::nonconforming : Outcome::undecided;
    finding.advice =
        "right at the bench, but it binds when warm: leave more play, or match the "
        "materials";
  } else if (!doubt.empty()) {
    finding.outcome = Outcome::undecided;
    finding.advice = doubt;
  } else {
    finding.advice = "leave it as it is";
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
    finding.found.push_back({"loop", "not told: too many stops could end it"});
    finding.advice = "join in [[joins]] what is held to each other, or measure the play";
    return true;
  }
  finding.found.push_back({"loop", "not closed"});
  finding.advice =
      "no chain of touching faces leads round the loop: say in [[wants]] which faces touch, or in "
      "[[joins]] what is held to what, or measure the play";
  return true;
}

}  // namespace

Finding judge_end_play(const EndPlayCase& found, Limits wanted, std::optional<int> line) {
  Finding finding = describe(found);
  add_range(finding.wanted, "end_play", wanted);
  finding.basis = "end play wanted" + from_line(line);
  if (lengths_missing(found.play, finding)) {
    return finding;
  }
  add_stack(found, finding);
  add_draw(found.play, wanted, true, finding);
  finding.margin = {{"end_play", measure(margin(*found.play.play.worst, wanted))}};
  finding.basis += fmt::format("{}; {}", lengths_basis(found.play), kIso14253);
  decide(found, wanted, finding);
  return finding;
}

Finding tell_end_play(const EndPlayCase& found, Draw draw) {
  Finding finding = describe(found);
  finding.outcome = Outcome::undecided;
  finding.basis = "no end play declared";
  if (lengths_missing(found.play, finding)) {
    return finding;
  }
  const LengthUnit unit = found.declared.job->unit;
  const Limits& worst = *found.play.play.worst;
  add_stack(found, finding);
  if (draw == Draw::yes) {
    add_draw(found.play, worst, false, finding);
  }
  finding.basis += lengths_basis(found.play);
  const StackLength* const widest = widest_of(found.play);
  finding.advice =
      overlap_text(found) +
      fmt::format(
          "{} can move {} to {} along its axis{}; say in [[wants]] what end play is wanted of it",
          found.declared.names.id_of(found.part), length_text(worst.lower, unit),
          length_text(worst.upper, unit),
          widest == nullptr ? std::string()
                            : fmt::format("; most of that is open in {}", widest->dimension.name));
  if (binds_warm(found.play)) {
    finding.caution = said::kBindCaution;
  }
  return finding;
}

}  // namespace spotblue
