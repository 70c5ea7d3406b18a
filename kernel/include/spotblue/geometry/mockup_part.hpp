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

#include "spotblue/geometry/vector.hpp"

namespace spotblue {

/// What was done to an edge or left in a corner.
enum class BreakKind { sharp, chamfer, fillet };

/// A 45 degree chamfer by its leg, or a fillet by its radius (in a corner) or a rounding (on an
/// edge); size > 0 unless sharp.
struct EdgeBreak {
  BreakKind kind = BreakKind::sharp;
  double size = 0.0;
};

/// One stretch of the outside or inside of a turned part; a taper where the diameters differ.
struct Step {
  std::string name;     ///< own name, may be empty
  double start = 0.0;   ///< from the first end
  double length = 0.0;  ///< > 0
  double diameter = 0.0;
  double end_diameter = 0.0;
  EdgeBreak at_start, at_end;
};

/// A square groove turned into the outside or inside, within one step.
struct Groove {
  double at = 0.0;  ///< its nearer edge, from the first end
  double width = 0.0;
  double diameter = 0.0;  ///< of its floor
};

/// Shape of the ends of a keyseat or key.
enum class EndShape { round, square };

/// A keyseat milled in the outside of a turned part.
struct Keyseat {
  double at = 0.0;  ///< its nearer end, from the first end, round ends included
  double length = 0.0;
  double width = 0.0;
  double depth = 0.0;  ///< from the top of the shaft to the floor
  double angle = 0.0;
  EndShape ends = EndShape::round;
};

/// A keyway in a bore, open to both sides or over a stretch.
struct Keyway {
  std::optional<double> at;      ///< absent: right through
  std::optional<double> length;  ///< set with `at`
  double width = 0.0;
  double depth = 0.0;          ///< from the top of the bore to the floor
  std::optional<double> bore;  ///< diameter; absent: the inside step it lies in
  double x = 0.0, y = 0.0;     ///< centre of the bore
  double angle = 0.0;
};

/// Flats milled on a turned part: 1, or an even number all round (6: hexagon).
struct Flats {
  double at = 0.0;
  double length = 0.0;
  double across = 0.0;  ///< over two opposite flats; a single one: from it to the far side
  int count = 2;
  double angle = 0.0;
};

/// A hole square to the centre line of a turned part.
struct CrossHole {
  double at = 0.0;  ///< its centre, from the first end
  double diameter = 0.0;
  std::optional<double> depth;  ///< from the outside there; absent: right through
  double angle = 0.0;
  double offset = 0.0;  ///< of its centre line from the part's, mm, counter-clockwise side
};

/// Sides of a part. Turned parts have first (z = 0) and last; a block's bottom and top are its
/// first and last; left and right bound x, front and back bound y.
enum class PartFace { first, last, left, right, front, back };

/// A groove turned into a bore, for a retaining ring.
struct BoreGroove {
  double depth = 0.0;  ///< of its nearer edge, from where the bore starts
  double width = 0.0;
  double diameter = 0.0;
};

/// A bore, or a circle of bores, square to a face. Positions (u, v) are (x, y) on first and last,
/// (y, z) on left and right, (x, z) on front and back.
struct Bore {
  std::string name;
  PartFace face = PartFace::last;
  double u = 0.0, v = 0.0;
  double diameter = 0.0;
  std::optional<double> depth;  ///< from the face (or the boss it is in); absent: right through
  double counterbore_diameter = 0.0;  ///< 0: none
  double counterbore_depth = 0.0;
  int count = 1;
  double circle = 0.0;  ///< pitch circle diameter round (u, v); 0: at (u, v)
  double angle = 0.0;   ///< of the first one
  std::vector<BoreGroove> grooves;
};

/// A part made on the lathe, and what was drilled and milled in it afterwards.
struct TurnedPart {
  std::vector<Step> outside;  ///< without gaps from 0
  std::vector<Step> inside;   ///< ascending; stretches between them are solid
  std::vector<Groove> outside_grooves, inside_grooves;
  std::vector<Keyseat> keyseats;
  std::vector<Keyway> keyways;
  std::vector<Flats> flats;
  std::vector<CrossHole> cross_holes;
  std::vector<Bore> bores;  ///< parallel to the centre line, on it or off it
};

/// A round boss standing on a face of a block.
struct Boss {
  std::string name;
  PartFace face = PartFace::last;
  double u = 0.0, v = 0.0;
  double diameter = 0.0;
  double height = 0.0;
};

/// A further block joined to the first.
struct AddedBlock {
  Point corner;  ///< lowest x, y, z
  Point size;
};

/// A plate, block or bracket.
struct BlockPart {
  Point size;
  std::vector<AddedBlock> added;
  std::vector<Boss> bosses;
  std::vector<Bore> bores;
};

/// A flat ring, or with a gap at angle 0 a retaining ring.
struct RingPart {
  double outside = 0.0, inside = 0.0;  ///< diameters
  double thickness = 0.0;
  double gap = 0.0;
};

/// A parallel key: length along z, height along x from 0, width centred on y.
struct KeyPart {
  double width = 0.0, height = 0.0, length = 0.0;
  EndShape ends = EndShape::round;
};

struct MockupPart {
  std::string name;
  std::variant<TurnedPart, BlockPart, RingPart, KeyPart> shape;
};

}  // namespace spotblue
