#pragma once
/// @file
/// What is known of a generated assembly because it was made so. Parts are given by their place in
/// the list of occurrences; lengths in mm, angles in rad, as in spotblue/geometry/seats.hpp.

#include <cstddef>
#include <numbers>
#include <optional>
#include <string>
#include <vector>

namespace spotblue::test {

inline constexpr double kFullTurn = 2.0 * std::numbers::pi;

struct TrueRadial {
  std::size_t hole = 0, shaft = 0;
  double hole_diameter = 0.0, shaft_diameter = 0.0;
  double engaged = 0.0;
  double offset = 0.0, tilt = 0.0;
  double least_gap = 0.0;
  double coverage = kFullTurn;
  double engaged_slack = 0.0;   ///< added to the tolerance where the model's own edges are fitted
  double coverage_slack = 0.0;  ///< rad, the same where an arc's end runs along the seat askew
};

struct TrueAxial {
  std::size_t a = 0, b = 0;
  double gap = 0.0, area = 0.0;
  bool on_centre_line = true;
};

struct TrueTaper {
  std::size_t hole = 0, shaft = 0;
  double hole_half_angle = 0.0, shaft_half_angle = 0.0;
  double gap = 0.0, engaged = 0.0, diameter = 0.0;
};

struct TrueWidth {
  std::size_t slot = 0, key = 0;
  double slot_width = 0.0, key_width = 0.0, offset = 0.0, area = 0.0;
};

struct TrueThread {
  std::size_t hole = 0, screw = 0;
  std::string size;
  double hole_diameter = 0.0, screw_diameter = 0.0, engaged = 0.0;
};

struct TrueFoul {
  std::size_t a = 0, b = 0;
  std::optional<double> volume;  ///< mm3, where there is a closed form
  double depth = 0.0;            ///< 0 where "how far to come clear" has no plain answer
  bool in_pieces = false;        ///< as of teeth: a row for each of one or more regions
};

struct Truth {
  std::vector<TrueRadial> radial;
  std::vector<TrueAxial> axial;
  std::vector<TrueTaper> taper;
  std::vector<TrueWidth> width;
  std::vector<TrueThread> threads;
  std::vector<TrueFoul> fouls;
};

}  // namespace spotblue::test
