#include "job/job_meshes.hpp"

#include <fmt/format.h>

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "job/entry_keys.hpp"

namespace spotblue {
namespace {

int read_teeth(const TomlTable& entry, int least) {
  const auto teeth = entry.find_whole("teeth");
  if (!teeth || *teeth < least) {
    throw entry.error("teeth",
                      teeth ? fmt::format("need {} or more, got {}", least, *teeth)
                            : std::string("\"teeth\" is missing"),
                      "write the number of teeth");
  }
  return *teeth;
}

void read_thickness(const TomlTable& entry, LengthUnit unit, MeshGear& gear) {
  constexpr std::array<std::string_view, 3> ways{"thickness", "span", "pins"};
  if (!entry.has("thickness") && !entry.has("span") && !entry.has("pins")) {
    return;
  }
  const std::string_view way = only_one_of(entry, ways);
  if (way == "thickness") {
    gear.thickness = read_size(entry, "thickness", unit);
  } else if (way == "span") {
    const auto span = entry.find_table("span");
    gear.span = ToothSpan{read_teeth(*span, 2), read_size(*span, "over", unit)};
    span->refuse_unknown();
  } else {
    const auto pins = entry.find_table("pins");
    gear.pins = OverPins{read_size(*pins, "pin", unit), read_size(*pins, "over", unit)};
    pins->refuse_unknown();
  }
}

MeshGear read_gear(const TomlTable& entry, LengthUnit unit) {
  constexpr int fewest_teeth = 5;
  MeshGear gear;
  gear.part = entry.text("part");
  gear.teeth = read_teeth(entry, fewest_teeth);
  read_thickness(entry, unit, gear);
  gear.tip_diameter = find_size(entry, "tip_diameter", unit);
  gear.root_diameter = find_size(entry, "root_diameter", unit);
  if (gear.tip_diameter && gear.root_diameter && *gear.root_diameter >= *gear.tip_diameter) {
    throw entry.error("root_diameter", "the root is not smaller than the tip",
                      "swap or correct tip_diameter and root_diameter");
  }
  entry.refuse_unknown();
  return gear;
}

Length read_module(const TomlTable& entry, LengthUnit unit) {
  constexpr std::array<std::string_view, 2> pitches{"module", "diametral_pitch"};
  if (only_one_of(entry, pitches) == "module") {
    return read_size(entry, "module", unit);
  }
  return Length::inch(1.0) / read_number(entry, "diametral_pitch", {0.1, 1000.0});
}

Mesh read_mesh(const TomlTable& entry, LengthUnit unit) {
  Mesh mesh;
  mesh.line = entry.job_line();
  const std::vector<TomlTable> gears = entry.tables("gears");
  if (gears.size() != 2) {
    throw entry.error("gears", fmt::format("need two gears, got {}", gears.size()),
                      "write [[meshes.gears]] twice below, each with part and teeth");
  }
  mesh.a = read_gear(gears[0], unit);
  mesh.b = read_gear(gears[1], unit);
  mesh.module = read_module(entry, unit);
  mesh.pressure_angle_deg =
      find_number(entry, "pressure_angle", {5.0, 45.0}).value_or(mesh.pressure_angle_deg);
  mesh.helix_angle_deg =
      find_number(entry, "helix_angle", {0.0, 60.0}).value_or(mesh.helix_angle_deg);
  if (entry.has("backlash")) {
    mesh.backlash = read_limits(entry, "backlash", unit);
    if (mesh.backlash->lower < Length()) {
      throw entry.error("backlash", "backlash is not less than 0", "write [least, greatest]");
    }
  }
  mesh.face_share = find_number(entry, "face_share", {0.01, 1.0}).value_or(mesh.face_share);
  entry.refuse_unknown();
  return mesh;
}

}  // namespace

std::vector<Mesh> read_meshes(const TomlTable& top, LengthUnit unit) {
  std::vector<Mesh> meshes;
  FirstUse pairs;
  for (const TomlTable& entry : top.tables("meshes")) {
    meshes.push_back(read_mesh(entry, unit));
    pairs.note(entry, "gears", pair_text(meshes.back().a.part, meshes.back().b.part));
  }
  return meshes;
}

}  // namespace spotblue
