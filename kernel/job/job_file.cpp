#include "spotblue/job/job_file.hpp"

#include <fmt/format.h>

#include <utility>

#include "job/job_entries.hpp"
#include "job/toml_table.hpp"

namespace spotblue {
namespace {

constexpr int kSchema = 1;

void require_schema(const TomlTable& top) {
  const auto schema = top.find_whole("schema");
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

}  // namespace

Job read_job(const std::filesystem::path& file) {
  const TomlTable top = TomlTable::read_file(file.string());
  require_schema(top);
  Job job;
  job.file = file.string();
  job.unit = read_unit(top);
  job.title = top.find_text("title").value_or("");
  job.model = (file.parent_path() / top.text("model")).lexically_normal();
  job.parts = read_parts(top, job.unit);
  job.fits = read_fits(top, job.unit);
  job.sizes = read_sizes(top, job.unit);
  Measured measured = read_measured(top, job.unit);
  job.measured = std::move(measured.sizes);
  job.measured_gaps = std::move(measured.gaps);
  job.axial = read_axial_wants(top, job.unit);
  job.tapers = read_tapers(top, job.unit);
  job.allowed = read_allowed(top, job.unit);
  job.materials = read_materials(top);
  job.settings = read_settings(top, job.unit);
  top.refuse_unknown();
  return job;
}

}  // namespace spotblue
