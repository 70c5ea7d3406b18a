#pragma once
/// @file
/// Where parts bear on each other: radial, axial, taper and width seats, screws in tapped holes and
/// the centre lines they share, measured from the surfaces' own parameters.

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/geometry/feature_kind.hpp"
#include "spotblue/geometry/ids.hpp"
#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/settings.hpp"

namespace spotblue {

/// A feature of one occurrence: index into the product's list of that kind.
struct FeatureRef {
  OccurrenceId occurrence{};
  FeatureKind kind = FeatureKind::cylinder;
  std::size_t index = 0;
  bool operator==(const FeatureRef&) const = default;
};

/// The clearances of a pair that is not one size along its length or all round, mm, diametral.
struct ClearanceRange {
  double least = 0.0, most = 0.0;
  bool operator==(const ClearanceRange&) const = default;
};

/// A hole and a shaft that bear, run or press on each other. Lengths in mm, angles in rad.
struct RadialSeat {
  FeatureRef hole, shaft;
  double hole_diameter = 0.0, shaft_diameter = 0.0;  ///< of a worn one the mean
  double clearance = 0.0;  ///< diametral, hole - shaft; negative is interference
  /// Where hole or shaft is worn (Cylinder::sizes): what the clearance is over the engaged length.
  std::optional<ClearanceRange> worn{};
  double offset = 0.0;  ///< distance of the axes at the middle of the engaged length
  double tilt = 0.0;    ///< angle between the axes
  /// Least radial gap over the engaged length, at the angles where both have surface: hole radius
  /// less the greatest distance of the shaft's surface from the hole's axis. Negative: the pair
  /// fouls, or is pressed.
  double least_gap = 0.0;
  /// How much deeper than a seat may the two lie in one another where they do so most, >= 0: past
  /// nothing where there is clearance, past the settings' radial overlap where there is none.
  double fouls_by = 0.0;
  double engaged = 0.0;         ///< sum of shared, unblocked stretches along the hole's axis
  double coverage = 0.0;        ///< angles where hole and shaft both have surface
  Line axis;                    ///< hole's axis, assembly frame, at = middle of the engaged length
  double from = 0.0, to = 0.0;  ///< ends of the engaged stretches on `axis`
  CentreLineId centre_line{};
};

/// Two faces that look at each other.
struct AxialSeat {
  FeatureRef a, b;
  double gap = 0.0;  ///< along a's normal; negative where the parts overlap
  /// About the centre line: diameters of the seat's nearest and farthest point.
  std::optional<double> inner{}, outer{};
  double area = 0.0;  ///< mm2, net of holes, grooves and whatever lies between
  Line axis;          ///< a's normal, assembly frame, through a point of a's face
  std::optional<CentreLineId> centre_line{};
};

/// A cone in a cone.
struct TaperSeat {
  FeatureRef hole, shaft;
  double hole_half_angle = 0.0, shaft_half_angle = 0.0;  ///< rad
  double gap = 0.0;  ///< square to the hole's surface at the middle of the shared stretch
  double offset = 0.0, tilt = 0.0;
  double least_gap = 0.0;  ///< square to the hole's surface, least over the stretch and all round
  double fouls_by = 0.0;   ///< as of a radial seat: past the settings' radial overlap
  double engaged = 0.0;    ///< along the axis
  double diameter = 0.0;   ///< of the hole at the middle of the shared stretch
  Line axis;
  CentreLineId centre_line{};
};

/// A key in a keyseat, a tongue in a slot.
struct WidthSeat {
  FeatureRef slot, key;
  double slot_width = 0.0, key_width = 0.0;
  double clearance = 0.0;  ///< slot - key
  double offset = 0.0;     ///< of the middle planes
  double tilt = 0.0;
  double least_gap = 0.0;  ///< of the tighter side, along the straight flanks
  /// How much longer the slot is than the key between their round ends, where both have two.
  std::optional<double> ends_apart{};
  double area = 0.0;  ///< mm2, of the smaller of the two contacts
};

/// A screw in a tapped hole, both modelled as plain cylinders.
struct Thread {
  FeatureRef hole, screw;
  std::string size;  ///< "M10", "M10x1", "3/8-16 UNC"
  double hole_diameter = 0.0, screw_diameter = 0.0;
  double engaged = 0.0;
  double offset = 0.0, tilt = 0.0;
  Line axis;
  double from = 0.0, to = 0.0;
  CentreLineId centre_line{};
};

/// The common axis of coaxial features of several parts.
struct CentreLine {
  std::string id;  ///< "centre line 1", ...
  Line line;       ///< assembly frame
  std::vector<OccurrenceId> occurrences;
};

struct Seats {
  List<CentreLine> centre_lines;
  std::vector<RadialSeat> radial;
  std::vector<AxialSeat> axial;
  std::vector<TaperSeat> taper;
  std::vector<WidthSeat> width;
  std::vector<Thread> threads;
  /// Pairs of occurrences whose boxes come near: what the clash search has to look at. first <
  /// second.
  std::vector<OccurrencePair> near_pairs;
  /// Those of near_pairs, in their order, whose seats were not looked for, since the time or the
  /// memory given to the look was up.
  std::vector<OccurrencePair> not_looked_at;
  /// Occurrences that more others come near than there is memory for, ascending: none of their
  /// pairs is in near_pairs, and none was looked at.
  std::vector<OccurrenceId> crowded;
};

/// Finds every seat of the model.
///
/// Cost grows with distinct pairs (product, product, relative placement), not with occurrences.
/// Thread-safe. Touches no state of Open CASCADE's.
[[nodiscard]] SPOTBLUE_EXPORT Seats find_seats(const Model& model, const SeatSettings& settings);

}  // namespace spotblue
