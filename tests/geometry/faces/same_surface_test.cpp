// What is one surface: within the uncertainty that the file states, and splines near a cylinder.

#include <gtest/gtest.h>

#include <BRepAlgoAPI_Cut.hxx>
#include <BRepAlgoAPI_Fuse.hxx>
#include <BRepBuilderAPI_Transform.hxx>
#include <BRepPrimAPI_MakeBox.hxx>
#include <BRepPrimAPI_MakeCylinder.hxx>
#include <fstream>
#include <gp_Trsf.hxx>
#include <gp_Vec.hxx>
#include <iterator>
#include <regex>
#include <string>

#include "geometry/read/written_step.hpp"
#include "spotblue/geometry/read.hpp"
#include "support/step_out.hpp"

namespace spotblue::test::same_surface_test {

TopoDS_Shape half_block(double from_y, double to_y) {
  const TopoDS_Shape block =
      BRepPrimAPI_MakeBox(gp_Pnt(-40, from_y, 0), gp_Pnt(40, to_y, 30)).Shape();
  const gp_Ax2 up(gp_Pnt(0, 0, -1), gp_Dir(0, 0, 1));
  return BRepAlgoAPI_Cut(block, BRepPrimAPI_MakeCylinder(up, 22.0, 32.0).Shape()).Shape();
}

// A plummer block of one solid whose bore is of two faces, the radius of one larger by 2e-6 mm.
std::string halves(const std::string& uncertainty, double far = 0.0) {
  const TopoDS_Shape near = BRepAlgoAPI_Fuse(half_block(0, 40), half_block(-40, 0)).Shape();
  gp_Trsf away;
  away.SetTranslation(gp_Vec(far, 0.0, 0.0));
  const TopoDS_Shape both = BRepBuilderAPI_Transform(near, away, Standard_True).Shape();
  const Folder folder;
  const auto file = folder.path() / "halves.step";
  write_step({{"Halves", both, {}}}, Schema::ap214, FileUnit::mm, file, SurfaceCurves::left_out);
  std::ifstream in(file);
  std::string text{std::istreambuf_iterator<char>(in), {}};
  const std::string radius = ",22.)";
  const auto first = text.find(radius, text.find("CYLINDRICAL_SURFACE"));
  text.replace(first, radius.size(), ",22.000002)");
  return std::regex_replace(text,
                            std::regex("(UNCERTAINTY_MEASURE_WITH_UNIT\\(LENGTH_MEASURE\\()[^)]*"),
                            "$01" + uncertainty);
}

Product read(const std::string& step) {
  const Folder folder;
  return read_step(folder.write("halves.step", step), {}, Completeness::all_or_error)
      .products.at(0);
}

TEST(SameSurface, HalvesOfABoreWithinTheFilesUncertaintyAreOneBore) {
  const Product product = read(halves("1.E-05"));
  ASSERT_EQ(product.solids, 1);
  EXPECT_EQ(product.cylinders.size(), 1U);
  EXPECT_DOUBLE_EQ(product.uncertainty, 1e-5);
}

TEST(SameSurface, HalvesThatAFileTellsApartAreTwo) {
  const Product product = read(halves("1.E-07"));
  EXPECT_EQ(product.cylinders.size(), 2U);
  EXPECT_DOUBLE_EQ(product.uncertainty, 1e-6);
}

// Out there the digits of a file tell a radius no better.
TEST(SameSurface, HalvesOfABoreDrawnAKilometreOffAreOneBore) {
  const Product product = read(halves("1.E-07", 1e6));
  EXPECT_EQ(product.cylinders.size(), 1U);
  EXPECT_DOUBLE_EQ(product.uncertainty, 1e-5);
}

TEST(SameSurface, AFileThatStatesAHundredthOfAMillimetreIsNotFollowedSoFar) {
  EXPECT_DOUBLE_EQ(read(halves("1.E-02")).uncertainty, 1e-5);
}

}  // namespace spotblue::test::same_surface_test
