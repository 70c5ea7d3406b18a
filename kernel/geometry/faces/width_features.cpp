#include "geometry/faces/width_features.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <vector>

#include "geometry/model/plane_map.hpp"
#include "geometry/model/tolerances.hpp"
#include "spotblue/geometry/region_overlay.hpp"

namespace spotblue {
namespace {

constexpr double kOppositeTilt = 1e-7;  // rad
constexpr double kLeastArea = 1e-6;     // mm2: below that two outlines only touch

bool outlines_meet(const Plane& a, const Plane& b) {
  const Region other = outline_in(a, b, Frame{});
  const Extent2 ea = extent(a.outline);
  const Extent2 eb = extent(other);
  const double u = std::min(ea.high.u, eb.high.u) - std::max(ea.low.u, eb.low.u);
  const double v = std::min(ea.high.v, eb.high.v) - std::max(ea.low.v, eb.low.v);
  if (u <= kNoLength || v <= kNoLength) {
    return false;
  }
  // Seen from a the other outline is turned over; only what it covers matters here.
  return std::abs(area(intersect(a.outline, other))) > kLeastArea;
}

struct Opposite {
  std::size_t plane;
  double distance;
};

std::optional<Opposite> nearest_opposite(const Product& product, std::size_t from, Side side) {
  std::optional<Opposite> best;
  const Plane& a = product.planes[from];
  for (std::size_t j = 0; j < product.planes.size(); ++j) {
    const Plane& b = product.planes[j];
    if (j == from || norm(a.normal + b.normal) > kOppositeTilt) {
      continue;
    }
    const double ahead = dot(b.at - a.at, a.normal);
    const double away = side == Side::internal ? ahead : -ahead;
    if (away > kOnePlace && (!best || away < best->distance) && outlines_meet(a, b)) {
      best = Opposite{j, away};
    }
  }
  return best;
}

// Of each face the one it makes a width with: each the other's nearest opposite.
std::vector<std::optional<Opposite>> partners(const Product& product, Side side) {
  std::vector<std::optional<Opposite>> nearest;
  for (std::size_t i = 0; i < product.planes.size(); ++i) {
    nearest.push_back(nearest_opposite(product, i, side));
  }
  std::vector<std::optional<Opposite>> found(nearest.size());
  for (std::size_t i = 0; i < nearest.size(); ++i) {
    const bool mutual =
        nearest[i] && nearest[nearest[i]->plane] && nearest[nearest[i]->plane]->plane == i;
    found[i] = mutual ? nearest[i] : std::nullopt;
  }
  return found;
}

void add_width(Product& product, Side side, std::size_t one, std::size_t other, double width) {
  product.widths.push_back({.name = "",
                            .side = side,
                            .first = std::min(one, other),
                            .second = std::max(one, other),
                            .width = width});
}

// Wall, gap, wall, ...: faces in a row, each making a width with the next, by turns in metal and in
// air. A tongue that is slit and a slot with a rib are measured over two of a kind and what lies
// between; what is slit or ribbed more often also over all.
class Rows {
 public:
  explicit Rows(const Product& product)
      : air_(partners(product, Side::internal)), metal_(partners(product, Side::external)) {}

  void add_to(Product& product) const {
    for (std::size_t start = 0; start < air_.size(); ++start) {
      for (const Side side : {Side::internal, Side::external}) {
        const std::vector<std::size_t> row = row_from(start, side);
        for (std::size_t end = 3; end < row.size(); end += 2) {
          const bool whole = end + 2 >= row.size() && !partner(start, other(side));
          if (start < row[end] && (end == 3 || whole)) {
            add_over(product, side, start, row[end]);
          }
        }
      }
    }
  }

  void add_single(Product& product, Side side) const {
    for (std::size_t i = 0; i < air_.size(); ++i) {
      const auto& next = partner(i, side);
      if (next && next->plane > i) {
        add_width(product, side, i, next->plane, next->distance);
      }
    }
  }

 private:
  static Side other(Side side) { return side == Side::internal ? Side::external : Side::internal; }
  [[nodiscard]] const std::optional<Opposite>& partner(std::size_t face, Side side) const {
    return side == Side::internal ? air_[face] : metal_[face];
  }

  [[nodiscard]] std::vector<std::size_t> row_from(std::size_t start, Side side) const {
    std::vector<std::size_t> row{start};
    while (const auto& next = partner(row.back(), side)) {
      row.push_back(next->plane);
      side = other(side);
    }
    return row;
  }

  static void add_over(Product& product, Side side, std::size_t one, std::size_t last) {
    const Plane& a = product.planes[one];
    const Plane& b = product.planes[last];
    if (norm(a.normal + b.normal) < kOppositeTilt && outlines_meet(a, b)) {
      add_width(product, side, one, last, std::abs(dot(b.at - a.at, a.normal)));
    }
  }

  std::vector<std::optional<Opposite>> air_, metal_;
};

}  // namespace

void find_widths(Product& product) {
  const Rows rows(product);
  rows.add_single(product, Side::internal);
  rows.add_single(product, Side::external);
  rows.add_to(product);
}

}  // namespace spotblue
