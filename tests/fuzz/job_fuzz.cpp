// Job files: read or refused in one line.

#include "fuzz/fuzzing.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/job/job_file.hpp"

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  static const spotblue::fuzz::OneFile file("fuzzed.job.toml");
  const std::filesystem::path& path = file.write(spotblue::fuzz::text_of(data, size));
  spotblue::fuzz::only_clear_errors(spotblue::shown_name(path), [&] {
    const spotblue::Job job = spotblue::read_job(path);
    spotblue::fuzz::demand(!job.model.empty(), "a job names its model");
  });
  return 0;
}
