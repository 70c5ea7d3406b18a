// Reading grows no faster than its input, shown as ratios in one run.

#include <gtest/gtest.h>

#include <algorithm>
#include <chrono>
#include <functional>
#include <string>

#include "geometry/step_declared.hpp"

namespace spotblue {
namespace {

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

}  // namespace
}  // namespace spotblue
