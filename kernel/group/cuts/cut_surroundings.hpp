#pragma once
// What lies round a stretch of a shaft that is turned down: shoulders, fillets, bore, keyseats and
// threads.

#include <optional>
#include <vector>

#include "group/cuts/stretch.hpp"
#include "group/match/declared.hpp"

namespace spotblue {

/// The step up in diameter where the cut ends.
struct Shoulder {
  double diameter_mm = 0.0;         ///< of the larger side
  std::optional<double> fillet_mm;  ///< as modelled; absent: a sharp corner
};

/// A keyseat or slot that the shaft's axis passes through.
struct NearKeyseat {
  Reference name;
  double width_mm = 0.0;
  double distance_mm = 0.0;  ///< from the nearer end of the cut; negative: so much is inside it
};

struct CutSurroundings {
  double bore_mm = 0.0;               ///< widest hole about the axis under the cut; 0 when solid
  std::vector<Shoulder> shoulders;    ///< at either end, none where the shaft ends or steps down
  std::vector<NearKeyseat> keyseats;  ///< nearest first
  std::vector<Reference> broken;      ///< cross holes and flats within the cut
  std::vector<Saying> threads;        ///< that the cut runs into: "M8 (Nut)"
};

/// @param cut      an outside cylinder.
/// @param stretch  of its axis.
[[nodiscard]] CutSurroundings cut_surroundings(const DeclaredJob& declared, const FeatureRef& cut,
                                               const Stretch& stretch);

}  // namespace spotblue
