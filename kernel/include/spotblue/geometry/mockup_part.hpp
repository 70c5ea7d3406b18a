#pragma once
/// @file
/// Parts of a mock-up as a person measures them with calipers. Lengths in mm, angles in rad.
///
/// Every part has its own frame: a turned part, ring or key lies along z from its first end at
/// z = 0; angle 0 is +x, counter-clockwise seen from the last end. A block fills 0..size on x, y,
/// z.

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "spotblue/base/words.hpp"
#include "spotblue/geometry/vector.hpp"

namespace spotblue {

/// What was done to an edge or left in a corner.
enum class BreakKind { sharp, chamfer, fillet };
constexpr auto describe(const BreakKind*) {
  return words("What was done to an edge.", "sharp", "chamfer", "fillet");
}

struct EdgeBreak {
  BreakKind kind = BreakKind::sharp;
  double size = 0.0;
};
constexpr void describe(auto& fields, const EdgeBreak*) {
  fields.value("EdgeBreak", "What was done to an edge or left in a corner.")
      .member("kind", &EdgeBreak::kind, "sharp, chamfer or fillet")
      .member("size_mm", &EdgeBreak::size,
              "leg of a 45 degree chamfer, radius of a fillet in a corner or of a rounding on an "
              "edge; more than 0 unless sharp");
}

struct Step {
  std::string name;
  double start = 0.0;
  double length = 0.0;
  double diameter = 0.0;
  double end_diameter = 0.0;
  EdgeBreak at_start, at_end;
};
constexpr void describe(auto& fields, const Step*) {
  fields.value("Step", "One stretch of the outside or inside of a turned part.")
      .member("name", &Step::name, "may be empty")
      .member("start_mm", &Step::start, "from the first end")
      .member("length_mm", &Step::length, "more than 0")
      .member("diameter_mm", &Step::diameter, "at its start")
      .member("end_diameter_mm", &Step::end_diameter, "at its end; the same unless a taper")
      .member("at_start", &Step::at_start, "EdgeBreak")
      .member("at_end", &Step::at_end, "EdgeBreak");
}

struct Groove {
  double at = 0.0;
  double width = 0.0;
  double diameter = 0.0;
};
constexpr void describe(auto& fields, const Groove*) {
  fields.value("Groove", "A square groove turned into the outside or inside, within one step.")
      .member("at_mm", &Groove::at, "its nearer edge, from the first end")
      .member("width_mm", &Groove::width, "mm")
      .member("diameter_mm", &Groove::diameter, "of its floor");
}

/// Shape of the ends of a keyseat or key.
enum class EndShape { round, square };
constexpr auto describe(const EndShape*) {
  return words("How a keyseat or key ends.", "round", "square");
}

struct Keyseat {
  double at = 0.0;
  double length = 0.0;
  double width = 0.0;
  double depth = 0.0;
  double angle = 0.0;
  EndShape ends = EndShape::round;
};
constexpr void describe(auto& fields, const Keyseat*) {
  fields.value("Keyseat", "A keyseat milled in the outside of a turned part.")
      .member("at_mm", &Keyseat::at, "its nearer end, from the first end, round ends included")
      .member("length_mm", &Keyseat::length, "mm")
      .member("width_mm", &Keyseat::width, "mm")
      .member("depth_mm", &Keyseat::depth, "from the top of the shaft to the floor")
      .degrees("angle_deg", &Keyseat::angle, "about the part's line")
      .member("ends", &Keyseat::ends, "round or square");
}

struct Keyway {
  std::optional<double> at;
  std::optional<double> length;
  double width = 0.0;
  double depth = 0.0;
  std::optional<double> bore;
  double x = 0.0, y = 0.0;
  double angle = 0.0;
};
constexpr void describe(auto& fields, const Keyway*) {
  fields.value("Keyway", "A keyway in a bore, open to both sides or over a stretch.")
      .member("at_mm", &Keyway::at, "None: right through")
      .member("length_mm", &Keyway::length, "given with at_mm")
      .member("width_mm", &Keyway::width, "mm")
      .member("depth_mm", &Keyway::depth, "from the top of the bore to the floor")
      .member("bore_mm", &Keyway::bore, "diameter; None: the inside step it lies in")
      .member("x_mm", &Keyway::x, "centre of the bore")
      .member("y_mm", &Keyway::y, "centre of the bore")
      .degrees("angle_deg", &Keyway::angle, "about the bore");
}

struct Flats {
  double at = 0.0;
  double length = 0.0;
  double across = 0.0;
  int count = 2;
  double angle = 0.0;
};
constexpr void describe(auto& fields, const Flats*) {
  fields.value("Flats", "Flats milled on a turned part.")
      .member("at_mm", &Flats::at, "from the first end")
      .member("length_mm", &Flats::length, "mm")
      .member("across_mm", &Flats::across,
              "over two opposite flats; a single one: from it to the far side")
      .member("count", &Flats::count, "1, or an even number all round (6: hexagon)")
      .degrees("angle_deg", &Flats::angle, "of the first");
}

struct CrossHole {
  double at = 0.0;
  double diameter = 0.0;
  std::optional<double> depth;
  double angle = 0.0;
  double offset = 0.0;
};
constexpr void describe(auto& fields, const CrossHole*) {
  fields.value("CrossHole", "A hole square to the centre line of a turned part.")
      .member("at_mm", &CrossHole::at, "its centre, from the first end")
      .member("diameter_mm", &CrossHole::diameter, "mm")
      .member("depth_mm", &CrossHole::depth, "from the outside there; None: right through")
      .degrees("angle_deg", &CrossHole::angle, "about the part's line")
      .member("offset_mm", &CrossHole::offset,
              "of its centre line from the part's, counter-clockwise side");
}

/// Sides of a part. Turned parts have first (z = 0) and last; a block's bottom and top are its
/// first and last; left and right bound x, front and back bound y.
enum class PartFace { first, last, left, right, front, back };
constexpr auto describe(const PartFace*) {
  return words("A face of a block.", "first", "last", "left", "right", "front", "back");
}

struct BoreGroove {
  double depth = 0.0;
  double width = 0.0;
  double diameter = 0.0;
};
constexpr void describe(auto& fields, const BoreGroove*) {
  fields.value("BoreGroove", "A groove turned into a bore, for a retaining ring.")
      .member("depth_mm", &BoreGroove::depth, "of its nearer edge, from where the bore starts")
      .member("width_mm", &BoreGroove::width, "mm")
      .member("diameter_mm", &BoreGroove::diameter, "of its floor");
}

struct Counterbore {
  double diameter = 0.0;
  double depth = 0.0;
};
constexpr void describe(auto& fields, const Counterbore*) {
  fields.value("Counterbore", "A wider stretch at the start of a bore, for a screw's head.")
      .member("diameter_mm", &Counterbore::diameter, "larger than the bore")
      .member("depth_mm", &Counterbore::depth, "from where the bore starts; less than the bore's");
}

struct Bore {
  std::string name;
  PartFace face = PartFace::last;
  double u = 0.0, v = 0.0;
  double diameter = 0.0;
  std::optional<double> depth;
  std::optional<Counterbore> counterbore{};
  int count = 1;
  std::optional<double> circle{};
  double angle = 0.0;
  std::vector<BoreGroove> grooves;
};
constexpr void describe(auto& fields, const Bore*) {
  fields
      .value("Bore",
             "A bore, or a circle of bores, square to a face. Positions (u, v) are (x, y) on first "
             "and last, (y, z) on left and right, (x, z) on front and back.")
      .member("name", &Bore::name, "may be empty")
      .member("face", &Bore::face, "first, last, left, right, front or back")
      .member("u_mm", &Bore::u, "first coordinate on the face")
      .member("v_mm", &Bore::v, "second coordinate on the face")
      .member("diameter_mm", &Bore::diameter, "mm")
      .member("depth_mm", &Bore::depth, "from the face, or the boss it is in; None: right through")
      .member("counterbore", &Bore::counterbore, "Counterbore, or None")
      .member("count", &Bore::count, "on a circle")
      .member("circle_mm", &Bore::circle, "pitch circle diameter round (u, v); None: at (u, v)")
      .degrees("angle_deg", &Bore::angle, "of the first one")
      .member("grooves", &Bore::grooves, "BoreGroove");
}

struct TurnedPart {
  std::vector<Step> outside;
  std::vector<Step> inside;
  std::vector<Groove> outside_grooves, inside_grooves;
  std::vector<Keyseat> keyseats;
  std::vector<Keyway> keyways;
  std::vector<Flats> flats;
  std::vector<CrossHole> cross_holes;
  std::vector<Bore> bores;
};
constexpr void describe(auto& fields, const TurnedPart*) {
  fields
      .value("TurnedPart",
             "A part made on the lathe, and what was drilled and milled in it afterwards.")
      .member("outside", &TurnedPart::outside, "steps without gaps from 0")
      .member("inside", &TurnedPart::inside, "steps, ascending; stretches between them are solid")
      .member("outside_grooves", &TurnedPart::outside_grooves, "Groove")
      .member("inside_grooves", &TurnedPart::inside_grooves, "Groove")
      .member("keyseats", &TurnedPart::keyseats, "Keyseat")
      .member("keyways", &TurnedPart::keyways, "Keyway")
      .member("flats", &TurnedPart::flats, "Flats")
      .member("cross_holes", &TurnedPart::cross_holes, "CrossHole")
      .member("bores", &TurnedPart::bores, "Bore, parallel to the centre line, on it or off it");
}

struct Boss {
  std::string name;
  PartFace face = PartFace::last;
  double u = 0.0, v = 0.0;
  double diameter = 0.0;
  double height = 0.0;
};
constexpr void describe(auto& fields, const Boss*) {
  fields.value("Boss", "A round boss standing on a face of a block.")
      .member("name", &Boss::name, "may be empty")
      .member("face", &Boss::face, "first, last, left, right, front or back")
      .member("u_mm", &Boss::u, "first coordinate on the face")
      .member("v_mm", &Boss::v, "second coordinate on the face")
      .member("diameter_mm", &Boss::diameter, "mm")
      .member("height_mm", &Boss::height, "mm");
}

struct AddedBlock {
  Point corner;
  Point size;
};
constexpr void describe(auto& fields, const AddedBlock*) {
  fields.value("AddedBlock", "A further block joined to the first.")
      .member("corner", &AddedBlock::corner, "lowest x, y, z, mm")
      .member("size", &AddedBlock::size, "mm");
}

struct BlockPart {
  Point size;
  std::vector<AddedBlock> added;
  std::vector<Boss> bosses;
  std::vector<Bore> bores;
};
constexpr void describe(auto& fields, const BlockPart*) {
  fields.value("BlockPart", "A plate, block or bracket.")
      .member("size", &BlockPart::size, "mm")
      .member("added", &BlockPart::added, "AddedBlock")
      .member("bosses", &BlockPart::bosses, "Boss")
      .member("bores", &BlockPart::bores, "Bore");
}

struct RingPart {
  double outside = 0.0, inside = 0.0;
  double thickness = 0.0;
  double gap = 0.0;
};
constexpr void describe(auto& fields, const RingPart*) {
  fields.value("RingPart", "A flat ring, or with a gap at angle 0 a retaining ring.")
      .member("outside_mm", &RingPart::outside, "diameter")
      .member("inside_mm", &RingPart::inside, "diameter")
      .member("thickness_mm", &RingPart::thickness, "mm")
      .member("gap_mm", &RingPart::gap, "0: closed");
}

struct KeyPart {
  double width = 0.0, height = 0.0, length = 0.0;
  EndShape ends = EndShape::round;
};
constexpr void describe(auto& fields, const KeyPart*) {
  fields.value("KeyPart", "A parallel key: length along z, height along x from 0, width on y.")
      .member("width_mm", &KeyPart::width, "mm, centred on the part's line")
      .member("height_mm", &KeyPart::height, "mm")
      .member("length_mm", &KeyPart::length, "mm")
      .member("ends", &KeyPart::ends, "round or square");
}

struct MockupPart {
  std::string name;
  std::variant<TurnedPart, BlockPart, RingPart, KeyPart> shape;
};
constexpr void describe(auto& fields, const MockupPart*) {
  fields.value("MockupPart", "A part of a mock-up, as measured with calipers.")
      .member("name", &MockupPart::name, "of the product")
      .member("shape", &MockupPart::shape, "TurnedPart, BlockPart, RingPart or KeyPart");
}

}  // namespace spotblue
