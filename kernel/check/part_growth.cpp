#include "check/part_growth.hpp"

#include <algorithm>

#include "spotblue/standards/materials.hpp"

namespace spotblue {
namespace {

constexpr double kMicro = 1e-6;

std::optional<double> expansion_of(const Job& job, const std::string& name) {
  const auto own =
      std::find_if(job.materials.begin(), job.materials.end(),
                   [&name](const OwnMaterial& material) { return material.name == name; });
  if (own != job.materials.end()) {
    return own->expansion_um_per_m_k * kMicro;
  }
  const Material* known = find_material(name);
  return known == nullptr ? std::nullopt : std::optional(known->expansion_per_mk * kMicro);
}

}  // namespace

PartGrowth growth_of(const DeclaredJob& declared, std::size_t occurrence) {
  const Job& job = *declared.job;
  const JobPart* part = declared.parts.at(occurrence);
  PartGrowth growth;
  const double running_c =
      part != nullptr && part->running_c ? *part->running_c : job.conditions.running_c;
  growth.warmer_by_k = running_c - job.conditions.bench_c;
  if (part != nullptr && !part->material.empty()) {
    growth.material = part->material;
    growth.expansion_per_k = expansion_of(job, part->material);
  }
  return growth;
}

}  // namespace spotblue
