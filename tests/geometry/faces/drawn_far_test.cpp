// Parts drawn far from their own origin are measured as those that are drawn near it.

#include <gtest/gtest.h>

#include <TopoDS_Shape.hxx>
#include <algorithm>
#include <cmath>
#include <vector>

#include "spotblue/geometry/feature_faces.hpp"
#include "spotblue/geometry/occt.hpp"
#include "support/solids.hpp"

namespace spotblue::test::drawn_far_test {

// A plate with two holes, its middle at (0, 0, 6).
TopoDS_Shape plate() {
  return block({.x = {-40.0, 40.0}, .y = {-25.0, 25.0}, .z = {0.0, 12.0}},
               {{-20.0, 0.0, 10.0}, {20.0, 0.0, 16.0}}, {});
}

Model model_of(const TopoDS_Shape& shape) {
  const std::vector<NamedShape> shapes{{"plate", &shape}};
  return model_of_shapes(shapes);
}

// As a program hands it over that builds a part in the place where it belongs.
TopoDS_Shape drawn_far(double x, double y, double z) { return moved(plate(), shift(x, y, z)); }

TEST(DrawnFar, TheProductsFrameIsBroughtToThePartsMiddle) {
  const Product product = model_of(drawn_far(1e6, -3e5, 2e5 + 0.25)).products.at(0);
  EXPECT_EQ(product.drawn_at, (Point{1e6, -3e5, 2e5 + 6.0}));
  EXPECT_LT(norm(product.box.low - Point{-40.0, -25.0, -5.75}), 1e-6);
  EXPECT_LT(norm(product.box.high - Point{40.0, 25.0, 6.25}), 1e-6);
}

TEST(DrawnFar, ThePartStaysWhereItIs) {
  const Model model = model_of(drawn_far(1e6, -3e5, 2e5));
  const Occurrence& placed = model.occurrences.at(0);
  EXPECT_LT(norm(placed.box.low - Point{1e6 - 40.0, -3e5 - 25.0, 2e5}), 1e-6);
  EXPECT_LT(norm(placed.box.high - Point{1e6 + 40.0, -3e5 + 25.0, 2e5 + 12.0}), 1e-6);
}

TEST(DrawnFar, APartNearItsOriginKeepsItsFrame) {
  const Product product = model_of(drawn_far(4000.0, -3000.0, 2000.0)).products.at(0);
  EXPECT_EQ(product.drawn_at, Point{});
  EXPECT_LT(norm(product.box.low - Point{3960.0, -3025.0, 2000.0}), 1e-6);
}

TEST(DrawnFar, SizesAreasAndVolumeAreThoseOfThePartDrawnNear) {
  const Product near = model_of(plate()).products.at(0);
  const Product far = model_of(drawn_far(7e5, -6e5, 4e5)).products.at(0);
  EXPECT_NEAR(far.volume, near.volume, 1e-6);
  ASSERT_EQ(far.cylinders.size(), near.cylinders.size());
  for (std::size_t i = 0; i < far.cylinders.size(); ++i) {
    EXPECT_EQ(far.cylinders[i].name, near.cylinders[i].name);
    EXPECT_NEAR(far.cylinders[i].diameter, near.cylinders[i].diameter, 1e-9);
    EXPECT_NEAR(far.cylinders[i].coverage, near.cylinders[i].coverage, 1e-9);
  }
  ASSERT_EQ(far.planes.size(), near.planes.size());
  for (std::size_t i = 0; i < far.planes.size(); ++i) {
    EXPECT_EQ(far.planes[i].name, near.planes[i].name);
    EXPECT_NEAR(area(far.planes[i].outline), area(near.planes[i].outline), 1e-7);
  }
}

TEST(DrawnFar, FacesOfItsFeaturesAreFoundOnTheShapeAsItIsDrawn) {
  const TopoDS_Shape shape = drawn_far(7e5, -6e5, 4e5);
  const std::vector<FeatureFace> near = feature_faces(plate(), model_of(plate()).products.at(0));
  EXPECT_EQ(near.size(), 8U);
  EXPECT_EQ(feature_faces(shape, model_of(shape).products.at(0)), near);
}

}  // namespace spotblue::test::drawn_far_test
