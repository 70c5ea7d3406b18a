#pragma once
/// @file
/// Elastic, thermal and strength values of the usual shaft, hub and bush materials at room
/// temperature.
///
/// Values are typical or specified minimum values as the source says: they serve to compare and to
/// warn, not to prove strength. Old castings and unmarked bar may be far below them; where someone
/// could be hurt, use a certificate or a test piece. Sources in full: tests/reference/SOURCES.md.
/// Checked by: tests/standards/materials_test.cpp, every row of tests/reference/materials.csv.

#include <optional>
#include <span>
#include <string_view>

#include "spotblue/base/describe.hpp"
#include "spotblue/base/export.hpp"
#include "spotblue/base/words.hpp"

namespace spotblue {

/// What a material is, as far as one may be taken for another.
enum class MaterialKind { steel, iron, bronze_or_brass, aluminium, white_metal, plastic };
constexpr auto describe(const MaterialKind*) {
  return words("What a material is, as far as one may be taken for another.", "steel", "iron",
               "bronze or brass", "aluminium", "white metal", "plastic");
}

struct Material {
  std::string_view name;
  MaterialKind kind = MaterialKind::steel;
  std::string_view condition;
  double youngs_modulus_gpa = 0.0;
  double poisson_ratio = 0.0;
  double expansion_per_mk = 0.0;
  std::optional<double> yield_mpa;
  std::string_view yield_basis;
  std::optional<double> tensile_strength_mpa;
  double density_kg_m3 = 0.0;
  std::string_view source;
};
constexpr void describe(auto& fields, const Material*) {
  fields.value("Material", "One material in one condition, typical values.")
      .member("name", &Material::name, "full name")
      .member("kind", &Material::kind,
              "steel, iron, bronze or brass, aluminium, white metal, plastic")
      .member("condition", &Material::condition, "as rolled, quenched, cast ...")
      .member("youngs_modulus_gpa", &Material::youngs_modulus_gpa, "GPa, > 0")
      .range(kOver0)
      .member("poisson_ratio", &Material::poisson_ratio, "0 to 0.5")
      .member("expansion_per_mk", &Material::expansion_per_mk,
              "linear expansion, micrometres per metre kelvin")
      .range(kOver0)
      .member("yield_mpa", &Material::yield_mpa, "absent for grey iron, which does not yield")
      .range(kOver0)
      .member("yield_basis", &Material::yield_basis, "what \"yield\" means here")
      .member("tensile_strength_mpa", &Material::tensile_strength_mpa,
              "MPa; given where there is no yield")
      .range(kOver0)
      .member("density_kg_m3", &Material::density_kg_m3, "kg/m3")
      .range(kOver0)
      .member("source", &Material::source,
              "where the values are from; says \"memory\" for what was not seen");
}

/// Every material of the table.
[[nodiscard]] SPOTBLUE_EXPORT std::span<const Material> materials();

/// A material by its full name or one of its short names ("mild steel", "grey iron", "leaded
/// bronze", "C93200"), letter case aside. A short name stands for one usual grade, of the irons and
/// plain steels the weaker: show the name found.
/// @return nothing (nullptr) when there is none; the material lives as long as the program.
[[nodiscard]] SPOTBLUE_EXPORT const Material* find_material(std::string_view name);

/// Whether it is one of the soft materials of seals and packings, letter case aside: felt, paper,
/// cork, leather, rubber. They are known by name; nothing elastic is worked out for them.
[[nodiscard]] SPOTBLUE_EXPORT bool is_soft_material(std::string_view name);
[[nodiscard]] SPOTBLUE_EXPORT std::span<const std::string_view> soft_materials();

/// Full names and short names, for error messages and help.
[[nodiscard]] SPOTBLUE_EXPORT std::span<const std::string_view> material_names();

}  // namespace spotblue
