#pragma once
/// @file
/// Threads modelled turn by turn, as swept along a helix.

#include <TopoDS_Shape.hxx>

namespace spotblue::test {

/// A trapezoid about z = `from`, carried along a helix about z.
struct ThreadProfile {
  double inner = 0.0, outer = 0.0;              ///< radii
  double width_inner = 0.0, width_outer = 0.0;  ///< along z, at those radii
  double pitch = 0.0, from = 0.0;
  int turns = 0;
};
TopoDS_Shape helical(const ThreadProfile& profile);

}  // namespace spotblue::test
