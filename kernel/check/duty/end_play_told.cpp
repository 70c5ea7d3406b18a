#include "check/duty/end_play_told.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "check/words/words.hpp"
#include "group/words/said.hpp"
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

}  // namespace

Saying cones_that_seat(const EndPlayCase& found) {
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

Finding end_play_described(const EndPlayCase& found) {
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
  if (const Saying seated = cones_that_seat(found); !seated.empty()) {
    finding.found.push_back({"not_seen", say(said::kConeMayStop, seated)});
  }
  return finding;
}

void add_play_stack(const EndPlayCase& found, Finding& finding) {
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

void add_play_draw(const BodyPlay& play, Limits wanted, bool judged, Finding& finding) {
  const StackDraw draw;
  const PlayOutcome drawn = draw_plays(play.net->bench, play.net->body_of(play.of),
                                       play.net->body_of(play.on), wanted, draw);
  if (!drawn.plays) {
    finding.found.push_back({"by_lot", said::kNoSetTogether});
    return;
  }
  // Measured lengths are drawn beyond their limits too: what the worst case leaves out is left out.
  const Limits& worst = *play.play.worst;
  add_range(finding.found, "by_lot",
            {std::max(drawn.plays->low, worst.lower), std::min(drawn.plays->high, worst.upper)});
  if (judged) {
    // What does not go together is too tight.
    const double together = 1.0 - drawn.share_apart;
    const double tight = drawn.share_apart + together * drawn.plays->share_below;
    finding.found.push_back(
        {"by_lot_outside", say(said::kDrawnOutside, draw.samples, Figure{100.0 * tight, 2},
                               Figure{100.0 * together * drawn.plays->share_above, 2})});
  }
  if (drawn.share_apart > 0.0) {
    finding.found.push_back(
        {"by_lot_apart", say(said::kDrawnApart, Figure{100.0 * drawn.share_apart, 2})});
  }
}

Saying overlaps_as_modelled(const EndPlayCase& found) {
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

}  // namespace spotblue
