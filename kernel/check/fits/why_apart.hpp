#pragma once
// Why two features that a job pairs make no seat: how far they are from one.

#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/seats.hpp"
#include "spotblue/group/sentence.hpp"

namespace spotblue {

struct Apart {
  double distance_mm = 0.0;  ///< of what `text` speaks of; the nearest pair has the least
  Saying text;               ///< "their axes are 3.200 mm apart"
};

/// Two cylinders, internal and external, against the limits of a radial seat.
[[nodiscard]] Apart cylinders_apart(const Model& model, const FeatureRef& hole,
                                    const FeatureRef& shaft, const SeatSettings& settings);
/// A slot and a key.
[[nodiscard]] Apart widths_apart(const Model& model, const FeatureRef& slot, const FeatureRef& key,
                                 const SeatSettings& settings);
/// Two plane faces: their gap when they face each other.
[[nodiscard]] Apart faces_apart(const Model& model, const FeatureRef& a, const FeatureRef& b,
                                const SeatSettings& settings);

}  // namespace spotblue
