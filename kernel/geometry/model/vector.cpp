#include "spotblue/geometry/vector.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

constexpr Point turned(const Frame& f, Point d) {
  const auto& r = f.rows;
  return {r[0][0] * d.x + r[0][1] * d.y + r[0][2] * d.z,
          r[1][0] * d.x + r[1][1] * d.y + r[1][2] * d.z,
          r[2][0] * d.x + r[2][1] * d.y + r[2][2] * d.z};
}

constexpr Point origin(const Frame& f) { return {f.rows[0][3], f.rows[1][3], f.rows[2][3]}; }

constexpr Frame frame_of(const std::array<std::array<double, 3>, 3>& m, Point t) {
  return {{{{m[0][0], m[0][1], m[0][2], t.x},
            {m[1][0], m[1][1], m[1][2], t.y},
            {m[2][0], m[2][1], m[2][2], t.z}}}};
}

}  // namespace

void refuse_direction(double x, double y, double z) {
  throw Error(ErrorCode::bad_input, {"", "direction"},
              fmt::format("({:g}, {:g}, {:g}) is not 1 long", x, y, z),
              "divide it by its length, and leave out what is zero");
}

Direction any_square(Direction along) {
  const Point helper =
      std::abs(along.x()) <= std::abs(along.y()) && std::abs(along.x()) <= std::abs(along.z())
          ? Point{1, 0, 0}
      : std::abs(along.y()) <= std::abs(along.z()) ? Point{0, 1, 0}
                                                   : Point{0, 0, 1};
  return unit(cross(along, helper));
}

Point place_point(const Frame& frame, Point p) { return turned(frame, p) + origin(frame); }

Direction place_direction(const Frame& frame, Direction d) { return almost_unit(turned(frame, d)); }

Line place_line(const Frame& frame, const Line& line) {
  return {place_point(frame, line.at), place_direction(frame, line.along)};
}

Frame compose(const Frame& outer, const Frame& inner) {
  std::array<std::array<double, 3>, 3> m{};
  for (std::size_t i = 0; i < 3; ++i) {
    for (std::size_t j = 0; j < 3; ++j) {
      for (std::size_t k = 0; k < 3; ++k) {
        m[i][j] += outer.rows[i][k] * inner.rows[k][j];
      }
    }
  }
  return frame_of(m, place_point(outer, origin(inner)));
}

Frame inverse(const Frame& frame) {
  std::array<std::array<double, 3>, 3> m{};
  for (std::size_t i = 0; i < 3; ++i) {
    for (std::size_t j = 0; j < 3; ++j) {
      m[i][j] = frame.rows[j][i];
    }
  }
  const Frame back = frame_of(m, {});
  return frame_of(m, -turned(back, origin(frame)));
}

bool is_mirror(const Frame& frame) {
  const auto& r = frame.rows;
  const Point x{r[0][0], r[1][0], r[2][0]};
  const Point y{r[0][1], r[1][1], r[2][1]};
  const Point z{r[0][2], r[1][2], r[2][2]};
  return dot(cross(x, y), z) < 0.0;
}

bool is_empty(const Box& box) { return !(box.low.x <= box.high.x); }

void extend(Box& box, Point p) {
  box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y), std::min(box.low.z, p.z)};
  box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y), std::max(box.high.z, p.z)};
}

void extend(Box& box, const Box& other) {
  if (!is_empty(other)) {
    extend(box, other.low);
    extend(box, other.high);
  }
}

Box grown(const Box& box, double by) {
  return {box.low - Point{by, by, by}, box.high + Point{by, by, by}};
}

bool overlap(const Box& a, const Box& b) {
  return a.low.x <= b.high.x && b.low.x <= a.high.x && a.low.y <= b.high.y && b.low.y <= a.high.y &&
         a.low.z <= b.high.z && b.low.z <= a.high.z;
}

Box place_box(const Frame& frame, const Box& box) {
  if (is_empty(box)) {
    return box;
  }
  const Point middle = place_point(frame, 0.5 * (box.low + box.high));
  const Point half = 0.5 * (box.high - box.low);
  Point reach;
  const auto row = [&](std::size_t i) {
    const auto& r = frame.rows[i];
    return std::abs(r[0]) * half.x + std::abs(r[1]) * half.y + std::abs(r[2]) * half.z;
  };
  reach = {row(0), row(1), row(2)};
  return {middle - reach, middle + reach};
}

double diagonal(const Box& box) { return is_empty(box) ? 0.0 : norm(box.high - box.low); }

}  // namespace spotblue
