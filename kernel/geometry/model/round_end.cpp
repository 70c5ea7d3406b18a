#include "geometry/model/round_end.hpp"

#include <cmath>

#include "spotblue/base/angle.hpp"

namespace spotblue {
namespace {

// What an end may differ from half a circle across the whole width. Choices of this program, no
// source.
constexpr double kLeastRound = 150.0 * kDegree;
constexpr double kMostRound = 210.0 * kDegree;
constexpr double kSameWidth = 1e-4;
constexpr double kSquareToFlanks = 1e-4;

}  // namespace

bool rounds_end(const Product& product, const Width& width, const Cylinder& cylinder) {
  const Plane& one = product.planes[width.first];
  const Plane& two = product.planes[width.second];
  const Point middle = 0.5 * (one.at + two.at);
  return cylinder.side == width.side && cylinder.coverage > kLeastRound &&
         cylinder.coverage < kMostRound && std::abs(cylinder.diameter - width.width) < kSameWidth &&
         std::abs(dot(cylinder.axis.along, one.normal)) < kSquareToFlanks &&
         std::abs(dot(cylinder.axis.at - middle, one.normal)) < kSameWidth;
}

}  // namespace spotblue
