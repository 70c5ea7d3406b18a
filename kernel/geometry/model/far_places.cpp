#include "geometry/model/far_places.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <string>

namespace spotblue {
namespace {

// Also of what has squares beyond a double.
double length_of(Point p) { return std::hypot(p.x, p.y, p.z); }

Point middle_of(const Box& box) { return 0.5 * (box.low + box.high); }

double largest_size(const Model& model) {
  double largest = 0.0;
  for (const Product& product : model.products) {
    if (!is_empty(product.box)) {
      largest = std::max(largest, length_of(product.box.high - product.box.low));
    }
  }
  return largest;
}

// Of the two middle ones of an even number that which is nearer to 0: of two parts it is the other
// one that stands far off.
double median(std::vector<double> values) {
  std::sort(values.begin(), values.end());
  const double upper = values[values.size() / 2];
  const double lower = values[(values.size() - 1) / 2];
  return std::abs(lower) < std::abs(upper) ? lower : upper;
}

// Where most parts are: one that stands far off does not move it.
Point middle_of_most(const Model& model) {
  std::array<std::vector<double>, 3> values;
  for (const Occurrence& one : model.occurrences) {
    if (!is_empty(one.box)) {
      const Point at = middle_of(one.box);
      values[0].push_back(at.x);
      values[1].push_back(at.y);
      values[2].push_back(at.z);
    }
  }
  return values[0].empty() ? Point{}
                           : Point{median(values[0]), median(values[1]), median(values[2])};
}

}  // namespace

std::vector<Note> without_far_places(Model& model) {
  const double size = largest_size(model);
  const Point most = middle_of_most(model);
  std::vector<Note> found;
  erase_if(model.occurrences, [&](const Occurrence& one) {
    if (is_empty(one.box)) {
      return false;
    }
    const double from_origin = length_of(middle_of(one.box));
    const double from_most = length_of(middle_of(one.box) - most);
    const bool off = size > 0.0 && from_most > kFarthestInSizes * size;
    if (!off && from_origin <= kFarthest) {
      return false;
    }
    found.push_back(
        {fmt::format("'{}'", one.path),
         fmt::format("it is placed {:.3g} mm from {}, where the largest part is {:.3g} mm "
                     "long",
                     off ? from_most : from_origin, off ? "the others" : "the origin", size)});
    return true;
  });
  return found;
}

}  // namespace spotblue
