// The solids of one part set against each other: seats, threads and fouls between bodies of one
// product, in STEP files with curves in surface parameters and without, documents and shapes.

#include <gmock/gmock.h>

#include <BRepBuilderAPI_GTransform.hxx>
#include <BRepPrimAPI_MakeBox.hxx>
#include <BRepPrimAPI_MakeSphere.hxx>
#include <BRep_Builder.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS_Compound.hxx>
#include <algorithm>
#include <fstream>
#include <gp_GTrsf.hxx>
#include <iterator>
#include <numbers>
#include <ostream>
#include <string>
#include <utility>
#include <vector>

#include "geometry/read/written_step.hpp"
#include "spotblue/geometry/look.hpp"
#include "spotblue/geometry/occt.hpp"
#include "support/solids.hpp"
#include "support/step_out.hpp"

namespace spotblue::test::bodies_test {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;
using testing::UnorderedElementsAre;

TopoDS_Shape together(const std::vector<TopoDS_Shape>& solids) {
  TopoDS_Compound compound;
  const BRep_Builder builder;
  builder.MakeCompound(compound);
  for (const TopoDS_Shape& solid : solids) {
    builder.Add(compound, solid);
  }
  return compound;
}

TopoDS_Shape ring(double inner, double outer, double from, double to) {
  return turned(bar(inner, outer, from, to), {});
}

std::string text_of(const std::filesystem::path& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

class Bodies : public testing::TestWithParam<SurfaceCurves> {
 protected:
  [[nodiscard]] std::filesystem::path written(const std::vector<Node>& nodes) const {
    const std::filesystem::path file = folder_.path() / "bodies.step";
    write_step(nodes, Schema::ap214, FileUnit::mm, file, GetParam());
    return file;
  }
  [[nodiscard]] Look seen(const std::vector<TopoDS_Shape>& solids) const {
    return look(written({{"Pump", together(solids), {}}}), {});
  }
  [[nodiscard]] const Folder& folder() const { return folder_; }

 private:
  Folder folder_;
};

// A bush in a hub, 0.02 of clearance.
std::vector<TopoDS_Shape> hub_and_bush() {
  return {ring(15.02, 30.0, 0.0, 40.0), ring(10.0, 15.0, 5.0, 35.0)};
}

std::vector<std::string> ids(const Model& model) {
  std::vector<std::string> all;
  for (const Product& product : model.products) {
    all.push_back(product.id);
  }
  return all;
}

std::vector<std::string> occurrence_ids(const Model& model) {
  std::vector<std::string> all;
  for (const Occurrence& occurrence : model.occurrences) {
    all.push_back(occurrence.id);
  }
  return all;
}

TEST_P(Bodies, OfOnePartAreCalledByTheirOrder) {
  const Look look = seen(hub_and_bush());
  EXPECT_THAT(ids(look.model), ElementsAre("Pump#1", "Pump#2"));
  EXPECT_THAT(occurrence_ids(look.model), ElementsAre("Pump#1", "Pump#2"));
  const Product& second = look.model.products.at(1);
  EXPECT_EQ(second.name, "Pump");
  EXPECT_EQ(second.part, "Pump");
  EXPECT_EQ(second.body, 2);
  EXPECT_EQ(second.solids, 1);
}

TEST_P(Bodies, TheOnlySolidOfAPartIsCalledAsThePart) {
  const Look look = seen({ring(10.0, 15.0, 5.0, 35.0)});
  EXPECT_THAT(ids(look.model), ElementsAre("Pump"));
  EXPECT_EQ(look.model.products.at(0).body, std::nullopt);
  EXPECT_EQ(look.model.products.at(0).part, "");
}

TEST_P(Bodies, OfOnePartSeatOnEachOtherRadially) {
  const Look look = seen(hub_and_bush());
  ASSERT_EQ(look.seats.radial.size(), 1U);
  const RadialSeat& seat = look.seats.radial.front();
  EXPECT_EQ(seat.hole.occurrence, 0U);
  EXPECT_EQ(seat.shaft.occurrence, 1U);
  EXPECT_NEAR(seat.clearance, 0.02, 1e-9);
  EXPECT_NEAR(seat.engaged, 30.0, 1e-9);
}

TEST_P(Bodies, OfOnePartSeatOnEachOtherAxially) {
  const Look look = seen({ring(10.0, 20.0, 0.0, 10.0), ring(12.0, 18.0, 10.5, 20.0)});
  ASSERT_EQ(look.seats.axial.size(), 1U);
  EXPECT_NEAR(look.seats.axial.front().gap, 0.5, 1e-9);
}

TEST_P(Bodies, OfOnePartMakeAThread) {
  const Look look = seen({ring(8.5, 15.0, 0.0, 20.0), turned(bar(0.0, 10.0, 0.0, 30.0), {})});
  ASSERT_EQ(look.seats.threads.size(), 1U);
  EXPECT_EQ(look.seats.threads.front().size, "M10");
  EXPECT_THAT(look.fouls.found, IsEmpty());
}

TEST_P(Bodies, OfOnePartFoul) {
  const TopoDS_Shape block = BRepPrimAPI_MakeBox(10.0, 10.0, 10.0).Shape();
  const Look look = seen({block, moved(block, shift(7.0, 2.0, 1.0))});
  ASSERT_EQ(look.fouls.found.size(), 1U);
  EXPECT_NEAR(look.fouls.found.front().volume, 3.0 * 8.0 * 9.0, 1e-6);
}

TEST_P(Bodies, ThatLieApartAreLeftInPeace) {
  const Look look = seen({ring(10.0, 15.0, 0.0, 10.0), ring(10.0, 15.0, 100.0, 110.0)});
  EXPECT_THAT(look.seats.radial, IsEmpty());
  EXPECT_THAT(look.seats.axial, IsEmpty());
  EXPECT_THAT(look.fouls.found, IsEmpty());
}

TEST_P(Bodies, OfAPartPlacedTwiceSeatOnceAtEachPlace) {
  const std::vector<Node> nodes{
      {"Pump", together(hub_and_bush()), {}},
      {"Shaft", turned(bar(0.0, 9.99, 0.0, 40.0), {}), {}},
      {"Plant", {}, {{0, shift(0, 0, 0)}, {0, shift(200, 0, 0)}, {1, shift(0, 0, 0)}}}};
  const Look look = spotblue::look(written(nodes), {});
  EXPECT_EQ(look.model.products.size(), 3U);
  EXPECT_THAT(
      occurrence_ids(look.model),
      UnorderedElementsAre("Pump#1 (1)", "Pump#2 (1)", "Pump#1 (2)", "Pump#2 (2)", "Shaft"));
  ASSERT_EQ(look.seats.radial.size(), 3U);
  EXPECT_EQ(std::count_if(look.seats.radial.begin(), look.seats.radial.end(),
                          [](const RadialSeat& seat) { return seat.hole_diameter > 15.0; }),
            2);
}

TEST_P(Bodies, BearTheNamesThatTheFileGivesItsSolids) {
  std::string text = text_of(written({{"Pump", together(hub_and_bush()), {}}}));
  for (const char* name : {"Hub", "Bush"}) {
    const std::string unnamed = "MANIFOLD_SOLID_BREP(''";
    const std::size_t at = text.find(unnamed);
    ASSERT_NE(at, std::string::npos);
    text.replace(at, unnamed.size(), "MANIFOLD_SOLID_BREP('" + std::string(name) + "'");
  }
  const Model model = read_step(folder().write("named.step", text), {}, Completeness::all_or_error);
  EXPECT_THAT(ids(model), ElementsAre("Pump#1", "Pump#2"));
  EXPECT_EQ(model.products.at(0).body_name, "Hub");
  EXPECT_EQ(model.products.at(1).body_name, "Bush");
}

TEST_P(Bodies, HaveEachItsOwnVolumeAndFeatures) {
  const Look look = seen({ring(10.0, 15.0, 0.0, 20.0),
                          moved(BRepPrimAPI_MakeSphere(8.0).Shape(), shift(0.0, 0.0, 40.0))});
  EXPECT_NEAR(look.model.products.at(0).volume, std::numbers::pi * 31.25 * 20.0, 1e-6);
  EXPECT_NEAR(look.model.products.at(1).volume, 4.0 / 3.0 * std::numbers::pi * 512.0, 1e-6);
  EXPECT_EQ(look.model.products.at(0).cylinders.size(), 2U);
  EXPECT_THAT(look.model.products.at(1).cylinders, IsEmpty());
}

TEST_P(Bodies, BesideASurfaceAreSaidToBeSetAgainstLessThanThereIs) {
  TopExp_Explorer face(ring(10.0, 15.0, 0.0, 20.0), TopAbs_FACE);
  const Look look = seen({ring(20.0, 25.0, 0.0, 10.0), face.Current()});
  ASSERT_EQ(look.model.not_compared.size(), 1U);
  EXPECT_EQ(look.model.not_compared.front().about, "Pump");
}

TEST_P(Bodies, WithFreeFormFacesOneInTheOtherAreAContact) {
  const auto egg = [](double grown) {
    gp_GTrsf stretch;
    stretch.SetValue(3, 3, 1.5);
    return BRepBuilderAPI_GTransform(BRepPrimAPI_MakeSphere(10.0 + grown).Shape(), stretch).Shape();
  };
  const TopoDS_Shape block = BRepPrimAPI_MakeBox(gp_Pnt(-20, -20, -20), gp_Pnt(20, 20, 20)).Shape();
  const Look look = seen({cut(block, egg(0.1)), egg(0.0), moved(egg(0.0), shift(100.0, 0.0, 0.0))});
  ASSERT_THAT(look.fouls.contacts, SizeIs(1));
  EXPECT_EQ(look.fouls.contacts[0].a, 0U);
  EXPECT_EQ(look.fouls.contacts[0].b, 1U);
  EXPECT_EQ(look.fouls.contacts[0].a_face, "free form");
  EXPECT_NEAR(look.fouls.contacts[0].gap.value(), 0.1, 1e-3);
}

INSTANTIATE_TEST_SUITE_P(Curves, Bodies,
                         testing::Values(SurfaceCurves::written, SurfaceCurves::left_out),
                         [](const auto& one) {
                           return one.param == SurfaceCurves::written ? "WithSurfaceCurves"
                                                                      : "WithoutSurfaceCurves";
                         });

TEST(BodiesOfShapes, AreSeenAsThoseOfAFile) {
  const TopoDS_Shape pump = together(hub_and_bush());
  const TopoDS_Shape spare = moved(pump, shift(0.0, 0.0, 100.0));
  const std::vector<NamedShape> shapes{{"pump", &pump}, {"spare", &spare}};
  const Look look = look_at(model_of_shapes(shapes), {});
  EXPECT_EQ(look.seats.radial.size(), 2U);
  EXPECT_THAT(occurrence_ids(look.model), testing::Contains("spare#2"));
}

}  // namespace spotblue::test::bodies_test
