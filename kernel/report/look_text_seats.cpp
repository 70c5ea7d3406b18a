#include "report/look_text_seats.hpp"

#include <fmt/format.h>

#include <cmath>
#include <map>
#include <numbers>

#include "group/match/names.hpp"
#include "report/text_table.hpp"
#include "report/text_words.hpp"
#include "spotblue/base/angle.hpp"
#include "spotblue/job/feature_name.hpp"

namespace spotblue {
namespace {

constexpr std::size_t kNamesShown = 4;  // occurrences named in a heading before "and 12 more"

struct LineSeats {
  std::vector<const RadialSeat*> radial;
  std::vector<const AxialSeat*> axial;
  std::vector<const TaperSeat*> taper;
  std::vector<const Thread*> threads;
};

std::string clearance_word(double clearance, double same) {
  return clearance > same ? "clearance" : clearance < -same ? "interference" : "line to line";
}

std::string gap_word(double gap, double same) {
  return gap > same ? "gap" : gap < -same ? "overlap" : "touching";
}

std::string radial_remark(const RadialSeat& seat, LengthUnit unit) {
  std::string remark;
  const auto say = [&remark](const std::string& words) {
    remark += (remark.empty() ? "" : ", ") + words;
  };
  if (seat.worn) {
    say(fmt::format("worn: {} to {}", length_cell(seat.worn->least, unit),
                    length_cell(seat.worn->most, unit)));
  }
  if (seat.fouls_by > 0.0) {
    say("fouls: out of line");
  }
  constexpr double kFullTurn = 2.0 * std::numbers::pi - 1e-6;
  if (seat.coverage < kFullTurn) {
    say(fmt::format("touches {:.0f} deg round", degrees(seat.coverage)));
  }
  return remark;
}

std::string radial_table(const TextContext& c, const std::vector<const RadialSeat*>& seats) {
  TextTable table({{"hole"},
                   {"shaft"},
                   {"hole", Align::right},
                   {"shaft", Align::right},
                   {"fit", Align::right},
                   {""},
                   {"off axis", Align::right},
                   {"tilt deg", Align::right},
                   {"least gap", Align::right},
                   {"together", Align::right},
                   {""}});
  const double same = c.look.settings.seats.same_length_mm;
  for (const RadialSeat* seat : seats) {
    table.add({c.names.feature(seat->hole), c.names.feature(seat->shaft),
               length_cell(seat->hole_diameter, c.unit), length_cell(seat->shaft_diameter, c.unit),
               length_cell(seat->clearance, c.unit), clearance_word(seat->clearance, same),
               length_cell(seat->offset, c.unit), angle_cell(seat->tilt),
               length_cell(seat->least_gap, c.unit), place_cell(seat->engaged, c.unit),
               radial_remark(*seat, c.unit)});
  }
  return table.text(kTableIndent, c.width);
}

// Faces are told apart by what they are like.
std::string with_size(const TextContext& c, const FeatureRef& face) {
  const std::string size = feature_size_text(sized_feature_name(c.look.model, face), c.unit);
  return size.empty() ? c.names.feature(face) : fmt::format("{} ({})", c.names.feature(face), size);
}

std::string axial_table(const TextContext& c, const std::vector<const AxialSeat*>& seats) {
  TextTable table({{"face"},
                   {"face"},
                   {"gap", Align::right},
                   {""},
                   {"inner dia", Align::right},
                   {"outer dia", Align::right},
                   {fmt::format("area {}2", unit_name(c.unit)), Align::right}});
  const double same = c.look.settings.seats.same_length_mm;
  for (const AxialSeat* seat : seats) {
    const auto diameter = [&](const std::optional<double>& of) {
      return seat->centre_line && of ? place_cell(*of, c.unit) : std::string();
    };
    table.add({with_size(c, seat->a), with_size(c, seat->b), length_cell(seat->gap, c.unit),
               gap_word(seat->gap, same), diameter(seat->inner), diameter(seat->outer),
               area_cell(seat->area, c.unit)});
  }
  return table.text(kTableIndent, c.width);
}

std::string taper_table(const TextContext& c, const std::vector<const TaperSeat*>& seats) {
  TextTable table({{"taper hole"},
                   {"taper"},
                   {"half angles deg", Align::right},
                   {"", Align::right},
                   {"gap", Align::right},
                   {"off axis", Align::right},
                   {"tilt deg", Align::right},
                   {"at dia", Align::right},
                   {"together", Align::right}});
  for (const TaperSeat* seat : seats) {
    table.add({c.names.feature(seat->hole), c.names.feature(seat->shaft),
               angle_cell(seat->hole_half_angle), angle_cell(seat->shaft_half_angle),
               length_cell(seat->gap, c.unit), length_cell(seat->offset, c.unit),
               angle_cell(seat->tilt), place_cell(seat->diameter, c.unit),
               place_cell(seat->engaged, c.unit)});
  }
  return table.text(kTableIndent, c.width);
}

std::string thread_table(const TextContext& c, const std::vector<const Thread*>& threads) {
  TextTable table({{"tapped hole"},
                   {"screw"},
                   {"thread"},
                   {"hole", Align::right},
                   {"screw", Align::right},
                   {"together", Align::right}});
  for (const Thread* thread : threads) {
    table.add({c.names.feature(thread->hole), c.names.feature(thread->screw), thread->size,
               length_cell(thread->hole_diameter, c.unit),
               length_cell(thread->screw_diameter, c.unit), place_cell(thread->engaged, c.unit)});
  }
  return table.text(kTableIndent, c.width);
}

std::vector<LineSeats> seats_by_line(const Seats& seats) {
  std::vector<LineSeats> lines(seats.centre_lines.size());
  for (const RadialSeat& seat : seats.radial) {
    lines[seat.centre_line].radial.push_back(&seat);
  }
  for (const AxialSeat& seat : seats.axial) {
    if (seat.centre_line) {
      lines[*seat.centre_line].axial.push_back(&seat);
    }
  }
  for (const TaperSeat& seat : seats.taper) {
    lines[seat.centre_line].taper.push_back(&seat);
  }
  for (const Thread& thread : seats.threads) {
    lines[thread.centre_line].threads.push_back(&thread);
  }
  return lines;
}

std::string line_heading(const TextContext& c, const std::vector<std::size_t>& alike) {
  const CentreLine& first = c.look.seats.centre_lines[alike.front()];
  std::string heading = first.id;
  if (alike.size() > 1) {
    heading += fmt::format(" and {} more alike, x {}", count_text(alike.size() - 1),
                           count_text(alike.size()));
  }
  std::string text = c.paint.heading(heading) + fmt::format(", {}{} through {}\n  on this line ",
                                                            alike.size() > 1 ? "the first " : "",
                                                            direction_text(first.line.along),
                                                            point_text(first.line.at, c.unit));
  for (std::size_t i = 0; i < first.occurrences.size() && i < kNamesShown; ++i) {
    text += (i == 0 ? "" : "; ") + c.names.occurrence(first.occurrences[i]);
  }
  if (first.occurrences.size() > kNamesShown) {
    text += fmt::format("; and {} more", count_text(first.occurrences.size() - kNamesShown));
  }
  return text + '\n';
}

}  // namespace

std::string centre_lines_text(const TextContext& context) {
  const std::vector<LineSeats> lines = seats_by_line(context.look.seats);
  std::map<std::string, std::size_t> group_of;
  std::vector<std::pair<std::string, std::vector<std::size_t>>> groups;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    std::string body = radial_table(context, lines[i].radial) +
                       axial_table(context, lines[i].axial) + taper_table(context, lines[i].taper) +
                       thread_table(context, lines[i].threads);
    const auto [place, fresh] = group_of.try_emplace(body, groups.size());
    if (fresh) {
      groups.emplace_back(std::move(body), std::vector<std::size_t>());
    }
    groups[place->second].second.push_back(i);
  }
  std::string text;
  for (const auto& [body, members] : groups) {
    text += line_heading(context, members) + body + '\n';
  }
  return text;
}

std::string other_faces_text(const TextContext& context) {
  std::vector<const AxialSeat*> seats;
  for (const AxialSeat& seat : context.look.seats.axial) {
    if (!seat.centre_line) {
      seats.push_back(&seat);
    }
  }
  const std::string body = axial_table(context, seats);
  return body.empty() ? "" : context.paint.heading("Faces on no centre line") + '\n' + body + '\n';
}

std::string width_seats_text(const TextContext& context) {
  TextTable table({{"slot"},
                   {"key"},
                   {"slot", Align::right},
                   {"key", Align::right},
                   {"fit", Align::right},
                   {""},
                   {"off centre", Align::right},
                   {"tilt deg", Align::right},
                   {fmt::format("area {}2", unit_name(context.unit)), Align::right}});
  const LengthUnit unit = context.unit;
  for (const WidthSeat& seat : context.look.seats.width) {
    table.add({context.names.feature(seat.slot), context.names.feature(seat.key),
               length_cell(seat.slot_width, unit), length_cell(seat.key_width, unit),
               length_cell(seat.clearance, unit),
               clearance_word(seat.clearance, context.look.settings.seats.same_length_mm),
               length_cell(seat.offset, unit), angle_cell(seat.tilt), area_cell(seat.area, unit)});
  }
  const std::string body = table.text(kTableIndent, context.width);
  return body.empty() ? "" : context.paint.heading("Keys and slots") + '\n' + body + '\n';
}

}  // namespace spotblue
