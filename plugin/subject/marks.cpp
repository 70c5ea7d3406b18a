#include "plugin/subject/marks.hpp"

#include <algorithm>
#include <string>

namespace spotblue::plugin {
namespace {

template <typename Key>
void worsen(std::map<Key, Mark>& marks, const Key& key, Mark mark) {
  const auto [known, is_new] = marks.emplace(key, mark);
  if (!is_new) {
    known->second = std::max(known->second, mark);
  }
}

Mark mark_of(Outcome outcome) {
  switch (outcome) {
    case Outcome::conforming:
      return Mark::conforming;
    case Outcome::nonconforming:
      return Mark::nonconforming;
    case Outcome::undecided:
      break;
  }
  return Mark::undecided;
}

void mark_findings(const Subject& subject, Marks& marks) {
  const Model& model = subject.result.look.model;
  for (const Finding& finding : subject.result.findings) {
    for (const Reference& about : finding.about) {
      if (const auto feature = find_feature(model, about.name)) {
        worsen(marks.features, {feature->product, feature->kind, feature->index},
               mark_of(finding.outcome));
      } else if (const auto part = find_product(model, about.name);
                 part && finding.kind == "foul") {
        worsen(marks.parts, *part, mark_of(finding.outcome));
      }
    }
  }
}

void mark_seats(const Subject& subject, Marks& marks) {
  const Look& look = subject.result.look;
  const auto mark = [&](const FeatureRef& feature) {
    worsen(marks.features,
           {look.model.occurrences[feature.occurrence].product, feature.kind, feature.index},
           Mark::seat);
  };
  const auto mark_both = [&](const auto& seats, auto one, auto other) {
    for (const auto& seat : seats) {
      mark(seat.*one);
      mark(seat.*other);
    }
  };
  mark_both(look.seats.radial, &RadialSeat::hole, &RadialSeat::shaft);
  mark_both(look.seats.axial, &AxialSeat::a, &AxialSeat::b);
  mark_both(look.seats.taper, &TaperSeat::hole, &TaperSeat::shaft);
  mark_both(look.seats.width, &WidthSeat::slot, &WidthSeat::key);
  mark_both(look.seats.threads, &Thread::hole, &Thread::screw);
  for (const Foul& foul : look.fouls.found) {
    worsen(marks.parts, look.model.occurrences[foul.a].product, Mark::nonconforming);
    worsen(marks.parts, look.model.occurrences[foul.b].product, Mark::nonconforming);
  }
}

}  // namespace

std::string_view mark_name(Mark mark) {
  switch (mark) {
    case Mark::seat:
      return "seat";
    case Mark::conforming:
      return "conforming";
    case Mark::nonconforming:
      return "nonconforming";
    case Mark::undecided:
      break;
  }
  return "undecided";
}

Quantity_Color mark_colour(Mark mark) {
  const char* hex = mark == Mark::seat            ? "#56B4E9"
                    : mark == Mark::conforming    ? "#0072B2"
                    : mark == Mark::nonconforming ? "#D55E00"
                                                  : "#E69F00";
  Quantity_Color colour;
  Quantity_Color::ColorFromHex(hex, colour);
  return colour;
}

Marks marks_of(const Subject& subject) {
  Marks marks;
  if (subject.checked) {
    mark_findings(subject, marks);
  } else {
    mark_seats(subject, marks);
  }
  return marks;
}

}  // namespace spotblue::plugin
