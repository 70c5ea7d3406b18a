#include "spotblue/geometry/mockup_faces.hpp"

#include <fmt/format.h>

#include <cmath>

#include "geometry/mockup/block_faces.hpp"
#include "geometry/mockup/turned_profile.hpp"
#include "spotblue/geometry/mockup.hpp"

namespace spotblue {
namespace {

class FaceList {
 public:
  void add(std::string name, int axis, double station, int sense) {
    faces_.push_back({std::move(name), axis, station, sense});
  }
  [[nodiscard]] std::vector<MockupFace> take() { return std::move(faces_); }

 private:
  std::vector<MockupFace> faces_;
};

// The shoulders at both ends of a step; the material is on the side of the neighbour that stands
// higher.
void add_step(FaceList& faces, const TurnedPart& part, Side side, std::size_t i) {
  const Step& step = (side == Side::external ? part.outside : part.inside)[i];
  const double sign = side == Side::external ? 1.0 : -1.0;
  for (const int end : {0, 1}) {
    const double own = (end == 0 ? step.diameter : step.end_diameter) / 2;
    const auto neighbour = neighbour_radius(part, side, i, end);
    const bool neighbour_higher = neighbour && sign * *neighbour > sign * own;
    if (neighbour && *neighbour == own) {
      continue;
    }
    // At its start, a step that stands higher than its neighbour bounds material upwards of it.
    const int sense = (end == 0) == neighbour_higher ? 1 : -1;
    const double station = step.start + (end == 0 ? 0.0 : step.length);
    const char* word = end == 0 ? "start" : "end";
    faces.add(fmt::format("{} {} {}", side == Side::external ? "outside" : "inside", i + 1, word),
              2, station, sense);
    if (!step.name.empty()) {
      faces.add(fmt::format("{} {}", step.name, word), 2, station, sense);
    }
  }
}

void add_turned(FaceList& faces, const TurnedPart& part) {
  faces.add("first", 2, 0.0, -1);
  faces.add("last", 2, turned_length(part), 1);
  for (const Side side : {Side::external, Side::internal}) {
    const auto& steps = side == Side::external ? part.outside : part.inside;
    for (std::size_t i = 0; i < steps.size(); ++i) {
      add_step(faces, part, side, i);
    }
    const auto& grooves = side == Side::external ? part.outside_grooves : part.inside_grooves;
    for (std::size_t i = 0; i < grooves.size(); ++i) {
      const char* word = side == Side::external ? "outside groove" : "inside groove";
      faces.add(fmt::format("{} {} start", word, i + 1), 2, grooves[i].at, 1);
      faces.add(fmt::format("{} {} end", word, i + 1), 2, grooves[i].at + grooves[i].width, -1);
    }
  }
}

void add_block(FaceList& faces, const BlockPart& block) {
  constexpr std::pair<const char*, PartFace> kFaces[] = {
      {"bottom", PartFace::first}, {"top", PartFace::last},    {"left", PartFace::left},
      {"right", PartFace::right},  {"front", PartFace::front}, {"back", PartFace::back}};
  for (const auto& [name, face] : kFaces) {
    faces.add(name, face_axis(face), face_station(block, face), face_sense(face));
    for (std::size_t i = 0; i < block.added.size(); ++i) {
      const BlockPart added{block.added[i].size, {}, {}, {}};
      const Point& corner = block.added[i].corner;
      const int axis = face_axis(face);
      const double base = axis == 0 ? corner.x : axis == 1 ? corner.y : corner.z;
      faces.add(fmt::format("added {} {}", i + 1, name), axis, base + face_station(added, face),
                face_sense(face));
    }
  }
  for (std::size_t i = 0; i < block.bosses.size(); ++i) {
    const Boss& boss = block.bosses[i];
    const double top = face_station(block, boss.face) + face_sense(boss.face) * boss.height;
    faces.add(fmt::format("boss {}", i + 1), face_axis(boss.face), top, face_sense(boss.face));
    if (!boss.name.empty()) {
      faces.add(boss.name, face_axis(boss.face), top, face_sense(boss.face));
    }
  }
  for (std::size_t i = 0; i < block.bores.size(); ++i) {
    const Bore& bore = block.bores[i];
    const int sense = face_sense(bore.face);
    double start = face_station(block, bore.face);
    for (const Boss& boss : block.bosses) {
      if (boss.face == bore.face &&
          std::hypot(bore.u - boss.u, bore.v - boss.v) < boss.diameter / 2) {
        start = face_station(block, bore.face) + sense * boss.height;
      }
    }
    const std::string name = bore.name.empty() ? fmt::format("bore {}", i + 1) : bore.name;
    if (bore.counterbore) {
      faces.add(name + " counterbore", face_axis(bore.face),
                start - sense * bore.counterbore->depth, sense);
    }
    if (bore.depth) {
      faces.add(name + " bottom", face_axis(bore.face), start - sense * *bore.depth, sense);
    }
  }
}

}  // namespace

std::vector<MockupFace> faces_of(const MockupPart& part) {
  FaceList faces;
  if (const auto* turned = std::get_if<TurnedPart>(&part.shape)) {
    add_turned(faces, *turned);
  } else if (const auto* block = std::get_if<BlockPart>(&part.shape)) {
    add_block(faces, *block);
  } else if (const auto* ring = std::get_if<RingPart>(&part.shape)) {
    faces.add("first", 2, 0.0, -1);
    faces.add("last", 2, ring->thickness, 1);
  } else if (const auto* key = std::get_if<KeyPart>(&part.shape)) {
    faces.add("first", 2, 0.0, -1);
    faces.add("last", 2, key->length, 1);
  }
  return faces.take();
}

}  // namespace spotblue
