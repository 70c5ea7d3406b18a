#include "group/axial/setting_room.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

#include "geometry/ways/free_travel.hpp"
#include "spotblue/geometry/axial_stops.hpp"

namespace spotblue {
namespace {

using proof::FreeTravel;
using proof::Sense;

// Contact so much later than it might come is told as certain, mm.
// Choice of this program, no source.
constexpr double kOneContact_mm = 1e-3;

class Room {
 public:
  Room(const DeclaredJob& declared, const Groups& groups, const PartLengths& lengths,
       const FacePaths& paths, std::span<const SetPart> set, const StackLength& own,
       const Line& line)
      : declared_(declared),
        groups_(groups),
        lengths_(lengths),
        paths_(paths),
        set_(set),
        own_(own),
        line_(line),
        carried_(hanging_on(own.to.occurrence, own.from.occurrence)),
        still_(hanging_on(own.from.occurrence, own.to.occurrence)) {}

  // As the length grows (+1) or shrinks (-1).
  [[nodiscard]] std::optional<MetalEnd> end(int growing) const {
    const Sense sense = (growing > 0) == own_.outward ? Sense::up : Sense::down;
    FreeTravel least{kNever, kNever, 0.0};
    MetalEnd end;
    for (const OccurrenceId moving : carried_) {
      for (const OccurrenceId still : still_) {
        if (!near(moving, still)) {
          continue;
        }
        const FreeTravel travel = proof::free_travel(declared_.look->model, declared_.look->seats,
                                                     moving, still, line_, sense);
        if (travel.clear < least.clear) {
          least = travel;
          end.part = moving;
          end.by = still;
        }
      }
    }
    if (!std::isfinite(least.clear)) {
      return std::nullopt;
    }
    end.certain = least.meets <= least.clear + kOneContact_mm;
    const double met = least.at + (sense == Sense::up ? least.clear : -least.clear);
    const Limits moving = place_of(own_.to, end.part, least.at);
    const Limits still = place_of(own_.from, end.by, met);
    end.at = own_.outward ? Limits{still.lower - moving.upper, still.upper - moving.lower}
                          : Limits{moving.lower - still.upper, moving.upper - still.lower};
    return end;
  }

 private:
  static constexpr double kNever = std::numeric_limits<double>::infinity();

  [[nodiscard]] bool is_set(OccurrenceId part) const {
    return std::any_of(set_.begin(), set_.end(),
                       [part](const SetPart& one) { return one.held && one.part == part; });
  }

  // What is joined to the one along the line, but not over the other or over parts that are set.
  [[nodiscard]] std::vector<OccurrenceId> hanging_on(OccurrenceId first, OccurrenceId other) const {
    std::vector<OccurrenceId> parts{first};
    const auto take = [&](OccurrenceId part) {
      if (part != other && !is_set(part) &&
          std::find(parts.begin(), parts.end(), part) == parts.end()) {
        parts.push_back(part);
      }
    };
    for (std::size_t i = 0; i < parts.size(); ++i) {
      for (const Joint& joint : groups_.joints) {
        if (joint.along && (joint.a == parts[i] || joint.b == parts[i])) {
          take(joint.a == parts[i] ? joint.b : joint.a);
        }
      }
    }
    return parts;
  }

  // Whether the two could meet at all: by spheres round their boxes, seen along the line.
  [[nodiscard]] bool near(OccurrenceId a, OccurrenceId b) const {
    const Box& one = declared_.look->model.occurrences[a].box;
    const Box& other = declared_.look->model.occurrences[b].box;
    if (is_empty(one) || is_empty(other)) {
      return true;
    }
    const auto apart = 0.5 * (one.low + one.high) - 0.5 * (other.low + other.high);
    return norm(cross(apart, line_.along)) <= 0.5 * (diagonal(one) + diagonal(other));
  }

  // From a face of a part of the body to a place on one of its parts, along the line: over that
  // part's face there, or the nearest one and what is left.
  [[nodiscard]] Limits place_of(const FeatureRef& from, OccurrenceId part, double at) const {
    const Model& model = declared_.look->model;
    FeatureRef face = from;
    double nearest =
        part == from.occurrence ? std::abs(station_of_face(model, from, line_) - at) : kNever;
    for (const FeatureRef& one :
         faces_square_to(model, part, line_, declared_.look->settings.seats)) {
      const double off = std::abs(station_of_face(model, one, line_) - at);
      if (off < nearest) {
        nearest = off;
        face = one;
      }
    }
    Limits place = along_path(from, face);
    const double left = at - station_of_face(model, face, line_);
    if (std::abs(left) > declared_.look->settings.seats.same_length_mm) {
      add(place, left, lengths_.between(face, face, Length::mm(std::abs(left))).limits);
    }
    return place;
  }

  [[nodiscard]] Limits along_path(const FeatureRef& from, const FeatureRef& to) const {
    Limits place;
    if (to == from) {
      return place;
    }
    const auto path = paths_.path(from, to, line_);
    if (!path) {
      const Model& model = declared_.look->model;
      const double step = station_of_face(model, to, line_) - station_of_face(model, from, line_);
      add(place, step, lengths_.as_set(Length::mm(std::abs(step))).limits);
      return place;
    }
    for (const PathLength& length : *path) {
      add(place, length.step_mm, length.known.limits);
    }
    return place;
  }

  static void add(Limits& place, double step, Limits length) {
    place = step >= 0.0 ? Limits{place.lower + length.lower, place.upper + length.upper}
                        : Limits{place.lower - length.upper, place.upper - length.lower};
  }

  const DeclaredJob& declared_;
  const Groups& groups_;
  const PartLengths& lengths_;
  const FacePaths& paths_;
  std::span<const SetPart> set_;
  const StackLength& own_;
  const Line& line_;
  std::vector<OccurrenceId> carried_, still_;
};

}  // namespace

SettingRoom setting_room(const DeclaredJob& declared, const Groups& groups,
                         const PartLengths& lengths, const FacePaths& paths,
                         std::span<const SetPart> set, const StackLength& own, const Line& line) {
  const Room room(declared, groups, lengths, paths, set, own, line);
  return {room.end(-1), room.end(1)};
}

}  // namespace spotblue
