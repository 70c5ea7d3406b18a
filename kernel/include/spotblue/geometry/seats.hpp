#pragma once
/// @file
/// Where parts bear on each other: radial, axial, taper and width seats, screws in tapped holes and
/// the centre lines they share, measured from the surfaces' own parameters.

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "spotblue/base/describe.hpp"
#include "spotblue/base/export.hpp"
#include "spotblue/geometry/feature_kind.hpp"
#include "spotblue/geometry/ids.hpp"
#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/settings.hpp"

namespace spotblue {

struct FeatureRef {
  OccurrenceId occurrence{};
  FeatureKind kind = FeatureKind::cylinder;
  std::size_t index = 0;
  bool operator==(const FeatureRef&) const = default;
};
constexpr void describe(auto& fields, const FeatureRef*) {
  fields.value("FeatureRef", "A feature of one occurrence; Look.feature_id tells its name.")
      .member("occurrence", &FeatureRef::occurrence, "its number, from 0")
      .member("kind", &FeatureRef::kind, "which list of the product")
      .member("index", &FeatureRef::index, "number in that list, from 0");
}

struct ClearanceRange {
  double least = 0.0, most = 0.0;
  bool operator==(const ClearanceRange&) const = default;
};
constexpr void describe(auto& fields, const ClearanceRange*) {
  fields
      .value("ClearanceRange",
             "The clearances, on the diameter, of a pair that is not one size along its length or "
             "all round.")
      .member("least_mm", &ClearanceRange::least,
              "diametral, over the engaged length and all round; of a worn pair only")
      .member("most_mm", &ClearanceRange::most, "the same, greatest");
}

struct RadialSeat {
  FeatureRef hole, shaft;
  double hole_diameter = 0.0, shaft_diameter = 0.0;
  double clearance = 0.0;
  std::optional<ClearanceRange> worn{};
  double offset = 0.0;
  double tilt = 0.0;
  double least_gap = 0.0;
  double fouls_by = 0.0;
  double engaged = 0.0;
  double coverage = 0.0;
  Line axis;
  double from = 0.0, to = 0.0;
  CentreLineId centre_line{};
};
constexpr void describe(auto& fields, const RadialSeat*) {
  fields.value("RadialSeat", "A hole and a shaft that bear, run or press on each other.")
      .member("hole", &RadialSeat::hole, "where the hole is")
      .member("shaft", &RadialSeat::shaft, "where the shaft is")
      .member("hole_mm", &RadialSeat::hole_diameter, "diameter; of a worn one the mean")
      .range(kOver0)
      .member("shaft_mm", &RadialSeat::shaft_diameter, "diameter; of a worn one the mean")
      .range(kOver0)
      .member("clearance_mm", &RadialSeat::clearance,
              "diametral, hole less shaft; negative is interference")
      .member("offset_mm", &RadialSeat::offset,
              "distance of the axes at the middle of the engaged length")
      .range(kFrom0)
      .degrees("tilt_deg", &RadialSeat::tilt, "angle between the axes")
      .range({0.0, 90})
      .member("worn", &RadialSeat::worn,
              "where hole or shaft is worn: the clearances over the engaged length, or None")
      .member("least_gap_mm", &RadialSeat::least_gap,
              "least radial gap over the engaged length, where both have surface: hole radius less "
              "the greatest distance of the shaft's surface from the hole's axis; negative: the "
              "pair fouls, or is pressed")
      .member("fouls_by_mm", &RadialSeat::fouls_by,
              "how much deeper than a seat may one lies in the other, where it does so most: past "
              "nothing where there is clearance, past the settings' radial overlap where there is "
              "none")
      .member("engaged_mm", &RadialSeat::engaged,
              "sum of shared, unblocked stretches along the hole's axis")
      .range(kFrom0)
      .degrees("coverage_deg", &RadialSeat::coverage,
               "angles about the axis where hole and shaft both have surface")
      .range({0.0, 360})
      .member("axis", &RadialSeat::axis,
              "of the hole, assembly's frame, at the middle of the engaged length")
      .member("start_mm", &RadialSeat::from, "of the engaged stretches on the axis")
      .member("end_mm", &RadialSeat::to, "of the engaged stretches on the axis")
      .member("centre_line", &RadialSeat::centre_line, "number, from 0");
}

struct AxialSeat {
  FeatureRef a, b;
  double gap = 0.0;
  std::optional<double> inner{}, outer{};
  double area = 0.0;
  Line axis;
  std::optional<CentreLineId> centre_line{};
};
constexpr void describe(auto& fields, const AxialSeat*) {
  fields.value("AxialSeat", "Two faces that look at each other.")
      .member("a", &AxialSeat::a, "where the one is")
      .member("b", &AxialSeat::b, "where the other is")
      .member("gap_mm", &AxialSeat::gap, "along a's normal; negative where the parts overlap")
      .or_0("inner_mm", &AxialSeat::inner,
            "diameter about the centre line of the seat's nearest point")
      .range(kFrom0)
      .or_0("outer_mm", &AxialSeat::outer, "diameter of its farthest point")
      .range(kFrom0)
      .member("area_mm2", &AxialSeat::area, "net of holes, grooves and whatever lies between")
      .range(kFrom0)
      .member("axis", &AxialSeat::axis, "a's normal, assembly's frame, through a point of a's face")
      .member("centre_line", &AxialSeat::centre_line,
              "that it is square to; nothing where there is none");
}

struct TaperSeat {
  FeatureRef hole, shaft;
  double hole_half_angle = 0.0, shaft_half_angle = 0.0;
  double gap = 0.0;
  double offset = 0.0, tilt = 0.0;
  double least_gap = 0.0;
  double fouls_by = 0.0;
  double engaged = 0.0;
  double diameter = 0.0;
  Line axis;
  CentreLineId centre_line{};
};
constexpr void describe(auto& fields, const TaperSeat*) {
  fields.value("TaperSeat", "A cone in a cone.")
      .member("hole", &TaperSeat::hole, "where the hole is")
      .member("shaft", &TaperSeat::shaft, "where the shaft is")
      .degrees("hole_half_angle_deg", &TaperSeat::hole_half_angle, "between axis and generator")
      .degrees("shaft_half_angle_deg", &TaperSeat::shaft_half_angle, "between axis and generator")
      .member("gap_mm", &TaperSeat::gap,
              "square to the hole's surface at the middle of the shared stretch")
      .member("offset_mm", &TaperSeat::offset, "of the axes")
      .range(kFrom0)
      .degrees("tilt_deg", &TaperSeat::tilt, "angle between the axes")
      .range({0.0, 90})
      .member("least_gap_mm", &TaperSeat::least_gap,
              "square to the hole's surface, least over the stretch and all round")
      .member("fouls_by_mm", &TaperSeat::fouls_by,
              "how much deeper than the settings' radial overlap one lies in the other")
      .member("engaged_mm", &TaperSeat::engaged, "along the axis")
      .range(kFrom0)
      .member("diameter_mm", &TaperSeat::diameter,
              "of the hole at the middle of the shared stretch")
      .range(kFrom0)
      .member("axis", &TaperSeat::axis, "assembly's frame")
      .member("centre_line", &TaperSeat::centre_line, "number, from 0");
}

struct WidthSeat {
  FeatureRef slot, key;
  double slot_width = 0.0, key_width = 0.0;
  double clearance = 0.0;
  double offset = 0.0;
  double tilt = 0.0;
  double least_gap = 0.0;
  std::optional<double> ends_apart{};
  double area = 0.0;
};
constexpr void describe(auto& fields, const WidthSeat*) {
  fields.value("WidthSeat", "A key in a keyseat, a tongue in a slot.")
      .member("slot", &WidthSeat::slot, "where the slot is")
      .member("key", &WidthSeat::key, "where the key is")
      .member("slot_mm", &WidthSeat::slot_width, "width")
      .range(kOver0)
      .member("key_mm", &WidthSeat::key_width, "width")
      .range(kOver0)
      .member("clearance_mm", &WidthSeat::clearance, "slot less key")
      .member("offset_mm", &WidthSeat::offset, "of the middle planes")
      .range(kFrom0)
      .degrees("tilt_deg", &WidthSeat::tilt, "angle between the middle planes")
      .range({0.0, 90})
      .member("least_gap_mm", &WidthSeat::least_gap,
              "of the tighter side, along the straight flanks")
      .member("ends_apart_mm", &WidthSeat::ends_apart,
              "how much longer the slot is than the key between their round ends; nothing where "
              "not both have two")
      .member("area_mm2", &WidthSeat::area, "of the smaller of the two contacts")
      .range(kFrom0);
}

struct Thread {
  FeatureRef hole, screw;
  std::string size;
  double hole_diameter = 0.0, screw_diameter = 0.0;
  double engaged = 0.0;
  double offset = 0.0, tilt = 0.0;
  Line axis;
  double from = 0.0, to = 0.0;
  CentreLineId centre_line{};
};
constexpr void describe(auto& fields, const Thread*) {
  fields.value("Thread", "A screw in a tapped hole, both modelled as plain cylinders.")
      .member("hole", &Thread::hole, "where the hole is")
      .member("screw", &Thread::screw, "where the screw is")
      .member("size", &Thread::size, "\"M10\", \"M10x1\", \"3/8-16 UNC\"")
      .member("hole_mm", &Thread::hole_diameter, "diameter")
      .range(kOver0)
      .member("screw_mm", &Thread::screw_diameter, "diameter")
      .range(kOver0)
      .member("engaged_mm", &Thread::engaged, "along the axis")
      .range(kFrom0)
      .member("offset_mm", &Thread::offset, "of the axes")
      .degrees("tilt_deg", &Thread::tilt, "angle between the axes")
      .member("axis", &Thread::axis, "of the hole, assembly's frame")
      .member("start_mm", &Thread::from, "of the engaged stretch on the axis")
      .member("end_mm", &Thread::to, "of the engaged stretch on the axis")
      .member("centre_line", &Thread::centre_line, "number, from 0");
}

struct CentreLine {
  std::string id;
  Line line;
  std::vector<OccurrenceId> occurrences;
};
constexpr void describe(auto& fields, const CentreLine*) {
  fields.value("CentreLine", "The common axis of coaxial features of several parts.")
      .member("id", &CentreLine::id, "\"centre line 1\", ...")
      .member("line", &CentreLine::line, "assembly's frame")
      .member("occurrences", &CentreLine::occurrences, "their numbers, from 0");
}

struct Seats {
  List<CentreLine> centre_lines;
  std::vector<RadialSeat> radial;
  std::vector<AxialSeat> axial;
  std::vector<TaperSeat> taper;
  std::vector<WidthSeat> width;
  std::vector<Thread> threads;
  std::vector<OccurrencePair> near_pairs;
  std::vector<OccurrencePair> not_looked_at;
  std::vector<OccurrenceId> crowded;
};
constexpr void describe(auto& fields, const Seats*) {
  fields.value("Seats", "Where parts bear on each other.")
      .member("centre_lines", &Seats::centre_lines, "common axes")
      .member("radial", &Seats::radial, "holes and shafts")
      .member("axial", &Seats::axial, "faces")
      .member("taper", &Seats::taper, "cones")
      .member("width", &Seats::width, "keys")
      .member("threads", &Seats::threads, "screws")
      .member("near_pairs", &Seats::near_pairs,
              "occurrences whose boxes come near, what the foul search has to look at; the lesser "
              "number first")
      .member("not_looked_at", &Seats::not_looked_at,
              "those of near_pairs, in their order, whose seats were not looked for, since the "
              "time or the memory given to the look was up")
      .member("crowded", &Seats::crowded,
              "occurrences that more others come near than there is memory for, ascending: none of "
              "their pairs is in near_pairs, and none was looked at");
}

/// Finds every seat of the model.
///
/// Cost grows with distinct pairs (product, product, relative placement), not with occurrences.
/// Thread-safe. Touches no state of Open CASCADE's.
[[nodiscard]] SPOTBLUE_EXPORT Seats find_seats(const Model& model, const SeatSettings& settings);

}  // namespace spotblue
