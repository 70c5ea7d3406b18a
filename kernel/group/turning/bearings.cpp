#include "group/turning/bearings.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <utility>

#include "group/turning/bearing_seats.hpp"
#include "group/turning/load_place.hpp"
#include "group/words/said_turning.hpp"
#include "spotblue/base/angle.hpp"
#include "spotblue/mechanics/bearing_loads.hpp"

namespace spotblue {
namespace {

constexpr double kWholeWay_deg = 359.9;
// Even shares are taken where bearings that give alike would carry no more than so much else, of
// one share. Choice of this program, no source.
constexpr double kEvenly = 0.1;

// Bearings whose stretches overlap stand at one place: the two halves of a split one.
struct Support {
  std::vector<std::size_t> seats;  // into the bearing seats
  double from = 0.0, to = 0.0;     // on the line
  [[nodiscard]] double middle() const { return 0.5 * (from + to); }
};

// A force on a body at a place of its line.
struct BodyForce {
  double at = 0.0;
  double force_n = 0.0;
};

class RunningBodies {
 public:
  RunningBodies(const DeclaredJob& declared, const Groups& groups, const Turns& turns,
                const std::vector<SurfaceSizes>& surfaces)
      : declared_(declared),
        groups_(groups),
        turns_(turns),
        surfaces_(surfaces),
        seats_(find_bearing_seats(declared, groups, turns, surfaces)) {
    for (std::size_t i = 0; i < seats_.size(); ++i) {
      running_.bearings.push_back(bare_bearing(seats_[i]));
      of_body_[seats_[i].body].push_back(i);
      carried_by_[groups.turns_with[seats_[i].carrying]].push_back(i);
    }
  }

  [[nodiscard]] Running found() {
    for (OccurrenceId part; part < turns_.of.size(); ++part) {
      const std::size_t body = groups_.turns_with[part];
      if (turns_.of[part] && !number_of_.contains(body)) {
        number_of_[body] = running_.bodies.size();
        running_.bodies.push_back(bare_body(part));
      }
    }
    for (const auto& [body, number] : number_of_) {
      carry(body);
    }
    return std::move(running_);
  }

 private:
  [[nodiscard]] const RadialSeat& radial(const BearingSeat& seat) const {
    return declared_.look->seats.radial[seat.seat];
  }
  [[nodiscard]] LengthUnit unit() const { return declared_.job->unit; }

  [[nodiscard]] Bearing bare_bearing(const BearingSeat& seat) const {
    const RadialSeat& of = radial(seat);
    Bearing bearing{of.hole,      of.shaft,      seat.seat,    seat.rub.turning,
                    seat.rub.rpm, seat.rub.duty, seat.rub.both};
    bearing.certainty = surfaces_[seat.seat].pressing == Pressing::none && seat.reached
                            ? Certainty::certain
                            : Certainty::perhaps;
    bearing.centre_line = of.centre_line;
    bearing.station = 0.5 * (seat.from + seat.to);
    bearing.length = of.engaged;
    bearing.covered = of.coverage;
    return bearing;
  }

  [[nodiscard]] TurningBody bare_body(OccurrenceId part) const {
    const Turn& turn = *turns_.of[part];
    return {part, turn.rpm, turn.duty, turn.load_n, turn.thrust_n};
  }

  // The line with the most seats of the body, then the largest seat, then the longest.
  [[nodiscard]] CentreLineId main_line(const std::vector<std::size_t>& seats) const {
    std::map<CentreLineId, std::tuple<std::size_t, double, double>> lines;
    for (const std::size_t i : seats) {
      const RadialSeat& of = radial(seats_[i]);
      auto& [count, diameter, length] = lines[of.centre_line];
      ++count;
      diameter = std::max(diameter, of.shaft_diameter);
      length += of.engaged;
    }
    return std::max_element(lines.begin(), lines.end(),
                            [](const auto& x, const auto& y) { return x.second < y.second; })
        ->first;
  }

  [[nodiscard]] std::vector<Support> supports(const std::vector<std::size_t>& seats) const {
    std::vector<std::size_t> ordered = seats;
    std::sort(ordered.begin(), ordered.end(), [this](std::size_t x, std::size_t y) {
      return std::pair(seats_[x].from, x) < std::pair(seats_[y].from, y);
    });
    std::vector<Support> all;
    for (const std::size_t i : ordered) {
      const BearingSeat& seat = seats_[i];
      if (all.empty() || !(seat.from < all.back().to || seat.from == all.back().from)) {
        all.push_back({{}, seat.from, seat.to});
      }
      all.back().seats.push_back(i);
      all.back().to = std::max(all.back().to, seat.to);
    }
    return all;
  }

  // Works out what a body's bearings carry, those of the bodies that run on it first.
  void carry(std::size_t body) {
    if (!begun_.insert(body).second) {
      return;
    }
    TurningBody& told = running_.bodies[number_of_.at(body)];
    const Turn& turn = *turns_.of[told.part];
    const LoadPlace place = load_place(declared_, groups_, turn);
    told.load_place = place.words;
    const auto own = of_body_.find(body);
    if (own == of_body_.end()) {
      return;
    }
    told.centre_line = main_line(own->second);
    std::vector<std::size_t> on_line;
    for (const std::size_t i : own->second) {
      if (radial(seats_[i]).centre_line == *told.centre_line) {
        if (seats_[i].reached) {
          on_line.push_back(i);
        } else {
          running_.bearings[i].how = said::kPerhapsNotReached;
        }
      } else {
        off_line(running_.bearings[i], told, place);
      }
    }
    const std::vector<Support> all = supports(on_line);
    if (all.size() == 2) {
      told.span = all[1].middle() - all[0].middle();
    }
    if (place.at) {
      told.load_at = station(line(*told.centre_line), *place.at);
    }
    share(body, told, turn, all);
  }

  [[nodiscard]] const Line& line(CentreLineId id) const {
    static const Line kNone;
    const auto& lines = declared_.look->seats.centre_lines;
    return lines.empty() ? kNone : lines[id].line;
  }

  // What comes in at a seat beside the line is carried there first.
  void off_line(Bearing& bearing, const TurningBody& body, const LoadPlace& place) const {
    const bool comes_in = std::any_of(place.part.begin(), place.part.end(), [&](OccurrenceId part) {
      return groups_.turns_with[part] == groups_.turns_with[bearing.hole.occurrence] ||
             groups_.turns_with[part] == groups_.turns_with[bearing.shaft.occurrence];
    });
    const bool of_another =
        comes_in && groups_.turns_with[place.part.front()] != groups_.turns_with[body.part];
    if (of_another && body.load_n) {
      bearing.load_n = body.load_n;
      bearing.how = said::kWholeLoadHere;
    } else {
      bearing.how = say(said::kBesideLine, declared_.names.reference(body.part));
    }
  }

  // What other bodies that turn put on this one, and why that is not known.
  [[nodiscard]] std::pair<std::vector<BodyForce>, Saying> passed_on(std::size_t body,
                                                                    const Line& axis) {
    std::pair<std::vector<BodyForce>, Saying> forces;
    for (const std::size_t i : carried_by_[body]) {
      carry(seats_[i].body);
      const Bearing& bearing = running_.bearings[i];
      if (bearing.load_n) {
        const Point at = at_station(line(bearing.centre_line), bearing.station);
        forces.first.push_back({station(axis, at), std::abs(*bearing.load_n)});
      } else {
        forces.second = say(said::kPassedOnNotKnown, declared_.names.reference(seats_[i].carried));
      }
    }
    return forces;
  }

  // @param why  empty: no load is given.
  void leave_open(const std::vector<Support>& all, const Saying& why) {
    for (const Support& support : all) {
      for (const std::size_t i : support.seats) {
        Bearing& bearing = running_.bearings[i];
        bearing.how = why.empty()
                          ? say(said::kNoLoadGivenFor, declared_.names.reference(bearing.turning))
                          : why;
      }
    }
  }

  void share(std::size_t body, const TurningBody& told, const Turn& turn,
             const std::vector<Support>& all) {
    auto [forces, unknown] = passed_on(body, line(*told.centre_line));
    const bool passed = !forces.empty();
    if (!turn.load_n && !passed) {
      leave_open(all, unknown);
      return;
    }
    if (!unknown.empty()) {
      leave_open(all, unknown);
      return;
    }
    if (turn.load_n && told.load_at) {
      forces.push_back({*told.load_at, *turn.load_n});
    }
    const bool placed = told.load_at || !turn.load_n;
    const LoadSharing sharing =
        turn.loaded != nullptr ? turn.loaded->sharing : LoadSharing::by_statics;
    if (!placed && all.size() == 2 && sharing == LoadSharing::by_statics) {
      leave_open(all, said::kLoadPlaceNotKnown);
      return;
    }
    if (!placed) {
      forces.push_back({all.front().middle(), *turn.load_n});
    }
    tell(all, loads_of(forces, all, sharing), how(told, turn, all, sharing, passed), placed);
    doubt_open(all, forces.size() > 1);
    if (sharing == LoadSharing::evenly && turn.load_n && !turn.loaded->at.empty()) {
      doubt_even(all, forces);
    }
  }

  // Which way loads act across the axis nobody gives.
  void doubt_open(const std::vector<Support>& all, bool many_sides) {
    for (const Support& support : all) {
      for (const std::size_t seat : support.seats) {
        Bearing& bearing = running_.bearings[seat];
        if (!bearing.load_n || !is_open(bearing)) {
          continue;
        }
        if (many_sides) {
          bearing.doubt += say(said::kManySidesOpen, angle(bearing.covered));
        } else if (*bearing.load_n < 0.0) {
          bearing.doubt += say(said::kLiftedOpen, angle(bearing.covered));
        }
      }
    }
  }

  // Bearings that give alike carry of a moment what goes by their way from their middle.
  void doubt_even(const std::vector<Support>& all, const std::vector<BodyForce>& forces) {
    const auto count = static_cast<double>(all.size());
    double middle = 0.0;
    for (const Support& support : all) {
      middle += support.middle() / count;
    }
    double force_n = 0.0;
    double moment = 0.0;
    for (const BodyForce& force : forces) {
      force_n += force.force_n;
      moment += force.force_n * (force.at - middle);
    }
    double spread = 0.0;
    double farthest = 0.0;
    for (const Support& support : all) {
      const double off = support.middle() - middle;
      spread += off * off;
      farthest = std::max(farthest, std::abs(off));
    }
    if (!(spread > 0.0) || std::abs(moment) * farthest <= kEvenly * spread * force_n / count) {
      return;
    }
    for (const Support& support : all) {
      const double load_n = force_n / count + moment * (support.middle() - middle) / spread;
      for (const std::size_t seat : support.seats) {
        running_.bearings[seat].doubt += say(
            said::kEvenlyNotBalanced, newton_metres(std::abs(moment) / 1000.0), newtons(load_n));
      }
    }
  }

  // Of several forces, whose directions nobody gives, the most that each bearing may come to carry.
  [[nodiscard]] static BearingLoads loads_of(const std::vector<BodyForce>& forces,
                                             const std::vector<Support>& all, LoadSharing sharing) {
    std::vector<Length> places;
    places.reserve(all.size());
    for (const Support& support : all) {
      places.push_back(Length::mm(support.middle()));
    }
    BearingLoads sum;
    for (const BodyForce& force : forces) {
      const StationForce one{Length::mm(force.at), force.force_n};
      BearingLoads loads = bearing_loads({&one, 1}, places, sharing);
      if (!loads.unknown.empty() || forces.size() == 1) {
        return loads;
      }
      sum.loads_n.resize(all.size(), 0.0);
      for (std::size_t i = 0; i < all.size(); ++i) {
        sum.loads_n[i] += std::abs(loads.loads_n[i]);
      }
      sum.moment_nm += std::abs(loads.moment_nm);
    }
    return sum;
  }

  [[nodiscard]] Saying how(const TurningBody& told, const Turn& turn,
                           const std::vector<Support>& all, LoadSharing sharing,
                           bool passed) const {
    Saying text = turn.load_n ? say(said::kLoad, told.load_place) : Saying(said::kNoLoadOfItsOwn);
    if (passed) {
      text += said::kWithWhatRunsOnIt;
    }
    if (sharing == LoadSharing::evenly && all.size() > 1) {
      return text + say(said::kSharedEvenly, all.size());
    }
    if (all.size() == 1) {
      return text + said::kOneCarriesAll;
    }
    return told.span ? text + say(said::kByStatics, Length::mm(*told.span)) : text;
  }

  void tell(const std::vector<Support>& all, const BearingLoads& loads, const Saying& how,
            bool placed) {
    if (!loads.unknown.empty()) {
      leave_open(all, say(said::kSayShared, loads.unknown));
      return;
    }
    for (std::size_t i = 0; i < all.size(); ++i) {
      for (const std::size_t seat : all[i].seats) {
        Bearing& bearing = running_.bearings[seat];
        bearing.load_n = loads.loads_n[i];
        bearing.how = how;
        if (all[i].seats.size() > 1) {
          bearing.how += say(said::kSeatsAtOnePlace, all[i].seats.size());
        }
        if (all.size() == 1 && placed) {
          bearing.moment_nm = loads.moment_nm;
        }
      }
    }
  }

  const DeclaredJob& declared_;
  const Groups& groups_;
  const Turns& turns_;
  const std::vector<SurfaceSizes>& surfaces_;
  std::vector<BearingSeat> seats_;
  std::map<std::size_t, std::vector<std::size_t>> of_body_;     // into seats_
  std::map<std::size_t, std::vector<std::size_t>> carried_by_;  // the same, by the other body
  std::map<std::size_t, std::size_t> number_of_;                // of running_.bodies, by body
  std::set<std::size_t> begun_;
  Running running_;
};

}  // namespace

bool is_open(const Bearing& bearing) { return degrees(bearing.covered) < kWholeWay_deg; }

Running find_running(const DeclaredJob& declared, const Groups& groups, const Turns& turns,
                     const std::vector<SurfaceSizes>& surfaces) {
  return RunningBodies(declared, groups, turns, surfaces).found();
}

}  // namespace spotblue
