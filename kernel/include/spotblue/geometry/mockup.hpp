#pragma once
/// @file
/// A mock-up: simple solids from caliper sizes, placed along centre lines, written as STEP.

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/base/unit.hpp"
#include "spotblue/geometry/mockup_part.hpp"

namespace spotblue {

/// A centre line parts are placed on. Its x is the assembly's x (its y, where the line itself runs
/// along x) made square to it.
struct PlacingLine {
  std::string name;
  Point at;
  Point along{0.0, 0.0, 1.0};  ///< any length but 0
};

enum class Facing { as_drawn, turned_round };

/// A circle of equal instances round the line.
struct PlacingCircle {
  double diameter = 0.0;
  int count = 1;
  double angle = 0.0;  ///< of the first, rad
};

/// Where one part goes, once or on a circle.
struct Placement {
  std::string name;   ///< of the instance; on a circle " 1", " 2", ... are added
  std::string part;   ///< MockupPart::name
  std::string group;  ///< sub-assembly it belongs to; empty: the assembly itself
  std::string line;   ///< PlacingLine::name; empty: the first one
  std::string on;     ///< bore whose centre goes on the line; empty: the part's own z
  Facing facing = Facing::as_drawn;
  std::string face = "first";  ///< the face that is brought to its place: see faces_of
  std::optional<double> at;    ///< station of that face on the line, or ...
  std::string against;         ///< ... the instance whose face it is set against
  std::string against_face;
  double gap = 0.0;                     ///< between the two faces; negative: they overlap
  double aside_x = 0.0, aside_y = 0.0;  ///< of the line, in its x and y
  double turn = 0.0;                    ///< about the line, rad
  PlacingCircle circle;
  std::string keyseat_of;   ///< a key: the instance in whose keyseat it lies
  std::size_t keyseat = 1;  ///< which of that part's keyseats, from 1
};

enum class StepProtocol { ap203, ap214, ap242 };

struct Mockup {
  std::string file;  ///< named in errors; may be empty
  /// Files that it was read from: never written over by write_mockup.
  std::vector<std::filesystem::path> read_from;
  std::string title;                 ///< name of the assembly
  std::string about;                 ///< goes into the STEP header
  LengthUnit unit = LengthUnit::mm;  ///< the STEP file is written in
  StepProtocol protocol = StepProtocol::ap214;
  std::vector<MockupPart> parts;
  std::vector<PlacingLine> lines;  ///< none: one along z through the origin
  /// None: the mock-up is its one part alone.
  std::vector<Placement> placements;
};

/// Refuses sizes that make no part: zero lengths, walls without thickness, chamfers longer than
/// their step, bores outside their plate, names that are missing or doubled.
/// @throws Error bad_input; file is mockup.file, place is `part "Wheel", outside 2`.
SPOTBLUE_EXPORT void check_parts(const Mockup& mockup);

}  // namespace spotblue
