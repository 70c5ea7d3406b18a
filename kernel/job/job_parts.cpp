#include "job/job_parts.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "job/entry_keys.hpp"

namespace spotblue {
namespace {

Stock read_stock(const TomlTable& entry, LengthUnit unit) {
  Stock stock;
  stock.form = read_word<StockForm>(entry, "form", entry.text("form"));
  // Only the keys of the form are asked for, so that a diameter of a plate is an unknown key.
  if (stock.form == StockForm::plate) {
    stock.thickness = read_size(entry, "thickness", unit);
    stock.width = find_size(entry, "width", unit);
  } else {
    stock.diameter = read_size(entry, "diameter", unit);
  }
  if (stock.form == StockForm::tube) {
    stock.inner_diameter = read_size(entry, "inner_diameter", unit);
    if (*stock.inner_diameter >= *stock.diameter) {
      throw entry.error("inner_diameter", "a tube's bore is smaller than its outside",
                        "swap or correct diameter and inner_diameter");
    }
  }
  stock.length = find_size(entry, "length", unit);
  return stock;
}

SharedStock read_shared(const TomlTable& entry, LengthUnit unit,
                        const std::vector<JobPart>& parts) {
  SharedStock shared;
  shared.line = entry.job_line();
  shared.piece = read_stock(entry, unit);
  shared.parts = entry.texts("parts");
  if (shared.parts.empty()) {
    throw entry.error("parts", "no part is cut from it", "name the parts, each as often as needed");
  }
  for (const std::string& name : shared.parts) {
    const auto own = std::ranges::find_if(
        parts, [&name](const JobPart& part) { return part.part == name && part.stock; });
    if (own != parts.end()) {
      throw entry.error("parts", fmt::format("\"{}\" has stock of its own", name),
                        "keep stock in its [[parts]] entry, or name it here");
    }
  }
  shared.parting = entry.has("parting") ? read_tolerance(entry, "parting", unit) : Length();
  shared.stub = entry.has("stub") ? read_tolerance(entry, "stub", unit) : Length();
  entry.refuse_unknown();
  return shared;
}

// What a soft part gives way by.
void read_softness(const TomlTable& entry, LengthUnit unit, JobPart& part) {
  part.thickness = find_size(entry, "thickness", unit);
  if (!entry.has("squeeze")) {
    return;
  }
  part.squeeze = read_limits(entry, "squeeze", unit);
  if (part.squeeze->lower < Length()) {
    throw entry.error("squeeze", "a part is not squeezed by less than nothing",
                      "write [least, greatest] by which it is thinner in its place");
  }
  if (!part.thickness || part.squeeze->upper >= *part.thickness) {
    throw entry.error("squeeze",
                      part.thickness ? "nothing of the part would be left"
                                     : "says by how much it is thinner, and not than what",
                      "give its thickness before it is squeezed, more than the squeeze");
  }
}

JobPart read_part(const TomlTable& entry, LengthUnit unit) {
  JobPart part;
  part.line = entry.job_line();
  part.part = entry.text("part");
  part.material = entry.find_name("material").value_or("");
  if (const auto state = entry.find_text("state")) {
    part.state = read_word<PartState>(entry, "state", *state);
  }
  part.drawn = part.state == PartState::to_make ? Drawn::at_nominal : Drawn::at_the_size_wanted;
  if (entry.has("sizes")) {
    throw entry.error(
        "sizes", "sizes of a part are called drawn",
        "write drawn = \"at nominal\" for \"basic\", drawn = \"at the size wanted\" for "
        "\"actual\"");
  }
  if (const auto drawn = entry.find_text("drawn")) {
    part.drawn = read_word<Drawn>(entry, "drawn", *drawn);
  }
  part.irreplaceable = entry.find_flag("irreplaceable").value_or(false);
  if (part.irreplaceable && part.state == PartState::to_make) {
    throw entry.error("irreplaceable", "a part still to make is not irreplaceable",
                      "drop one of irreplaceable and state = \"to make\"");
  }
  part.running_c = find_in_units(entry, "running", kTemperatures, kTemperatures_c);
  part.springs = entry.find_flag("springs").value_or(false);
  part.split = entry.find_flag("split").value_or(false);
  read_softness(entry, unit, part);
  if (const auto stock = entry.find_table("stock")) {
    part.stock = read_stock(*stock, unit);
    stock->refuse_unknown();
  }
  entry.refuse_unknown();
  return part;
}

// More than 0: a material without strength or stiffness is none.
constexpr Interval kStrengths_mpa{1e-3, 1e4};
constexpr Interval kModuli_gpa{1e-6, 1500.0};
constexpr Interval kRatios{1e-3, 0.4999};
constexpr Interval kExpansions_um_per_m_k{1e-3, 500.0};

OwnMaterial read_material(const TomlTable& entry) {
  OwnMaterial material;
  material.line = entry.job_line();
  material.name = entry.text("name");
  material.youngs_modulus_gpa = read_in_units(entry, "youngs_modulus", kModuli, kModuli_gpa);
  material.poisson_ratio = read_number(entry, "poisson_ratio", kRatios);
  material.expansion_um_per_m_k =
      read_in_units(entry, "expansion", kExpansions, kExpansions_um_per_m_k);
  material.yield_mpa = find_in_units(entry, "yield", kStrengths, kStrengths_mpa);
  material.tensile_mpa = find_in_units(entry, "tensile", kStrengths, kStrengths_mpa);
  entry.refuse_unknown();
  return material;
}

}  // namespace

std::vector<JobPart> read_parts(const TomlTable& top, LengthUnit unit) {
  std::vector<JobPart> parts;
  FirstUse names;
  for (const TomlTable& entry : top.tables("parts")) {
    parts.push_back(read_part(entry, unit));
    names.note(entry, "part", parts.back().part);
  }
  return parts;
}

std::vector<SharedStock> read_shared_stock(const TomlTable& top, LengthUnit unit,
                                           const std::vector<JobPart>& parts) {
  std::vector<SharedStock> stock;
  for (const TomlTable& entry : top.tables("stock")) {
    stock.push_back(read_shared(entry, unit, parts));
  }
  return stock;
}

std::vector<OwnMaterial> read_materials(const TomlTable& top) {
  std::vector<OwnMaterial> materials;
  FirstUse names;
  for (const TomlTable& entry : top.tables("materials")) {
    materials.push_back(read_material(entry));
    names.note(entry, "name", materials.back().name);
  }
  return materials;
}

}  // namespace spotblue
