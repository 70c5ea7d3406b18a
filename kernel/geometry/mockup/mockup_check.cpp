#include "geometry/mockup/mockup_check.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>

#include "geometry/mockup/block_faces.hpp"
#include "geometry/mockup/turned_check.hpp"
#include "spotblue/base/shown_name.hpp"

namespace spotblue {
namespace {

// Open CASCADE takes points nearer than 1e-7 mm for one (Precision::Confusion), and holds 15
// digits.
constexpr double kLeast_mm = 1e-4;
constexpr double kGreatest_mm = 1e6;

void check_ring(const MockupPlace& place, const RingPart& ring) {
  need_positive(place, "outside", ring.outside);
  need_positive(place, "inside", ring.inside);
  need_positive(place, "thickness", ring.thickness);
  if (ring.inside >= ring.outside) {
    throw place.error(fmt::format("the inside, {}, is not smaller than the outside, {}",
                                  ring.inside, ring.outside),
                      "swap or correct the two diameters");
  }
  if (!(ring.gap >= 0.0) || ring.gap >= ring.inside) {
    throw place.error(fmt::format("a gap of {} in an inside of {}", ring.gap, ring.inside),
                      "use 0 or more, and less than the inside");
  }
}

void check_key(const MockupPlace& place, const KeyPart& key) {
  need_positive(place, "width", key.width);
  need_positive(place, "height", key.height);
  need_positive(place, "length", key.length);
  if (key.ends == EndShape::round && key.length < key.width) {
    throw place.error("is shorter than it is wide", "say ends = \"square\", or make it longer");
  }
}

// Whether a circle lies within the face or within one boss on it.
bool lies_within(const BlockPart& block, PartFace face, FacePoint centre, double radius) {
  const FacePoint size = face_size(block, face);
  const bool in_face = centre.u - radius >= 0.0 && centre.v - radius >= 0.0 &&
                       centre.u + radius <= size.u && centre.v + radius <= size.v;
  return in_face || std::any_of(block.bosses.begin(), block.bosses.end(), [&](const Boss& boss) {
           return boss.face == face &&
                  std::hypot(centre.u - boss.u, centre.v - boss.v) + radius < boss.diameter / 2;
         });
}

}  // namespace

MockupPlace place_of(const Mockup& mockup, const MockupPart& part) {
  return {mockup.file, fmt::format("part \"{}\"", part.name)};
}

void need_plain(const MockupPlace& place, std::string_view what, const std::string& name) {
  if (shown_text(name) != name) {
    throw place.error(fmt::format("{} has letters that can not be shown: \"{}\"", what, name),
                      "leave out line ends, tabs and other control letters");
  }
}

void need_positive(const MockupPlace& place, std::string_view what, double value_mm) {
  if (!(value_mm > 0.0) || !std::isfinite(value_mm)) {
    throw place.error(fmt::format("{}: need more than 0 mm, got {}", what, value_mm),
                      fmt::format("correct the {}", what));
  }
  if (value_mm < kLeast_mm || value_mm > kGreatest_mm) {
    throw place.error(
        fmt::format("{}: {:g} mm is not a size Open CASCADE can make", what, value_mm),
        fmt::format("use {:g} to {:g} mm", kLeast_mm, kGreatest_mm));
  }
}

double widest_radius(const Bore& bore) {
  return std::max(bore.diameter, bore.counterbore ? bore.counterbore->diameter : 0.0) / 2;
}

std::vector<FacePoint> bore_centres(const Bore& bore) {
  std::vector<FacePoint> centres;
  const double radius = bore.circle.value_or(0.0) / 2;
  for (int i = 0; i < bore.count; ++i) {
    const double angle = bore.angle + 2 * std::numbers::pi * i / bore.count;
    centres.push_back({bore.u + radius * std::cos(angle), bore.v + radius * std::sin(angle)});
  }
  return centres;
}

void check_bore(const MockupPlace& place, const Bore& bore) {
  need_positive(place, "diameter", bore.diameter);
  if (bore.depth) {
    need_positive(place, "depth", *bore.depth);
  }
  const double circle = bore.circle.value_or(0.0);
  if (bore.count < 1 || bore.count > 1000 || !(circle >= 0.0)) {
    throw place.error(fmt::format("{} bores on a circle of {}", bore.count, circle),
                      "use a count from 1 to 1000 and a circle of 0 or more");
  }
  if (bore.count > 1 && circle <= 0.0) {
    throw place.error("several bores in one place", "give the diameter of their circle");
  }
  for (std::size_t i = 0; i < bore.grooves.size(); ++i) {
    const BoreGroove& groove = bore.grooves[i];
    const MockupPlace here = place.in("grooves", i);
    need_positive(here, "depth", groove.depth);
    need_positive(here, "width", groove.width);
    if (groove.diameter <= bore.diameter) {
      throw here.error(
          fmt::format("a groove of {} in a bore of {}", groove.diameter, bore.diameter),
          "make it larger than the bore");
    }
    if (bore.depth && groove.depth + groove.width > *bore.depth) {
      throw here.error(fmt::format("lies deeper than the bore, {} mm", *bore.depth),
                       "move it, or make the bore deeper");
    }
  }
  if (bore.counterbore) {
    need_positive(place, "counterbore depth", bore.counterbore->depth);
    if (bore.counterbore->diameter <= bore.diameter) {
      throw place.error(fmt::format("the counterbore, {}, is not larger than the bore, {}",
                                    bore.counterbore->diameter, bore.diameter),
                        "make it larger, or leave it out");
    }
    if (bore.depth && bore.counterbore->depth >= *bore.depth) {
      throw place.error("the counterbore is as deep as the bore", "make the bore deeper");
    }
  }
}

void check_block(const MockupPlace& place, const BlockPart& block) {
  need_positive(place, "size x", block.size.x);
  need_positive(place, "size y", block.size.y);
  need_positive(place, "size z", block.size.z);
  for (std::size_t i = 0; i < block.added.size(); ++i) {
    const MockupPlace here = place.in("added", i);
    need_positive(here, "size x", block.added[i].size.x);
    need_positive(here, "size y", block.added[i].size.y);
    need_positive(here, "size z", block.added[i].size.z);
  }
  for (std::size_t i = 0; i < block.bosses.size(); ++i) {
    const MockupPlace here = place.in("bosses", i);
    need_positive(here, "diameter", block.bosses[i].diameter);
    need_positive(here, "height", block.bosses[i].height);
  }
  for (std::size_t i = 0; i < block.bores.size(); ++i) {
    const Bore& bore = block.bores[i];
    const MockupPlace here = place.in("bores", i);
    check_bore(here, bore);
    const double radius = widest_radius(bore);
    for (const FacePoint& centre : bore_centres(bore)) {
      if (!lies_within(block, bore.face, centre, radius)) {
        const FacePoint size = face_size(block, bore.face);
        throw here.error(
            fmt::format("a bore of {} at ({:.6g}, {:.6g}) is not within the face, {} x {} mm",
                        2 * radius, centre.u, centre.v, size.u, size.v),
            "positions are from the face's own corner; move it, make it smaller or add a boss");
      }
    }
  }
}

void check_parts(const Mockup& mockup) {
  need_plain({mockup.file, "title"}, "the title", mockup.title);
  std::set<std::string> names;
  for (std::size_t i = 0; i < mockup.parts.size(); ++i) {
    const MockupPart& part = mockup.parts[i];
    const MockupPlace place = place_of(mockup, part);
    if (part.name.empty()) {
      throw Error(ErrorCode::bad_input, {mockup.file, fmt::format("part {}", i + 1)}, "has no name",
                  "add name = \"...\"");
    }
    need_plain(place, "its name", part.name);
    if (!names.insert(part.name).second) {
      throw place.error("two parts have this name", "give each part a name of its own");
    }
    if (const auto* turned = std::get_if<TurnedPart>(&part.shape)) {
      check_turned(place, *turned);
    } else if (const auto* block = std::get_if<BlockPart>(&part.shape)) {
      check_block(place, *block);
    } else if (const auto* ring = std::get_if<RingPart>(&part.shape)) {
      check_ring(place, *ring);
    } else if (const auto* key = std::get_if<KeyPart>(&part.shape)) {
      check_key(place, *key);
    }
  }
  if (mockup.parts.empty()) {
    throw Error(ErrorCode::bad_input, {mockup.file, ""}, "there is no part in the mock-up",
                "add [[part]] with a name and a kind");
  }
}

}  // namespace spotblue
