#include "spotblue/job/job_file.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cstddef>
#include <utility>
#include <vector>

#include "job/job_conditions.hpp"
#include "job/job_cuts.hpp"
#include "job/job_fits.hpp"
#include "job/job_lengths.hpp"
#include "job/job_measured.hpp"
#include "job/job_meshes.hpp"
#include "job/job_parts.hpp"
#include "job/job_settings.hpp"
#include "job/job_turning.hpp"
#include "job/job_wants.hpp"
#include "job/named_file.hpp"
#include "job/toml_table.hpp"
#include "spotblue/base/nearest.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/standards/materials.hpp"

namespace spotblue {
namespace {

constexpr int kSchema = 1;

void require_schema(const TomlTable& top) {
  const auto schema = top.find_whole("schema");
  if (!schema && (top.has("part") || top.has("place"))) {
    throw top.error("", "this is a mock-up and no job file",
                    "make solids of it with spotblue model, and a job file with spotblue draft");
  }
  if (!schema) {
    throw top.error("schema", "\"schema\" is missing", "begin the file with schema = 1");
  }
  if (*schema != kSchema) {
    throw top.error("schema", fmt::format("schema {} is not known", *schema),
                    "this version reads schema = 1");
  }
}

LengthUnit read_unit(const TomlTable& top) {
  const std::string unit = top.text("unit");
  try {
    return parse_unit(unit);
  } catch (const Error& problem) {
    throw top.error("unit", problem.rule(), problem.cure());
  }
}

void require_known_materials(const TomlTable& top, const Job& job) {
  const std::vector<TomlTable> entries = top.tables("parts");
  for (std::size_t i = 0; i < job.parts.size(); ++i) {
    const std::string& name = job.parts[i].material;
    const bool own =
        std::any_of(job.materials.begin(), job.materials.end(),
                    [&name](const OwnMaterial& material) { return material.name == name; });
    if (name.empty() || own || find_material(name) != nullptr || is_soft_material(name)) {
      continue;
    }
    std::vector<std::string> known(material_names().begin(), material_names().end());
    for (const OwnMaterial& material : job.materials) {
      known.push_back(material.name);
    }
    const std::string likely = likely_word(name, known);
    throw entries.at(i).error("material", fmt::format("\"{}\" is no known material", name),
                              (likely.empty() ? "spotblue materials lists those known."
                                              : fmt::format("did you mean \"{}\"?", likely)) +
                                  " A material of your own goes into [[materials]]");
  }
}

}  // namespace

Job read_job(const std::filesystem::path& file, Outside outside) {
  const TomlTable top = TomlTable::read_file(file);
  require_schema(top);
  Job job;
  job.file = shown_name(file);
  job.unit = read_unit(top);
  job.title = top.find_text("title").value_or("");
  job.model = named_file(file, top, "model", top.text("model"), outside);
  job.parts = read_parts(top, job.unit);
  job.stock = read_shared_stock(top, job.unit, job.parts);
  job.fits = read_fits(top, job.unit);
  job.threads = read_threads(top, job.unit);
  job.sizes = read_sizes(top, job.unit);
  Measured measured = read_measured(top, job.unit);
  job.measured = std::move(measured.sizes);
  job.measured_gaps = std::move(measured.gaps);
  job.axial = read_axial_wants(top, job.unit);
  job.end_play = read_end_play(top, job.unit);
  job.tapers = read_tapers(top, job.unit);
  job.allowed = read_allowed(top, job.unit);
  job.materials = read_materials(top);
  require_known_materials(top, job);
  job.conditions = read_conditions(top, job.unit);
  job.turning = read_turning(top, job.unit);
  job.joins = read_joins(top);
  job.adjust = read_adjust(top, job.unit);
  job.keep_off = read_keep_off(top, job.unit);
  job.surfaces = read_surfaces(top);
  job.lengths = read_part_lengths(top, job.unit);
  job.meshes = read_meshes(top, job.unit);
  job.cuts = read_cuts(top, job.unit);
  job.settings = read_settings(top, job.unit);
  top.refuse_unknown();
  return job;
}

}  // namespace spotblue
