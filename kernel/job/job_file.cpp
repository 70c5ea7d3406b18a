#include "spotblue/job/job_file.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <string>
#include <string_view>
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

// `entries` are those of the parts, in their order.
void require_known_materials(const std::vector<TomlTable>& entries, const Job& job) {
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

template <typename Entry>
void append(std::vector<Entry>& all, std::vector<Entry> more) {
  std::move(more.begin(), more.end(), std::back_inserter(all));
}

// A file that entries are read from.
struct Source {
  TomlTable top;
  LengthUnit unit = LengthUnit::mm;
};

// Adds the entries of one file but for its parts, which are all there by then.
void read_entries(const Source& source, Job& job) {
  const auto& [top, unit] = source;
  append(job.stock, read_shared_stock(top, unit, job.parts));
  append(job.fits, read_fits(top, unit));
  append(job.threads, read_threads(top, unit));
  append(job.sizes, read_sizes(top, unit));
  Measured measured = read_measured(top, unit);
  append(job.measured, std::move(measured.sizes));
  append(job.measured_gaps, std::move(measured.gaps));
  append(job.axial, read_axial_wants(top, unit));
  append(job.end_play, read_end_play(top, unit));
  append(job.tapers, read_tapers(top, unit));
  append(job.allowed, read_allowed(top, unit));
  append(job.materials, read_materials(top));
  append(job.turning, read_turning(top, unit));
  append(job.fixed, read_fixed(top));
  append(job.adjust, read_adjust(top, unit));
  append(job.keep_off, read_keep_off(top, unit));
  append(job.surfaces, read_surfaces(top));
  append(job.lengths, read_part_lengths(top, unit));
  append(job.meshes, read_meshes(top, unit));
  append(job.cuts, read_cuts(top, unit));
}

// What a job has once, from the one of its files that says it.
class SaidOnce {
 public:
  explicit SaidOnce(Job& job) : job_(job) {}

  void take(const TomlTable& top, LengthUnit unit) {
    if (is_first(top, "conditions", conditions_)) {
      job_.conditions = read_conditions(top, unit);
    }
    if (is_first(top, "settings", settings_)) {
      job_.settings = read_settings(top, unit);
    }
  }

 private:
  static bool is_first(const TomlTable& top, std::string_view key, std::string& file) {
    if (!top.has(key)) {
      return false;
    }
    if (!file.empty()) {
      throw top.error(key, fmt::format("[{}] stands in {} already", key, file),
                      "keep one of the two");
    }
    file = top.file();
    return true;
  }

  Job& job_;
  std::string conditions_, settings_;
};

// Files that several jobs share; they may not include others in turn.
std::vector<Source> included_by(const TomlTable& top, const std::filesystem::path& file,
                                Outside outside, Job& job) {
  std::vector<Source> sources;
  for (const std::string& name : top.texts("include")) {
    const std::filesystem::path path = named_file(file, top, "include", name, outside);
    TomlTable included = TomlTable::read_file(path);
    included.set_included();
    job.read_from.push_back(path);
    if (included.has("include")) {
      throw included.error("include", "an included file includes another: includes do not nest",
                           "name all of them in the job itself");
    }
    if (included.has("model")) {
      throw included.error("model", "an included file names a model",
                           "leave schema, title and model to the job that includes it");
    }
    const LengthUnit unit = included.has("unit") ? read_unit(included) : job.unit;
    sources.push_back({std::move(included), unit});
  }
  return sources;
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
  job.read_from = {file};
  std::vector<Source> sources = included_by(top, file, outside, job);
  sources.push_back({top, job.unit});
  SaidOnce once(job);
  std::vector<TomlTable> parts;
  for (const Source& source : sources) {
    append(parts, source.top.tables("parts"));
    append(job.parts, read_parts(source.top, source.unit));
    once.take(source.top, source.unit);
  }
  for (const Source& source : sources) {
    read_entries(source, job);
    source.top.refuse_unknown();
  }
  require_known_materials(parts, job);
  return job;
}

}  // namespace spotblue
