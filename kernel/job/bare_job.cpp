#include "spotblue/job/bare_job.hpp"

namespace spotblue {

LengthUnit unit_of(const FileInfo& file) {
  const bool inches = file.unit.starts_with("inch") || file.unit.starts_with("foot") ||
                      file.unit.starts_with("feet");
  return inches ? LengthUnit::inch : LengthUnit::mm;
}

Job bare_job(const std::filesystem::path& model, LengthUnit unit) {
  Job job;
  job.model = model;
  job.unit = unit;
  return job;
}

}  // namespace spotblue
