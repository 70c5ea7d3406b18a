#include "geometry/fouls/round_ring.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/model/tolerances.hpp"

namespace spotblue::proof {
namespace {

constexpr double kOneAxis = 1e-6;       // mm
constexpr double kOneDirection = 1e-9;  // rad

struct Torus {
  Line axis;  ///< at the middle
  double major, minor;
  Box box;
};

std::optional<Torus> torus_of(const FaceBounds& part) {
  if (!part.patches.empty() || !part.flats.empty() || part.others.empty()) {
    return {};
  }
  const OtherFace& face = part.others.front();
  const double wide = face.outer - face.inner;
  const bool whole = face.revolved && face.pieces.empty() && face.inner > 0.0 &&
                     std::abs(wide - (face.to - face.from)) < kSameShare * face.outer &&
                     std::abs(face.to + face.from) < kSameShare * face.outer;
  const auto same = [&](const OtherFace& other) {
    return other.revolved && other.inner == face.inner && other.outer == face.outer &&
           other.pieces.empty() && norm(other.axis.at - face.axis.at) < kOneAxis;
  };
  if (!whole || !std::ranges::all_of(part.others, same)) {
    return {};
  }
  return Torus{face.axis, 0.5 * (face.outer + face.inner), 0.5 * wide, part.box};
}

struct Wall {
  double radius;
  bool hole;
};

/// The walls that come into the torus's ring; nothing where another face comes near it.
std::optional<std::vector<Wall>> walls_round(const Torus& torus, const FaceBounds& other,
                                             const Frame& to_other) {
  const Line axis = place_line(to_other, torus.axis);
  const Box box = place_box(to_other, torus.box);
  std::vector<Wall> walls;
  const auto away = [&](const auto& face) { return !overlap(box, face.box); };
  if (!std::ranges::all_of(other.flats, away) || !std::ranges::all_of(other.others, away)) {
    return {};
  }
  for (const Turned& t : other.patches) {
    const bool coaxial = distance(axis, t.axis.at) < kOneAxis &&
                         norm(cross(axis.along, t.axis.along)) < kOneDirection;
    if (!coaxial || t.radius_from != t.radius_to) {
      if (!away(t)) {
        return {};
      }
      continue;
    }
    const double one = station(axis, at_station(t.axis, t.from));
    const double two = station(axis, at_station(t.axis, t.to));
    const double off = std::abs(t.radius_from - torus.major);
    const double low = std::min(one, two);
    const double high = std::max(one, two);
    if (off >= torus.minor || low >= torus.minor || high <= -torus.minor) {
      continue;
    }
    const double half = std::sqrt(torus.minor * torus.minor - off * off);
    if (!t.arcs.empty() || low > -half || high < half) {
      return {};
    }
    walls.push_back({t.radius_from, t.side == Side::internal});
  }
  // One hole round it and one shaft in it at most: else what is metal beyond one ends again.
  const auto holes = std::ranges::count_if(walls, &Wall::hole);
  const bool plain = holes <= 1 && walls.size() - static_cast<std::size_t>(holes) <= 1;
  const bool nested = walls.size() < 2 || (walls[0].hole ? walls[0].radius > walls[1].radius
                                                         : walls[0].radius < walls[1].radius);
  return plain && nested ? std::optional(walls) : std::nullopt;
}

ToldFoul foul_at(const Torus& torus, const Wall& wall, const Frame& to_a) {
  const double side = wall.hole ? 1.0 : -1.0;
  const double edge = torus.major + side * torus.minor;
  const double off = wall.radius - torus.major;
  const Line axis = place_line(to_a, torus.axis);
  ToldFoul told;
  told.certain = true;
  told.foul = {.volume = torus_beyond(torus.major, torus.minor, wall.radius, side),
               .depth = side * (edge - wall.radius),
               .length = 2.0 * std::sqrt(torus.minor * torus.minor - off * off),
               .at = axis.at + 0.5 * (edge + wall.radius) * any_square(axis.along),
               .exact = true,
               .cause = "solids overlap"};
  return told;
}

}  // namespace

double torus_beyond(double major, double minor, double wall, double side) {
  const double half = std::acos(std::clamp(side * (wall - major) / minor, -1.0, 1.0));
  const double area = minor * minor * (half - std::sin(half) * std::cos(half));
  if (area <= 0.0) {
    return 0.0;
  }
  const double moment = 2.0 / 3.0 * std::pow(minor * std::sin(half), 3);
  return 2.0 * std::numbers::pi * (major * area + side * moment);
}

std::optional<std::vector<ToldFoul>> round_ring_fouls(const Pair& pair) {
  const auto found = [&](const FaceBounds& ring, const FaceBounds& other, const Frame& to_other,
                         const Frame& to_a) -> std::optional<std::vector<ToldFoul>> {
    const std::optional<Torus> torus = torus_of(ring);
    if (!torus || !other.closed) {
      return {};
    }
    const auto walls = walls_round(*torus, other, to_other);
    if (!walls || walls->empty()) {
      return {};
    }
    std::vector<ToldFoul> fouls;
    for (const Wall& wall : *walls) {
      ToldFoul told = foul_at(*torus, wall, to_a);
      if (told.foul.depth > pair.same_length) {
        fouls.push_back(told);
      }
    }
    return fouls;
  };
  auto fouls = found(pair.a, pair.b, pair.a_to_b, Frame{});
  return fouls ? fouls : found(pair.b, pair.a, pair.b_to_a, pair.b_to_a);
}

}  // namespace spotblue::proof
