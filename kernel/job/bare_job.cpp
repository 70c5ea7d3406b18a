#include "spotblue/job/bare_job.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <fstream>
#include <string_view>

namespace spotblue {

LengthUnit unit_of(const FileInfo& file) {
  const bool inches = file.unit.starts_with("inch") || file.unit.starts_with("foot") ||
                      file.unit.starts_with("feet");
  return inches ? LengthUnit::inch : LengthUnit::mm;
}

bool is_step_file(const std::filesystem::path& file) {
  constexpr std::string_view kStart = "ISO-10303-21";
  std::array<char, kStart.size()> start{};
  std::ifstream in(file, std::ios::binary);
  if (in.read(start.data(), start.size())) {
    return std::string_view(start.data(), start.size()) == kStart;
  }
  std::string ending = file.extension().string();
  std::transform(ending.begin(), ending.end(), ending.begin(),
                 [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  return ending == ".step" || ending == ".stp" || ending == ".p21";
}

Job bare_job(const std::filesystem::path& model, LengthUnit unit) {
  Job job;
  job.model = model;
  job.unit = unit;
  return job;
}

}  // namespace spotblue
