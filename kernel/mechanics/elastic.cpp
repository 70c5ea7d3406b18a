#include "spotblue/mechanics/elastic.hpp"

#include <fmt/format.h>

#include <cmath>

#include "mechanics/require.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {

Elastic elastic_of(const Material& material) {
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
  require_positive(elastic.youngs_modulus_mpa, argument + ".youngs_modulus_mpa", "MPa");
  require_positive(elastic.expansion_per_k, argument + ".expansion_per_k", "1/K");
  if (!(elastic.poisson_ratio > 0.0) || !(elastic.poisson_ratio < 0.5)) {
    throw Error(ErrorCode::bad_input, {"", argument + ".poisson_ratio"},
                fmt::format("need more than 0 and less than 0.5, got {}", elastic.poisson_ratio),
                "take Poisson's ratio from a data sheet; 0.3 for most metals");
  }
  if (elastic.yield_mpa) {
    require_positive(*elastic.yield_mpa, argument + ".yield_mpa", "MPa");
  }
  if (elastic.tensile_mpa) {
    require_positive(*elastic.tensile_mpa, argument + ".tensile_mpa", "MPa");
  }
}

}  // namespace spotblue
