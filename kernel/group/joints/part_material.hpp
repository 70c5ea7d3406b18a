#pragma once
// What a part is made of, in the numbers the mechanics need: the job's own material or the table's.

#include <cstddef>
#include <optional>
#include <string>

#include "group/match/declared.hpp"
#include "spotblue/mechanics/elastic.hpp"

namespace spotblue {

/// The material as the job names it; empty when it names none.
[[nodiscard]] std::string material_name(const DeclaredJob& declared, OccurrenceId occurrence);

struct PartMaterial {
  std::optional<Elastic> elastic;
  Saying unknown;  ///< "no material is given for Wheel"; empty when known
};

/// Known only with modulus, Poisson's ratio and expansion; strengths may still be absent.
[[nodiscard]] PartMaterial part_material(const DeclaredJob& declared, OccurrenceId occurrence);

/// Whether it gives way by hand: of a soft material, or with a squeeze of its own.
[[nodiscard]] bool is_soft(const DeclaredJob& declared, OccurrenceId occurrence);
/// How thick a soft part is in its place; nothing where the job does not say it.
[[nodiscard]] std::optional<Limits> squeezed_thickness(const DeclaredJob& declared,
                                                       OccurrenceId occurrence);
/// Of a soft part what the job must say yet: "thickness and squeeze"; empty where it says all.
[[nodiscard]] Saying softness_missing(const DeclaredJob& declared, OccurrenceId occurrence);

/// Its expansion alone, 1/K; 0 of a soft part, whose squeeze takes it up; nothing
/// where the material is not known.
[[nodiscard]] std::optional<double> part_expansion_per_k(const DeclaredJob& declared,
                                                         OccurrenceId occurrence);

/// Temperature of a part when running: its own, or the job's.
[[nodiscard]] double running_temperature_c(const DeclaredJob& declared, OccurrenceId occurrence);

}  // namespace spotblue
