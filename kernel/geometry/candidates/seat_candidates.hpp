#pragma once
// What two products placed in one way could bear on each other with, before anyone asks what lies
// between them. Everything in the first product's frame.

#include <optional>
#include <string>
#include <vector>

#include "geometry/candidates/radial_candidates.hpp"
#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/settings.hpp"

namespace spotblue {

struct PlaneCandidate {
  std::size_t first = 0, second = 0;  // indexes into the products' planes
  double gap = 0.0;
  Region shared;             // in the first plane's (u, v)
  std::optional<Line> axis;  // common axis that the planes are square to
  bool half_round = false;   // a half moon about that axis, as of a disc sunk into a shaft
};

struct TaperCandidate {
  Which hole_of = Which::first;
  std::size_t hole = 0, shaft = 0;  // indexes into the products' cones
  double gap = 0.0, offset = 0.0, tilt = 0.0, engaged = 0.0, diameter = 0.0;
  double least_gap = 0.0;
  double hole_half_angle = 0.0;
  Line axis;  // at the middle of the shared stretch, the way the cones widen
};

struct WidthCandidate {
  Which slot_of = Which::first;
  std::size_t slot = 0, key = 0;  // indexes into the products' widths
  double clearance = 0.0, offset = 0.0, tilt = 0.0, area = 0.0;
  std::optional<double> ends_apart;  // of round ends, where both have two
  PlaneCandidate one, two;           // the two contacts
};

// A cylinder of each on one line, whatever their sizes and sides.
struct CommonAxis {
  std::size_t first = 0, second = 0;  // indexes into the products' cylinders
  Line axis;                          // the first's
  bool part_round = false;            // none of the cylinders on it goes as good as all round
};

struct PairCandidates {
  std::vector<RadialCandidate> radial;
  std::vector<PlaneCandidate> planes;
  std::vector<TaperCandidate> tapers;
  std::vector<WidthCandidate> widths;
  std::vector<CommonAxis> common_axes;
};

[[nodiscard]] PairCandidates pair_candidates(const Product& first, const Product& second,
                                             const Frame& second_in_first,
                                             const SeatSettings& settings);

}  // namespace spotblue
