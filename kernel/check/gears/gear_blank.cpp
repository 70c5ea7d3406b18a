#include "check/gears/gear_blank.hpp"

#include <algorithm>
#include <cmath>

#include "group/rings/assembled_clearance.hpp"
#include "group/sizes/size_range.hpp"
#include "spotblue/geometry/seat_limits.hpp"

namespace spotblue {
namespace {

Line placed_axis(const DeclaredJob& declared, const FeatureRef& ref) {
  const Model& model = declared.look->model;
  const Occurrence& occurrence = model.occurrences.at(ref.occurrence);
  return place_line(occurrence.frame,
                    model.products.at(occurrence.product).cylinders.at(ref.index).axis);
}

// The centre line of the look that the axis lies on, by the limits of a seat.
std::optional<CentreLineId> centre_line_of(const DeclaredJob& declared, OccurrenceId occurrence,
                                           const Line& axis, double diameter_mm) {
  const SeatSettings& settings = declared.look->settings.seats;
  const double tilt = most_tilt(settings.coaxial_tilt_deg, settings);
  double nearest = most_offset(settings, diameter_mm) + settings.same_length_mm;
  std::optional<CentreLineId> best;
  const List<CentreLine>& lines = declared.look->seats.centre_lines;
  for (CentreLineId i; i < lines.size(); ++i) {
    const std::vector<OccurrenceId>& on = lines[i].occurrences;
    const double off = distance(lines[i].line, axis.at);
    if (std::find(on.begin(), on.end(), occurrence) != on.end() && off <= nearest &&
        angle_between_lines(lines[i].line.along, axis.along) <= tilt) {
      best = i;
      nearest = off;
    }
  }
  return best;
}

Interval stretch_on(const Line& line, const Line& axis, const Cylinder& cylinder) {
  const double from = station(line, at_station(axis, cylinder.intervals.front().low));
  const double to = station(line, at_station(axis, cylinder.intervals.back().high));
  return ordered(from, to);
}

// A seat of one centre line, as far as it lets its two parts move across it.
struct Link {
  OccurrenceId a{}, b{};
  double least_mm = 0.0, greatest_mm = 0.0;
};

std::vector<Link> links_of(const WorkedGroup& worked, CentreLineId line) {
  const Seats& seats = worked.declared.look->seats;
  std::vector<Link> links;
  for (std::size_t i = 0; i < seats.radial.size(); ++i) {
    const RadialSeat& seat = seats.radial[i];
    if (seat.centre_line != line) {
      continue;
    }
    const Limits clearance = assembled_clearance(worked.surfaces[i]);
    links.push_back({seat.hole.occurrence, seat.shaft.occurrence,
                     0.5 * std::max(0.0, clearance.lower.in_mm()),
                     0.5 * std::max(0.0, clearance.upper.in_mm())});
  }
  for (const TaperSeat& seat : seats.taper) {
    if (seat.centre_line == line) {
      links.push_back({seat.hole.occurrence, seat.shaft.occurrence, 0.0, 0.0});
    }
  }
  return links;
}

struct Reached {
  std::optional<BearingPlay> play;
  bool done = false;
};

// Dijkstra's search from the gear over the links, by their greatest play.
std::vector<Reached> reached_from(std::size_t start, std::size_t count,
                                  const std::vector<Link>& links) {
  std::vector<Reached> reached(count);
  reached.at(start).play = BearingPlay{};
  while (true) {
    std::size_t next = count;
    for (std::size_t i = 0; i < count; ++i) {
      if (reached[i].play && !reached[i].done &&
          (next == count || reached[i].play->greatest_mm < reached[next].play->greatest_mm)) {
        next = i;
      }
    }
    if (next == count) {
      return reached;
    }
    reached[next].done = true;
    const BearingPlay from = *reached[next].play;
    for (const Link& link : links) {
      if (link.a != next && link.b != next) {
        continue;
      }
      Reached& other = reached.at(link.a == next ? link.b : link.a);
      const double greatest = from.greatest_mm + link.greatest_mm;
      if (!other.play || greatest < other.play->greatest_mm) {
        other.play = BearingPlay{from.least_mm + link.least_mm, greatest,
                                 from.seats + (link.greatest_mm > 0.0 ? 1U : 0U)};
      }
    }
  }
}

}  // namespace

std::optional<GearBlank> find_gear_blank(const DeclaredJob& declared, OccurrenceId occurrence,
                                         double tip_mm, double module_mm) {
  const Model& model = declared.look->model;
  const Product& product = model.products.at(model.occurrences.at(occurrence).product);
  std::optional<FeatureRef> nearest;
  std::optional<FeatureRef> largest;
  for (std::size_t i = 0; i < product.cylinders.size(); ++i) {
    const Cylinder& cylinder = product.cylinders[i];
    if (cylinder.side != Side::external || cylinder.intervals.empty()) {
      continue;
    }
    const auto better = [&](const std::optional<FeatureRef>& chosen, const auto& badness) {
      return !chosen || badness(cylinder) < badness(product.cylinders[chosen->index]);
    };
    if (better(nearest, [&](const Cylinder& c) { return std::abs(c.diameter - tip_mm); })) {
      nearest = FeatureRef{occurrence, FeatureKind::cylinder, i};
    }
    if (better(largest, [](const Cylinder& c) { return -c.diameter; })) {
      largest = FeatureRef{occurrence, FeatureKind::cylinder, i};
    }
  }
  if (!nearest) {
    return std::nullopt;
  }
  const Cylinder& teeth = product.cylinders[nearest->index];
  const bool toothed = std::abs(teeth.diameter - tip_mm) <= module_mm;
  const FeatureRef turns_about = toothed ? *nearest : *largest;
  GearBlank blank;
  blank.line = placed_axis(declared, turns_about);
  blank.centre_line = centre_line_of(declared, occurrence, blank.line,
                                     product.cylinders[turns_about.index].diameter);
  if (blank.centre_line) {
    blank.line = declared.look->seats.centre_lines[*blank.centre_line].line;
  }
  if (toothed) {
    blank.teeth = nearest;
    blank.tip_mm =
        size_range(declared, *nearest, Length::mm(teeth.diameter), std::nullopt).centre.in_mm();
    blank.face = stretch_on(blank.line, placed_axis(declared, *nearest), teeth);
  }
  return blank;
}

BearingPlay bearing_play(const WorkedGroup& worked, OccurrenceId occurrence, const GearBlank& blank,
                         std::optional<CentreLineId> other_line) {
  if (!blank.centre_line) {
    return {};
  }
  const DeclaredJob& declared = worked.declared;
  const List<CentreLine>& lines = declared.look->seats.centre_lines;
  const std::vector<Link> links = links_of(worked, *blank.centre_line);
  const std::vector<Reached> reached =
      reached_from(occurrence, declared.look->model.occurrences.size(), links);
  std::optional<BearingPlay> best;
  const auto take = [&best](const std::optional<BearingPlay>& play) {
    if (play && (!best || play->greatest_mm < best->greatest_mm)) {
      best = play;
    }
  };
  if (other_line && other_line != blank.centre_line) {
    for (const OccurrenceId carrier : lines[*other_line].occurrences) {
      take(reached.at(carrier).play);
    }
  }
  if (!best) {
    for (const Reached& part : reached) {
      take(part.play && part.play->seats == 1 ? part.play : std::nullopt);
    }
  }
  return best.value_or(BearingPlay{});
}

}  // namespace spotblue
