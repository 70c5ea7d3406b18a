// Features are called what the file calls their faces, else by kind and order.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

#include "geometry/read/written_step.hpp"
#include "spotblue/geometry/look.hpp"
#include "spotblue/geometry/mockup_write.hpp"
#include "spotblue/geometry/read.hpp"

namespace spotblue::test::given_names_test {

using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::IsSupersetOf;
using ::testing::Not;
using ::testing::UnorderedElementsAre;

Step step(const std::string& name, double start, double length, double diameter) {
  return {name, start, length, diameter, diameter, {}, {}};
}

Mockup stud(double journal = 20.0) {
  TurnedPart part;
  part.outside = {step("head", 0, 8, 40), step("journal", 8, 30, journal), step("", 38, 12, 16)};
  part.inside = {step("oil hole", 0, 20, 6)};
  Mockup mockup;
  mockup.title = "Press";
  mockup.parts = {{"Stud", part}};
  return mockup;
}

class GivenNames : public ::testing::Test {
 protected:
  std::string written(const Mockup& mockup) {
    write_mockup(mockup, folder_.path() / "model.step");
    std::ifstream in(folder_.path() / "model.step", std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
  }
  Product read(const std::string& text) {
    return read_step(folder_.write("read.step", text), {}, Completeness::all_or_error)
        .products.front();
  }
  Folder folder_;
};

std::vector<std::string> rounds(const Product& product) {
  std::vector<std::string> names;
  for (const Cylinder& one : product.cylinders) {
    names.push_back(one.name);
  }
  return names;
}

std::vector<std::string> faces(const Product& product) {
  std::vector<std::string> names;
  for (const Plane& one : product.planes) {
    names.push_back(one.name);
  }
  return names;
}

std::string replaced(std::string text, const std::string& from, const std::string& to) {
  for (std::size_t at = text.find(from); at != std::string::npos;
       at = text.find(from, at + to.size())) {
    text.replace(at, from.size(), to);
  }
  return text;
}

// The text with every ADVANCED_FACE called what `name` says of its number.
template <typename Name>
std::string with_faces_named(std::string text, const Name& name) {
  const std::string kind = "ADVANCED_FACE('";
  int count = 0;
  for (std::size_t at = text.find(kind); at != std::string::npos; at = text.find(kind, at)) {
    at += kind.size();
    text.replace(at, text.find('\'', at) - at, name(count++));
  }
  return text;
}

TEST_F(GivenNames, OfAMockupsStepsComeBackAsTheNamesOfItsFeatures) {
  for (const StepProtocol protocol :
       {StepProtocol::ap203, StepProtocol::ap214, StepProtocol::ap242}) {
    for (const LengthUnit unit : {LengthUnit::mm, LengthUnit::inch}) {
      Mockup mockup = stud();
      mockup.protocol = protocol;
      mockup.unit = unit;
      const Product product = read(written(mockup));
      EXPECT_THAT(rounds(product), UnorderedElementsAre("head", "journal", "outside", "oil hole"));
      EXPECT_THAT(faces(product),
                  IsSupersetOf(std::vector<std::string>{"head end", "journal end"}));
    }
  }
}

TEST_F(GivenNames, ChangeWithNoSize) {
  EXPECT_EQ(rounds(read(written(stud(20.0)))), rounds(read(written(stud(19.5)))));
  EXPECT_EQ(faces(read(written(stud(20.0)))), faces(read(written(stud(19.5)))));
}

TEST_F(GivenNames, MayHaveAnyLetters) {
  Mockup mockup = stud();
  std::get<TurnedPart>(mockup.parts[0].shape).outside[1].name = "Lagersitz außen, 'Ø'";
  EXPECT_THAT(rounds(read(written(mockup))), Contains("Lagersitz außen, 'Ø'"));
}

TEST_F(GivenNames, ThatNoPersonGaveAreNone) {
  const std::string text = written(stud());
  const auto kinds = UnorderedElementsAre("bore", "outside 1", "outside 2", "outside 3");
  EXPECT_THAT(rounds(read(with_faces_named(text, [](int) { return "NONE"; }))), kinds);
  EXPECT_THAT(rounds(read(with_faces_named(text, [](int) { return "Solid1"; }))), kinds);
  EXPECT_THAT(
      rounds(read(with_faces_named(text, [](int i) { return "no " + std::to_string(500 + i); }))),
      kinds);
  EXPECT_THAT(
      rounds(read(with_faces_named(text, [](int i) { return std::to_string(18000 + i) + "|7"; }))),
      kinds);
}

TEST_F(GivenNames, ThatTwoFeaturesShareAreNeithers) {
  const Product product = read(replaced(written(stud()), "'head'", "'journal'"));
  EXPECT_THAT(rounds(product),
              UnorderedElementsAre("outside 1", "outside 2", "outside 3", "oil hole"));
}

TEST_F(GivenNames, LeaveTheOthersTheirKindAndOrderFromTheLowEnd) {
  const Product product = read(with_faces_named(written(stud()), [](int) { return ""; }));
  std::vector<std::pair<double, std::string>> by_place;
  for (const Cylinder& one : product.cylinders) {
    if (one.side == Side::external) {
      by_place.emplace_back(one.axis.at.z, one.name);
    }
  }
  std::ranges::sort(by_place);
  std::vector<std::string> names;
  for (const auto& [at, name] : by_place) {
    names.push_back(name);
  }
  EXPECT_THAT(names, ElementsAre("outside 1", "outside 2", "outside 3"));
  EXPECT_THAT(faces(product), Not(Contains("face")));
}

TEST_F(GivenNames, ByOrderAreNeverTheOldNameOfAnotherBySize) {
  Mockup mockup = stud(2.0);  // the second outside from the low end; "outside 2" by its size
  std::get<TurnedPart>(mockup.parts[0].shape).inside.clear();
  const Product product = read(with_faces_named(written(mockup), [](int) { return ""; }));
  EXPECT_THAT(rounds(product), UnorderedElementsAre("outside 1", "outside no 2", "outside 3"));
}

// A plate with two bores side by side, neither of which has a name.
Mockup plate(double left, double right) {
  BlockPart block;
  block.size = {100, 60, 10};
  for (const auto& [u, diameter] : {std::pair(20.0, left), {80.0, right}}) {
    Bore bore;
    bore.u = u;
    bore.v = 30;
    bore.diameter = diameter;
    block.bores.push_back(bore);
  }
  Mockup mockup;
  mockup.title = "Plate";
  mockup.parts = {{"Plate", block}};
  return mockup;
}

TEST_F(GivenNames, ByOrderGoByWhereAFeatureLiesAndNeverByItsSize) {
  for (const auto& [left, right] : {std::pair(20.02, 20.06), {20.10, 20.06}}) {
    for (const Cylinder& bore : read(written(plate(left, right))).cylinders) {
      EXPECT_EQ(bore.name, bore.axis.at.x < 50.0 ? "bore 1" : "bore 2") << left;
    }
  }
}

TEST_F(GivenNames, ByOrderAreNeverAnothersSizeInWholeInches) {
  const Product product = read(written(plate(25.4, 50.8 - 25.4)));
  EXPECT_THAT(rounds(product), UnorderedElementsAre("bore no 1", "bore 2"));
}

TEST_F(GivenNames, OfBothFlanksAreTheKeysOwn) {
  Mockup mockup;
  mockup.title = "Key";
  mockup.parts = {
      {"Key", KeyPart{.width = 8, .height = 7, .length = 30, .ends = EndShape::square}}};
  const Product product = read(written(mockup));
  std::vector<std::string> widths;
  for (const Width& one : product.widths) {
    widths.push_back(one.name);
  }
  EXPECT_THAT(widths, Contains("key"));
  EXPECT_THAT(faces(product), Not(Contains("key")));
}

TEST_F(GivenNames, OfAKeyseatsRoundEndsAreItsEnds) {
  Mockup mockup = stud();
  std::get<TurnedPart>(mockup.parts[0].shape).keyseats = {
      {.at = 12, .length = 20, .width = 6, .depth = 3.5, .angle = 0, .ends = EndShape::round}};
  const Product product = read(written(mockup));
  EXPECT_THAT(rounds(product),
              IsSupersetOf(std::vector<std::string>{"keyseat end 1", "keyseat end 2", "journal"}));
  EXPECT_THAT(product.widths, Contains(::testing::Field(&Width::name, std::string("keyseat"))));
}

TEST_F(GivenNames, LeaveTheTitleOfTheAssemblyOutOfThePartsIds) {
  Mockup mockup = stud();
  mockup.parts.push_back({"Pin", RingPart{.outside = 9, .inside = 4, .thickness = 3}});
  for (const auto& [part, at] : {std::pair("Stud", 0.0), {"Pin", 100.0}, {"Pin", 200.0}}) {
    Placement placement;
    placement.part = part;
    placement.name = at > 150.0 ? "Pin, far" : part;
    placement.at = at;
    mockup.placements.push_back(placement);
  }
  const Model model =
      read_step(folder_.write("read.step", written(mockup)), {}, Completeness::all_or_error);
  std::vector<std::string> ids;
  for (const Occurrence& one : model.occurrences) {
    ids.push_back(one.id);
  }
  EXPECT_THAT(ids, UnorderedElementsAre("Stud", "Pin (1)", "Pin, far"));
  EXPECT_EQ(model.occurrences.front().path, "Press/Stud");
}

}  // namespace spotblue::test::given_names_test
