// Threads modelled turn by turn are compared as threads are that are drawn as plain cylinders,
// without asking Open CASCADE's boolean.
#include <gmock/gmock.h>

#include <BRepAlgoAPI_Cut.hxx>
#include <BRepAlgoAPI_Fuse.hxx>
#include <BRepGProp.hxx>
#include <GProp_GProps.hxx>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/fouls/foul_solids.hpp"
#include "spotblue/geometry/foul.hpp"
#include "spotblue/geometry/seats.hpp"
#include "support/modelled_threads.hpp"
#include "support/value_parts.hpp"

namespace spotblue::modelled_thread_test {

using testing::IsEmpty;
using testing::SizeIs;

constexpr double kPitch = 1.5;  // M10, ISO 261

// ISO 68-1: crests P/8 wide at 10, roots P/4 wide at 10 - 1.0825 P.
TopoDS_Shape screw() {
  const double slope = 2.0 * std::tan(std::numbers::pi / 6.0);
  const double root = 4.1;
  const double base = root - 0.1;
  return BRepAlgoAPI_Fuse(test::bar_solid(0, root, 0, 30),
                          test::helical({base, 5.0, kPitch / 8.0 + (5.0 - base) * slope,
                                         kPitch / 8.0, kPitch, 5.0, 8}))
      .Shape();
}

TopoDS_Shape nut() {
  const double slope = 2.0 * std::tan(std::numbers::pi / 6.0);
  const double minor = 0.5 * 8.376;
  const double within = minor - 0.2;
  const double root = 5.05;
  const double at_root = kPitch / 8.0;
  return BRepAlgoAPI_Cut(test::bar_solid(minor, 10, 7, 15),
                         test::helical({within, root, at_root + (root - within) * slope, at_root,
                                        kPitch, 4.0, 10}))
      .Shape();
}

struct Looked {
  Model model;
  Seats seats;
  FoulReport fouls;
};

Looked look_at(const TopoDS_Shape& a, const TopoDS_Shape& b) {
  Looked looked;
  looked.model = test::solid_model({{a, {}}, {b, {}}});
  looked.seats = find_seats(looked.model, {});
  looked.fouls = find_fouls(looked.model, looked.seats, {}, {});
  return looked;
}

TEST(ModelledThread, HasTheCylinderOfItsCrestsAndItsOwnVolume) {
  const TopoDS_Shape shape = screw();
  const Model model = test::solid_model({{shape, {}}});
  const Product& product = model.products.front();
  EXPECT_THAT(product.others, IsEmpty());
  const auto crest =
      std::find_if(product.cylinders.begin(), product.cylinders.end(), [](const Cylinder& one) {
        return one.side == Side::external && std::abs(one.diameter - 10.0) < 1e-3;
      });
  ASSERT_NE(crest, product.cylinders.end());
  GProp_GProps properties;
  BRepGProp::VolumeProperties(shape, properties, 1e-6);
  EXPECT_NEAR(product.volume, properties.Mass(), 1e-4 * properties.Mass());
}

TEST(ModelledThread, InATappedHoleIsAThreadAndNoFoul) {
  const Looked looked = look_at(test::bar_solid(4.25, 10, 7, 15), screw());
  ASSERT_THAT(looked.seats.threads, SizeIs(1));
  EXPECT_EQ(looked.seats.threads[0].size, "M10");
  EXPECT_NEAR(looked.seats.threads[0].engaged, 8.0, 1e-6);
  EXPECT_THAT(looked.fouls.found, IsEmpty());
  EXPECT_EQ(looked.fouls.effort.exact_pairs, 0U);
}

TEST(ModelledThread, InAModelledNutIsAThreadAndNoFoul) {
  const Looked looked = look_at(nut(), screw());
  ASSERT_THAT(looked.seats.threads, SizeIs(1));
  EXPECT_EQ(looked.seats.threads[0].size, "M10");
  EXPECT_THAT(looked.fouls.found, IsEmpty());
  EXPECT_THAT(looked.fouls.contacts, IsEmpty());
  EXPECT_EQ(looked.fouls.effort.exact_pairs, 0U);
}

TEST(ModelledThread, InAClearanceHoleIsMeasuredByItsCrests) {
  const Looked looked = look_at(test::bar_solid(5.5, 10, 7, 15), screw());
  EXPECT_THAT(looked.seats.threads, IsEmpty());
  ASSERT_THAT(looked.seats.radial, SizeIs(1));
  EXPECT_NEAR(looked.seats.radial[0].clearance, 1.0, 1e-3);
  EXPECT_THAT(looked.fouls.found, IsEmpty());
}

// What fills the grooves in our proofs hides no foul: none is proved clear that is not.
TEST(ModelledThread, ThroughSolidMetalIsStillAFoul) {
  const Looked looked = look_at(test::bar_solid(0, 10, 7, 15), screw());
  EXPECT_THAT(looked.seats.threads, IsEmpty());
  EXPECT_THAT(looked.fouls.found, SizeIs(1));
}

}  // namespace spotblue::modelled_thread_test
