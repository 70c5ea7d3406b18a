#include "group/rings/surface_sizes.hpp"

#include <algorithm>
#include <cstddef>
#include <map>
#include <numbers>
#include <optional>
#include <set>
#include <span>
#include <string>

#include "group/joints/part_material.hpp"
#include "group/match/roughness.hpp"
#include "group/rings/beyond_joint.hpp"
#include "group/rings/ring_stack.hpp"
#include "group/words/said_sizes.hpp"
#include "spotblue/base/angle.hpp"
#include "spotblue/base/stop.hpp"
#include "spotblue/geometry/wall.hpp"
#include "spotblue/mechanics/press_fit.hpp"

namespace spotblue {
namespace {

constexpr double kNoLength_mm = 1e-6;                       // shorter stretches come from rounding
constexpr double kWholeRing_rad = 1.75 * std::numbers::pi;  // choice of this program, no source
// A ring that is cut through over more of its length than this is no ring. Choice of this program,
// no source.
constexpr double kMostCut = 0.25;
// A hub whose weakest ring gives more than so many times what its strongest does goes out of round.
// Choice of this program, by sections of hubs in finite elements, plane stress: a square of 1.5
// bores (1.55) lies within its two rings, one with two flats (2.0) and a long block (2.8) do not.
constexpr double kMostUneven = 1.6;
// Each one more doubles the corners twice.
constexpr std::size_t kMostRings = 6;

// A seat that is pressed, or may be, with the walls on either side.
struct Link {
  std::size_t seat = 0;
  Wall hub, inner;
  RingJoint joint;
  Saying unknown;
};

// One surface of a part, over a stretch of its seat.
struct Asked {
  std::size_t seat = 0;
  OccurrenceId part{};
  RingSurface surface = RingSurface::bore;
};

Interval on_axis(const Line& axis, const Line& other, Interval along) {
  return ordered(station(axis, at_station(other, along.low)),
                 station(axis, at_station(other, along.high)));
}

const WallStretch* stretch_at(const Wall& wall, double at) {
  const auto found =
      std::find_if(wall.stretches.begin(), wall.stretches.end(),
                   [at](const WallStretch& one) { return one.from <= at && at <= one.to; });
  return found == wall.stretches.end() ? nullptr : &*found;
}

// What no material of a machine expands by more than, 1/K: plastics have up to 2e-4, metals up to
// 3e-5. From memory, common practice, no source.
constexpr double kMostExpansion_per_k = 2e-4;

Interval grown_by_any(Interval size, double warmer_k) {
  const Interval share = ordered(0.0, kMostExpansion_per_k * warmer_k);
  return {size.low * (1.0 + share.low), size.high * (1.0 + share.high)};
}

// How much a ring's bore gives under pressure, per diameter and modulus (Lame, Poisson's ratio
// 0.3).
double bore_give(double bore, double outside) {
  const double squares = (outside / bore) * (outside / bore);
  return (squares + 1.0) / (squares - 1.0) + 0.3;
}

double effective(double interference, double heights_um, double loss) {
  return interference > 0.0 ? effective_interference_mm(interference, heights_um, 0.0, loss)
                            : interference;
}

class Stacks {
 public:
  Stacks(const DeclaredJob& declared, std::vector<SurfaceSizes>& all)
      : declared_(declared), seats_(declared.look->seats.radial), all_(all) {
    for (std::size_t i = 0; i < seats_.size(); ++i) {
      if (all[i].pressing != Pressing::none) {
        by_shaft_[seats_[i].shaft.occurrence].push_back(links_.size());
        by_hole_[seats_[i].hole.occurrence].push_back(links_.size());
        links_.push_back(link(i));
      }
    }
  }

  [[nodiscard]] SizeStates states(const Asked& asked, Limits free) const {
    SizeStates found{{free.lower.in_mm(), free.upper.in_mm()}, {}, {}, {}};
    const RadialSeat& seat = seats_[asked.seat];
    std::optional<Moved> all;
    double cut = 0.0;
    const std::vector<double> ends = stations(asked);
    // A seat without a length is asked at its one station.
    for (std::size_t i = 0; i == 0 || i + 1 < ends.size(); ++i) {
      const double next = i + 1 < ends.size() ? ends[i + 1] : ends[i];
      const double middle = 0.5 * (ends[i] + next);
      const Built built = stack_at(asked, middle);
      if (!built.unknown.empty()) {
        found.unknown = built.unknown;
        if (built.in_place) {
          found.assembled = found.free;
        }
        if (built.alone) {
          found.running = grown_by_any(found.free, running_temperature_c(declared_, asked.part) -
                                                       declared_.job->conditions.bench_c);
        }
        return found;
      }
      const bool whole = plain_ring(built.stack.rings[built.own], WallBound::weakest).has_value();
      cut += whole ? 0.0 : next - ends[i];
      const Moved here = moved(built.stack, built.own, asked.surface, middle_of(free));
      all = all ? Moved{united(all->assembled, here.assembled), united(all->running, here.running)}
                : here;
    }
    if (cut > kMostCut * (seat.to - seat.from)) {
      found.unknown = say(said::kCutThrough, declared_.names.reference(asked.part));
      return found;
    }
    found.assembled =
        Interval{found.free.low + all->assembled.low, found.free.high + all->assembled.high};
    found.running =
        Interval{found.free.low + all->running.low, found.free.high + all->running.high};
    return found;
  }

 private:
  struct Built {
    RingStack stack;
    std::size_t own = 0;
    bool alone = false;     // nothing is pressed on or into it
    bool in_place = false;  // nor is anything still to be
    Saying unknown;
  };

  static double middle_of(Limits limits) { return 0.5 * (limits.lower + limits.upper).in_mm(); }

  [[nodiscard]] Link link(std::size_t number) const {
    const RadialSeat& seat = seats_[number];
    Link link{number,
              wall_of_hub(declared_.look->model, seat),
              wall_of_shaft(declared_.look->model, seat),
              {},
              {}};
    const Limits clearance = all_[number].sizes.found.clearance;
    const double heights = rz_um_of(declared_, seat.hole) + rz_um_of(declared_, seat.shaft);
    link.joint.diameter_mm = 0.5 * (seat.hole_diameter + seat.shaft_diameter);
    link.joint.interference_mm = {
        effective(-clearance.upper.in_mm(), heights, kGreatRoughnessLoss),
        effective(-clearance.lower.in_mm(), heights, kSmallRoughnessLoss)};
    link.joint.in_place = state_of(declared_, seat.hole.occurrence) == PartState::as_found &&
                          state_of(declared_, seat.shaft.occurrence) == PartState::as_found;
    link.unknown = why_no_ring(link);
    if (!is_whole_ring(seat)) {
      link.unknown = say(said::kNotAllRound, declared_.names.reference(seat.shaft.occurrence),
                         angle(seat.coverage));
    }
    return link;
  }

  // What goes out of round when it is pressed lies at some places outside what any two rings say.
  [[nodiscard]] Saying why_no_ring(const Link& link) const {
    const RadialSeat& seat = seats_[link.seat];
    const auto says = [&](const Said& why, OccurrenceId part) {
      return say(why, declared_.names.reference(part));
    };
    const auto is_cut = [](Interval part) { return part.length() > kNoLength_mm; };
    for (const WallStretch& stretch : link.hub.stretches) {
      const double joint = link.joint.diameter_mm;
      if (stretch.begins.high >= stretch.ends.low) {
        continue;  // cut through, which counts by its length
      }
      if (is_cut(stretch.begins)) {
        return says(said::kCutAtBore, seat.hole.occurrence);
      }
      if (bore_give(joint, stretch.ends.low) > kMostUneven * bore_give(joint, stretch.ends.high)) {
        return says(said::kUnevenWall, seat.hole.occurrence);
      }
    }
    for (const WallStretch& stretch : link.inner.stretches) {
      if (stretch.begins.high < stretch.ends.low && is_cut(stretch.ends)) {
        return says(said::kCutAtOutside, seat.shaft.occurrence);
      }
    }
    return {};
  }

  // The link by which the part is pressed outward into another, or inward on another, there.
  [[nodiscard]] const Link* next(OccurrenceId part, bool outward, const RadialSeat& seat,
                                 double at) const {
    for (const std::size_t number : links_of(part, outward)) {
      const RadialSeat& joint = seats_[links_[number].seat];
      if (joint.centre_line == seat.centre_line) {
        const double there = station(joint.axis, at_station(seat.axis, at));
        if (joint.from <= there && there <= joint.to) {
          return &links_[number];
        }
      }
    }
    return nullptr;
  }

  [[nodiscard]] std::span<const std::size_t> links_of(OccurrenceId part, bool outward) const {
    const auto& book = outward ? by_shaft_ : by_hole_;
    const auto found = book.find(part);
    return found == book.end() ? std::span<const std::size_t>() : std::span(found->second);
  }

  // Ends of the stretches of all that may be in the stack.
  void add_stations(OccurrenceId part, bool outward, const RadialSeat& seat, std::size_t depth,
                    std::set<double>& all) const {
    for (const std::size_t number : links_of(part, outward)) {
      const Link& link = links_[number];
      const RadialSeat& joint = seats_[link.seat];
      if (joint.centre_line != seat.centre_line || depth > kMostRings) {
        continue;
      }
      for (const Wall* wall : {&link.hub, &link.inner}) {
        for (const WallStretch& stretch : wall->stretches) {
          const Interval there = on_axis(seat.axis, joint.axis, {stretch.from, stretch.to});
          all.insert({there.low, there.high});
        }
      }
      add_stations(outward ? joint.hole.occurrence : joint.shaft.occurrence, outward, seat,
                   depth + 1, all);
    }
  }

  [[nodiscard]] std::vector<double> stations(const Asked& asked) const {
    const RadialSeat& seat = seats_[asked.seat];
    std::set<double> all{seat.from, seat.to};
    add_stations(asked.part, asked.surface == RingSurface::bore, seat, 0, all);
    std::vector<double> within;
    for (const double at : all) {
      if (at >= seat.from && at <= seat.to &&
          (within.empty() || at - within.back() > kNoLength_mm)) {
        within.push_back(at);
      }
    }
    return within;
  }

  [[nodiscard]] Built stack_at(const Asked& asked, double at) const {
    Built built;
    const RadialSeat& seat = seats_[asked.seat];
    std::vector<OccurrenceId> parts{asked.part};
    std::vector<const Link*> joints;
    // The seat that is asked is itself a joint where it is pressed.
    const bool outward = asked.surface == RingSurface::bore;
    while (const Link* more = next(outward ? parts.back() : parts.front(), outward, seat, at)) {
      const RadialSeat& joint = seats_[more->seat];
      if (outward) {
        joints.push_back(more);
        parts.push_back(joint.hole.occurrence);
      } else {
        joints.insert(joints.begin(), more);
        parts.insert(parts.begin(), joint.shaft.occurrence);
      }
      if (!more->unknown.empty() || parts.size() > kMostRings) {
        built.unknown =
            !more->unknown.empty() ? more->unknown : say(said::kTooManyRings, kMostRings);
        return built;
      }
    }
    built.alone = joints.empty();
    built.in_place = std::all_of(joints.begin(), joints.end(),
                                 [](const Link* link) { return link->joint.in_place; });
    built.own = outward ? 0 : parts.size() - 1;
    fill(built, parts, joints, asked, at);
    return built;
  }

  void fill(Built& built, const std::vector<OccurrenceId>& parts,
            const std::vector<const Link*>& joints, const Asked& asked, double at) const {
    const RadialSeat& seat = seats_[asked.seat];
    built.stack.bench_c = declared_.job->conditions.bench_c;
    for (std::size_t i = 0; i < parts.size(); ++i) {
      const double running = running_temperature_c(declared_, parts[i]);
      const PartMaterial material = part_material(declared_, parts[i]);
      const bool moves = !joints.empty() || running != built.stack.bench_c;
      if (moves && !material.elastic) {
        built.unknown = material.unknown;
        return;
      }
      RingWall wall;
      wall.material = material.elastic.value_or(kAnyMaterial);
      wall.begins = wall.ends = {};
      const Link* inside = i > 0 ? joints[i - 1] : nullptr;
      const Link* outside = i < joints.size() ? joints[i] : nullptr;
      if (inside != nullptr) {
        wall.joint_inside = inside->joint.diameter_mm;
        add_wall(wall, inside->hub, seats_[inside->seat], seat, at);
      }
      if (outside != nullptr) {
        wall.joint_outside = outside->joint.diameter_mm;
        add_wall(wall, outside->inner, seats_[outside->seat], seat, at);
      }
      if (inside == nullptr && outside == nullptr) {
        const double size = middle_of(asked.surface == RingSurface::bore
                                          ? all_[asked.seat].sizes.found.hole.limits
                                          : all_[asked.seat].sizes.found.shaft.limits);
        // Alone it only grows with the heat, whatever its wall.
        wall.begins = {0.5 * size, 0.5 * size};
        wall.ends = {size, size};
      }
      for (const Link* link : {inside, outside}) {
        if (link != nullptr) {
          wall.stiffness = united(
              wall.stiffness, stiffness_beyond(declared_.look->model, parts[i], seats_[link->seat],
                                               {wall.begins.low, wall.ends.high, wall.material}));
        }
      }
      built.stack.rings.push_back(std::move(wall));
      built.stack.running_c.push_back(running);
      if (outside != nullptr) {
        built.stack.joints.push_back(outside->joint);
      }
    }
  }

  // A ring between two joints has a wall seen from either: the narrower of the two counts.
  static void add_wall(RingWall& wall, const Wall& seen, const RadialSeat& joint,
                       const RadialSeat& seat, double at) {
    const double there = station(joint.axis, at_station(seat.axis, at));
    const WallStretch* stretch = stretch_at(seen, there);
    if (stretch == nullptr) {
      return;  // begins and ends stay at none: cut through there
    }
    if (wall.ends.high == 0.0) {
      wall.begins = stretch->begins;
      wall.ends = stretch->ends;
      return;
    }
    wall.begins.high = std::max(wall.begins.high, stretch->begins.high);
    wall.ends.low = std::min(wall.ends.low, stretch->ends.low);
    wall.begins.low = std::max(wall.begins.low, stretch->begins.low);
    wall.ends.high = std::min(wall.ends.high, stretch->ends.high);
  }

  // Of a ring that neither is pressed nor gets warm: nothing asks what it is made of.
  inline static const Elastic kAnyMaterial{.name = {},
                                           .youngs_modulus_mpa = 2e5,
                                           .poisson_ratio = 0.3,
                                           .expansion_per_k = 1e-5,
                                           .yield_mpa = {},
                                           .tensile_mpa = {},
                                           .gives_way = GivesWay::ductile};

  const DeclaredJob& declared_;
  const std::vector<RadialSeat>& seats_;
  const std::vector<SurfaceSizes>& all_;
  std::vector<Link> links_;
  std::map<OccurrenceId, std::vector<std::size_t>> by_shaft_, by_hole_;  // of links_
};

}  // namespace

std::vector<SurfaceSizes> surface_sizes(const DeclaredJob& declared) {
  const std::vector<RadialSeat>& seats = declared.look->seats.radial;
  std::vector<SurfaceSizes> all;
  all.reserve(seats.size());
  for (std::size_t i = 0; i < seats.size(); ++i) {
    SeatSizes sizes = seat_sizes(declared, i);
    const Pressing pressing = pressing_of(sizes);
    all.push_back({std::move(sizes), pressing, {}, {}});
  }
  const Stacks stacks(declared, all);
  for (std::size_t i = 0; i < seats.size(); ++i) {
    stop_if_asked();
    const FoundFit& found = all[i].sizes.found;
    all[i].hole =
        stacks.states({i, seats[i].hole.occurrence, RingSurface::bore}, found.hole.limits);
    all[i].shaft =
        stacks.states({i, seats[i].shaft.occurrence, RingSurface::outside}, found.shaft.limits);
  }
  return all;
}

bool is_whole_ring(const RadialSeat& seat) { return seat.coverage >= kWholeRing_rad; }

}  // namespace spotblue
