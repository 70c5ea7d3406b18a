#pragma once
/// @file
/// What the formulas of this layer need to know of a material.

#include <optional>
#include <string>

#include "spotblue/base/describe.hpp"
#include "spotblue/base/export.hpp"
#include "spotblue/base/words.hpp"
#include "spotblue/standards/materials.hpp"

namespace spotblue {

/// How a material gives way: ductile ones by distortion energy against yield, brittle ones (grey
/// iron) by the greatest tensile stress against the tensile strength.
enum class GivesWay { ductile, brittle };
constexpr auto describe(const GivesWay*) {
  return words("How a material gives way.", "ductile", "brittle");
}

struct Elastic {
  std::string name;
  double youngs_modulus_mpa = 0.0;
  double poisson_ratio = 0.0;
  double expansion_per_k = 0.0;
  std::optional<double> yield_mpa;
  std::optional<double> tensile_mpa;
  GivesWay gives_way = GivesWay::ductile;
};
constexpr void describe(auto& fields, const Elastic*) {
  fields
      .value("Elastic", "Elastic, thermal and strength values of one part; all > 0 where present.")
      .member("name", &Elastic::name, "as a finding shows it")
      .member("youngs_modulus_mpa", &Elastic::youngs_modulus_mpa, "MPa, > 0")
      .range(kOver0)
      .member("poisson_ratio", &Elastic::poisson_ratio, "over 0, under 0.5")
      .member("expansion_per_k", &Elastic::expansion_per_k, "linear, 1/K: 11.7e-6 for steel")
      .range(kOver0)
      .member("yield_mpa", &Elastic::yield_mpa, "MPa or None")
      .range(kOver0)
      .member("tensile_mpa", &Elastic::tensile_mpa, "of brittle materials, MPa or None")
      .range(kOver0)
      .member("gives_way", &Elastic::gives_way, "ductile or brittle");
}

/// The values of a material of the table; brittle when it has a tensile strength and no yield.
[[nodiscard]] SPOTBLUE_EXPORT Elastic elastic_of(const Material& material);

/// @throws Error bad_input naming `argument` when a value breaks its rule.
SPOTBLUE_EXPORT void require_elastic(const Elastic& elastic, const std::string& argument);

}  // namespace spotblue
