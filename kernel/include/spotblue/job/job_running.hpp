#pragma once
/// @file
/// What a job knows of how its parts work together: what turns, meshes, is joined, kept off or cut.

#include <optional>
#include <string>

#include "spotblue/base/length.hpp"
#include "spotblue/base/words.hpp"
#include "spotblue/job/job_line.hpp"
#include "spotblue/mechanics/bearing_loads.hpp"

namespace spotblue {

struct AllowedOverlap {
  std::string a, b;
  std::string reason;
  Length depth;
  std::optional<JobLine> line{};
};
constexpr void describe(auto& fields, const AllowedOverlap*) {
  fields
      .value("AllowedOverlap",
             "An overlap of two parts that is meant: a squeezed ring, a gear mesh drawn as blanks.")
      .member("a", &AllowedOverlap::a, "product id or occurrence path")
      .member("b", &AllowedOverlap::b, "product id or occurrence path")
      .member("reason", &AllowedOverlap::reason, "for the report")
      .member("depth_mm", &AllowedOverlap::depth, "greatest")
      .member("line", &AllowedOverlap::line,
              "of the job file, or of one it includes; None in code");
}

/// How hard a running pair works; it decides which limits apply.
enum class Duty { no_load_slow, intermittent, continuous };
constexpr auto describe(const Duty*) {
  return words("How hard a part is run.", "no load, slow", "intermittent", "continuous");
}

struct Turning {
  std::string part;
  double rpm = 0.0;
  Duty duty = Duty::intermittent;
  std::optional<double> load_n;
  std::optional<double> thrust_n;
  std::optional<JobLine> line{};
  std::string at{};
  std::optional<Length> out{};
  LoadSharing sharing = LoadSharing::by_statics;
};
constexpr void describe(auto& fields, const Turning*) {
  fields
      .value("Turning",
             "A part that turns, with all that is joined to it; what it turns on or in is found.")
      .member("part", &Turning::part, "product id or occurrence path")
      .member("rpm", &Turning::rpm, "1/min, more than 0")
      .member("duty", &Turning::duty, "\"no load, slow\", \"intermittent\" or \"continuous\"")
      .member("load_n", &Turning::load_n, "across the axis, carried by its bearings; >= 0")
      .member("thrust_n", &Turning::thrust_n, "along the axis, or None")
      .member("line", &Turning::line, "of the job file, or of one it includes; None in code")
      .member("at", &Turning::at,
              "the feature in whose middle the load acts: \"Crank: bore\"; of another part that "
              "runs on this one, it comes in there; empty: the middle of the part")
      .member("out_mm", &Turning::out,
              "how far past the face that `at` names, negative: into the part; None: at it")
      .member("sharing", &Turning::sharing,
              "evenly where more than two bearings are to be taken to share the load alike");
}

struct Fixing {
  std::string a, b;
  std::string by;
  std::optional<JobLine> line{};
};
constexpr void describe(auto& fields, const Fixing*) {
  fields
      .value(
          "Fixing",
          "Two parts held to each other along the axis and in turning, by something no fit shows.")
      .member("a", &Fixing::a, "product id or occurrence path")
      .member("b", &Fixing::b, "product id or occurrence path")
      .member("by", &Fixing::by, "\"set screw\", \"pin\", \"clamped by the nut\": for the report")
      .member("line", &Fixing::line, "of the job file, or of one it includes; None in code");
}

struct Adjust {
  std::string part;
  std::optional<std::string> thread;
  std::optional<Length> pitch;
  std::optional<Limits> range;
  std::optional<std::string> from, to;
  std::optional<JobLine> line{};
};
constexpr void describe(auto& fields, const Adjust*) {
  fields
      .value(
          "Adjust",
          "A nut, collar or shim whose place or thickness is set when the group is put together; "
          "of thread, pitch and range exactly one is given.")
      .member("part", &Adjust::part, "that is set: product id or occurrence path")
      .member("thread", &Adjust::thread,
              "\"M16\", \"M16x1.5\": it is set by screwing, as far as half the thread's diameter "
              "stays engaged; or None")
      .member("pitch_mm", &Adjust::pitch, "of such a thread that no table has, or None")
      .member("range", &Adjust::range, "what the length may be set to, mm, or None")
      .member("from_face", &Adjust::from,
              "face that the length is set from, on what the part is held to, or on itself: a "
              "shim's thickness; None: found")
      .member("to_face", &Adjust::to, "face of the part that the length is set to; None: found")
      .member("line", &Adjust::line, "of the job file, or of one it includes; None in code");
}

struct KeepOff {
  std::string a, b;
  Length least;
  std::string reason;
  std::optional<JobLine> line{};
};
constexpr void describe(auto& fields, const KeepOff*) {
  fields.value("KeepOff", "Two parts that must stay off each other, by at least so much.")
      .member("a", &KeepOff::a, "product id or occurrence path")
      .member("b", &KeepOff::b, "product id or occurrence path")
      .member("least_mm", &KeepOff::least, "more than 0")
      .member("reason", &KeepOff::reason, "for the report")
      .member("line", &KeepOff::line, "of the job file, or of one it includes; None in code");
}

struct ToothSpan {
  int teeth = 0;
  Length over;
};
constexpr void describe(auto& fields, const ToothSpan*) {
  fields.value("ToothSpan", "A span over several teeth.")
      .member("teeth", &ToothSpan::teeth, "spanned, 2 or more")
      .member("over_mm", &ToothSpan::over, "mm");
}
struct OverPins {
  Length pin;
  Length over;
};
constexpr void describe(auto& fields, const OverPins*) {
  fields.value("OverPins", "A size over two pins, or three where the teeth are odd.")
      .member("pin_mm", &OverPins::pin, "diameter")
      .member("over_mm", &OverPins::over, "mm");
}

struct MeshGear {
  std::string part;
  int teeth = 0;
  std::optional<Length> thickness;
  std::optional<ToothSpan> span;
  std::optional<OverPins> pins;
  std::optional<Length> tip_diameter, root_diameter;
};
constexpr void describe(auto& fields, const MeshGear*) {
  fields.value("MeshGear", "One gear of a mesh; of thickness, span and pins at most one is given.")
      .member("part", &MeshGear::part, "product id or occurrence path")
      .member("teeth", &MeshGear::teeth, "number")
      .member("thickness_mm", &MeshGear::thickness,
              "of a tooth on the reference circle, in the normal plane, or None")
      .member("span", &MeshGear::span, "ToothSpan or None")
      .member("pins", &MeshGear::pins, "OverPins or None")
      .member("tip_diameter_mm", &MeshGear::tip_diameter, "from the module when absent")
      .member("root_diameter_mm", &MeshGear::root_diameter, "from the module when absent");
}

struct Mesh {
  MeshGear a, b;
  Length module;
  double pressure_angle_deg = 20.0;
  double helix_angle_deg = 0.0;
  std::optional<Limits> backlash;
  std::optional<JobLine> line{};
  double face_share = 0.8;
};
constexpr void describe(auto& fields, const Mesh*) {
  fields.value("Mesh", "Two external involute gears that run together.")
      .member("a", &Mesh::a, "one gear")
      .member("b", &Mesh::b, "the other")
      .member("module_mm", &Mesh::module, "normal; 25.4 mm / diametral pitch")
      .member("pressure_angle_deg", &Mesh::pressure_angle_deg, "degrees")
      .member("helix_angle_deg", &Mesh::helix_angle_deg, "degrees")
      .pair("backlash_mm", &Mesh::backlash, "(least, greatest) wanted, or None")
      .member("line", &Mesh::line, "of the job file, or of one it includes; None in code")
      .member("face_share", &Mesh::face_share,
              "of the narrower face that stays in mesh wherever end play and setting take the two, "
              "over 0 to 1; 0.8: common practice, no source");
}

struct Cut {
  std::string feature;
  std::optional<Length> before;  // of a diameter
  std::optional<Length> depth;   // of a face
  // Of a shaft turned down:
  std::optional<Length> fillet;
  std::optional<Length> mate_corner;
  std::optional<double> torque_nm, bending_nm;
  std::optional<JobLine> line{};
};
constexpr void describe(auto& fields, const Cut*) {
  fields
      .value("Cut", "Metal that comes off a part that exists; the named feature is as it will be.")
      .member("feature", &Cut::feature,
              "\"Stud: outside 28.97\", \"Wheel: bore 38.012\", \"Wheel: face 55 @ 0\"")
      .member("before_mm", &Cut::before, "diameter before the cut; None for a face")
      .member("depth_mm", &Cut::depth, "faced off; None for a diameter")
      .member("fillet_mm", &Cut::fillet, "radius left in the corner of the new shoulder")
      .member("mate_corner_mm", &Cut::mate_corner,
              "radius or chamfer of the part that comes against it")
      .member("torque_nm", &Cut::torque_nm, "N m, or None")
      .member("bending_nm", &Cut::bending_nm, "N m, or None")
      .member("line", &Cut::line, "of the job file, or of one it includes; None in code");
}

}  // namespace spotblue
