#pragma once
// A job file written for one test and removed with it.

#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <string>

#include "spotblue/job/job_file.hpp"

namespace spotblue::test {

inline Job job_of(const std::string& text) {
  const std::filesystem::path folder =
      std::filesystem::temp_directory_path() / ("spotblue-job-" + std::to_string(getpid()));
  std::filesystem::create_directories(folder);
  std::ofstream(folder / "job.toml", std::ios::binary) << text;
  struct Remove {
    const std::filesystem::path& folder;
    ~Remove() { std::filesystem::remove_all(folder); }
  } const remove{folder};
  return read_job(folder / "job.toml");
}

}  // namespace spotblue::test
