#pragma once
// What of a shaft one cut takes: journals of one size that lie apart are cut one by one.

#include <cstddef>
#include <vector>

#include "group/cuts/stretch.hpp"
#include "spotblue/group/sentence.hpp"

namespace spotblue {

/// A ring of less diameter within a cut.
struct CutGroove {
  Stretch stretch;
  double diameter_mm = 0.0;  ///< the least in it
};

struct CutStretch {
  Stretch stretch;
  std::vector<CutGroove> grooves;  ///< in their order along the axis
};

/// Pieces of the outside that a groove parts are one; those that lie further apart, or between
/// which the shaft is thicker or not round, are cut each for itself.
/// @param cylinder  number of an outside cylinder of the product.
/// @return by their place along its axis.
[[nodiscard]] std::vector<CutStretch> cut_stretches(const Product& product, std::size_t cylinder);

}  // namespace spotblue
