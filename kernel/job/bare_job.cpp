#include "spotblue/job/bare_job.hpp"

#include <algorithm>
#include <array>
#include <fstream>
#include <string_view>

#include "spotblue/base/ascii.hpp"

namespace spotblue {

LengthUnit unit_of(const FileInfo& file) {
  const bool inches = file.unit.starts_with("inch") || file.unit.starts_with("foot") ||
                      file.unit.starts_with("feet");
  return inches ? LengthUnit::inch : LengthUnit::mm;
}

bool is_step_file(const std::filesystem::path& file) {
  constexpr std::string_view kStart = "ISO-10303-21";
  constexpr std::string_view kMark = "\xEF\xBB\xBF";  // UTF-8's byte order mark
  std::array<char, kMark.size() + kStart.size()> start{};
  std::ifstream in(file, std::ios::binary);
  if (in.read(start.data(), start.size())) {
    std::string_view text(start.data(), start.size());
    text.remove_prefix(text.starts_with(kMark) ? kMark.size() : 0);
    return text.starts_with(kStart);
  }
  const std::string ending = ascii_lower(file.extension().string());
  return ending == ".step" || ending == ".stp" || ending == ".p21";
}

Job bare_job(const std::filesystem::path& model, LengthUnit unit) {
  Job job;
  job.model = model;
  job.unit = unit;
  return job;
}

}  // namespace spotblue
