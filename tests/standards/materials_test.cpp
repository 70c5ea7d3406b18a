#include "spotblue/standards/materials.hpp"

#include <gtest/gtest.h>

#include <cctype>
#include <string>
#include <string_view>

#include "support/csv.hpp"

namespace spotblue::materials_test {

using test::CsvRow;
using test::number;
using test::read_reference;

TEST(Materials, EveryRowOfTheSourceIsMet) {
  const auto rows = read_reference("materials.csv");
  for (const CsvRow& row : rows) {
    const Material* const got = find_material(row.at("material"));
    ASSERT_NE(got, nullptr) << row.at("material");
    SCOPED_TRACE(row.at("material"));
    EXPECT_EQ(got->condition, row.at("condition"));
    EXPECT_EQ(got->youngs_modulus_gpa, number(row, "E_GPa"));
    EXPECT_EQ(got->poisson_ratio, number(row, "poisson"));
    EXPECT_EQ(got->expansion_per_mk, number(row, "alpha_1e-6_per_K"));
    EXPECT_EQ(got->density_kg_m3, number(row, "density_kg_m3"));
    EXPECT_EQ(got->yield_mpa.has_value(), !row.at("yield_MPa").empty());
    if (got->yield_mpa) {
      EXPECT_EQ(*got->yield_mpa, number(row, "yield_MPa"));
      EXPECT_EQ(got->yield_basis, row.at("yield_basis"));
    }
    EXPECT_EQ(got->source, row.at("source"));
  }
  EXPECT_EQ(rows.size(), materials().size());
}

TEST(Materials, GreyIronHasATensileStrengthInPlaceOfAYield) {
  const Material* const iron = find_material("grey iron");
  ASSERT_NE(iron, nullptr);
  EXPECT_FALSE(iron->yield_mpa.has_value());
  EXPECT_EQ(iron->tensile_strength_mpa, 138.0);  // [PHILPOT], A48 class 20
}

TEST(Materials, EachHasAStrengthAndASource) {
  for (const Material& material : materials()) {
    EXPECT_NE(material.yield_mpa.has_value(), material.tensile_strength_mpa.has_value());
    EXPECT_FALSE(material.source.empty()) << material.name;
    EXPECT_GT(material.poisson_ratio, 0.0);
    EXPECT_LT(material.poisson_ratio, 0.5);
  }
}

TEST(Materials, EveryNameIsFoundInAnyCase) {
  for (const std::string_view name : material_names()) {
    std::string shouted(name);
    for (char& c : shouted) {
      c = static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
    }
    EXPECT_NE(find_material(shouted), nullptr) << name;
    EXPECT_EQ(find_material(shouted), find_material(name));
  }
}

TEST(Materials, ShortNameNamesOneUsualGrade) {
  EXPECT_EQ(find_material("Leaded Bronze")->name, "bearing bronze C93200 (SAE 660)");
  EXPECT_EQ(find_material("mild steel")->name, "carbon steel A36");
  EXPECT_EQ(find_material("cold rolled steel")->name, "carbon steel 1020");
  EXPECT_EQ(find_material("aluminium bronze")->name, "aluminium bronze C95400");
}

TEST(Materials, UnknownNameFindsNothing) {
  EXPECT_EQ(find_material("cheese"), nullptr);
  EXPECT_EQ(find_material(""), nullptr);
}

}  // namespace spotblue::materials_test
