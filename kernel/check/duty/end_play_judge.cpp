#include "check/duty/end_play_judge.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "check/words/words.hpp"
#include "group/words/said_cautions.hpp"
#include "group/words/size_text.hpp"
#include "spotblue/mechanics/stack_draw.hpp"

namespace spotblue {
namespace {

constexpr std::string_view kFormula =
    "play = lengths that open it less lengths that close it, worst case of all";

std::string members_text(const EndPlayCase& found) {
  const auto& group_of = found.groups.moves_with;
  std::string text = found.declared.names.id_of(found.part);
  std::size_t more = 0;
  for (OccurrenceId part; part < group_of.size(); ++part) {
    if (group_of[part] == found.play.group && part != found.part) {
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

void add_stack(const EndPlayCase& found, const EndPlayStack& stack, Finding& finding) {
  const LengthUnit unit = found.declared.job->unit;
  add_range(finding.found, "end_play", stack.worst);
  add_range(finding.found, "root_sum_square", stack.root_sum_square);
  if (stack.warm) {
    add_range(finding.found, "warm", *stack.warm);
  } else if (!stack.warm_unknown.empty()) {
    finding.found.push_back({"warm", "not known: no material for " + stack.warm_unknown});
  }
  int number = 0;
  for (const StackLength& length : stack.lengths) {
    finding.found.push_back({fmt::format("length_{}", ++number), length_text(length, unit)});
  }
}

void add_draw(const EndPlayStack& stack, Limits wanted, bool judged, Finding& finding) {
  const StackDraw draw;
  const StackOutcome drawn = draw_gaps(dimensions_of(stack), wanted, draw);
  add_range(finding.found, "by_lot", {drawn.low, drawn.high});
  if (judged) {
    finding.found.push_back(
        {"by_lot_outside",
         fmt::format("{:.2f} % of {} loops under, {:.2f} % over", 100.0 * drawn.share_below,
                     draw.samples, 100.0 * drawn.share_above)});
  }
}

// A cone that seats the group on another part: it may stop it before any plane face does.
std::string cones_text(const EndPlayCase& found) {
  std::string text;
  for (const TaperSeat& seat : found.declared.look->seats.taper) {
    const bool hole = found.groups.moves_with[seat.hole.occurrence] == found.play.group;
    const bool shaft = found.groups.moves_with[seat.shaft.occurrence] == found.play.group;
    if (hole != shaft) {
      text += fmt::format("{}{} in {}", text.empty() ? "" : ", ",
                          found.declared.names.id_of(seat.shaft),
                          found.declared.names.id_of(seat.hole));
    }
  }
  return text;
}

Finding describe(const EndPlayCase& found) {
  const EndPlay& play = found.play;
  const DeclaredJob& declared = found.declared;
  Finding finding;
  finding.kind = "end play";
  finding.about = {declared.names.reference(found.part),
                   declared.names.reference(play.back.front().a),
                   declared.names.reference(play.ahead.front().b)};
  finding.found = {{"moves", members_text(found)},
                   {"stands", declared.names.id_of(found.ground_part)},
                   {"as_modelled", millimetres(travel_mm(play.back) + travel_mm(play.ahead))},
                   {"stopped_back", stop_text(found, play.back, &AxialStop::b, &AxialStop::a)},
                   {"back", millimetres(travel_mm(play.back))},
                   {"stopped_ahead", stop_text(found, play.ahead, &AxialStop::a, &AxialStop::b)},
                   {"ahead", millimetres(travel_mm(play.ahead))}};
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
std::string lengths_basis(const EndPlayStack& stack) {
  const auto any = [&stack](LengthSource source) {
    return std::any_of(stack.lengths.begin(), stack.lengths.end(),
                       [source](const StackLength& length) { return length.source == source; });
  };
  std::string basis(kFormula);
  basis += any(LengthSource::general_tolerance) ? "; ISO 2768-1:1989, table 1" : "";
  basis += any(LengthSource::as_set) ? "; a joint without a stop is as it was set" : "";
  return basis;
}

const StackLength& widest_of(const EndPlayStack& stack) {
  return stack.lengths[widest_dimension(dimensions_of(stack))];
}

std::string closer_text(const EndPlayCase& found, const EndPlayStack& stack, Limits wanted) {
  const LengthUnit unit = found.declared.job->unit;
  const std::vector<StackDimension> loop = dimensions_of(stack);
  const std::size_t widest = widest_dimension(loop);
  const StackLength& length = stack.lengths[widest];
  const Limits room = room_for(stack, widest, wanted);
  const bool some = room.lower <= room.upper;
  if (length.to_make && some) {
    return fmt::format("make {} {}: it takes up the most", length.dimension.name,
                       range_text(room, unit));
  }
  const std::string_view verb = length.to_make ? "hold" : "measure";
  return fmt::format("{} {} closer than {}: it takes up the most{}", verb, length.dimension.name,
                     range_text(length.dimension.limits, unit),
                     some ? "" : "; the others alone take up more than the limits leave");
}

std::string mend_text(const EndPlayCase& found, const EndPlayStack& stack, Limits wanted) {
  const LengthUnit unit = found.declared.job->unit;
  for (std::size_t i = 0; i < stack.lengths.size(); ++i) {
    const Limits room = room_for(stack, i, wanted);
    if (stack.lengths[i].to_make && room.lower <= room.upper && room.lower > Length()) {
      return fmt::format("make {} {}", stack.lengths[i].dimension.name, range_text(room, unit));
    }
  }
  if (stack.worst.upper < wanted.lower) {
    return fmt::format("take {} off a face of the loop that may be cut, or a shim less",
                       length_text(wanted.lower - stack.worst.upper, unit));
  }
  return fmt::format("take up {} with a washer or shim, or a longer part",
                     length_text(stack.worst.lower - wanted.upper, unit));
}

// What stands against calling it conforming although the numbers at the bench are inside.
std::string doubt_of(const EndPlayCase& found, const EndPlayStack& stack) {
  if (const std::string cones = cones_text(found); !cones.empty()) {
    return fmt::format("the cone {} may stop it before a plane face does: measure the play", cones);
  }
  for (const StackLength& length : stack.lengths) {
    if (length.source == LengthSource::assumed) {
      return fmt::format("give limits for {} in [[lengths]]", length.dimension.name);
    }
  }
  if (!stack.warm_unknown.empty()) {
    return fmt::format("say what {} is made of: the play when warm is not known",
                       stack.warm_unknown);
  }
  return {};
}

bool binds_warm(const EndPlayStack& stack) { return stack.warm && stack.warm->lower < Length(); }

void decide(const EndPlayCase& found, const EndPlayStack& stack, Limits wanted, Finding& finding) {
  const Length same = Length::mm(found.declared.look->settings.seats.same_length_mm);
  finding.outcome = judge(stack.worst, {wanted.lower - same, wanted.upper + same});
  const std::string doubt = doubt_of(found, stack);
  if (finding.outcome == Outcome::nonconforming) {
    finding.advice = mend_text(found, stack, wanted);
  } else if (finding.outcome == Outcome::undecided) {
    const bool likely = judge(stack.root_sum_square, wanted) == Outcome::conforming;
    finding.advice = closer_text(found, stack, wanted) +
                     (likely ? "; most sets of parts would do, the worst would not" : "");
  } else if (binds_warm(stack)) {
    finding.outcome = stack.warm->upper < Length() ? Outcome::nonconforming : Outcome::undecided;
    finding.advice =
        "right at the bench, but it binds when warm: leave more play, or match the "
        "materials";
  } else if (!doubt.empty()) {
    finding.outcome = Outcome::undecided;
    finding.advice = doubt;
  } else {
    finding.advice = "leave it as it is";
  }
  finding.caution = binds_warm(stack) ? Saying(said::kBindCaution) : Saying();
}

Finding without_lengths(Finding finding) {
  finding.outcome = Outcome::undecided;
  finding.found.push_back({"loop", "not closed"});
  finding.advice =
      "no chain of touching faces leads round the loop: say in [[wants]] which faces touch, or in "
      "[[joins]] what is held to what, or measure the play";
  return finding;
}

}  // namespace

Finding judge_end_play(const EndPlayCase& found, Limits wanted, std::optional<int> line) {
  Finding finding = describe(found);
  add_range(finding.wanted, "end_play", wanted);
  finding.basis = "end play wanted" + from_line(line);
  if (!found.play.closed) {
    return without_lengths(std::move(finding));
  }
  const EndPlayStack stack = stack_of(found.declared, found.play);
  add_stack(found, stack, finding);
  add_draw(stack, wanted, true, finding);
  finding.margin = {{"end_play", measure(margin(stack.worst, wanted))}};
  finding.basis += fmt::format("; {}; {}", lengths_basis(stack), kIso14253);
  decide(found, stack, wanted, finding);
  return finding;
}

Finding tell_end_play(const EndPlayCase& found, Draw draw) {
  Finding finding = describe(found);
  finding.outcome = Outcome::undecided;
  finding.basis = "no end play declared";
  if (!found.play.closed) {
    return without_lengths(std::move(finding));
  }
  const LengthUnit unit = found.declared.job->unit;
  const EndPlayStack stack = stack_of(found.declared, found.play);
  add_stack(found, stack, finding);
  if (draw == Draw::yes) {
    add_draw(stack, stack.worst, false, finding);
  }
  finding.basis += fmt::format("; {}", lengths_basis(stack));
  const std::string name = found.declared.names.id_of(found.part);
  finding.advice = overlap_text(found) + fmt::format(
                                             "{} can move {} to {} along its axis; most of that is "
                                             "open in {}; say in [[wants]] what end "
                                             "play is wanted of it",
                                             name, length_text(stack.worst.lower, unit),
                                             length_text(stack.worst.upper, unit),
                                             widest_of(stack).dimension.name);
  if (binds_warm(stack)) {
    finding.caution = said::kBindCaution;
  }
  return finding;
}

}  // namespace spotblue
