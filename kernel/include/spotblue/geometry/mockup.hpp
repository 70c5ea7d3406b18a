#pragma once
/// @file
/// A mock-up: simple solids from caliper sizes, placed along centre lines, written as STEP.

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/base/unit.hpp"
#include "spotblue/base/words.hpp"
#include "spotblue/geometry/mockup_part.hpp"

namespace spotblue {

struct PlacingLine {
  std::string name;
  Point at;
  Point along{0.0, 0.0, 1.0};
};
constexpr void describe(auto& fields, const PlacingLine*) {
  fields
      .value("PlacingLine",
             "A centre line that parts are placed on. Its x is the assembly's x (its y, where the "
             "line itself runs along x) made square to it.")
      .member("name", &PlacingLine::name, "as placements call it")
      .member("at", &PlacingLine::at, "mm")
      .member("along", &PlacingLine::along, "any length but 0");
}

enum class Facing { as_drawn, turned_round };
constexpr auto describe(const Facing*) {
  return words("Which way round a part is placed.", "as drawn", "turned round");
}

struct PlacingCircle {
  double diameter = 0.0;
  int count = 1;
  double angle = 0.0;
};
constexpr void describe(auto& fields, const PlacingCircle*) {
  fields.value("PlacingCircle", "A circle of equal instances round the line.")
      .member("diameter_mm", &PlacingCircle::diameter, "mm")
      .member("count", &PlacingCircle::count, "1: no circle")
      .degrees("angle_deg", &PlacingCircle::angle, "of the first");
}

struct Placement {
  std::string name;
  std::string part;
  std::string group;
  std::string line;
  std::string on;
  Facing facing = Facing::as_drawn;
  std::string face = "first";
  std::optional<double> at;
  std::string against;
  std::string against_face;
  double gap = 0.0;
  double aside_x = 0.0, aside_y = 0.0;
  double turn = 0.0;
  PlacingCircle circle;
  std::string keyseat_of;
  std::size_t keyseat = 1;
};
constexpr void describe(auto& fields, const Placement*) {
  fields.value("Placement", "Where one part goes, once or on a circle.")
      .member("name", &Placement::name,
              "of the instance; on a circle \" 1\", \" 2\", ... are added")
      .member("part", &Placement::part, "a part's name")
      .member("group", &Placement::group, "sub-assembly it belongs to; empty: the assembly itself")
      .member("line", &Placement::line, "a line's name; empty: the first")
      .member("on", &Placement::on, "bore whose centre goes on the line; empty: the part's own z")
      .member("facing", &Placement::facing, "\"as drawn\", \"turned round\"")
      .member("face", &Placement::face, "that is brought to its place: see faces_of")
      .member("at_mm", &Placement::at, "station of that face on the line, or None and ...")
      .member("against", &Placement::against, "... the instance whose face it is set against")
      .member("against_face", &Placement::against_face, "of that instance")
      .member("gap_mm", &Placement::gap, "between the two faces; negative: they overlap")
      .member("aside_x_mm", &Placement::aside_x, "of the line, in its x")
      .member("aside_y_mm", &Placement::aside_y, "of the line, in its y")
      .degrees("turn_deg", &Placement::turn, "about the line")
      .member("circle", &Placement::circle, "PlacingCircle")
      .member("keyseat_of", &Placement::keyseat_of, "a key: the instance in whose keyseat it lies")
      .member("keyseat", &Placement::keyseat, "which of that part's keyseats, from 1");
}

enum class StepProtocol { ap203, ap214, ap242 };
constexpr auto describe(const StepProtocol*) {
  return words("The application protocol of a STEP file.", "AP203", "AP214", "AP242");
}

struct Mockup {
  std::string file;
  std::vector<std::filesystem::path> read_from;
  std::string title;
  std::string about;
  LengthUnit unit = LengthUnit::mm;
  StepProtocol protocol = StepProtocol::ap214;
  std::vector<MockupPart> parts;
  std::vector<PlacingLine> lines;
  std::vector<Placement> placements;
};
constexpr void describe(auto& fields, const Mockup*) {
  fields.value("Mockup", "Simple solids from caliper sizes, placed along centre lines.")
      .member("file", &Mockup::file, "named in errors; may be empty")
      .member("read_from", &Mockup::read_from, "files it was read from; never written over")
      .member("title", &Mockup::title, "name of the assembly")
      .member("about", &Mockup::about, "goes into the STEP header")
      .member("unit", &Mockup::unit, "the STEP file is written in")
      .member("protocol", &Mockup::protocol, "AP203, AP214 or AP242")
      .member("parts", &Mockup::parts, "MockupPart")
      .member("lines", &Mockup::lines, "PlacingLine; none: one along z through the origin")
      .member("placements", &Mockup::placements, "Placement; none: the one part alone");
}

/// Refuses sizes that make no part: zero lengths, walls without thickness, chamfers longer than
/// their step, bores outside their plate, names that are missing or doubled.
/// @throws Error bad_input; file is mockup.file, place is `part "Wheel", outside 2`.
SPOTBLUE_EXPORT void check_parts(const Mockup& mockup);

}  // namespace spotblue
