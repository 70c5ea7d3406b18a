// How far faces reach that are bounded by other curves than lines and circles.

#include "geometry/faces/face_bounds.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace spotblue::proof::face_bounds_test {

constexpr double kHigh = 0.2;

/// 20 long and 5 high, its upper side waved by 0.2: arcs stand for the curve there.
Product part_with_a_waved_edge() {
  Product product;
  Plane plane;
  plane.normal = {0, 0, 1};
  plane.u = {1, 0, 0};
  const double half = 1.0;
  const double radius = (half * half + kHigh * kHigh) / (2.0 * kHigh);
  auto& edges = plane.outline.edges;
  edges.push_back({{0, 0}, {20, 0}, 0.0, {}, 0.0});
  edges.push_back({{20, 0}, {20, 5}, 0.0, {}, 0.0});
  for (int i = 0; i < 10; ++i) {
    const double u = 20.0 - 2.0 * i;
    edges.push_back(
        {{u, 5}, {u - 2, 5}, 2.0 * std::asin(half / radius), {u - 1, 5 - radius + kHigh}, radius});
  }
  edges.push_back({{0, 5}, {0, 0}, 0.0, {}, 0.0});
  plane.outline.exact = false;
  product.planes.push_back(plane);
  return product;
}

// A slot's flank 20 long, whose one end is a free-form curve, was taken to reach 10 beyond itself,
// so that it filled the gap of a key above it (random assembly, seed 3566).
TEST(FaceBounds, ReachBeyondOtherCurvesByNoMoreThanTheirPiecesBulge) {
  const Product product = part_with_a_waved_edge();
  const FaceBounds bounds = bounds_of(product);
  ASSERT_EQ(bounds.flats.size(), 1U);
  EXPECT_NEAR(bounds.flats[0].slack, kHigh, 1e-12);
}

TEST(FaceBounds, ReachNoFurtherThanLinesAndCircles) {
  Product product = part_with_a_waved_edge();
  product.planes[0].outline.exact = true;
  EXPECT_EQ(bounds_of(product).flats[0].slack, 0.0);
}

}  // namespace spotblue::proof::face_bounds_test
