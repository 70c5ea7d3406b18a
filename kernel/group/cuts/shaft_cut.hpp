#pragma once
// What a cut takes of a shaft and leaves of it.

#include <optional>
#include <vector>

#include "group/cuts/cut_stretches.hpp"
#include "group/cuts/cut_surroundings.hpp"
#include "spotblue/mechanics/shaft_section.hpp"

namespace spotblue {

/// The worst factors of all shoulders, 1 without one; `unknown` says why one is absent.
struct CornerFactor {
  std::optional<double> bending = 1.0, torsion = 1.0;
  bool sharp = false;  ///< a corner without a fillet: the factors are the least it can have
  Saying unknown;
};

/// Shoulder over fillet up to which the curves of torsion go: a sharper corner is not known.
inline constexpr double kSharpestTorsion = 4.0;

struct ShaftCut {
  const Cut* cut = nullptr;
  FeatureRef feature;
  Stretch stretch;
  double begins_mm = 0.0;      ///< from the end of the shaft that lies lower on its axis
  RoundSection before, after;  ///< of the journal; after, at the least size it may have
  RoundSection least;          ///< of all that lies within the cut, grooves too
  std::vector<CutGroove> grooves;
  CutSurroundings round;
  std::optional<double> fillet_mm;  ///< left in the new corner: the job's, else the model's
  CornerFactor corner;
};

/// Of the shafts that are turned down, each journal by itself. A bore opened or a face taken back
/// costs a shaft's section nothing; plans count that metal.
/// @throws Error bad_input, naming job file and line, for a cut that takes nothing off.
[[nodiscard]] std::vector<ShaftCut> shaft_cuts(const DeclaredJob& declared);

/// @throws Error bad_input, naming job file and line, where the job does not say it.
[[nodiscard]] Length size_before(const Job& job, const Cut& cut);

/// The keyseat that a new corner ends so near to that their stresses add up; null where none is.
[[nodiscard]] const NearKeyseat* keyseat_at_corner(const ShaftCut& cut);

}  // namespace spotblue
