#include "group/turning/thrust_faces.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <limits>
#include <map>
#include <optional>
#include <queue>
#include <utility>

#include "group/turning/rubbing.hpp"
#include "group/words/said_turning.hpp"

namespace spotblue {
namespace {

// Faces this far apart may still close the end play; farther ones take no thrust. Choice of this
// program, no source.
constexpr double kClosesEndPlay_mm = 2.0;
// That `low` moves along its face's normal towards `high` is stopped when the gap has closed.
struct Stop {
  std::size_t to = 0;  // of Groups::moves_with
  double gap = 0.0;
  std::size_t seat = 0;
};

class AxialNet {
 public:
  AxialNet(const DeclaredJob& declared, const Groups& groups)
      : declared_(declared), groups_(groups) {
    const std::vector<AxialSeat>& seats = declared.look->seats.axial;
    for (std::size_t i = 0; i < seats.size(); ++i) {
      const std::size_t a = group(seats[i].a);
      const std::size_t b = group(seats[i].b);
      if (a != b) {
        stops_[{a, sense(seats[i])}].push_back({b, std::max(0.0, gap(i)), i});
        stops_[{b, !sense(seats[i])}].push_back({a, std::max(0.0, gap(i)), i});
      }
    }
  }

  [[nodiscard]] double gap(std::size_t seat) const {
    const MeasuredGap* measured = declared_.axial_gaps.at(seat);
    return measured != nullptr ? measured->value.in_mm() : declared_.look->seats.axial[seat].gap;
  }

  // How far a may come towards b before other faces stop them, and by which; nothing where none do.
  struct Stopped {
    double after = 0.0;
    std::size_t seat = 0;
  };
  [[nodiscard]] std::optional<Stopped> without(std::size_t seat) const {
    const AxialSeat& of = declared_.look->seats.axial[seat];
    const std::size_t from = group(of.a);
    const std::size_t to = group(of.b);
    using Open = std::pair<double, std::size_t>;
    std::priority_queue<Open, std::vector<Open>, std::greater<>> open;
    std::map<std::size_t, std::pair<double, std::size_t>> reached;  // after, last seat
    open.push({0.0, from});
    reached[from] = {0.0, seat};
    while (!open.empty()) {
      const auto [after, at] = open.top();
      open.pop();
      if (at == to) {
        return Stopped{after, reached.at(at).second};
      }
      const auto stops = stops_.find({at, sense(of)});
      if (after > reached.at(at).first || after > kClosesEndPlay_mm || stops == stops_.end()) {
        continue;
      }
      for (const Stop& stop : stops->second) {
        const double then = after + stop.gap;
        const auto known = reached.find(stop.to);
        if (stop.seat != seat && same_line(of, stop.seat) &&
            (known == reached.end() || then < known->second.first)) {
          reached[stop.to] = {then, stop.seat};
          open.push({then, stop.to});
        }
      }
    }
    return std::nullopt;
  }

 private:
  [[nodiscard]] std::size_t group(const FeatureRef& face) const {
    return groups_.moves_with.at(face.occurrence);
  }
  // Which way a moves to close it: along the axis of the largest component, or against it.
  static bool sense(const AxialSeat& seat) {
    const Direction along = seat.axis.along;
    const double x = std::abs(along.x());
    const double y = std::abs(along.y());
    const double z = std::abs(along.z());
    return x >= y && x >= z ? along.x() > 0.0 : y >= z ? along.y() > 0.0 : along.z() > 0.0;
  }
  [[nodiscard]] bool same_line(const AxialSeat& of, std::size_t other) const {
    constexpr double kParallel = 0.999;
    return std::abs(dot(of.axis.along, declared_.look->seats.axial[other].axis.along)) >= kParallel;
  }

  const DeclaredJob& declared_;
  const Groups& groups_;
  std::map<std::pair<std::size_t, bool>, std::vector<Stop>> stops_;
};

// A gap that is wanted keeps the faces off each other; faces that overlap are found as such.
bool closes(const DeclaredJob& declared, std::size_t seat, double gap) {
  const AxialWant* want = declared.axial_wants.at(seat);
  if (want != nullptr && want->kind == AxialWantKind::gap && want->least > Length()) {
    return false;
  }
  return gap >= -declared.look->settings.seats.same_length_mm && gap <= kClosesEndPlay_mm;
}

}  // namespace

std::vector<ThrustFace> find_thrust_faces(const DeclaredJob& declared, const Groups& groups,
                                          const Turns& turns) {
  const AxialNet net(declared, groups);
  const std::vector<AxialSeat>& seats = declared.look->seats.axial;
  const double same = declared.look->settings.seats.same_length_mm;
  std::vector<ThrustFace> faces;
  for (std::size_t i = 0; i < seats.size(); ++i) {
    const auto rub = rubbing(groups, turns, seats[i].a.occurrence, seats[i].b.occurrence);
    const double gap = net.gap(i);
    if (!rub || !closes(declared, i, gap)) {
      continue;
    }
    const auto stopped = net.without(i);
    const double short_by = stopped ? std::max(0.0, gap - stopped->after) : 0.0;
    ThrustFace face{seats[i].a, seats[i].b,    i,  rub->turning, rub->rpm,
                    rub->duty,  rub->thrust_n, gap};
    face.short_by = short_by;
    if (short_by > same) {
      const AxialSeat& other = seats[stopped->seat];
      face.certainty = Certainty::perhaps;
      face.why = say(said::kStopSooner, declared.names.reference(other.a),
                     declared.names.reference(other.b), Length::mm(short_by));
    }
    faces.push_back(std::move(face));
  }
  return faces;
}

}  // namespace spotblue
