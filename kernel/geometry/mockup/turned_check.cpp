#include "geometry/mockup/turned_check.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "geometry/mockup/mockup_check.hpp"
#include "geometry/mockup/turned_profile.hpp"
#include "geometry/model/tolerances.hpp"

namespace spotblue {
namespace {

constexpr double kThinnest = 1e-4;  // mm: a wall thinner than this is no wall

std::string_view list_name(Side side) { return side == Side::external ? "outside" : "inside"; }

void check_break(const MockupPlace& place, const TurnedPart& part, Side side, std::size_t i,
                 int end) {
  const Step& step = (side == Side::external ? part.outside : part.inside)[i];
  const EdgeBreak& edge = end == 0 ? step.at_start : step.at_end;
  if (edge.kind == BreakKind::sharp) {
    return;
  }
  const std::string_view word = word_of(edge.kind);
  need_positive(place, word, edge.size);
  const double sign = side == Side::external ? 1.0 : -1.0;
  const double own = (end == 0 ? step.diameter : step.end_diameter) / 2;
  const auto neighbour = neighbour_radius(part, side, i, end);
  const bool corner = neighbour && sign * *neighbour > sign * own;
  if (edge.kind == BreakKind::fillet && step.diameter != step.end_diameter) {
    throw place.error("a taper takes no fillet", "use a chamfer, or leave it sharp");
  }
  if (edge.kind == BreakKind::chamfer && corner) {
    throw place.error(
        fmt::format("a chamfer of {} in a corner: the neighbour stands higher there", edge.size),
        "give the corner a fillet, or the neighbour the chamfer");
  }
  double room = neighbour ? std::abs(*neighbour - own) : own;
  if (side == Side::internal && !neighbour) {
    room = outside_radius(part, end == 0 ? 0.0 : turned_length(part)) - own;
  }
  if (edge.size > room + kSameStation) {
    throw place.error(fmt::format("a {} of {} mm is larger than the step it breaks, {} mm high",
                                  word, edge.size, room),
                      "make it smaller, or correct the diameters");
  }
}

void check_step(const MockupPlace& place, const TurnedPart& part, Side side, std::size_t i) {
  const Step& step = (side == Side::external ? part.outside : part.inside)[i];
  need_positive(place, "length", step.length);
  need_positive(place, "diameter", step.diameter);
  need_positive(place, "end diameter", step.end_diameter);
  check_break(place, part, side, i, 0);
  check_break(place, part, side, i, 1);
  if (step.at_start.size + step.at_end.size > step.length + kSameStation) {
    throw place.error(fmt::format("its chamfers or fillets, {} and {} mm, are longer than the "
                                  "step, {} mm",
                                  step.at_start.size, step.at_end.size, step.length),
                      "make them smaller, or the step longer");
  }
}

// The corner's fillet and the edge's chamfer share the height of one shoulder.
void check_shoulder(const MockupPlace& place, const Step& a, const Step& b) {
  const double height = std::abs(a.end_diameter - b.diameter) / 2;
  if (a.at_end.size + b.at_start.size > height + kSameStation && a.at_end.size > 0.0 &&
      b.at_start.size > 0.0) {
    throw place.error(fmt::format("the breaks on both sides of the shoulder before it, {} and {} "
                                  "mm, are more than its height, {} mm",
                                  a.at_end.size, b.at_start.size, height),
                      "make one of them smaller");
  }
}

void check_order(const MockupPlace& place, const TurnedPart& part, Side side, std::size_t i) {
  const std::vector<Step>& steps = side == Side::external ? part.outside : part.inside;
  const Step& step = steps[i];
  const double reached = i == 0 ? 0.0 : steps[i - 1].start + steps[i - 1].length;
  const double length = turned_length(part);
  if (step.start < reached - kSameStation) {
    throw place.error(
        fmt::format("starts at {} mm, inside what comes before it (to {} mm)", step.start, reached),
        "list the steps from the first end on");
  }
  if (side == Side::external && step.start > reached + kSameStation) {
    throw place.error("leaves a gap in the outside", "let it start where the one before ends");
  }
  if (side == Side::internal && step.start + step.length > length + kSameStation) {
    throw place.error(fmt::format("ends at {} mm, beyond the part, which is {} mm long",
                                  step.start + step.length, length),
                      "shorten it, or say through = true");
  }
  if (side == Side::external && i > 0) {
    check_shoulder(place, steps[i - 1], step);
  }
}

double path_radius(const std::vector<ProfilePoint>& path, double z) {
  for (std::size_t i = 1; i < path.size(); ++i) {
    const ProfilePoint& a = path[i - 1];
    const ProfilePoint& b = path[i];
    if (z > a.z && z <= b.z && b.z > a.z) {
      return a.r + (b.r - a.r) * (z - a.z) / (b.z - a.z);
    }
  }
  return 0.0;
}

// Every wall has a thickness. An arc stands here as its chord, off by less than its own size.
void check_walls(const MockupPlace& place, const TurnedPart& part) {
  const auto outside = profile_path(part, Side::external);
  const auto inside = profile_path(part, Side::internal);
  std::vector<double> stations;
  for (const auto* path : {&outside, &inside}) {
    for (const ProfilePoint& point : *path) {
      stations.push_back(point.z - kConfusion);
      stations.push_back(point.z + kConfusion);
    }
  }
  for (const double z : stations) {
    const double hole = path_radius(inside, z);
    const double body = path_radius(outside, z);
    if (z <= 0.0 || z >= turned_length(part) || (hole <= 0.0 && body > 0.0)) {
      continue;
    }
    if (body - hole < kThinnest) {
      std::size_t i = 0;
      while (i + 1 < part.inside.size() && part.inside[i].start + part.inside[i].length < z) {
        ++i;
      }
      throw(part.inside.empty() ? place : place.in("inside", i))
          .error(fmt::format("the wall is {:.4g} mm thick {:.3f} mm from the first end (inside "
                             "diameter {:.6g}, outside {:.6g})",
                             body - hole, z, 2 * hole, 2 * body),
                 "make the inside smaller or the outside larger there");
    }
  }
}

void check_inside_opens(const MockupPlace& place, const TurnedPart& part) {
  const double length = turned_length(part);
  for (std::size_t i = 0; i < part.inside.size(); ++i) {
    std::size_t first = i;
    std::size_t last = i;
    const auto meets = [&part](std::size_t a) {
      return std::abs(part.inside[a].start + part.inside[a].length - part.inside[a + 1].start) <=
             kSameStation;
    };
    while (first > 0 && meets(first - 1)) {
      --first;
    }
    while (last + 1 < part.inside.size() && meets(last)) {
      ++last;
    }
    if (part.inside[first].start > kSameStation &&
        part.inside[last].start + part.inside[last].length < length - kSameStation) {
      throw place.in("inside", i)
          .error("opens to neither end: no tool gets there",
                 "let it start at 0 or reach the last end");
    }
  }
}

void check_groove(const MockupPlace& place, const TurnedPart& part, Side side,
                  const Groove& groove) {
  need_positive(place, "width", groove.width);
  need_positive(place, "diameter", groove.diameter);
  const std::vector<Step>& steps = side == Side::external ? part.outside : part.inside;
  for (const Step& step : steps) {
    const double from = step.start + step.at_start.size;
    const double to = step.start + step.length - step.at_end.size;
    if (groove.at < from - kSameStation || groove.at + groove.width > to + kSameStation) {
      continue;
    }
    const double least = std::min(step.diameter, step.end_diameter);
    const double most = std::max(step.diameter, step.end_diameter);
    if (side == Side::external ? groove.diameter >= least : groove.diameter <= most) {
      throw place.error(fmt::format("a floor of diameter {} cuts nothing from a step of {}",
                                    groove.diameter, step.diameter),
                        side == Side::external ? "make it smaller" : "make it larger");
    }
    return;
  }
  throw place.error(fmt::format("{} to {} mm lies within no {} step", groove.at,
                                groove.at + groove.width, list_name(side)),
                    "keep it between the ends of one step, clear of chamfers and fillets");
}

void check_grooves(const MockupPlace& place, const TurnedPart& part, Side side) {
  const auto& grooves = side == Side::external ? part.outside_grooves : part.inside_grooves;
  const std::string list = fmt::format("{}_grooves", list_name(side));
  for (std::size_t i = 0; i < grooves.size(); ++i) {
    check_groove(place.in(list, i), part, side, grooves[i]);
    for (std::size_t j = 0; j < i; ++j) {
      if (grooves[i].at < grooves[j].at + grooves[j].width &&
          grooves[j].at < grooves[i].at + grooves[i].width) {
        throw place.in(list, i).error(fmt::format("runs into groove {}", j + 1),
                                      "move one of them");
      }
    }
  }
}

void check_stretch(const MockupPlace& place, const TurnedPart& part, double at, double length) {
  need_positive(place, "length", length);
  if (at < -kSameStation || at + length > turned_length(part) + kSameStation) {
    throw place.error(fmt::format("{} to {} mm is not within the part, which is {} mm long", at,
                                  at + length, turned_length(part)),
                      "move it, or shorten it");
  }
}

void check_keyseat(const MockupPlace& place, const TurnedPart& part, const Keyseat& seat) {
  check_stretch(place, part, seat.at, seat.length);
  need_positive(place, "width", seat.width);
  need_positive(place, "depth", seat.depth);
  const double radius = outside_radius(part, seat.at + seat.length / 2);
  if (seat.depth >= radius || seat.width >= 2 * radius) {
    throw place.error(fmt::format("{} wide and {} deep is more than a shaft of {} mm can hold",
                                  seat.width, seat.depth, 2 * radius),
                      "depth is from the top of the shaft to the floor");
  }
  if (seat.ends == EndShape::round && seat.length < seat.width) {
    throw place.error("is shorter than it is wide", "say ends = \"square\", or make it longer");
  }
}

void check_keyway(const MockupPlace& place, const TurnedPart& part, const Keyway& way) {
  need_positive(place, "width", way.width);
  need_positive(place, "depth", way.depth);
  const double middle = way.at ? *way.at + *way.length / 2 : turned_length(part) / 2;
  if (way.at) {
    check_stretch(place, part, *way.at, *way.length);
  }
  const double bore = way.bore ? *way.bore : 2 * inside_radius(part, middle);
  if (bore <= 0.0) {
    throw place.error("there is no bore where it lies", "give the bore's diameter as bore = ...");
  }
  if (way.width >= bore) {
    throw place.error(fmt::format("{} wide is more than a bore of {} mm can hold", way.width, bore),
                      "make it narrower");
  }
}

void check_flats(const MockupPlace& place, const TurnedPart& part, const Flats& flats) {
  check_stretch(place, part, flats.at, flats.length);
  need_positive(place, "across", flats.across);
  if (flats.count != 1 && (flats.count < 2 || flats.count % 2 != 0 || flats.count > 24)) {
    throw place.error(fmt::format("count is {}", flats.count), "use 1, 2, 4, 6, 8 ... 24");
  }
  const double radius = outside_radius(part, flats.at + flats.length / 2);
  if (flats.across >= 2 * radius || (flats.count == 1 && flats.across <= radius / 1e3)) {
    throw place.error(
        fmt::format("{} across cuts nothing from a diameter of {}", flats.across, 2 * radius),
        "make it smaller");
  }
}

void check_cross_hole(const MockupPlace& place, const TurnedPart& part, const CrossHole& hole) {
  need_positive(place, "diameter", hole.diameter);
  if (hole.depth) {
    need_positive(place, "depth", *hole.depth);
  }
  const double radius = outside_radius(part, hole.at);
  if (hole.at < 0.0 || hole.at > turned_length(part) ||
      std::abs(hole.offset) + hole.diameter / 2 > radius) {
    throw place.error(
        fmt::format("does not lie within the outside at {} mm, radius {}", hole.at, radius),
        "move it, or make it smaller");
  }
}

void check_end_bore(const MockupPlace& place, const TurnedPart& part, const Bore& bore) {
  check_bore(place, bore);
  if (bore.face != PartFace::first && bore.face != PartFace::last) {
    throw place.error("a turned part is bored from its first or last end",
                      "use face = \"first\" or \"last\", or a cross hole");
  }
  double greatest = 0.0;
  for (const Step& step : part.outside) {
    greatest = std::max({greatest, step.diameter / 2, step.end_diameter / 2});
  }
  const double widest = widest_radius(bore);
  for (const FacePoint& centre : bore_centres(bore)) {
    if (std::hypot(centre.u, centre.v) + widest >= greatest) {
      throw place.error(fmt::format("a bore of {} at ({:.6g}, {:.6g}) breaks out of the outside, "
                                    "diameter {}",
                                    2 * widest, centre.u, centre.v, 2 * greatest),
                        "move it inwards, or make it smaller");
    }
  }
}

template <typename Item, typename Check>
void each(const MockupPlace& place, std::string_view list, const TurnedPart& part,
          const std::vector<Item>& items, Check check) {
  for (std::size_t i = 0; i < items.size(); ++i) {
    check(place.in(list, i), part, items[i]);
  }
}

}  // namespace

void check_turned(const MockupPlace& place, const TurnedPart& part) {
  if (part.outside.empty()) {
    throw place.error("a turned part needs at least one outside step",
                      "add outside = [{ diameter = ..., length = ... }]");
  }
  for (const Side side : {Side::external, Side::internal}) {
    const std::vector<Step>& steps = side == Side::external ? part.outside : part.inside;
    for (std::size_t i = 0; i < steps.size(); ++i) {
      check_step(place.in(list_name(side), i), part, side, i);
      check_order(place.in(list_name(side), i), part, side, i);
    }
  }
  check_inside_opens(place, part);
  check_grooves(place, part, Side::external);
  check_grooves(place, part, Side::internal);
  check_walls(place, part);
  each(place, "keyseats", part, part.keyseats, check_keyseat);
  each(place, "keyways", part, part.keyways, check_keyway);
  each(place, "flats", part, part.flats, check_flats);
  each(place, "cross_holes", part, part.cross_holes, check_cross_hole);
  each(place, "bores", part, part.bores, check_end_bore);
}

}  // namespace spotblue
