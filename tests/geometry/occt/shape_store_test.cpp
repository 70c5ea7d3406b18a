// The solids on disk: what is stored comes back, and what can not be had is said.
#include "geometry/occt/shape_store.hpp"

#include <gtest/gtest.h>

#include <BRepGProp.hxx>
#include <BRepPrimAPI_MakeBox.hxx>
#include <GProp_GProps.hxx>
#include <vector>

#include "spotblue/base/error.hpp"

namespace spotblue::shape_store_test {

TopoDS_Shape block_of(double length) { return BRepPrimAPI_MakeBox(length, 1.0, 1.0).Solid(); }

double volume(const TopoDS_Shape& shape) {
  GProp_GProps props;
  BRepGProp::VolumeProperties(shape, props);
  return props.Mass();
}

TEST(ShapeStore, GivesEachProductItsOwnShape) {
  const ShapeStore store(make_shape_folder());
  store_shapes(store.folder(), std::vector{block_of(2.0), block_of(3.0), block_of(5.0)});
  EXPECT_NEAR(volume(store.load(2)), 5.0, 1e-9);
  EXPECT_NEAR(volume(store.load(0)), 2.0, 1e-9);
  EXPECT_NEAR(volume(store.load_healed(1)), 3.0, 1e-9);
}

TEST(ShapeStore, AShapeThatWasNotStoredIsAnError) {
  const ShapeStore store(make_shape_folder());
  store_shapes(store.folder(), std::vector{block_of(2.0)});
  EXPECT_THROW(static_cast<void>(store.load(1)), Error);
}

TEST(ShapeStore, ShapesCutShortAreAnError) {
  const ShapeStore store(make_shape_folder());
  store_shapes(store.folder(), std::vector{block_of(2.0), block_of(3.0)});
  const auto shapes = store.folder() / "shapes.bin";
  std::filesystem::resize_file(shapes, std::filesystem::file_size(shapes) / 2);
  EXPECT_THROW(static_cast<void>(store.load(1)), Error);
}

TEST(ShapeStore, AFolderThatIsGoneIsAnError) {
  EXPECT_THROW(store_shapes("/nowhere/at-all", std::vector{block_of(2.0)}), Error);
}

}  // namespace spotblue::shape_store_test
