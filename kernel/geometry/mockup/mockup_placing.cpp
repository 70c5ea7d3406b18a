#include "spotblue/geometry/mockup_placing.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>

#include "geometry/mockup/block_faces.hpp"
#include "geometry/mockup/mockup_check.hpp"
#include "geometry/mockup/turned_profile.hpp"
#include "geometry/model/far_places.hpp"
#include "spotblue/base/nearest.hpp"
#include "spotblue/geometry/mockup_faces.hpp"

namespace spotblue {
namespace {

constexpr double kParallelSine = 1e-9;  // sine of the angle within which two lines are parallel

// Names of things, to look one up or say which is nearest.
template <typename Item>
std::size_t index_by_name(const std::vector<Item>& items, const std::string& name,
                          const MockupPlace& place, std::string_view what) {
  std::vector<std::string> names;
  for (std::size_t i = 0; i < items.size(); ++i) {
    if (items[i].name == name) {
      return i;
    }
    names.push_back(items[i].name);
  }
  const std::string nearest = nearest_word(name, names);
  throw place.error(fmt::format("there is no {} \"{}\"", what, name),
                    nearest.empty() ? fmt::format("add the {}", what)
                                    : fmt::format("did you mean \"{}\"?", nearest));
}

// Columns x, y, z of a rotation and an origin.
Frame frame_of(Direction x, Direction y, Direction z, Point at) {
  return {
      {{{x.x(), y.x(), z.x(), at.x}, {x.y(), y.y(), z.y(), at.y}, {x.z(), y.z(), z.z(), at.z}}}};
}

Frame line_frame(const PlacingLine& line) {
  const Direction along = unit(line.along);
  const Point side = std::abs(along.x()) < 0.9 ? Point{1, 0, 0} : Point{0, 1, 0};
  const Direction x = unit(side - dot(side, along) * along);
  return frame_of(x, third(along, x), along, line.at);
}

Frame turn_about_z(double angle) {
  const double c = std::cos(angle);
  const double s = std::sin(angle);
  return {{{{c, -s, 0, 0}, {s, c, 0, 0}, {0, 0, 1, 0}}}};
}

Frame shift(Point by) { return frame_of({1, 0, 0}, {0, 1, 0}, {0, 0, 1}, by); }

// Brings a part axis onto z by turning all three on.
Frame axis_to_z(int axis) {
  switch (axis) {
    case 0:
      return {{{{0, 1, 0, 0}, {0, 0, 1, 0}, {1, 0, 0, 0}}}};
    case 1:
      return {{{{0, 0, 1, 0}, {1, 0, 0, 0}, {0, 1, 0, 0}}}};
    default:
      return {};
  }
}

Point on_axis(int axis, double station) {
  return axis == 0 ? Point{station, 0, 0} : axis == 1 ? Point{0, station, 0} : Point{0, 0, station};
}

// What of a part goes on the line: a point and the axis through it.
struct Hold {
  int axis = 2;
  Point at;
};

class Placer {
 public:
  explicit Placer(const Mockup& mockup) : mockup_(mockup), lines_(mockup.lines) {
    if (lines_.empty()) {
      lines_.push_back({"", {}, {0.0, 0.0, 1.0}});
    }
    for (const PlacingLine& line : lines_) {
      if (!(norm(line.along) > 0.0) || !std::isfinite(norm(line.along))) {
        throw Error(ErrorCode::bad_input, {mockup.file, fmt::format("line \"{}\"", line.name)},
                    "its direction has no length", "give along = [x, y, z] with one of them not 0");
      }
    }
    states_.resize(mockup.placements.size());
    frames_.resize(mockup.placements.size());
    check_names();
  }

  std::vector<PlacedPart> place_all() {
    std::vector<PlacedPart> placed;
    for (std::size_t i = 0; i < mockup_.placements.size(); ++i) {
      resolve(i);
      const Placement& placement = mockup_.placements[i];
      const std::size_t part = part_of(i);
      for (std::size_t k = 0; k < frames_[i].size(); ++k) {
        const std::string name =
            frames_[i].size() == 1 ? placement.name : fmt::format("{} {}", placement.name, k + 1);
        require_near(i, frames_[i][k]);
        placed.push_back({name, part, placement.group, frames_[i][k]});
      }
    }
    check_all_used(placed);
    return placed;
  }

 private:
  enum class State { waiting, working, done };

  // A look at what is written would leave it out, or refuse it.
  void require_near(std::size_t i, const Frame& frame) const {
    const Point at = place_point(frame, {});
    const double far = std::hypot(at.x, at.y, at.z);
    if (!(far <= kFarthest)) {
      throw place(i).error(
          fmt::format("it is placed {:.3g} mm from the origin, and may be {:.0e} mm", far,
                      kFarthest),
          "correct where it stands");
    }
  }

  [[nodiscard]] MockupPlace place(std::size_t i) const {
    return {mockup_.file, fmt::format("place \"{}\"", mockup_.placements[i].name)};
  }

  [[nodiscard]] std::size_t part_of(std::size_t i) const {
    return index_by_name(mockup_.parts, mockup_.placements[i].part, place(i), "part");
  }

  void check_names() const {
    std::set<std::string> names;
    for (std::size_t i = 0; i < mockup_.placements.size(); ++i) {
      need_plain(place(i), "its name", mockup_.placements[i].name);
      need_plain(place(i), "its group", mockup_.placements[i].group);
      if (!names.insert(mockup_.placements[i].name).second) {
        throw place(i).error("two placements have this name",
                             "give this one a name of its own: name = \"...\"");
      }
    }
  }

  void check_all_used(const std::vector<PlacedPart>& placed) const {
    for (std::size_t i = 0; i < mockup_.parts.size(); ++i) {
      const auto uses = [i](const PlacedPart& instance) { return instance.part == i; };
      if (std::none_of(placed.begin(), placed.end(), uses)) {
        throw place_of(mockup_, mockup_.parts[i])
            .error("is placed nowhere", "add a [[place]] for it, or take the part out");
      }
    }
  }

  void resolve(std::size_t i) {
    if (states_[i] == State::done) {
      return;
    }
    if (states_[i] == State::working) {
      throw place(i).error("waits for itself: the placements against one another form a ring",
                           "give one of them a position of its own: at = ...");
    }
    states_[i] = State::working;
    frames_[i] = mockup_.placements[i].keyseat_of.empty() ? on_line(i) : std::vector{in_keyseat(i)};
    states_[i] = State::done;
  }

  [[nodiscard]] Hold hold_of(std::size_t i) const {
    const std::string& on = mockup_.placements[i].on;
    const MockupPart& part = mockup_.parts[part_of(i)];
    if (on.empty()) {
      return {};
    }
    std::vector<Bore> bores;
    if (const auto* block = std::get_if<BlockPart>(&part.shape)) {
      bores = block->bores;
    } else if (const auto* turned = std::get_if<TurnedPart>(&part.shape)) {
      bores = turned->bores;
    }
    for (std::size_t k = 0; k < bores.size(); ++k) {
      if (bores[k].name.empty()) {
        bores[k].name = fmt::format("bore {}", k + 1);
      }
    }
    const Bore& bore = bores[index_by_name(bores, on, place(i), "bore")];
    const FacePoint centre = bore_centres(bore).front();
    return {face_axis(bore.face), face_point(bore.face, centre, 0.0)};
  }

  [[nodiscard]] MockupFace face_of(std::size_t i, const std::string& name,
                                   const MockupPlace& where) const {
    const MockupPart& part = mockup_.parts[part_of(i)];
    const std::vector<MockupFace> faces = faces_of(part);
    std::string wanted = name;
    if (std::holds_alternative<BlockPart>(part.shape) && (name == "first" || name == "last")) {
      wanted = name == "first" ? "bottom" : "top";
    }
    return faces[index_by_name(faces, wanted, where, fmt::format("face of \"{}\"", part.name))];
  }

  // A face's plane in the assembly: a point of it and which way it looks.
  struct PlacedFace {
    Point at;
    Direction looks;
  };

  [[nodiscard]] PlacedFace placed_face(std::size_t i, const MockupFace& face) const {
    const Frame& frame = frames_[i].front();
    return {place_point(frame, on_axis(face.axis, face.station)),
            place_direction(frame, Direction(on_axis(face.axis, face.sense)))};
  }

  // The part turned and shifted so that its line is z and the point it is held by is the origin.
  [[nodiscard]] Frame held(std::size_t i) const {
    const Placement& placement = mockup_.placements[i];
    const Hold hold = hold_of(i);
    Frame frame = compose(axis_to_z(hold.axis), shift(-hold.at));
    if (placement.facing == Facing::turned_round) {
      frame = compose(Frame{{{{1, 0, 0, 0}, {0, -1, 0, 0}, {0, 0, -1, 0}}}}, frame);
    }
    return frame;
  }

  [[nodiscard]] std::vector<Frame> on_line(std::size_t i) {
    const Placement& placement = mockup_.placements[i];
    const PlacingLine& line = placement.line.empty()
                                  ? lines_.front()
                                  : lines_[index_by_name(lines_, placement.line, place(i), "line")];
    const Frame base = line_frame(line);
    const Frame own = held(i);
    const MockupFace face = face_of(i, placement.face, place(i));
    if (face.axis != hold_of(i).axis) {
      throw place(i).error(fmt::format("face \"{}\" is not square to the line", face.name),
                           "name a face that is, or set the part on another bore");
    }
    const double local = place_point(own, on_axis(face.axis, face.station)).z;
    const int sense =
        place_direction(own, Direction(on_axis(face.axis, face.sense))).z() > 0.0 ? 1 : -1;
    const double target = placement.at ? *placement.at : against(i, base, sense);
    if (placement.circle.count < 1 || placement.circle.count > 10000) {
      throw place(i).error(fmt::format("{} instances on a circle", placement.circle.count),
                           "use a count from 1 to 10000");
    }
    std::vector<Frame> frames;
    for (int k = 0; k < placement.circle.count; ++k) {
      const double angle =
          placement.circle.angle + 2 * std::numbers::pi * k / placement.circle.count;
      Frame frame = compose(turn_about_z(placement.turn), own);
      if (placement.circle.diameter > 0.0) {
        frame = compose(turn_about_z(angle),
                        compose(shift({placement.circle.diameter / 2, 0, 0}), frame));
      }
      const Point aside{placement.aside_x, placement.aside_y, target - local};
      frames.push_back(compose(base, compose(shift(aside), frame)));
    }
    return frames;
  }

  // Station on the line at which a face that looks towards `sense` is to stand.
  [[nodiscard]] double against(std::size_t i, const Frame& line, int sense) {
    const Placement& placement = mockup_.placements[i];
    if (placement.against.empty()) {
      throw place(i).error("has no position", "give at = ..., or against = and against_face = ...");
    }
    const std::size_t other =
        index_by_name(mockup_.placements, placement.against, place(i), "placement");
    resolve(other);
    const PlacedFace face = placed_face(other, face_of(other, placement.against_face, place(i)));
    const double looks = place_direction(inverse(line), face.looks).z();
    if (std::abs(std::abs(looks) - 1.0) > kParallelSine) {
      throw place(i).error(
          fmt::format("the face of \"{}\" is not square to this line", placement.against),
          "set it against a face that is, or give at = ...");
    }
    if (looks * sense > 0.0) {
      throw place(i).error(
          fmt::format("\"{}\" and \"{}\" of \"{}\" look the same way and cannot bear on each other",
                      placement.face, placement.against_face, placement.against),
          "turn the part round, name the opposite face, or give at = ...");
    }
    return place_point(inverse(line), face.at).z - sense * placement.gap;
  }

  [[nodiscard]] Frame in_keyseat(std::size_t i) {
    const Placement& placement = mockup_.placements[i];
    const std::size_t other =
        index_by_name(mockup_.placements, placement.keyseat_of, place(i), "placement");
    resolve(other);
    const auto* key = std::get_if<KeyPart>(&mockup_.parts[part_of(i)].shape);
    const auto* shaft = std::get_if<TurnedPart>(&mockup_.parts[part_of(other)].shape);
    if (key == nullptr) {
      throw place(i).error("only a key lies in a keyseat", "give the part kind = \"key\"");
    }
    if (shaft == nullptr || placement.keyseat < 1 || placement.keyseat > shaft->keyseats.size()) {
      throw place(i).error(
          fmt::format("\"{}\" has no keyseat {}", placement.keyseat_of, placement.keyseat),
          "give the part keyseats = [...], or correct the number");
    }
    const Keyseat& seat = shaft->keyseats[placement.keyseat - 1];
    const double floor = outside_radius(*shaft, seat.at + seat.length / 2) - seat.depth;
    const Frame lying = shift({floor, 0.0, seat.at + (seat.length - key->length) / 2});
    return compose(frames_[other].front(), compose(turn_about_z(seat.angle), lying));
  }

  const Mockup& mockup_;
  std::vector<PlacingLine> lines_;
  std::vector<State> states_;
  std::vector<std::vector<Frame>> frames_;
};

}  // namespace

std::vector<PlacedPart> place_parts(const Mockup& mockup) {
  if (mockup.placements.empty()) {
    if (mockup.parts.size() != 1) {
      throw Error(ErrorCode::bad_input, {mockup.file, "place"},
                  fmt::format("{} parts and no placement", mockup.parts.size()),
                  "add a [[place]] for each part");
    }
    return {{mockup.parts.front().name, 0, "", {}}};
  }
  return Placer(mockup).place_all();
}

}  // namespace spotblue
