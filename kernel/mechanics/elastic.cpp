#include "spotblue/mechanics/elastic.hpp"

#include <fmt/format.h>

#include <cmath>

#include "base/require.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {

Elastic elastic_of(const Material& material) {
  require_value(material, "material");
  Elastic elastic;
  elastic.name = std::string(material.name);
  elastic.youngs_modulus_mpa = 1000.0 * material.youngs_modulus_gpa;
  elastic.poisson_ratio = material.poisson_ratio;
  elastic.expansion_per_k = 1e-6 * material.expansion_per_mk;
  elastic.yield_mpa = material.yield_mpa;
  elastic.tensile_mpa = material.tensile_strength_mpa;
  elastic.gives_way =
      !material.yield_mpa && material.tensile_strength_mpa ? GivesWay::brittle : GivesWay::ductile;
  return elastic;
}

void require_elastic(const Elastic& elastic, const std::string& argument) {
  require_value(elastic, argument);
  if (!(elastic.poisson_ratio > 0.0) || !(elastic.poisson_ratio < 0.5)) {
    throw Error(ErrorCode::bad_input, {"", argument + ".poisson_ratio"},
                fmt::format("need more than 0 and less than 0.5, got {}", elastic.poisson_ratio),
                "take Poisson's ratio from a data sheet; 0.3 for most metals");
  }
}

}  // namespace spotblue
