#pragma once
// A job judged on a mock-up of its own, both given as the text of their files.

#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <string>

#include "spotblue/check/check.hpp"
#include "spotblue/geometry/mockup_write.hpp"
#include "spotblue/job/job_file.hpp"
#include "spotblue/job/mockup_file.hpp"

namespace spotblue::test {

/// A folder that goes with all that lies in it.
class OwnFolder {
 public:
  explicit OwnFolder(const std::string& name)
      : path_(std::filesystem::temp_directory_path() /
              ("spotblue-" + name + "-" + std::to_string(::getpid()))) {
    std::filesystem::create_directories(path_);
  }
  ~OwnFolder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
  }
  OwnFolder(const OwnFolder&) = delete;
  OwnFolder& operator=(const OwnFolder&) = delete;
  OwnFolder(OwnFolder&&) = delete;
  OwnFolder& operator=(OwnFolder&&) = delete;

  [[nodiscard]] std::filesystem::path with(const std::string& name, const std::string& text) const {
    const std::filesystem::path file = path_ / name;
    std::ofstream(file) << text;
    return file;
  }
  [[nodiscard]] std::filesystem::path at(const std::string& name) const { return path_ / name; }

 private:
  std::filesystem::path path_;
};

/// @param job  without its first lines, which are made here: schema, model and unit.
inline CheckResult checked(const std::string& mockup, const std::string& job) {
  const OwnFolder folder("mocked");
  write_mockup(read_mockup(folder.with("m.mockup.toml", mockup)), folder.at("m.step"));
  return check({read_job(
      folder.with("m.job.toml", "schema = 1\nmodel = \"m.step\"\nunit = \"mm\"\n" + job))});
}

inline std::vector<Finding> of_kind(const CheckResult& result, const std::string& kind) {
  std::vector<Finding> found;
  for (const Finding& finding : result.findings) {
    if (finding.kind == kind) {
      found.push_back(finding);
    }
  }
  return found;
}

}  // namespace spotblue::test
