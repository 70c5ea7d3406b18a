#include "group/joints/pins.hpp"

#include <algorithm>
#include <map>
#include <numbers>
#include <optional>
#include <set>
#include <utility>

#include "base/disjoint_sets.hpp"
#include "group/joints/crosswise.hpp"
#include "group/joints/named_turning.hpp"

namespace spotblue {
namespace {

// A hole that goes less far round holds a pin by its sides only. Choice of this program, no source.
constexpr double kHolds_rad = 1.5 * std::numbers::pi;
// The head of a pin is no wider than so many of its diameters. Choice of this program, no source.
constexpr double kHead = 2.0;

// One part in a hole of another, plain or tapped.
struct InHole {
  FeatureRef hole, pin;
  double diameter = 0.0;
  Line axis;
  CentreLineId line{};
};

class Pins {
 public:
  Pins(const DeclaredJob& declared, std::vector<Joint>& joints)
      : declared_(declared),
        seats_(declared.look->seats),
        joints_(joints),
        bodies_(declared.look->model.occurrences.size()),
        turning_(named_turning(declared)) {
    for (const Joint& joint : joints) {
      join(joint);
    }
    for (const RadialSeat& seat : seats_.radial) {
      largest(seat.hole.occurrence, seat.centre_line, seat.shaft_diameter, seat.shaft.occurrence);
      largest(seat.shaft.occurrence, seat.centre_line, seat.shaft_diameter, seat.hole.occurrence);
      outer_.insert(seat.hole.occurrence);
      seated_[std::minmax(seat.hole.occurrence, seat.shaft.occurrence)].push_back(&seat);
      if (seat.coverage >= kHolds_rad && seat.engaged > 0.0) {
        add({seat.hole, seat.shaft, seat.shaft_diameter, seat.axis, seat.centre_line});
      }
    }
    for (const Thread& thread : seats_.threads) {
      add({thread.hole, thread.screw, thread.screw_diameter, thread.axis, thread.centre_line});
    }
  }

  void find() {
    for (const auto& [part, holes] : holes_of_) {
      if (may_be_pin(part, holes)) {
        pin_pairs(part, holes);
      }
    }
    const Settled settled = settle();
    for (const auto& [part, holes] : holes_of_) {
      if (may_be_pin(part, holes) && is_plug(settled, part, holes)) {
        for (const InHole& one : holes) {
          hold(one.hole.occurrence, part, false, {one.hole, one.pin}, "dowel or plug in its hole");
        }
      }
    }
  }

 private:
  using Holes = std::vector<InHole>;
  // The largest seat of a part on a line, and with whom.
  struct Largest {
    double diameter = 0.0;
    std::set<OccurrenceId> mates;
  };

  struct InLine {
    CentreLineId line{};
    const std::set<OccurrenceId>* mates = nullptr;
  };

  void join(const Joint& joint) {
    if (joint.turning) {
      bodies_.join(joint.a, joint.b);
    }
  }
  void add(const InHole& in_hole) { holes_of_[in_hole.pin.occurrence].push_back(in_hole); }
  void largest(OccurrenceId part, CentreLineId line, double diameter, OccurrenceId mate) {
    Largest& known = seats_of_[part][line];
    if (diameter > known.diameter) {
      known = {diameter, {}};
    }
    if (diameter == known.diameter) {
      known.mates.insert(mate);
    }
  }
  static bool on_one_line(const Holes& holes) {
    return std::all_of(holes.begin(), holes.end(),
                       [&](const InHole& one) { return one.line == holes.front().line; });
  }

  void hold(OccurrenceId a, OccurrenceId b, bool along, std::vector<FeatureRef> by,
            std::string why) {
    Joint joint{a, b, JointKind::pin, Certainty::certain, true, along};
    joint.by = std::move(by);
    joint.why = std::move(why);
    join(joint);
    joints_.push_back(std::move(joint));
  }

  // A seat of the two on a line that is not the pin's; nothing without one.
  [[nodiscard]] const RadialSeat* own_seat(OccurrenceId a, OccurrenceId b, CentreLineId pin) const {
    const auto seats = seated_.find(std::minmax(a, b));
    if (seats == seated_.end()) {
      return nullptr;
    }
    for (const RadialSeat* seat : seats->second) {
      if (seat->centre_line != pin) {
        return seat;
      }
    }
    return nullptr;
  }

  void pin_pairs(OccurrenceId pin, const Holes& holes) {
    for (std::size_t i = 0; i < holes.size(); ++i) {
      for (std::size_t j = i + 1; j < holes.size(); ++j) {
        const InHole& one = holes[i];
        const InHole& other = holes[j];
        const OccurrenceId a = one.hole.occurrence;
        const OccurrenceId b = other.hole.occurrence;
        const RadialSeat* seat = a == b ? nullptr : own_seat(a, b, one.line);
        if (seat == nullptr) {
          continue;
        }
        const bool across = is_across(one.axis.along, seat->axis.along);
        const std::string why = "pinned by " + declared_.names.id_of(pin);
        hold(a, b, across, {one.hole, other.hole, one.pin}, why);
        hold(a, pin, across, {one.hole, one.pin}, "pin in its hole");
        hold(b, pin, across, {other.hole, other.pin}, "pin in its hole");
      }
    }
  }

  // Who is one body before any plug is asked after: the order of parts changes nothing.
  struct Settled {
    std::vector<std::size_t> body_of;                            // by occurrence
    std::map<std::size_t, std::multimap<double, InLine>> seats;  // by body, by diameter
    std::set<std::size_t> turning;                               // bodies
  };

  Settled settle() {
    Settled settled{bodies_.numbers(), {}, {}};
    for (const auto& [part, by_line] : seats_of_) {
      auto& of_body = settled.seats[settled.body_of[part]];
      for (const auto& [line, seat] : by_line) {
        of_body.emplace(seat.diameter, InLine{line, &seat.mates});
      }
    }
    for (const OccurrenceId part : turning_) {
      settled.turning.insert(settled.body_of[part]);
    }
    return settled;
  }

  [[nodiscard]] bool may_be_pin(OccurrenceId part, const Holes& holes) const {
    return !outer_.contains(part) && on_one_line(holes) && !turning_.contains(part);
  }

  [[nodiscard]] bool is_plug(const Settled& settled, OccurrenceId pin, const Holes& holes) const {
    const std::size_t body = settled.body_of[holes.front().hole.occurrence];
    const bool one_body = std::all_of(holes.begin(), holes.end(), [&](const InHole& one) {
      return settled.body_of[one.hole.occurrence] == body && is_small(pin, one);
    });
    const std::size_t own = settled.body_of[pin];
    if (!one_body || own == body || settled.turning.contains(own)) {
      return false;
    }
    // The body has, beside the line of the holes, a seat with another part as large.
    const double diameter = widest(holes);
    const auto& seats = settled.seats.at(body);
    return std::any_of(seats.lower_bound(diameter), seats.end(), [&](const auto& seat) {
      const std::set<OccurrenceId>& mates = *seat.second.mates;
      return seat.second.line != holes.front().line && (mates.size() > 1 || !mates.contains(pin));
    });
  }

  // A stud of a bracket fills a hole too, and carries what turns on it.
  [[nodiscard]] bool is_small(OccurrenceId pin, const InHole& hole) const {
    const Model& model = declared_.look->model;
    const auto product = [&model](OccurrenceId part) -> const Product& {
      return model.products[model.occurrences[part].product];
    };
    const auto& cylinders = product(pin).cylinders;
    return product(pin).volume <= product(hole.hole.occurrence).volume &&
           std::none_of(cylinders.begin(), cylinders.end(), [&hole](const Cylinder& one) {
             return one.side == Side::external && one.diameter > kHead * hole.diameter;
           });
  }

  static double widest(const Holes& holes) {
    double diameter = 0.0;
    for (const InHole& one : holes) {
      diameter = std::max(diameter, one.diameter);
    }
    return diameter;
  }

  const DeclaredJob& declared_;
  const Seats& seats_;
  std::vector<Joint>& joints_;
  DisjointSets bodies_;
  std::map<OccurrenceId, Holes> holes_of_;
  std::map<OccurrenceId, std::map<CentreLineId, Largest>> seats_of_;
  std::map<std::pair<OccurrenceId, OccurrenceId>, std::vector<const RadialSeat*>> seated_;
  std::set<OccurrenceId> outer_;  // parts that others lie in
  std::set<OccurrenceId> turning_;
};

}  // namespace

void add_pin_joints(const DeclaredJob& declared, std::vector<Joint>& joints) {
  Pins(declared, joints).find();
}

}  // namespace spotblue
