#include "group/joints/part_material.hpp"

#include "group/words/said_sizes.hpp"

namespace spotblue {
namespace {

Elastic own_elastic(const OwnMaterial& own) {
  Elastic elastic;
  elastic.name = own.name;
  elastic.youngs_modulus_mpa = 1000.0 * own.youngs_modulus_gpa;
  elastic.poisson_ratio = own.poisson_ratio;
  elastic.expansion_per_k = 1e-6 * own.expansion_um_per_m_k;
  elastic.yield_mpa = own.yield_mpa;
  elastic.tensile_mpa = own.tensile_mpa;
  elastic.gives_way = !own.yield_mpa && own.tensile_mpa ? GivesWay::brittle : GivesWay::ductile;
  return elastic;
}

bool is_whole(const Elastic& elastic) {
  return elastic.youngs_modulus_mpa > 0.0 && elastic.poisson_ratio > 0.0 &&
         elastic.expansion_per_k > 0.0;
}

}  // namespace

std::string material_name(const DeclaredJob& declared, OccurrenceId occurrence) {
  const JobPart* part = declared.parts.at(occurrence);
  return part == nullptr ? std::string() : part->material;
}

PartMaterial part_material(const DeclaredJob& declared, OccurrenceId occurrence) {
  const std::string name = material_name(declared, occurrence);
  const Reference part = declared.names.reference(occurrence);
  if (name.empty()) {
    return {std::nullopt, say(said::kNoMaterial, part)};
  }
  for (const OwnMaterial& own : declared.job->materials) {
    if (own.name == name) {
      const Elastic elastic = own_elastic(own);
      return is_whole(elastic)
                 ? PartMaterial{elastic, {}}
                 : PartMaterial{std::nullopt, say(said::kMaterialNotWhole, name, part)};
    }
  }
  if (is_soft_material(name)) {
    return {std::nullopt, say(said::kMaterialSoft, name, part)};
  }
  const Material* known = find_material(name);
  return known == nullptr ? PartMaterial{std::nullopt, say(said::kMaterialNotKnown, name, part)}
                          : PartMaterial{elastic_of(*known), {}};
}

bool is_soft(const DeclaredJob& declared, OccurrenceId occurrence) {
  const JobPart* part = declared.parts.at(occurrence);
  return part != nullptr && (part->squeeze || is_soft_material(part->material));
}

std::optional<Limits> squeezed_thickness(const DeclaredJob& declared, OccurrenceId occurrence) {
  const JobPart* part = declared.parts.at(occurrence);
  if (part == nullptr || !part->thickness || !part->squeeze) {
    return std::nullopt;
  }
  return Limits{*part->thickness - part->squeeze->upper, *part->thickness - part->squeeze->lower};
}

Saying softness_missing(const DeclaredJob& declared, OccurrenceId occurrence) {
  if (!is_soft(declared, occurrence) || squeezed_thickness(declared, occurrence)) {
    return {};
  }
  return declared.parts.at(occurrence)->thickness ? said::kSqueezeMissing
                                                  : said::kThicknessAndSqueezeMissing;
}

std::optional<double> part_expansion_per_k(const DeclaredJob& declared, OccurrenceId occurrence) {
  const std::string name = material_name(declared, occurrence);
  for (const OwnMaterial& own : declared.job->materials) {
    if (own.name == name) {
      return 1e-6 * own.expansion_um_per_m_k;
    }
  }
  if (is_soft(declared, occurrence)) {
    return 0.0;
  }
  const Material* known = find_material(name);
  return known == nullptr ? std::nullopt : std::optional(1e-6 * known->expansion_per_mk);
}

double running_temperature_c(const DeclaredJob& declared, OccurrenceId occurrence) {
  const JobPart* part = declared.parts.at(occurrence);
  const double all = declared.job->conditions.running_c;
  return part == nullptr ? all : part->running_c.value_or(all);
}

}  // namespace spotblue
