#pragma once
// How far bearings let a shaft go at another place along it.

#include <vector>

namespace spotblue {

/// A bearing's stretch of the line and how far it lets the shaft go aside there, all in mm.
struct Guided {
  double from = 0.0, to = 0.0;
  double aside = 0.0;  ///< half of its greatest diametral clearance, >= 0
};

/// How far aside a straight shaft can be at a place, held within each bearing at both its ends;
/// infinite without a bearing that has a length.
[[nodiscard]] double greatest_reach(const std::vector<Guided>& bearings, double place);

}  // namespace spotblue
