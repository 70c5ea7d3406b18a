#pragma once
/// @file
/// Whether one part can pass another along an axis, both seen as rings about it.

#include <optional>
#include <span>
#include <vector>

#include "geometry/outline/profile.hpp"

namespace spotblue::proof {

/// Radial overlap that counts as none, mm.
inline constexpr double kPassing = 1e-4;

enum class Way { free, untold, blocked };

struct Passing {
  Way way = Way::free;
  double needs = 0.0, has = 0.0;  ///< diameters, mm, of a blocked way
};

/// Radii at which the two may overlap, where the parts that it stands for reach these stations.
struct OverlapBand {
  double low = 0.0, high = 0.0;
  std::optional<Interval> moving_z, still_z;
};

/// What two parts may do to each other.
struct Leave {
  std::vector<OverlapBand> bands;  ///< press fit, thread, keyway
  double apart = 0.0;              ///< travel within which they come clear of a given overlap
  double squeeze = 0.0;            ///< radial overlap that gives
  bool moving_springs = false;
  bool still_springs = false;
};

enum class Sense { up, down };

/// A part as slabs along the axis, ascending.
[[nodiscard]] std::vector<Slab> slabs_about(const FaceBounds& part, const Line& axis);

/// Whether `moving` gets past `still` when it goes along the axis for ever.
[[nodiscard]] Passing passing(std::span<const Slab> moving, std::span<const Slab> still,
                              Sense sense, const Leave& leave);

}  // namespace spotblue::proof
