#include "spotblue/job/mockup_file.hpp"

#include <fmt/format.h>

#include "job/mockup_part_file.hpp"
#include "job/named_file.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/geometry/mockup_placing.hpp"

namespace spotblue {
namespace {

StepProtocol read_protocol(const TomlTable& table) {
  const auto name = table.find_text("protocol");
  if (!name) {
    return StepProtocol::ap214;
  }
  for (const StepProtocol protocol :
       {StepProtocol::ap203, StepProtocol::ap214, StepProtocol::ap242}) {
    if (*name == word_of(protocol)) {
      return protocol;
    }
  }
  throw table.error("protocol", fmt::format("there is no protocol \"{}\"", *name),
                    "use \"AP203\", \"AP214\" or \"AP242\"");
}

PlacingLine read_line(TomlTable table, LengthUnit unit) {
  PlacingLine line;
  line.name = table.text("name");
  table.set_place(fmt::format("line \"{}\"", line.name));
  const auto at = table.lengths("at", unit);
  const auto along = table.lengths("along", unit);
  if ((!at.empty() && at.size() != 3) || (!along.empty() && along.size() != 3)) {
    throw table.error(at.size() == 3 ? "along" : "at", "need three numbers", "write [x, y, z]");
  }
  if (!at.empty()) {
    line.at = {at[0].in_mm(), at[1].in_mm(), at[2].in_mm()};
  }
  if (!along.empty()) {
    line.along = {along[0].in_mm(), along[1].in_mm(), along[2].in_mm()};
  }
  table.refuse_unknown();
  return line;
}

void read_circle(const TomlTable& table, LengthUnit unit, PlacingCircle& circle) {
  circle.diameter = table.length("diameter", unit).in_mm();
  circle.count = table.find_whole("count").value_or(1);
  circle.angle = read_angle(table, "angle");
  table.refuse_unknown();
}

void check_position(const TomlTable& table, const Placement& placement) {
  const int given = (placement.at ? 1 : 0) + (placement.against.empty() ? 0 : 1) +
                    (placement.keyseat_of.empty() ? 0 : 1);
  if (given != 1) {
    throw table.error("", given == 0 ? "has no position" : "has more than one position",
                      "give one of: at = ..., against = ... with against_face, keyseat_of = ...");
  }
  if (placement.against.empty() != placement.against_face.empty()) {
    throw table.error("against_face", "against and against_face go together",
                      "name the other instance and its face");
  }
}

Placement read_place(TomlTable table, LengthUnit unit) {
  Placement placement;
  const auto text = [&table](const char* key, std::string absent) {
    return table.find_text(key).value_or(std::move(absent));
  };
  const auto length = [&](const char* key) {
    const auto value = table.find_length(key, unit);
    return value ? std::optional(value->in_mm()) : std::nullopt;
  };
  placement.part = table.text("part");
  placement.name = text("name", placement.part);
  table.set_place(fmt::format("place \"{}\"", placement.name));
  (void)table.find_text("note");
  placement.group = text("group", "");
  placement.line = text("line", "");
  placement.on = text("on", "");
  placement.facing =
      table.find_flag("reversed").value_or(false) ? Facing::turned_round : Facing::as_drawn;
  placement.face = text("face", "first");
  placement.at = length("at");
  placement.against = text("against", "");
  placement.against_face = text("against_face", "");
  placement.gap = length("gap").value_or(0.0);
  placement.turn = read_angle(table, "turn");
  placement.keyseat_of = text("keyseat_of", "");
  const int keyseat = table.find_whole("keyseat").value_or(1);
  if (keyseat < 1) {
    throw table.error("keyseat", "need 1 or more", "keyseats are counted from 1");
  }
  placement.keyseat = static_cast<std::size_t>(keyseat);
  const auto aside = table.lengths("aside", unit);
  if (!aside.empty()) {
    if (aside.size() != 2) {
      throw table.error("aside", "need two lengths", "write aside = [x, y]");
    }
    placement.aside_x = aside[0].in_mm();
    placement.aside_y = aside[1].in_mm();
  }
  if (const auto circle = table.find_table("circle")) {
    read_circle(*circle, unit, placement.circle);
  }
  check_position(table, placement);
  table.refuse_unknown();
  return placement;
}

// Where the nearest enclosing thing begins that has a line: `part "A", outside 2, gap`, then
// without what follows the last comma, and so on.
Error::Where located(const std::string& file, const std::string& place, const MockupLines& lines) {
  std::string known = place;
  while (!known.empty()) {
    if (const auto found = lines.find(known); found != lines.end()) {
      return {found->second.file, fmt::format("line {}, {}", found->second.line, place)};
    }
    const auto comma = known.rfind(", ");
    known.resize(comma == std::string::npos ? 0 : comma);
  }
  return {file, place};
}

// Adds the parts, lines and placements of one file.
void read_contents(const TomlTable& table, LengthUnit unit, Mockup& mockup, MockupLines& lines) {
  const MockupPartReader reader(unit, lines);
  for (const TomlTable& entry : table.tables("part")) {
    mockup.parts.push_back(reader.read(entry));
  }
  for (const TomlTable& entry : table.tables("line")) {
    mockup.lines.push_back(read_line(entry, unit));
    lines[fmt::format("line \"{}\"", mockup.lines.back().name)] = {entry.file(), entry.line()};
  }
  for (const TomlTable& entry : table.tables("place")) {
    mockup.placements.push_back(read_place(entry, unit));
    lines[fmt::format("place \"{}\"", mockup.placements.back().name)] = {entry.file(),
                                                                         entry.line()};
  }
}

LengthUnit read_mockup_unit(const TomlTable& table) {
  try {
    return parse_unit(table.find_text("unit").value_or("mm"));
  } catch (const Error& problem) {
    throw table.error("unit", problem.rule(), problem.cure());
  }
}

// Files shared by several mock-ups; they may not include others in turn.
void read_included(const TomlTable& table, Outside outside, Mockup& mockup, MockupLines& lines) {
  for (const std::string& name : table.texts("include")) {
    const std::filesystem::path file =
        named_file(mockup.read_from.front(), table, "include", name, outside);
    const TomlTable included = TomlTable::read_file(file);
    mockup.read_from.push_back(file);
    if (included.has("include")) {
      throw included.error("include", "an included file includes another: includes do not nest",
                           "name all of them in the mock-up itself");
    }
    (void)included.find_text("title");
    (void)included.find_text("about");
    read_contents(included, read_mockup_unit(included), mockup, lines);
    included.refuse_unknown();
  }
}

}  // namespace

Mockup read_mockup(const std::filesystem::path& file, Outside outside) {
  const TomlTable table = TomlTable::read_file(file);
  Mockup mockup;
  MockupLines lines;
  mockup.file = shown_name(file);
  mockup.read_from.push_back(file);
  if (table.has("schema") && table.has("model")) {
    throw table.error("model", "this is a job file and no mock-up",
                      "judge by it with spotblue check");
  }
  mockup.title = table.text("title");
  mockup.about = table.find_text("about").value_or("");
  mockup.unit = read_mockup_unit(table);
  mockup.protocol = read_protocol(table);
  read_included(table, outside, mockup, lines);
  read_contents(table, mockup.unit, mockup, lines);
  table.refuse_unknown();
  try {
    check_parts(mockup);
    (void)place_parts(mockup);
  } catch (const Error& problem) {
    throw Error(problem.code(), located(mockup.file, problem.place(), lines), problem.rule(),
                problem.cure());
  }
  return mockup;
}

}  // namespace spotblue
