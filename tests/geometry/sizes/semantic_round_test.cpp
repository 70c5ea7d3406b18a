// Sizes written onto the faces of a model and read back, in mm and inches.

#include <gmock/gmock.h>

#include <functional>
#include <numbers>

#include "geometry/sizes/semantic_files.hpp"
#include "geometry/write/semantic_proof.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/geometry/mockup_write.hpp"
#include "spotblue/standards/iso286.hpp"
#include "support/solids.hpp"
#include "support/step_out.hpp"
#include "support/thrown.hpp"

namespace spotblue::semantic_round_test {

using test::Folder;
using test::sizes_on;

struct Units {
  LengthUnit file, values;
};
void PrintTo(const Units& one, std::ostream* out) {
  *out << unit_name(one.file) << " file, values in " << unit_name(one.values);
}

std::string bore(double diameter) {
  return "bore " + format_size(Length::mm(diameter), LengthUnit::mm);
}
std::string outside(double diameter) {
  return "outside " + format_size(Length::mm(diameter), LengthUnit::mm);
}

class StatedSizes : public testing::TestWithParam<Units> {
 protected:
  Model round(std::vector<MockupPart> parts, const std::vector<SizeToWrite>& sizes) {
    const auto file =
        test::write_parts(folder_, std::move(parts), GetParam().file, StepProtocol::ap214);
    notes_ = write_semantic_sizes(file, out_, test::by_name(file, sizes), GetParam().values, {});
    return test::read_whole(out_);
  }

  static void expect_class(const Model& model, const std::string& feature, double nominal,
                           const std::string& tolerance_class) {
    const auto found = sizes_on(model, feature);
    ASSERT_EQ(found.size(), 1U) << feature;
    EXPECT_EQ(found[0].doubt, "");
    EXPECT_EQ(found[0].tolerance_class, tolerance_class) << feature;
    EXPECT_NEAR(found[0].nominal_mm.value(), nominal, 1e-12 * nominal);
    const Limits wanted = limits(Length::mm(nominal), tolerance_class);
    EXPECT_NEAR(found[0].limits->lower_mm, wanted.lower.in_mm(), 1e-9);
    EXPECT_NEAR(found[0].limits->upper_mm, wanted.upper.in_mm(), 1e-9);
  }

  Folder folder_;
  std::filesystem::path out_ = folder_.path() / "with-sizes.step";
  std::vector<Note> notes_;
};

// ISO 286-1:2010, table 1: the twenty grades.
TEST_P(StatedSizes, ComeBackInEveryGrade) {
  std::vector<double> diameters;
  std::vector<SizeToWrite> sizes;
  for (const char* grade : {"01", "0",  "1",  "2",  "3",  "4",  "5",  "6",  "7",  "8",
                            "9",  "10", "11", "12", "13", "14", "15", "16", "17", "18"}) {
    const double diameter = 20.0 + static_cast<double>(diameters.size());
    diameters.push_back(diameter);
    sizes.push_back({"Plate", bore(diameter), diameter, std::string("H") + grade, {}});
  }
  const Model model = round({test::plate("Plate", diameters)}, sizes);
  EXPECT_EQ(model.file.protocol, "AP242");
  EXPECT_EQ(model.semantic_sizes.size(), 20U);
  for (const SizeToWrite& size : sizes) {
    expect_class(model, size.feature, size.nominal_mm, size.tolerance_class);
  }
}

// ISO 286-1:2010, tables 2 to 5: the letters, each at a size and grade where it is defined.
TEST_P(StatedSizes, ComeBackWithEveryLetter) {
  const std::vector<std::string> letters{"A", "B", "C",  "CD", "D", "E",  "EF", "F", "FG", "G",
                                         "H", "J", "JS", "K",  "M", "N",  "P",  "R", "S",  "T",
                                         "U", "V", "X",  "Y",  "Z", "ZA", "ZB", "ZC"};
  std::vector<double> diameters;
  std::vector<SizeToWrite> sizes;
  for (const std::string& letter : letters) {
    // CD, EF and FG end at 10 mm, T begins above 24 mm.
    const bool small = letter == "CD" || letter == "EF" || letter == "FG";
    const double diameter = (small ? 3.0 : 30.0) + 0.25 * static_cast<double>(diameters.size());
    diameters.push_back(diameter);
    sizes.push_back({"Plate", bore(diameter), diameter, letter + "7", {}});
  }
  std::vector<double> steps;
  std::vector<SizeToWrite> shafts;
  for (const SizeToWrite& size : sizes) {
    SizeToWrite shaft = size;
    std::transform(shaft.tolerance_class.begin(), shaft.tolerance_class.end(),
                   shaft.tolerance_class.begin(), [](char c) { return std::tolower(c); });
    shaft.product = "Pin";
    shaft.feature = outside(size.nominal_mm);
    shafts.push_back(shaft);
  }
  std::sort(shafts.begin(), shafts.end(),
            [](const auto& a, const auto& b) { return a.nominal_mm < b.nominal_mm; });
  for (const SizeToWrite& shaft : shafts) {
    steps.push_back(shaft.nominal_mm);
  }
  sizes.insert(sizes.end(), shafts.begin(), shafts.end());
  const Model model = round({test::plate("Plate", diameters), test::pin("Pin", steps)}, sizes);
  EXPECT_EQ(model.semantic_sizes.size(), 2 * letters.size());
  for (const SizeToWrite& size : sizes) {
    expect_class(model, size.feature, size.nominal_mm, size.tolerance_class);
  }
}

TEST_P(StatedSizes, KeepTheSignsOfTheirDeviations) {
  const std::vector<SizeLimits> deviations{{-0.025, -0.009}, {0.043, 0.059}, {-0.043, 0.059},
                                           {0.0, 0.025},     {-0.016, 0.0},  {-0.1, 0.1}};
  std::vector<double> diameters;
  std::vector<SizeToWrite> sizes;
  for (const SizeLimits& one : deviations) {
    const double diameter = 20.0 + static_cast<double>(diameters.size());
    diameters.push_back(diameter);
    sizes.push_back({"Plate", bore(diameter), diameter, "", one});
  }
  const Model model = round({test::plate("Plate", diameters)}, sizes);
  for (const SizeToWrite& size : sizes) {
    const auto found = sizes_on(model, size.feature);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].doubt, "");
    EXPECT_NEAR(found[0].deviations->lower_mm, size.deviations->lower_mm, 1e-12);
    EXPECT_NEAR(found[0].deviations->upper_mm, size.deviations->upper_mm, 1e-12);
    EXPECT_NEAR(found[0].limits->lower_mm, size.nominal_mm + size.deviations->lower_mm, 1e-9);
  }
}

TEST_P(StatedSizes, BelongToAProductHoweverOftenItIsPlacedAndNamed) {
  Mockup mockup;
  mockup.unit = GetParam().file;
  mockup.parts = {test::plate("It's a plate", {12.0}), test::pin("B\u00fcchse", {12.0})};
  for (const char* name : {"first", "second", "third"}) {
    Placement placement;
    placement.name = name;
    placement.part = "B\u00fcchse";
    placement.at = 100.0 * static_cast<double>(mockup.placements.size());
    mockup.placements.push_back(placement);
  }
  Placement placement;
  placement.name = "base";
  placement.part = "It's a plate";
  placement.at = 700.0;
  mockup.placements.push_back(placement);
  const auto file = folder_.path() / "model.step";
  write_mockup(mockup, file);
  const std::vector<SizeToWrite> sizes{{"It's a plate", "bore 12", 12.0, "H7", {}},
                                       {"B\u00fcchse", "outside 12", 12.0, "g6", {}}};
  EXPECT_THAT(write_semantic_sizes(file, out_, sizes, GetParam().values, {}), testing::IsEmpty());
  const Model model = test::read_whole(out_);
  EXPECT_EQ(model.occurrences.size(), 4U);
  expect_class(model, "bore 12", 12.0, "H7");
  expect_class(model, "outside 12", 12.0, "g6");
  EXPECT_EQ(model.products.at(*sizes_on(model, "outside 12")[0].product).id, "B\u00fcchse");
}

TEST_P(StatedSizes, OfAWidthStandOnBothItsFaces) {
  BlockPart block;
  block.size = {40.0, 8.0, 60.0};
  const Model model = round({{"Key", block}}, {{"Key", "width 8", 8.0, "h9", {}}});
  const auto found = sizes_on(model, "width 8");
  ASSERT_EQ(found.size(), 1U);
  EXPECT_EQ(found[0].tolerance_class, "h9");
  EXPECT_EQ(found[0].characteristic, SizeCharacteristic::width);
}

INSTANTIATE_TEST_SUITE_P(Units, StatedSizes,
                         testing::Values(Units{LengthUnit::mm, LengthUnit::mm},
                                         Units{LengthUnit::inch, LengthUnit::inch},
                                         Units{LengthUnit::inch, LengthUnit::mm},
                                         Units{LengthUnit::mm, LengthUnit::inch}));

TEST(StatedSizesOnSplitFaces, StandOnEveryPieceOfTheCylinder) {
  const Folder folder;
  test::Finish halves;
  halves.seam = std::numbers::pi;
  const auto file = folder.path() / "model.step";
  test::write_step({{"Bush", test::turned(test::bar(20.0, 30.0, 0.0, 25.0), halves), {}}},
                   test::Schema::ap242, test::FileUnit::mm, file);
  const auto out = folder.path() / "out.step";
  const std::vector<SizeToWrite> sizes{{"Bush", "bore 20", 20.0, "H7", {}},
                                       {"Bush", "outside 30", 30.0, "s6", {}}};
  EXPECT_THAT(write_semantic_sizes(file, out, sizes, LengthUnit::mm, {}), testing::IsEmpty());
  const std::string text = test::text_of(out);
  std::size_t faces = 0;
  for (auto at = text.find("GEOMETRIC_ITEM_SPECIFIC_USAGE"); at != std::string::npos;
       at = text.find("GEOMETRIC_ITEM_SPECIFIC_USAGE", at + 1)) {
    ++faces;
  }
  EXPECT_EQ(faces, 4U);
  const Model model = test::read_whole(out);
  EXPECT_EQ(sizes_on(model, "bore 20").at(0).tolerance_class, "H7");
  EXPECT_EQ(sizes_on(model, "outside 30").at(0).tolerance_class, "s6");
}

TEST(StatedSizesInOldProtocols, TurnTheFileIntoAp242) {
  const Folder folder;
  const auto file = test::write_parts(folder, {test::plate("Plate", {20.0, 30.0})},
                                      LengthUnit::inch, StepProtocol::ap203);
  const auto out = folder.path() / "out.step";
  const std::vector<SizeToWrite> sizes{{"Plate", "bore 30", 30.0, "H7", {}}};
  (void)write_semantic_sizes(file, out, sizes, LengthUnit::mm, {});
  const Model model = test::read_whole(out);
  EXPECT_EQ(model.file.protocol, "AP242");
  EXPECT_EQ(sizes_on(model, "bore 30").at(0).tolerance_class, "H7");
}

TEST(StatedSizesWriting, KeepsEveryEntityOfTheFile) {
  const Folder folder;
  const auto file = test::write_parts(folder, {test::plate("Plate", {20.0})}, LengthUnit::mm,
                                      StepProtocol::ap242);
  const auto out = folder.path() / "out.step";
  const std::vector<SizeToWrite> sizes{{"Plate", "bore 20", 20.0, "H7", {}}};
  (void)write_semantic_sizes(file, out, sizes, LengthUnit::mm, {});
  const std::string before = test::text_of(file);
  const auto end = before.rfind("ENDSEC");
  EXPECT_EQ(test::text_of(out).substr(0, end), before.substr(0, end));
}

// Words of the header and of a comment that only look like the places to write to.
TEST(StatedSizesWriting, LabelsTheSchemaAndNoTextThatLooksLikeIt) {
  const Folder folder;
  const auto file = test::write_parts(folder, {test::plate("Plate", {20.0})}, LengthUnit::mm,
                                      StepProtocol::ap214);
  std::string text = test::text_of(file);
  const auto description = text.find("FILE_DESCRIPTION((") + 18;
  text.insert(description, "'FILE_SCHEMA((''AUTOMOTIVE_DESIGN''));','FILE_NAME(',");
  text.insert(text.rfind("END-ISO"), "/* ENDSEC; */\n");
  const auto odd = folder.write("odd.step", text);
  const auto out = folder.path() / "out.step";
  (void)write_semantic_sizes(
      odd, out, std::vector<SizeToWrite>{{"Plate", "bore 20", 20.0, "H7", {}}}, LengthUnit::mm, {});
  EXPECT_THAT(test::text_of(out), testing::HasSubstr("'FILE_SCHEMA((''AUTOMOTIVE_DESIGN''));'"));
  const Model model = test::read_whole(out);
  EXPECT_EQ(model.file.protocol, "AP242");
  EXPECT_EQ(sizes_on(model, "bore 20").size(), 1U);
}

TEST(StatedSizesWriting, SaysWhatDoesNotReadBackAsMeant) {
  const Folder folder;
  const auto file = test::write_parts(folder, {test::plate("Plate", {20.0, 30.0})}, LengthUnit::mm,
                                      StepProtocol::ap214);
  const auto out = folder.path() / "out.step";
  const SizeToWrite size{"Plate", "bore 20", 20.0, "H7", {}};
  (void)write_semantic_sizes(file, out, std::vector<SizeToWrite>{size}, LengthUnit::mm, {});
  const Model before = test::read_whole(file);
  const Model after = test::read_whole(out);
  const std::vector<PlacedSize> added{{&size, SizeCharacteristic::diameter, 0, {}, {}}};
  EXPECT_EQ(first_difference(before, after, added), "");
  EXPECT_THAT(first_difference(before, before, added), testing::HasSubstr("is not stated"));
  EXPECT_THAT(first_difference(after, before, {}), testing::HasSubstr("20 H7"));
  const auto with = [&](const std::function<void(Model&)>& change) {
    Model changed = after;
    change(changed);
    return first_difference(before, changed, added);
  };
  EXPECT_THAT(with([](Model& model) { model.products[0].cylinders[0].diameter += 1e-6; }),
              testing::HasSubstr("part 'Plate'"));
  EXPECT_THAT(with([](Model& model) { model.occurrences[0].frame.rows[2][3] += 1e-6; }),
              testing::HasSubstr("no longer stands"));
  EXPECT_THAT(with([](Model& model) { model.products.pop_back(); }),
              testing::HasSubstr("became 0"));
  EXPECT_THAT(with([](Model& model) { model.semantic_sizes[0].limits->upper_mm += 1e-5; }),
              testing::HasSubstr("is not stated"));
}

TEST(StatedSizesWriting, NeverTakesThePlaceOfTheModelByWhateverLink) {
  const Folder folder;
  const auto file = test::write_parts(folder, {test::plate("Plate", {20.0})}, LengthUnit::mm,
                                      StepProtocol::ap214);
  const std::string text = test::text_of(file);
  std::filesystem::create_hard_link(file, folder.path() / "hard.step");
  EXPECT_THROW(
      (void)write_semantic_sizes(file, folder.path() / "hard.step",
                                 std::vector<SizeToWrite>{{"Plate", "bore 20", 20.0, "H7", {}}},
                                 LengthUnit::mm, {}),
      Error);
  EXPECT_EQ(test::text_of(file), text);
}

TEST(StatedSizesWriting, LeavesASizeThatIsThereAndRefusesAnotherForItsFace) {
  const Folder folder;
  const auto file = test::write_parts(folder, {test::plate("Plate", {20.0})}, LengthUnit::mm,
                                      StepProtocol::ap214);
  const auto once = folder.path() / "once.step";
  const auto twice = folder.path() / "twice.step";
  const std::vector<SizeToWrite> same{{"Plate", "bore 20", 20.0, "H7", {}}};
  const std::vector<SizeToWrite> other{{"Plate", "bore 20", 20.0, "H8", {}}};
  (void)write_semantic_sizes(file, once, same, LengthUnit::mm, {});
  EXPECT_EQ(write_semantic_sizes(once, twice, same, LengthUnit::mm, {}).size(), 1U);
  EXPECT_EQ(test::read_whole(twice).semantic_sizes.size(), 1U);
  EXPECT_THROW((void)write_semantic_sizes(once, twice, other, LengthUnit::mm, {}), Error);
}

TEST(StatedSizesWriting, NeverTakesThePlaceOfADevice) {
  const Folder folder;
  const auto file = test::write_parts(folder, {test::plate("Plate", {20.0})}, LengthUnit::mm,
                                      StepProtocol::ap214);
  const std::vector<SizeToWrite> sizes{{"Plate", "bore 20", 20.0, "H7", {}}};
  EXPECT_THROW((void)write_semantic_sizes(file, "/dev/full", sizes, LengthUnit::mm, {}), Error);
  EXPECT_TRUE(std::filesystem::is_character_file("/dev/full"));
}

struct BadSize {
  SizeToWrite size;
  const char* rule;
};
void PrintTo(const BadSize& one, std::ostream* out) { *out << one.rule; }
class BadStatedSize : public testing::TestWithParam<BadSize> {};

TEST_P(BadStatedSize, IsRefusedByName) {
  const Folder folder;
  const auto file = test::write_parts(folder, {test::plate("Plate", {20.0})}, LengthUnit::mm,
                                      StepProtocol::ap214);
  const auto out = folder.path() / "out.step";
  const Error error = test::error_of([&] {
    return write_semantic_sizes(file, out, std::vector{GetParam().size}, LengthUnit::mm, {});
  });
  EXPECT_EQ(error.code(), ErrorCode::bad_input);
  EXPECT_THAT(error.rule(), testing::HasSubstr(GetParam().rule));
  EXPECT_FALSE(std::filesystem::exists(out));
}

INSTANTIATE_TEST_SUITE_P(
    Sizes, BadStatedSize,
    testing::Values(BadSize{{"Plaet", "bore 20", 20.0, "H7", {}}, "no such part"},
                    BadSize{{"Plate", "bore 21", 21.0, "H7", {}}, "no bore"},
                    BadSize{{"Plate", "bore 20", 0.0, "H7", {}}, "nominal"},
                    BadSize{{"Plate", "bore 20", 20.0, "h7", {}}, "class of shafts"},
                    BadSize{{"Plate", "bore 20", 20.0, "H19", {}}, "H19"},
                    BadSize{{"Plate", "bore 20", 20.0, "", {}}, "neither"},
                    BadSize{{"Plate", "bore 20", 20.0, "H7", SizeLimits{0.0, 0.1}}, "both"},
                    BadSize{{"Plate", "bore 20", 20.0, "", SizeLimits{0.1, 0.0}}, "reversed"}));

}  // namespace spotblue::semantic_round_test
