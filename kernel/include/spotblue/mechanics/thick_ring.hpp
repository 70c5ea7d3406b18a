#pragma once
/// @file
/// One ring, or a solid disc, under even pressure on its bore and outside: stresses and growth.
///
/// Lame's elastic thick cylinder in plane stress (open ends, no axial force), small strains, one
/// even material, far from the ends; G. Lame (1852), as every strength-of-materials text has it.
/// Edges raise the pressure where a longer part sticks out of a shorter one; that is not counted.
/// Diameters in mm, pressures and stresses in MPa, tension positive.

#include <optional>

#include "spotblue/base/export.hpp"
#include "spotblue/mechanics/elastic.hpp"

namespace spotblue {

/// 0 <= inner < outer; inner = 0 is a solid disc.
struct Ring {
  double inner_mm = 0.0;
  double outer_mm = 0.0;
  Elastic material;
};

/// Pressures on the surfaces, >= 0; `inside` must be 0 for a solid disc.
struct RingLoad {
  double inside_mpa = 0.0;
  double outside_mpa = 0.0;
};

struct SurfaceStress {
  double hoop_mpa = 0.0;
  double radial_mpa = 0.0;
  double equivalent_mpa = 0.0;  ///< von Mises, no axial stress
};

/// The bore of a solid disc is its centre.
struct RingState {
  SurfaceStress bore, outside;
  double bore_change_mm = 0.0;     ///< of the diameter, growth positive
  double outside_change_mm = 0.0;  ///< of the diameter, growth positive
};

/// @throws Error bad_input naming the argument for sizes, pressures or a material out of range.
[[nodiscard]] SPOTBLUE_EXPORT RingState loaded_ring(const Ring& ring, const RingLoad& load);

/// How much of its strength a surface uses: von Mises by yield for ductile materials, the greatest
/// tensile stress by the tensile strength for brittle ones (0 where nothing pulls).
/// @return nothing where the strength is not known.
[[nodiscard]] SPOTBLUE_EXPORT std::optional<double> utilisation(const SurfaceStress& stress,
                                                                const Elastic& material);

}  // namespace spotblue
