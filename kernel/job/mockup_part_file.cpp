#include "job/mockup_part_file.hpp"

#include <fmt/format.h>

#include <array>

#include "spotblue/base/angle.hpp"
#include "spotblue/base/nearest.hpp"

namespace spotblue {
namespace {

std::optional<EndShape> find_ends(const TomlTable& table) {
  const auto ends = table.find_text("ends");
  if (!ends) {
    return std::nullopt;
  }
  for (const EndShape shape : {EndShape::round, EndShape::square}) {
    if (*ends == word_of(shape)) {
      return shape;
    }
  }
  throw table.error("ends", fmt::format("\"{}\" is no shape of ends", *ends),
                    "use \"round\" or \"square\"");
}

PartFace read_face(const TomlTable& table, PartFace usual, bool block) {
  struct Name {
    const char* word;
    PartFace face;
  };
  static constexpr std::array<Name, 2> kTurned{
      {{"first", PartFace::first}, {"last", PartFace::last}}};
  static constexpr std::array<Name, 6> kBlock{{{"bottom", PartFace::first},
                                               {"top", PartFace::last},
                                               {"left", PartFace::left},
                                               {"right", PartFace::right},
                                               {"front", PartFace::front},
                                               {"back", PartFace::back}}};
  const auto name = table.find_text("face");
  if (!name) {
    return usual;
  }
  const std::span<const Name> names = block ? std::span<const Name>(kBlock) : kTurned;
  std::vector<std::string> known;
  for (const Name& entry : names) {
    if (*name == entry.word) {
      return entry.face;
    }
    known.emplace_back(entry.word);
  }
  throw table.error("face", fmt::format("there is no face \"{}\"", *name),
                    fmt::format("did you mean \"{}\"?", nearest_word(*name, known)));
}

bool flag(const TomlTable& table, std::string_view key) {
  return table.find_flag(key).value_or(false);
}

}  // namespace

double read_angle(const TomlTable& table, std::string_view key) {
  return radians(table.find_number(key).value_or(0.0));
}

double MockupPartReader::mm(const TomlTable& table, std::string_view key) const {
  return table.length(key, unit_).in_mm();
}

std::optional<double> MockupPartReader::find_mm(const TomlTable& table,
                                                std::string_view key) const {
  const auto value = table.find_length(key, unit_);
  return value ? std::optional(value->in_mm()) : std::nullopt;
}

double MockupPartReader::mm_or(const TomlTable& table, std::string_view key, double absent) const {
  return find_mm(table, key).value_or(absent);
}

Point MockupPartReader::point(const TomlTable& table, std::string_view key) const {
  const auto values = table.lengths(key, unit_);
  if (values.size() != 3) {
    throw table.error(key, fmt::format("need three lengths, got {}", values.size()),
                      fmt::format("write {} = [x, y, z]", key));
  }
  return {values[0].in_mm(), values[1].in_mm(), values[2].in_mm()};
}

// "chamfer_start" or "fillet_start", and the same for "end".
EdgeBreak MockupPartReader::read_break(const TomlTable& table, const char* end) const {
  const std::string chamfer = fmt::format("chamfer_{}", end);
  const std::string fillet = fmt::format("fillet_{}", end);
  const auto cut = find_mm(table, chamfer);
  const auto radius = find_mm(table, fillet);
  if (cut && radius) {
    throw table.error(fillet, fmt::format("both {} and {} on one edge", chamfer, fillet),
                      "keep one of them");
  }
  if (cut) {
    return {BreakKind::chamfer, *cut};
  }
  return radius ? EdgeBreak{BreakKind::fillet, *radius} : EdgeBreak{};
}

// Outside diameter of a plain gear blank: ISO 53 and AGMA full-depth teeth stand one module, or one
// inch over the diametral pitch, above the pitch circle (common practice, no source).
double MockupPartReader::diameter_of(const TomlTable& table) const {
  const auto teeth = table.find_whole("teeth");
  const auto module = find_mm(table, "module");
  const auto pitch = table.find_number("diametral_pitch");
  if (!teeth && (module || pitch)) {
    throw table.error(module ? "module" : "diametral_pitch", "a pitch without a number of teeth",
                      "add teeth = ..., or give the diameter");
  }
  if (!teeth) {
    return mm(table, "diameter");
  }
  if (table.has("diameter") || module.has_value() == pitch.has_value() || *teeth < 3) {
    throw table.error("teeth", "a gear blank needs 3 teeth or more and one pitch",
                      "give teeth with either module or diametral_pitch, and no diameter");
  }
  const double addendum = module ? *module : *pitch > 0.0 ? 25.4 / *pitch : 0.0;
  if (!(addendum > 0.0)) {
    throw table.error(module ? "module" : "diametral_pitch", "need more than 0",
                      "write the module in mm, or teeth an inch of diameter");
  }
  return addendum * (*teeth + 2.0);
}

void MockupPartReader::read_step(const TomlTable& table, Step& step) const {
  step.name = table.find_name("name").value_or("");
  step.diameter = diameter_of(table);
  step.end_diameter = mm_or(table, "to_diameter", step.diameter);
  step.at_start = read_break(table, "start");
  step.at_end = read_break(table, "end");
}

std::vector<Step> MockupPartReader::read_outside(const TomlTable& table) const {
  double reached = 0.0;
  return list<Step>(table, "outside", [&](const TomlTable& entry) {
    Step step;
    step.start = reached;
    step.length = mm(entry, "length");
    read_step(entry, step);
    reached += step.length;
    return step;
  });
}

std::vector<Step> MockupPartReader::read_inside(const TomlTable& table, double part_length) const {
  double reached = 0.0;
  return list<Step>(table, "inside", [&](const TomlTable& entry) {
    Step step;
    step.start = mm_or(entry, "start", reached);
    const bool through = flag(entry, "through");
    if (through == entry.has("length")) {
      throw entry.error("length", "need either a length or through = true", "give one of the two");
    }
    step.length = through ? part_length - step.start : mm(entry, "length");
    read_step(entry, step);
    reached = step.start + step.length;
    return step;
  });
}

std::vector<Bore> MockupPartReader::read_bores(const TomlTable& table, PartFace usual) const {
  const bool block = usual == PartFace::last;
  return list<Bore>(table, "bores", [&](const TomlTable& entry) {
    Bore bore;
    bore.name = entry.find_name("name").value_or("");
    bore.face = read_face(entry, usual, block);
    const auto at = entry.lengths("at", unit_);
    if (at.size() != 2 && (block || !at.empty())) {
      throw entry.error("at", fmt::format("need two lengths, got {}", at.size()),
                        "write at = [across, up] on the face");
    }
    if (!at.empty()) {
      bore.u = at[0].in_mm();
      bore.v = at[1].in_mm();
    }
    bore.diameter = mm(entry, "diameter");
    bore.depth = find_mm(entry, "depth");
    if (flag(entry, "through") == bore.depth.has_value()) {
      throw entry.error("depth", "need either a depth or through = true", "give one of the two");
    }
    if (entry.has("counterbore_diameter") || entry.has("counterbore_depth")) {
      bore.counterbore = {mm_or(entry, "counterbore_diameter", 0.0),
                          mm_or(entry, "counterbore_depth", 0.0)};
    }
    bore.count = entry.find_whole("count").value_or(1);
    bore.circle = find_mm(entry, "circle");
    bore.angle = read_angle(entry, "angle");
    bore.grooves = list<BoreGroove>(entry, "grooves", [this](const TomlTable& groove) {
      return BoreGroove{mm(groove, "depth"), mm(groove, "width"), mm(groove, "diameter")};
    });
    return bore;
  });
}

TurnedPart MockupPartReader::read_turned(const TomlTable& table) const {
  TurnedPart part;
  part.outside = read_outside(table);
  const double length =
      part.outside.empty() ? 0.0 : part.outside.back().start + part.outside.back().length;
  part.inside = read_inside(table, length);
  const auto groove = [this](const TomlTable& entry) {
    return Groove{mm(entry, "at"), mm(entry, "width"), mm(entry, "diameter")};
  };
  part.outside_grooves = list<Groove>(table, "outside_grooves", groove);
  part.inside_grooves = list<Groove>(table, "inside_grooves", groove);
  part.keyseats = list<Keyseat>(table, "keyseats", [this](const TomlTable& entry) {
    return Keyseat{
        mm(entry, "at"),    mm(entry, "length"),        mm(entry, "width"),
        mm(entry, "depth"), read_angle(entry, "angle"), find_ends(entry).value_or(EndShape::round)};
  });
  part.keyways = list<Keyway>(table, "keyways", [this](const TomlTable& entry) {
    Keyway way{find_mm(entry, "at"),   find_mm(entry, "length"),  mm(entry, "width"),
               mm(entry, "depth"),     find_mm(entry, "bore"),    mm_or(entry, "x", 0.0),
               mm_or(entry, "y", 0.0), read_angle(entry, "angle")};
    if (way.at.has_value() != way.length.has_value()) {
      throw entry.error(way.at ? "at" : "length", "one of at and length without the other",
                        "give both, or neither for a keyway right through");
    }
    return way;
  });
  part.flats = list<Flats>(table, "flats", [this](const TomlTable& entry) {
    return Flats{mm(entry, "at"), mm(entry, "length"), mm(entry, "across"),
                 entry.find_whole("count").value_or(2), read_angle(entry, "angle")};
  });
  part.cross_holes = list<CrossHole>(table, "cross_holes", [this](const TomlTable& entry) {
    CrossHole hole{mm(entry, "at"), mm(entry, "diameter"), find_mm(entry, "depth"),
                   read_angle(entry, "angle"), mm_or(entry, "offset", 0.0)};
    if (flag(entry, "through") == hole.depth.has_value()) {
      throw entry.error("depth", "need either a depth or through = true", "give one of the two");
    }
    return hole;
  });
  part.bores = read_bores(table, PartFace::first);
  return part;
}

BlockPart MockupPartReader::read_block(const TomlTable& table) const {
  BlockPart part;
  part.size = point(table, "size");
  part.added = list<AddedBlock>(table, "added", [this](const TomlTable& entry) {
    return AddedBlock{point(entry, "corner"), point(entry, "size")};
  });
  part.bosses = list<Boss>(table, "bosses", [this](const TomlTable& entry) {
    const auto at = entry.lengths("at", unit_);
    if (at.size() != 2) {
      throw entry.error("at", fmt::format("need two lengths, got {}", at.size()),
                        "write at = [across, up] on the face");
    }
    return Boss{entry.find_name("name").value_or(""),
                read_face(entry, PartFace::last, true),
                at[0].in_mm(),
                at[1].in_mm(),
                mm(entry, "diameter"),
                mm(entry, "height")};
  });
  part.bores = read_bores(table, PartFace::last);
  return part;
}

RingPart MockupPartReader::read_ring(const TomlTable& table) const {
  return {mm(table, "outside"), mm(table, "inside"), mm(table, "thickness"),
          mm_or(table, "gap", 0.0)};
}

KeyPart MockupPartReader::read_key(const TomlTable& table) const {
  return {mm(table, "width"), mm(table, "height"), mm(table, "length"),
          find_ends(table).value_or(EndShape::round)};
}

MockupPart MockupPartReader::read(TomlTable table) const {
  MockupPart part;
  part.name = table.text("name");
  table.set_place(fmt::format("part \"{}\"", part.name));
  lines_[table.place()] = {table.file(), table.line()};
  (void)table.find_text("note");
  const std::string kind = table.text("kind");
  if (kind == "turned") {
    part.shape = read_turned(table);
  } else if (kind == "block" || kind == "plate") {
    part.shape = read_block(table);
  } else if (kind == "ring") {
    part.shape = read_ring(table);
  } else if (kind == "key") {
    part.shape = read_key(table);
  } else {
    throw table.error("kind", fmt::format("there is no kind \"{}\"", kind),
                      "use \"turned\", \"block\", \"plate\", \"ring\" or \"key\"");
  }
  table.refuse_unknown();
  return part;
}

}  // namespace spotblue
