#pragma once
/// @file
/// One ring, or a solid disc, under even pressure on its bore and outside: stresses and growth.
///
/// Lame's elastic thick cylinder in plane stress (open ends, no axial force), small strains, one
/// even material, far from the ends; G. Lame (1852), as every strength-of-materials text has it.
/// Edges raise the pressure where a longer part sticks out of a shorter one; that is not counted.
/// Diameters in mm, pressures and stresses in MPa, tension positive.

#include <optional>

#include "spotblue/base/describe.hpp"
#include "spotblue/base/export.hpp"
#include "spotblue/mechanics/elastic.hpp"

namespace spotblue {

struct Ring {
  double inner_mm = 0.0;
  double outer_mm = 0.0;
  Elastic material;
};
constexpr void describe(auto& fields, const Ring*) {
  fields.value("Ring", "A thick ring, or a solid disc where inner is 0, mm.")
      .member("inner_mm", &Ring::inner_mm, "diameter, mm, 0 or more")
      .range(kFrom0)
      .member("outer_mm", &Ring::outer_mm, "diameter, mm, > inner")
      .range(kOver0)
      .member("material", &Ring::material, "its elastic values");
}

struct RingLoad {
  double inside_mpa = 0.0;
  double outside_mpa = 0.0;
};
constexpr void describe(auto& fields, const RingLoad*) {
  fields.value("RingLoad", "Pressures on the surfaces, >= 0; `inside` must be 0 for a solid disc.")
      .member("inside_mpa", &RingLoad::inside_mpa, "MPa; 0 for a solid disc")
      .range(kFrom0)
      .member("outside_mpa", &RingLoad::outside_mpa, "MPa")
      .range(kFrom0);
}

struct SurfaceStress {
  double hoop_mpa = 0.0;
  double radial_mpa = 0.0;
  double equivalent_mpa = 0.0;
};
constexpr void describe(auto& fields, const SurfaceStress*) {
  fields.value("SurfaceStress", "Stresses at a surface, MPa, tension positive.")
      .member("hoop_mpa", &SurfaceStress::hoop_mpa, "MPa")
      .member("radial_mpa", &SurfaceStress::radial_mpa, "MPa")
      .member("equivalent_mpa", &SurfaceStress::equivalent_mpa, "von Mises, no axial stress")
      .range(kFrom0);
}

struct RingState {
  SurfaceStress bore, outside;
  double bore_change_mm = 0.0;
  double outside_change_mm = 0.0;
};
constexpr void describe(auto& fields, const RingState*) {
  fields.value("RingState", "What pressures do to a ring; the bore of a solid disc is its centre.")
      .member("bore", &RingState::bore, "stress at the bore; the centre of a solid disc, MPa")
      .member("outside", &RingState::outside, "stress at the outside, MPa")
      .member("bore_change_mm", &RingState::bore_change_mm, "of the diameter, mm, growth positive")
      .member("outside_change_mm", &RingState::outside_change_mm,
              "of the diameter, mm, growth positive");
}

/// @throws Error bad_input naming the argument for sizes, pressures or a material out of range.
[[nodiscard]] SPOTBLUE_EXPORT RingState loaded_ring(const Ring& ring, const RingLoad& load);

/// How much of its strength a surface uses: von Mises by yield for ductile materials, the greatest
/// tensile stress by the tensile strength for brittle ones (0 where nothing pulls).
/// @return nothing where the strength is not known.
[[nodiscard]] SPOTBLUE_EXPORT std::optional<double> utilisation(const SurfaceStress& stress,
                                                                const Elastic& material);

}  // namespace spotblue
