#include "python/bind.hpp"
#include "python/values/record.hpp"
#include "python/values/view.hpp"
#include "spotblue/geometry/clash.hpp"
#include "spotblue/geometry/seats.hpp"

namespace spotblue::python {
namespace {

void bind_round_seats(py::module_& module) {
  View<ClearanceRange>(module, "ClearanceRange",
                       "What a worn pair's clearance is, on the diameter.")
      .value("least_mm", &ClearanceRange::least, "over the engaged length and all round")
      .value("most_mm", &ClearanceRange::most, "over the engaged length and all round")
      .done();
  View<RadialSeat>(module, "RadialSeat", "A hole and a shaft that bear, run or press.")
      .value("hole", &RadialSeat::hole, "Look.feature_id tells its name")
      .value("shaft", &RadialSeat::shaft, "Look.feature_id tells its name")
      .value("hole_mm", &RadialSeat::hole_diameter, "diameter")
      .value("shaft_mm", &RadialSeat::shaft_diameter, "diameter")
      .value("clearance_mm", &RadialSeat::clearance, "on the diameter; negative: interference")
      .value("offset_mm", &RadialSeat::offset, "of the axes at the middle")
      .degrees("tilt_deg", &RadialSeat::tilt, "of the axes")
      .value("worn", &RadialSeat::worn, "the clearances where hole or shaft is worn, or None")
      .value("least_gap_mm", &RadialSeat::least_gap, "radial; negative: fouls or is pressed")
      .value("fouls_by_mm", &RadialSeat::fouls_by, "deeper than a seat may; 0: nowhere")
      .value("engaged_mm", &RadialSeat::engaged, "along the axis")
      .degrees("coverage_deg", &RadialSeat::coverage, "where both have surface")
      .value("axis", &RadialSeat::axis, "of the hole, assembly's frame")
      .value("start_mm", &RadialSeat::from, "of the engaged stretch on the axis")
      .value("end_mm", &RadialSeat::to, "of the engaged stretch on the axis")
      .value("centre_line", &RadialSeat::centre_line, "number, from 0")
      .done();
  View<TaperSeat>(module, "TaperSeat", "A cone in a cone.")
      .value("hole", &TaperSeat::hole, "Look.feature_id tells its name")
      .value("shaft", &TaperSeat::shaft, "Look.feature_id tells its name")
      .degrees("hole_half_angle_deg", &TaperSeat::hole_half_angle, "degrees")
      .degrees("shaft_half_angle_deg", &TaperSeat::shaft_half_angle, "degrees")
      .value("gap_mm", &TaperSeat::gap, "square to the hole's surface")
      .value("offset_mm", &TaperSeat::offset, "of the axes")
      .degrees("tilt_deg", &TaperSeat::tilt, "of the axes")
      .value("least_gap_mm", &TaperSeat::least_gap, "over the stretch and all round")
      .value("fouls_by_mm", &TaperSeat::fouls_by, "deeper than a seat may; 0: nowhere")
      .value("engaged_mm", &TaperSeat::engaged, "along the axis")
      .value("diameter_mm", &TaperSeat::diameter, "of the hole at the middle")
      .value("axis", &TaperSeat::axis, "assembly's frame")
      .value("centre_line", &TaperSeat::centre_line, "number, from 0")
      .done();
  View<Thread>(module, "Thread", "A screw in a tapped hole.")
      .value("hole", &Thread::hole, "Look.feature_id tells its name")
      .value("screw", &Thread::screw, "Look.feature_id tells its name")
      .value("size", &Thread::size, "\"M10\", \"3/8-16 UNC\"")
      .value("hole_mm", &Thread::hole_diameter, "diameter")
      .value("screw_mm", &Thread::screw_diameter, "diameter")
      .value("engaged_mm", &Thread::engaged, "along the axis")
      .value("offset_mm", &Thread::offset, "of the axes")
      .degrees("tilt_deg", &Thread::tilt, "of the axes")
      .value("axis", &Thread::axis, "assembly's frame")
      .value("centre_line", &Thread::centre_line, "number, from 0")
      .done();
}

void bind_flat_seats(py::module_& module) {
  View<AxialSeat>(module, "AxialSeat", "Two faces that look at each other.")
      .value("a", &AxialSeat::a, "Look.feature_id tells its name")
      .value("b", &AxialSeat::b, "Look.feature_id tells its name")
      .value("gap_mm", &AxialSeat::gap, "negative where the parts overlap")
      .value_or_0("inner_mm", &AxialSeat::inner,
                  "diameter of the nearest point; 0 off centre lines")
      .value_or_0("outer_mm", &AxialSeat::outer, "diameter of the farthest point")
      .value("area_mm2", &AxialSeat::area, "net")
      .value("axis", &AxialSeat::axis, "a's normal, assembly's frame")
      .value("centre_line", &AxialSeat::centre_line, "number, from 0, or None")
      .done();
  View<WidthSeat>(module, "WidthSeat", "A key in a keyseat, a tongue in a slot.")
      .value("slot", &WidthSeat::slot, "Look.feature_id tells its name")
      .value("key", &WidthSeat::key, "Look.feature_id tells its name")
      .value("slot_mm", &WidthSeat::slot_width, "width")
      .value("key_mm", &WidthSeat::key_width, "width")
      .value("clearance_mm", &WidthSeat::clearance, "slot less key")
      .value("offset_mm", &WidthSeat::offset, "of the middle planes")
      .degrees("tilt_deg", &WidthSeat::tilt, "of the middle planes")
      .value("least_gap_mm", &WidthSeat::least_gap, "of the tighter side, along the flanks")
      .value("ends_apart_mm", &WidthSeat::ends_apart, "slot longer than key, round ends; or None")
      .value("area_mm2", &WidthSeat::area, "of the smaller contact")
      .done();
}

void bind_clashes(py::module_& module) {
  View<Clash>(module, "Clash", "Two occurrences that share material.")
      .value("a", &Clash::a, "number of the occurrence, from 0")
      .value("b", &Clash::b, "number of the occurrence, from 0")
      .value("volume_mm3", &Clash::volume, "shared")
      .value("depth_mm", &Clash::depth, "how deep metal is in metal")
      .value_or_0("length_mm", &Clash::length,
                  "along the axis, or square to the depth; 0: not known")
      .value("at", &Clash::at, "a point inside the overlap, or None")
      .value("exact", &Clash::exact,
             "volume from a closed form, or a checked boolean of plane, cylinder, cone, sphere and "
             "torus faces")
      .value("cause", &Clash::cause, "\"off axis\", \"faces overlap\", \"undecided: ...\"")
      .computed(
          "undecided", [](const Clash& clash) { return clash.undecided(); },
          "whether they share material is not known")
      .done();
  View<UnnamedScrew>(module, "UnnamedScrew", "What overlaps as a screw does and is no thread.")
      .value("hole", &UnnamedScrew::hole, "a FeatureRef")
      .value("screw", &UnnamedScrew::screw, "a FeatureRef")
      .value("thread", &UnnamedScrew::thread, "of which less than a turn is engaged, or \"\"")
      .done();
  View<Contact>(module, "Contact", "Two occurrences that touch where no seat says how.")
      .value("a", &Contact::a, "number of the occurrence, from 0")
      .value("b", &Contact::b, "number of the occurrence, from 0")
      .value("gap_mm", &Contact::gap, "least distance, or None where it could not be measured")
      .value("at", &Contact::at, "on a, where they come nearest, or None")
      .value("a_face", &Contact::a_face, "\"sphere\", \"free form\", ... or \"\"")
      .value("b_face", &Contact::b_face, "\"sphere\", \"free form\", ... or \"\"")
      .value("why", &Contact::why, "why the gap could not be measured, or \"\"")
      .done();
  View<ClashEffort>(module, "ClashEffort", "How the clash search decided.")
      .value("pairs", &ClashEffort::pairs, "near pairs looked at")
      .value("distinct_pairs", &ClashEffort::distinct_pairs, "by product and placement")
      .value("exact_pairs", &ClashEffort::exact_pairs, "that needed Open CASCADE")
      .done();
  View<ClashReport, std::shared_ptr<ClashReport>>(module, "ClashReport", "Every clash found.")
      .value("clashes", &ClashReport::clashes, "by place in the model")
      .value("contacts", &ClashReport::contacts,
             "what touches at no seat, the nearest of each pair")
      .value("not_looked_at", &ClashReport::not_looked_at,
             "pairs that the time given did not reach")
      .value("unnamed_screws", &ClashReport::unnamed_screws, "as deep as screws, and none")
      .value("notes", &ClashReport::notes, "remarks")
      .value("effort", &ClashReport::effort, "what it took")
      .done();
}

}  // namespace

void bind_settings(py::module_& module) {
  choice<Completeness>(module, "Completeness", "What becomes of a file that reads only in part.",
                       {"all or error", "accept partial"});
  choice<ReadIn>(
      module, "ReadIn",
      "Where a file is read: in this process only when it can be lost, and from one thread.",
      {"child process", "this process"});
  Record<SeatSettings>(module, "SeatSettings", "The numbers that say what is a seat.")
      .field("coaxial_offset_mm", &SeatSettings::coaxial_offset_mm, "axes may differ by this")
      .field("coaxial_offset_per_diameter", &SeatSettings::coaxial_offset_per_diameter, "or this")
      .field("coaxial_tilt_deg", &SeatSettings::coaxial_tilt_deg, "degrees")
      .field("radial_gap_mm", &SeatSettings::radial_gap_mm, "greatest radial gap of a seat")
      .field("radial_gap_per_diameter", &SeatSettings::radial_gap_per_diameter, "or this")
      .field("radial_overlap_mm", &SeatSettings::radial_overlap_mm, "greatest of a press fit")
      .field("radial_overlap_per_diameter", &SeatSettings::radial_overlap_per_diameter, "or this")
      .field("facing_tilt_deg", &SeatSettings::facing_tilt_deg, "degrees")
      .field("axial_gap_least_mm", &SeatSettings::axial_gap_least_mm, "mm")
      .field("axial_gap_most_mm", &SeatSettings::axial_gap_most_mm, "mm")
      .field("same_length_mm", &SeatSettings::same_length_mm, "nearer lengths are the same")
      .done();
  Record<ReadLimits>(module, "ReadLimits", "Bounds on the reading of a file from outside.")
      .field("seconds", &ReadLimits::seconds, "of wall time for one file")
      .field("memory_mb", &ReadLimits::memory_mb, "of address space")
      .field("file_mb", &ReadLimits::file_mb, "a larger file is refused")
      .field("nesting_depth", &ReadLimits::nesting_depth, "of assemblies")
      .field("occurrences", &ReadLimits::occurrences, "after unfolding the assembly")
      .field("token_kb", &ReadLimits::token_kb, "of one token")
      .field("read_in", &ReadLimits::read_in, "the member of ReadIn or its word")
      .done();
}

void bind_seats(py::module_& module) {
  Record<FeatureRef> ref(module, "FeatureRef", "A feature of one occurrence.");
  ref.field("occurrence", &FeatureRef::occurrence, "its number, from 0");
  ref.field("kind", &FeatureRef::kind, "which list of the product");
  ref.field("index", &FeatureRef::index, "number in that list, from 0").done();
  bind_round_seats(module);
  bind_flat_seats(module);
  bind_clashes(module);
  View<CentreLine>(module, "CentreLine", "The common axis of features of several parts.")
      .value("id", &CentreLine::id, "\"centre line 1\"")
      .value("line", &CentreLine::line, "assembly's frame")
      .value("occurrences", &CentreLine::occurrences, "their numbers, from 0")
      .done();
  View<Seats, std::shared_ptr<Seats>>(module, "Seats", "Where parts bear on each other.")
      .value("centre_lines", &Seats::centre_lines, "common axes")
      .value("radial", &Seats::radial, "holes and shafts")
      .value("axial", &Seats::axial, "faces")
      .value("taper", &Seats::taper, "cones")
      .value("width", &Seats::width, "keys")
      .value("threads", &Seats::threads, "screws")
      .value("near_pairs", &Seats::near_pairs, "occurrences whose boxes come near")
      .value("not_looked_at", &Seats::not_looked_at,
             "those that time and memory given did not reach")
      .value(
          "crowded", &Seats::crowded,
          "occurrences that more others come near than there is memory for: in none of near_pairs")
      .done();
}

}  // namespace spotblue::python
