#include "report/example_look.hpp"

#include <fmt/format.h>

#include <numbers>

namespace spotblue::test {
namespace {

constexpr double kDegree = std::numbers::pi / 180.0;
constexpr FeatureKind kCylinder = FeatureKind::cylinder;

Cylinder cylinder(const std::string& name, Side side, double diameter) {
  return {.name = name,
          .side = side,
          .axis = {{0, 0, 0}, {0, 0, 1}},
          .zero = {1, 0, 0},
          .diameter = diameter,
          .patches = {},
          .intervals = {{0.0, 12.5}, {20.0, 30.1}},
          .coverage = 2.0 * std::numbers::pi,
          .source = SurfaceSource::cylinder};
}

Plane square_face(const std::string& name, Direction normal, Direction u) {
  const Point2 a{0, 0};
  const Point2 b{10, 0};
  const Point2 c{10, 10};
  const Point2 d{0, 10};
  Region outline;
  outline.edges = {{a, b, 0, {}, 0}, {b, c, 0, {}, 0}, {c, d, 0, {}, 0}, {d, a, 0, {}, 0}};
  return {.name = name,
          .at = {0, 0, 30},
          .normal = normal,
          .u = u,
          .outline = outline,
          .source = SurfaceSource::plane};
}

Product wheel() {
  Product product;
  product.id = "Wheel";
  product.name = "Wheel";
  product.solids = 1;
  product.volume = 123456.789;
  product.cylinders = {cylinder("bore 44", Side::internal, 44.0),
                       cylinder("bore 8.5", Side::internal, 8.5)};
  product.cones = {{.name = "taper bore 20/24",
                    .side = Side::internal,
                    .axis = {{0, 0, 5}, {0, 0, 1}},
                    .zero = {1, 0, 0},
                    .radius = 10.0,
                    .half_angle = 45.0 * kDegree,
                    .patches = {},
                    .intervals = {{0.0, 2.0}},
                    .coverage = 2.0 * std::numbers::pi,
                    .source = SurfaceSource::revolution}};
  product.planes = {square_face("face 60 @ 30", {0, 0, 1}, {1, 0, 0}),
                    square_face("face 10x10 #1", {1, 0, 0}, {0, 1, 0}),
                    square_face("face 10x10 #2", {-1, 0, 0}, {0, 1, 0})};
  product.widths = {
      {.name = "slot 8", .side = Side::internal, .first = 1, .second = 2, .width = 8}};
  return product;
}

Product stud() {
  Product product;
  product.id = "Stud \"worn\"";
  product.name = product.id;
  product.solids = 2;
  product.drawn_at = {0.0, 25'000.0, 0.0};
  product.volume = 1.0 / 3.0;
  product.closed = false;
  product.cylinders = {cylinder("outside 44.035", Side::external, 44.035),
                       cylinder("outside 10", Side::external, 10.0)};
  product.cones = wheel().cones;
  product.cones[0].name = "taper 20/24";
  product.cones[0].side = Side::external;
  product.planes = wheel().planes;
  product.widths = {
      {.name = "width 7.95", .side = Side::external, .first = 1, .second = 2, .width = 7.95}};
  return product;
}

RadialSeat press(OccurrenceId hole, OccurrenceId shaft, CentreLineId centre_line) {
  return {.hole = {hole, kCylinder, 0},
          .shaft = {shaft, kCylinder, 0},
          .hole_diameter = 44.0,
          .shaft_diameter = 44.035,
          .clearance = 44.0 - 44.035,
          .offset = 0.0125,
          .tilt = 0.25 * kDegree,
          .least_gap = -0.03,
          .engaged = 22.6,
          .coverage = 2.0 * std::numbers::pi,
          .axis = {{0, 0, 0}, {0, 0, 1}},
          .from = 0.0,
          .to = 22.6,
          .centre_line = centre_line};
}

std::vector<AxialSeat> shoulder_and_side() {
  AxialSeat shoulder;
  shoulder.a = {OccurrenceId(0), FeatureKind::plane, 0};
  shoulder.b = {OccurrenceId(1), FeatureKind::plane, 0};
  shoulder.gap = 0.125;
  shoulder.inner = 44.0;
  shoulder.outer = 60.0;
  shoulder.area = 1306.9;
  shoulder.centre_line = CentreLineId(0);
  AxialSeat side;
  side.a = {OccurrenceId(0), FeatureKind::plane, 1};
  side.b = {OccurrenceId(1), FeatureKind::plane, 2};
  side.gap = -0.02;
  side.area = 100.0;
  return {shoulder, side};
}

TaperSeat taper_seat() {
  TaperSeat taper;
  taper.hole = {OccurrenceId(0), FeatureKind::cone, 0};
  taper.shaft = {OccurrenceId(1), FeatureKind::cone, 0};
  taper.hole_half_angle = 45.0 * kDegree;
  taper.shaft_half_angle = 44.5 * kDegree;
  taper.gap = 0.01;
  taper.engaged = 2.0;
  taper.diameter = 22.0;
  return taper;
}

WidthSeat key_in_slot() {
  WidthSeat key;
  key.slot = {OccurrenceId(0), FeatureKind::width, 0};
  key.key = {OccurrenceId(1), FeatureKind::width, 0};
  key.slot_width = 8.0;
  key.key_width = 7.95;
  key.clearance = 8.0 - 7.95;
  key.area = 90.0;
  return key;
}

Thread tapped_screw() {
  Thread screw;
  screw.hole = {OccurrenceId(0), kCylinder, 1};
  screw.screw = {OccurrenceId(1), kCylinder, 1};
  screw.size = "M10";
  screw.hole_diameter = 8.5;
  screw.screw_diameter = 10.0;
  screw.engaged = 15.0;
  return screw;
}

Seats example_seats() {
  Seats seats;
  seats.centre_lines = {
      {"centre line 1", {{0, 0, 0}, {0, 0, 1}}, {OccurrenceId(0), OccurrenceId(1)}}};
  seats.radial = {press(OccurrenceId(0), OccurrenceId(1), CentreLineId(0))};
  seats.axial = shoulder_and_side();
  seats.taper = {taper_seat()};
  seats.width = {key_in_slot()};
  seats.threads = {tapped_screw()};
  return seats;
}

Group example_group() {
  Group group;
  group.bodies = {{{OccurrenceId(0), OccurrenceId(1)}, 40.0}, {{OccurrenceId(2)}, {}}};
  const RadialSeat seat = press(OccurrenceId(0), OccurrenceId(1), CentreLineId(0));
  group.joints = {{OccurrenceId(0),
                   OccurrenceId(1),
                   JointKind::press,
                   Certainty::certain,
                   true,
                   true,
                   {seat.hole, seat.shaft},
                   {},
                   "pressed, H7/s6"}};
  group.turning = {{.part = OccurrenceId(0),
                    .rpm = 40.0,
                    .duty = Duty::intermittent,
                    .load_n = 220.0,
                    .thrust_n = {},
                    .centre_line = CentreLineId(0),
                    .load_at = 12.0,
                    .load_place = "at Wheel: bore 44",
                    .span = {}}};
  group.bearings = {{.hole = seat.hole,
                     .shaft = seat.shaft,
                     .seat = 0,
                     .turning = OccurrenceId(0),
                     .rpm = 40.0,
                     .duty = Duty::intermittent,
                     .both = false,
                     .certainty = Certainty::perhaps,
                     .centre_line = CentreLineId(0),
                     .station = 12.7,
                     .length = 25.4,
                     .covered = std::numbers::pi,
                     .load_n = -220.0,
                     .moment_nm = {},
                     .how = "one bearing carries all"}};
  group.thrust_faces = {{.a = {OccurrenceId(0), FeatureKind::plane, 0},
                         .b = {OccurrenceId(1), FeatureKind::plane, 0},
                         .seat = 0,
                         .turning = OccurrenceId(0),
                         .rpm = 40.0,
                         .duty = Duty::intermittent,
                         .thrust_n = {},
                         .gap = 0.254,
                         .short_by = 0.1,
                         .certainty = Certainty::perhaps,
                         .why = "others stop the two sooner"}};
  group.seats = {{seat.hole,
                  seat.shaft,
                  Pressing::always,
                  {{44.0, 44.025}, Interval{44.0, 44.025}, Interval{44.01, 44.035}, {}},
                  {{44.04, 44.06}, {}, {}, "no material is given for Stud"}}};
  const AxialSeat shoulder = shoulder_and_side().front();
  group.stops = {{shoulder.a, shoulder.b, CentreLineId(0), 0.3, Interval{0.28, 0.32}, {}}};
  return group;
}

}  // namespace

Look example_look() {
  Look look;
  look.model.file = {"wheel.step", std::string(64, 'a'), "AP242", "mm", {}};
  look.model.products = {wheel(), stud()};
  Frame mirrored;
  mirrored.rows = {{{-1, 0, 0, 0.1}, {0, 1, 0, -0.0}, {0, 0, 1, 1e-17}}};
  look.model.occurrences = {{"Press/Wheel", "Press/Wheel", ProductId(0), {}, false, {}},
                            {"Press/Stud", "Press/Stud", ProductId(1), {}, false, {}},
                            {"Press/Wheel (2)", "Press/Wheel", ProductId(0), mirrored, true, {}}};
  look.model.notes = {{"wheel.step", "invented for a test"}};
  look.seats = example_seats();
  look.fouls.found = {{.a = OccurrenceId(1),
                       .b = OccurrenceId(2),
                       .volume = 12.25,
                       .depth = 0.5,
                       .length = 7.25,
                       .at = Point{1, 2, 3},
                       .exact = false,
                       .cause = "solids overlap"}};
  look.fouls.notes = {{"Press/Stud", "a note of the foul search"}};
  look.seconds = {.read = 0.5, .features = 0.25, .seats = 0.125, .fouls = 0.0625, .total = 1.0};
  return look;
}

Look repeated_look(std::size_t stations) {
  Look look = example_look();
  look.model.occurrences.clear();
  look.seats = {};
  look.fouls = {};
  for (std::size_t i = 0; i < stations; ++i) {
    const double shift = 100.0 * static_cast<double>(i) / 3.0;
    Frame frame;
    frame.rows[0][3] = shift;
    for (const ProductId product : {ProductId(0), ProductId(1)}) {
      const std::string path =
          fmt::format("Line/Station {}/{}", i + 1, look.model.products[product].id);
      look.model.occurrences.push_back({path, path, product, frame, false, {}});
    }
    const OccurrenceId wheel(2 * i);
    const OccurrenceId stud(2 * i + 1);
    look.seats.centre_lines.push_back(
        {fmt::format("centre line {}", i + 1), {{shift, 0, 0}, {0, 0, 1}}, {wheel, stud}});
    look.seats.radial.push_back(press(wheel, stud, CentreLineId(i)));
  }
  return look;
}

CheckResult example_check() {
  CheckResult result;
  result.group = example_group();
  result.look = example_look();
  result.job.file = "wheel-job.toml";
  result.job.model = "wheel.step";
  result.job.title = "Wheel on its stud (invented)";
  JobPart wheel;
  wheel.part = "Wheel";
  wheel.material = "grey iron";
  result.job.parts = {wheel};
  Finding press;
  press.id = "radial-1";
  press.kind = "radial fit";
  press.about = {"Wheel: bore 44", "Stud: outside 44.035"};
  press.outcome = Outcome::nonconforming;
  press.wanted = {{"fit", "H7/s6"},
                  {"clearance", millimetres(-0.059), RangeEnd::least},
                  {"clearance", millimetres(-0.018), RangeEnd::greatest}};
  press.found = {{"clearance", millimetres(-0.061), RangeEnd::least},
                 {"clearance", millimetres(-0.009), RangeEnd::greatest},
                 {"tilt", angle_of_degrees(0.25)}};
  press.margin = {{"clearance", millimetres(-0.009)}};
  press.basis = "ISO 286-1:2010, 44 H7/s6; ISO 14253-1";
  press.advice = "open Wheel: bore 44 or reduce Stud: outside 44.035";
  press.caution = "guard the press";
  Finding screw;
  screw.id = "thread-1";
  screw.kind = "thread";
  screw.about = {"Wheel: bore 8.5", "Stud: outside 10"};
  screw.outcome = Outcome::conforming;
  screw.found = {{"size", "M10"}};
  Finding face;
  face.id = "axial-1";
  face.kind = "axial gap";
  face.about = {"Wheel: face 60 @ 30", "Stud: face 60 @ 30"};
  face.outcome = Outcome::undecided;
  face.found = {{"gap", millimetres(0.125)}, {"area", square_millimetres(645.16)}};
  face.advice = "say what gap is wanted";
  result.findings = {press, screw, face};
  return result;
}

}  // namespace spotblue::test
