#pragma once
/// @file
/// Runs the program as a person would and keeps what it said.

#include <filesystem>
#include <string>

namespace spotblue::test {

struct Said {
  int code = -1;  ///< exit code; -1 when a signal ended it
  std::string out;
  std::string err;
};

/// A folder of its own for one test, removed with it; the program runs in it.
class Bench {
 public:
  Bench();
  ~Bench();
  Bench(const Bench&) = delete;
  Bench& operator=(const Bench&) = delete;

  /// `arguments` as a shell takes them, redirections included.
  [[nodiscard]] Said run(const std::string& arguments) const;
  [[nodiscard]] std::filesystem::path path(const std::string& name) const { return folder_ / name; }
  void write(const std::string& name, const std::string& text) const;
  [[nodiscard]] std::string read(const std::string& name) const;
  /// Files in the folder, to see that none was left behind.
  [[nodiscard]] std::size_t files() const;

 private:
  std::filesystem::path folder_;
};

/// A mock-up in mm: "Collar" with a bore of 44 on "Stud" with an outside of 44.035; invented.
extern const char* const kPressMockup;

}  // namespace spotblue::test
