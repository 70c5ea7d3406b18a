// Reading grows no faster than its input, shown as ratios in one run.

#include <gtest/gtest.h>

#include <algorithm>
#include <chrono>
#include <functional>
#include <string>

#include "geometry/part21/step_axes.hpp"
#include "geometry/part21/step_bare.hpp"
#include "geometry/part21/step_declared.hpp"
#include "geometry/part21/step_placement.hpp"
#include "geometry/part21/step_units.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue::growth_test {

double seconds(const std::function<void()>& work) {
  double least = 1e9;
  for (int i = 0; i < 3; ++i) {
    const auto start = std::chrono::steady_clock::now();
    work();
    least = std::min(
        least, std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count());
  }
  return least;
}

// So many products, each with a representation of its own that holds one solid and is linked to the
// next one's.
std::string chain_of_representations(int links) {
  std::string text =
      "ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION((''),'2;1');\nFILE_NAME('','',(''),(''),'','','');"
      "\n"
      "FILE_SCHEMA(('AUTOMOTIVE_DESIGN'));\nENDSEC;\nDATA;\n#1=CLOSED_SHELL('',());\n"
      "#2=(GEOMETRIC_REPRESENTATION_CONTEXT(3)REPRESENTATION_CONTEXT('',''));\n";
  const auto id = [](int link, int what) { return "#" + std::to_string(10 * link + 10 + what); };
  for (int i = 0; i < links; ++i) {
    text += id(i, 0) + "=PRODUCT_DEFINITION('','',#2,#2);\n";
    text += id(i, 1) + "=PRODUCT_DEFINITION_SHAPE('',''," + id(i, 0) + ");\n";
    text += id(i, 2) + "=MANIFOLD_SOLID_BREP('',#1);\n";
    text += id(i, 3) + "=SHAPE_REPRESENTATION('',(" + id(i, 2) + "),#2);\n";
    text += id(i, 4) + "=SHAPE_DEFINITION_REPRESENTATION(" + id(i, 1) + "," + id(i, 3) + ");\n";
    if (i > 0) {
      text += id(i, 5) + "=SHAPE_REPRESENTATION_RELATIONSHIP('',''," + id(i - 1, 3) + "," +
              id(i, 3) + ");\n";
    }
  }
  return text + "ENDSEC;\nEND-ISO-10303-21;\n";
}

TEST(Growth, LinkedRepresentationsCostNoMoreThanTheirNumber) {
  const auto declare = [](const std::string& text) {
    ReadLimits limits;
    limits.occurrences = 1e12;
    return seconds([&] {
      const StepText entities(text, "chain.step", limits);
      const Declared declared = read_declared(entities, "chain.step", limits);
      ASSERT_FALSE(declared.parts.empty());
      ASSERT_EQ(declared.parts.front().solid_entities->size(), declared.parts.size());
    });
  };
  const double few = declare(chain_of_representations(1000));
  const double many = declare(chain_of_representations(16000));
  EXPECT_LT(many, 3.0 * 16.0 * few) << few << " s, " << many << " s";
}

// Shells that list so many faces each.
std::string listing(int shells, int faces) {
  std::string text =
      "ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION((''),'2;1');\nFILE_NAME('','',(''),(''),'','','');"
      "\nFILE_SCHEMA(('AUTOMOTIVE_DESIGN'));\nENDSEC;\nDATA;\n#1=ADVANCED_FACE('',(),#1,.T.);\n";
  for (int shell = 0; shell < shells; ++shell) {
    const std::string id = "#" + std::to_string(2 * shell + 2);
    text += id + "=CLOSED_SHELL('',(#1";
    for (int i = 1; i < faces; ++i) {
      text += ",#1";
    }
    text += "));\n#" + std::to_string(2 * shell + 3) + "=MANIFOLD_SOLID_BREP(''," + id + ");\n";
  }
  return text + "ENDSEC;\nEND-ISO-10303-21;\n";
}

// Parts whose names have so many letters, as codes that never end.
std::string naming(int parts, int letters) {
  std::string text =
      "ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION((''),'2;1');\nFILE_NAME('','',(''),(''),'','','');"
      "\nFILE_SCHEMA(('AUTOMOTIVE_DESIGN'));\nENDSEC;\nDATA;\n#1=CLOSED_SHELL('',());\n"
      "#2=(GEOMETRIC_REPRESENTATION_CONTEXT(3)REPRESENTATION_CONTEXT('',''));\n";
  std::string name;
  while (name.size() < static_cast<std::size_t>(letters)) {
    name += "\\X2\\";
  }
  for (int i = 0; i < parts; ++i) {
    const auto id = [i](int what) { return "#" + std::to_string(10 * i + 10 + what); };
    text += id(0) + "=PRODUCT('" + name + "','" + name + "','',());\n";
    text += id(1) + "=PRODUCT_DEFINITION_FORMATION('',''," + id(0) + ");\n";
    text += id(2) + "=PRODUCT_DEFINITION('',''," + id(1) + ",#2);\n";
    text += id(3) + "=PRODUCT_DEFINITION_SHAPE('',''," + id(2) + ");\n";
    text += id(4) + "=MANIFOLD_SOLID_BREP('" + name + "',#1);\n";
    text += id(5) + "=SHAPE_REPRESENTATION('',(" + id(4) + "),#2);\n";
    text += id(6) + "=SHAPE_DEFINITION_REPRESENTATION(" + id(3) + "," + id(5) + ");\n";
  }
  return text + "ENDSEC;\nEND-ISO-10303-21;\n";
}

double seconds_to_read(const std::string& text) {
  return seconds([&] {
    const StepText entities(text, "file.step", {});
    const Declared declared = read_declared(entities, "file.step", {});
    ASSERT_FALSE(declared.solids.empty());
    ASSERT_TRUE(axis_faults(entities).empty());
    const RepresentationOwners owners = representation_owners(entities);
    ASSERT_TRUE(read_placements(entities, owners).faults.empty());
    ASSERT_TRUE(unit_faults(entities, owners).empty());
    ASSERT_TRUE(bare_parts(entities, declared).empty());
  });
}

TEST(Growth, AListCostsNoMoreThanItsLength) {
  const double few = seconds_to_read(listing(20, 2'500));
  const double many = seconds_to_read(listing(20, 50'000));
  EXPECT_LT(many, 3.0 * 20.0 * few) << few << " s, " << many << " s";
}

TEST(Growth, NamesCostNoMoreThanTheirLength) {
  const double few = seconds_to_read(naming(200, 1'000));
  const double many = seconds_to_read(naming(200, 10'000));
  EXPECT_LT(many, 3.0 * 10.0 * few) << few << " s, " << many << " s";
}

constexpr const char* kHead =
    "ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION((''),'2;1');\nFILE_NAME('','',(''),(''),'','','');\n"
    "FILE_SCHEMA(('AUTOMOTIVE_DESIGN'));\nENDSEC;\nDATA;\n#1=CLOSED_SHELL('',());\n"
    "#2=(GEOMETRIC_REPRESENTATION_CONTEXT(3)REPRESENTATION_CONTEXT('',''));\n";
constexpr const char* kTail = "ENDSEC;\nEND-ISO-10303-21;\n";

double seconds_to_declare(const std::string& text, bool may_be_refused) {
  const auto start = std::chrono::steady_clock::now();
  try {
    const StepText entities(text, "linked.step", {});
    (void)read_declared(entities, "linked.step", {});
  } catch (const Error& error) {
    EXPECT_TRUE(may_be_refused) << error.what();
    EXPECT_EQ(error.code(), ErrorCode::unreadable);
  }
  return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

// One definition that names two groups of a thousand solids by turns, 1.3 MB: once 156 s.
TEST(Growth, ADefinitionThatNamesTheSameShapesOverAndOver) {
  std::string text = kHead;
  std::string one;
  std::string two;
  for (int i = 0; i < 1000; ++i) {
    one += (i > 0 ? ",#" : "#") + std::to_string(1000 + i);
    two += (i > 0 ? ",#" : "#") + std::to_string(2000 + i);
    text += "#" + std::to_string(1000 + i) + "=MANIFOLD_SOLID_BREP('',#1);\n";
    text += "#" + std::to_string(2000 + i) + "=MANIFOLD_SOLID_BREP('',#1);\n";
  }
  text += "#10=SHAPE_REPRESENTATION('',(" + one + "),#2);\n";
  text += "#11=SHAPE_REPRESENTATION('',(" + two + "),#2);\n";
  text += "#12=PRODUCT_DEFINITION('','',#2,#2);\n#13=PRODUCT_DEFINITION_SHAPE('','',#12);\n";
  for (int i = 0; i < 24'000; ++i) {
    text += "#" + std::to_string(10'000 + i) + "=SHAPE_DEFINITION_REPRESENTATION(#13,#" +
            (i % 2 == 0 ? "10" : "11") + ");\n";
  }
  text += kTail;
  EXPECT_GT(text.size(), 1'200'000U);
  EXPECT_LT(seconds_to_declare(text, false), 3.0);
}

// Copies that hold the copies before them and one solid more: the lists grow with the square.
TEST(Growth, CopiesWithinCopiesEndSoon) {
  std::string text = kHead;
  const auto id = [](int at, int what) { return "#" + std::to_string(100 + 10 * at + what); };
  for (int i = 0; i < 7000; ++i) {
    const std::string copy = i == 0 ? "" : "," + id(i, 4);
    text += id(i, 0) + "=MANIFOLD_SOLID_BREP('',#1);\n";
    text += id(i, 1) + "=SHAPE_REPRESENTATION('',(" + id(i, 0) + copy + "),#2);\n";
    text += id(i, 2) + "=REPRESENTATION_MAP(#2," + id(i, 1) + ");\n";
    if (i > 0) {
      text += id(i, 4) + "=MAPPED_ITEM(''," + id(i - 1, 2) + ",#2);\n";
    }
    text += id(i, 5) + "=PRODUCT_DEFINITION('','',#2,#2);\n";
    text += id(i, 6) + "=PRODUCT_DEFINITION_SHAPE('',''," + id(i, 5) + ");\n";
    text += id(i, 7) + "=SHAPE_DEFINITION_REPRESENTATION(" + id(i, 6) + "," + id(i, 1) + ");\n";
  }
  text += kTail;
  EXPECT_LT(seconds_to_declare(text, true), 3.0);
}

// A thousand solids of one shell of twenty thousand faces: the shell was read for each.
TEST(Growth, ManySolidsOfOneShell) {
  std::string text = kHead;
  std::string faces;
  for (int i = 0; i < 20'000; ++i) {
    faces += i > 0 ? ",#1" : "#1";
  }
  text += "#3=CLOSED_SHELL('',(" + faces + "));\n";
  for (int i = 0; i < 20'000; ++i) {
    text += "#" + std::to_string(100 + i) + "=MANIFOLD_SOLID_BREP('',#3);\n";
  }
  text += kTail;
  EXPECT_LT(seconds_to_declare(text, false), 3.0);
}

}  // namespace spotblue::growth_test
