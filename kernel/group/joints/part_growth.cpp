#include "group/joints/part_growth.hpp"

#include "group/joints/part_material.hpp"

namespace spotblue {
PartGrowth growth_of(const DeclaredJob& declared, OccurrenceId occurrence) {
  PartGrowth growth;
  growth.warmer_by_k =
      running_temperature_c(declared, occurrence) - declared.job->conditions.bench_c;
  growth.material = material_name(declared, occurrence);
  growth.expansion_per_k = part_expansion_per_k(declared, occurrence);
  return growth;
}

}  // namespace spotblue
