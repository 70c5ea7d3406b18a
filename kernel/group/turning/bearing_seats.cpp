#include "group/turning/bearing_seats.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

#include "group/joints/part_material.hpp"
#include "group/rings/assembled_clearance.hpp"

namespace spotblue {
namespace {

// A hole this much larger than its shaft, per diameter, lets it through and carries nothing.
// Choice of this program, common practice, no source.
constexpr double kPassingHole = 0.01;
// A ring shorter than so much of its bore is a washer. Choice of this program, no source.
constexpr double kWasher = 0.25;

class BearingSeats {
 public:
  BearingSeats(const DeclaredJob& declared, const Groups& groups, const Turns& turns,
               const std::vector<SurfaceSizes>& surfaces)
      : declared_(declared), groups_(groups), turns_(turns), surfaces_(surfaces) {
    for (const std::size_t body : groups.turns_with) {
      ++parts_of_[body];
    }
    for (const Joint& joint : groups.joints) {
      const std::size_t a = groups.turns_with.at(joint.a);
      const std::size_t b = groups.turns_with.at(joint.b);
      if (a != b) {
        meets_[a].insert(b);
        meets_[b].insert(a);
      }
    }
  }

  [[nodiscard]] std::vector<BearingSeat> found() const {
    std::vector<BearingSeat> seats = candidates();
    say_who_is_carried(seats);
    std::map<std::pair<std::size_t, CentreLineId>, std::vector<BearingSeat>> lines;
    for (const BearingSeat& seat : seats) {
      lines[{seat.body, radial(seat.seat).centre_line}].push_back(seat);
    }
    std::vector<BearingSeat> kept;
    for (auto& [line, of_line] : lines) {
      without_washers(of_line);
      const std::vector<BearingSeat> reached = within_reach(of_line);
      kept.insert(kept.end(), reached.begin(), reached.end());
    }
    std::sort(kept.begin(), kept.end(),
              [](const BearingSeat& x, const BearingSeat& y) { return x.seat < y.seat; });
    return kept;
  }

 private:
  [[nodiscard]] const RadialSeat& radial(std::size_t seat) const {
    return declared_.look->seats.radial[seat];
  }
  [[nodiscard]] std::size_t body_of(OccurrenceId part) const { return groups_.turns_with.at(part); }

  [[nodiscard]] std::vector<BearingSeat> candidates() const {
    const PairBook squeezed = allowed_squeezes(declared_);
    std::vector<BearingSeat> seats;
    for (std::size_t i = 0; i < declared_.look->seats.radial.size(); ++i) {
      const RadialSeat& seat = radial(i);
      const auto rub = rubbing(groups_, turns_, seat.hole.occurrence, seat.shaft.occurrence);
      const SurfaceSizes& surface = surfaces_[i];
      if (!rub || !(seat.engaged > 0.0) || !has_clearance(surface, seat) ||
          is_soft(declared_, seat.hole.occurrence) || is_soft(declared_, seat.shaft.occurrence) ||
          !squeezed.find(seat.hole.occurrence, seat.shaft.occurrence).empty()) {
        continue;
      }
      const Line& line = declared_.look->seats.centre_lines.empty()
                             ? seat.axis
                             : declared_.look->seats.centre_lines[seat.centre_line].line;
      const double from = station(line, at_station(seat.axis, seat.from));
      const double to = station(line, at_station(seat.axis, seat.to));
      BearingSeat found{i, *rub};
      found.wanted = surface.sizes.wanted.has_value();
      found.clearance = assembled_clearance(surface);
      found.from = std::min(from, to);
      found.to = std::max(from, to);
      seats.push_back(found);
    }
    return seats;
  }

  static bool has_clearance(const SurfaceSizes& surface, const RadialSeat& seat) {
    const Limits clearance =
        surface.sizes.wanted ? surface.sizes.wanted->clearance : surface.sizes.found.clearance;
    return clearance.upper > Length() &&
           clearance.lower < kPassingHole * Length::mm(seat.shaft_diameter);
  }

  // Where both turn, the body that runs on nothing that stands hangs on the other.
  void say_who_is_carried(std::vector<BearingSeat>& seats) const {
    std::set<std::size_t> grounded;
    for (const BearingSeat& seat : seats) {
      if (!seat.rub.both) {
        grounded.insert(body_of(seat.rub.turning));
      }
    }
    for (BearingSeat& seat : seats) {
      const OccurrenceId hole = radial(seat.seat).hole.occurrence;
      const OccurrenceId shaft = radial(seat.seat).shaft.occurrence;
      seat.carried = seat.rub.turning;
      if (seat.rub.both && grounded.contains(body_of(hole)) != grounded.contains(body_of(shaft))) {
        seat.carried = grounded.contains(body_of(hole)) ? shaft : hole;
      }
      seat.carrying = seat.carried == hole ? shaft : hole;
      seat.body = body_of(seat.carried);
    }
  }

  // A thin ring that is a body by itself and meets no other than this one.
  [[nodiscard]] bool is_washer(const BearingSeat& seat) const {
    const std::size_t other = body_of(seat.carrying);
    return !seat.wanted && parts_of_.at(other) == 1 && meets_.at(other).size() == 1 &&
           radial(seat.seat).engaged < kWasher * radial(seat.seat).shaft_diameter;
  }

  void without_washers(std::vector<BearingSeat>& seats) const {
    if (!std::all_of(seats.begin(), seats.end(),
                     [this](const BearingSeat& seat) { return is_washer(seat); })) {
      std::erase_if(seats, [this](const BearingSeat& seat) { return is_washer(seat); });
    }
  }

  // The tightest first, those that the shaft can reach in the play that the tighter ones leave it:
  // that a fit is wanted makes no bearing of a hole.
  [[nodiscard]] static std::vector<BearingSeat> within_reach(std::vector<BearingSeat> seats) {
    std::sort(seats.begin(), seats.end(), [](const BearingSeat& x, const BearingSeat& y) {
      return std::pair(x.clearance.upper, !x.wanted) < std::pair(y.clearance.upper, !y.wanted);
    });
    std::vector<Guided> loosest, tightest;
    std::vector<BearingSeat> reached;
    for (BearingSeat& seat : seats) {
      const Interval aside{0.5 * (seat.clearance.lower - kSizeRounding).in_mm(),
                           0.5 * (seat.clearance.upper - kSizeRounding).in_mm()};
      if (reach_of(loosest, seat) < aside.low) {
        continue;
      }
      seat.reached = at_one_place(reached, seat) || reach_of(tightest, seat) >= aside.high;
      if (seat.reached) {
        loosest.push_back({seat.from, seat.to, std::max(0.0, 0.5 * seat.clearance.upper.in_mm())});
      }
      tightest.push_back({seat.from, seat.to, std::max(0.0, 0.5 * seat.clearance.lower.in_mm())});
      reached.push_back(seat);
    }
    return reached;
  }

  static double reach_of(const std::vector<Guided>& guides, const BearingSeat& seat) {
    return std::max(greatest_reach(guides, seat.from), greatest_reach(guides, seat.to));
  }

  // The other half of a split bearing.
  static bool at_one_place(const std::vector<BearingSeat>& reached, const BearingSeat& seat) {
    return std::any_of(reached.begin(), reached.end(), [&seat](const BearingSeat& other) {
      return other.reached && seat.from < other.to && other.from < seat.to;
    });
  }

  const DeclaredJob& declared_;
  const Groups& groups_;
  const Turns& turns_;
  const std::vector<SurfaceSizes>& surfaces_;
  std::map<std::size_t, std::size_t> parts_of_;         // by body
  std::map<std::size_t, std::set<std::size_t>> meets_;  // by body
};

}  // namespace

std::vector<BearingSeat> find_bearing_seats(const DeclaredJob& declared, const Groups& groups,
                                            const Turns& turns,
                                            const std::vector<SurfaceSizes>& surfaces) {
  return BearingSeats(declared, groups, turns, surfaces).found();
}

}  // namespace spotblue
