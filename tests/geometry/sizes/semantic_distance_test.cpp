// Widths that a file states as the distance between two faces (ISO 10303-47, dimensional_location),
// as Open CASCADE's document writer and others do, in mm, inch and metre.

#include <gmock/gmock.h>

#include <gp_Trsf.hxx>
#include <regex>

#include "geometry/sizes/semantic_files.hpp"
#include "spotblue/standards/iso286.hpp"
#include "support/solids.hpp"
#include "support/step_out.hpp"

namespace spotblue::semantic_distance_test {

using test::FileUnit;
using test::Folder;
using test::sizes_on;

struct DistanceUnits {
  FileUnit file;
  LengthUnit values;
};
void PrintTo(const DistanceUnits& one, std::ostream* out) {
  *out << static_cast<int>(one.file) << " file, values in " << unit_name(one.values);
}

// A block 60 x 40 x 20 with a bore of 12 and, across its top, a slot of 8; a key of 8 beside it.
std::filesystem::path slotted(const Folder& folder, FileUnit unit) {
  const TopoDS_Shape block =
      test::block({.x = {0.0, 60.0}, .y = {0.0, 40.0}, .z = {0.0, 20.0}}, {{15.0, 20.0, 12.0}}, {});
  const TopoDS_Shape slot =
      test::block({.x = {36.0, 44.0}, .y = {-1.0, 41.0}, .z = {15.0, 21.0}}, {}, {});
  const TopoDS_Shape key =
      test::block({.x = {36.0, 44.0}, .y = {50.0, 70.0}, .z = {0.0, 7.0}}, {}, {});
  std::filesystem::path file = folder.path() / "slotted.step";
  test::write_step({{"Block", test::cut(block, slot), {}},
                    {"Key", key, {}},
                    {"Both", {}, {{0, gp_Trsf()}, {1, gp_Trsf()}}}},
                   test::Schema::ap242, unit, file);
  return file;
}

// Each size of two faces as a distance from the one to the other, under this name.
std::string as_distances(std::string text, const std::string& name) {
  const std::regex part("SHAPE_ASPECT_RELATIONSHIP\\('','',(#\\d+),(#\\d+)\\)");
  std::map<std::string, std::vector<std::string>> parts;
  for (std::sregex_iterator each(text.begin(), text.end(), part), end; each != end; ++each) {
    parts[(*each)[1]].push_back((*each)[2]);
  }
  for (const auto& [whole, two] : parts) {
    text = std::regex_replace(
        text, std::regex("DIMENSIONAL_SIZE\\(" + whole + ",'thickness'\\)"),
        "DIMENSIONAL_LOCATION('" + name + "',''," + two.at(0) + "," + two.at(1) + ")");
  }
  return text;
}

class WidthsAsDistances : public testing::TestWithParam<DistanceUnits> {};

TEST_P(WidthsAsDistances, KeepTheirClassOnBothFaces) {
  const Folder folder;
  const auto out = folder.path() / "out.step";
  const std::vector<SizeToWrite> sizes{{"Block", "bore 12", 12.0, "H7", {}},
                                       {"Block", "slot 8", 8.0, "P9", {}},
                                       {"Key", "width 8", 8.0, "h9", {}}};
  (void)write_semantic_sizes(slotted(folder, GetParam().file), out, sizes, GetParam().values, {});
  const std::string text = as_distances(test::text_of(out), "linear distance");
  EXPECT_THAT(text, testing::Not(testing::HasSubstr("'thickness'")));
  const Model model = test::read_whole(folder.write("distances.step", text));
  EXPECT_EQ(model.semantic_sizes.size(), 3U);
  EXPECT_FALSE(test::noted(model, "are not read"));
  for (const SizeToWrite& size : sizes) {
    const auto found = sizes_on(model, size.feature);
    ASSERT_EQ(found.size(), 1U) << size.feature;
    EXPECT_EQ(found[0].doubt, "");
    EXPECT_EQ(found[0].tolerance_class, size.tolerance_class);
    EXPECT_EQ(model.products.at(*found[0].product).id, size.product);
    const Limits wanted = limits(Length::mm(size.nominal_mm), size.tolerance_class);
    EXPECT_NEAR(found[0].limits->lower_mm, wanted.lower.in_mm(), 1e-9);
    EXPECT_NEAR(found[0].limits->upper_mm, wanted.upper.in_mm(), 1e-9);
  }
}

INSTANTIATE_TEST_SUITE_P(Units, WidthsAsDistances,
                         testing::Values(DistanceUnits{FileUnit::mm, LengthUnit::mm},
                                         DistanceUnits{FileUnit::inch, LengthUnit::inch},
                                         DistanceUnits{FileUnit::metre, LengthUnit::mm},
                                         DistanceUnits{FileUnit::metre, LengthUnit::inch}));

class Distance : public testing::Test {
 protected:
  Model read(const std::string& what, const std::string& by) {
    const auto out = folder_.path() / "out.step";
    const std::vector<SizeToWrite> sizes{{"Block", "slot 8", 8.0, "P9", {}},
                                         {"Block", "bore 12", 12.0, "H7", {}}};
    (void)write_semantic_sizes(slotted(folder_, FileUnit::mm), out, sizes, LengthUnit::mm, {});
    std::string text = as_distances(test::text_of(out), "linear distance");
    const auto at = text.rfind(what);
    EXPECT_NE(at, std::string::npos);
    text.replace(at, what.size(), by);
    return test::read_whole(folder_.write("changed.step", text));
  }
  Folder folder_;
};

TEST_F(Distance, InMetresIsTurnedIntoMillimetres) {
  const Model model = read("SI_UNIT(.MILLI.,.METRE.)", "SI_UNIT($,.METRE.)");
  // 8 m, which the model does not have.
  ASSERT_EQ(model.semantic_sizes.size(), 2U);
  EXPECT_NEAR(*model.semantic_sizes[0].nominal_mm + *model.semantic_sizes[1].nominal_mm, 20000.0,
              1e-6);
}

TEST_F(Distance, FromACentreIsNoSizeOfAFeature) {
  const Model model = read("'linear distance'", "'linear distance centre outer'");
  EXPECT_EQ(model.semantic_sizes.size(), 1U);
  EXPECT_TRUE(test::noted(model, "1 of the distances between features are not read"));
}

TEST_F(Distance, BetweenFacesOfTwoFeaturesIsOnlyCounted) {
  // From the first face of the slot to the bore.
  const auto out = folder_.path() / "out.step";
  const std::vector<SizeToWrite> sizes{{"Block", "slot 8", 8.0, "P9", {}},
                                       {"Block", "bore 12", 12.0, "H7", {}}};
  (void)write_semantic_sizes(slotted(folder_, FileUnit::mm), out, sizes, LengthUnit::mm, {});
  std::string text = as_distances(test::text_of(out), "linear distance");
  std::smatch found;
  ASSERT_TRUE(std::regex_search(text, found, std::regex("DIMENSIONAL_SIZE\\((#\\d+),'diameter'")));
  const std::string bore = found[1];
  text = std::regex_replace(
      text, std::regex("(DIMENSIONAL_LOCATION\\('linear distance','',#\\d+,)#\\d+"), "$1" + bore);
  const Model model = test::read_whole(folder_.write("changed.step", text));
  EXPECT_TRUE(sizes_on(model, "slot 8").empty());
  EXPECT_EQ(sizes_on(model, "bore 12").size(), 1U);
  EXPECT_TRUE(test::noted(model, "1 of the distances between features are not read"));
}

TEST_F(Distance, ThatTheModelDoesNotHaveIsDoubted) {
  const Model model = read("LENGTH_MEASURE(8.)", "LENGTH_MEASURE(9.)");
  EXPECT_THAT(sizes_on(model, "slot 8").at(0).doubt,
              testing::HasSubstr("where the model has 8 mm"));
}

}  // namespace spotblue::semantic_distance_test
