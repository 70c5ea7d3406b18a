// A program on spotblue that lives in its user's locale, as most with a window do: models each
// mock-up named, looks at it and checks its job, and prints both results as JSON, a line each.

#include <clocale>
#include <filesystem>
#include <iostream>
#include <locale>

#include "spotblue/check/check.hpp"
#include "spotblue/geometry/mockup.hpp"
#include "spotblue/geometry/mockup_write.hpp"
#include "spotblue/job/job_file.hpp"
#include "spotblue/job/mockup_file.hpp"
#include "spotblue/report/json.hpp"

namespace fs = std::filesystem;

// locale_host FOLDER NAME...: FOLDER/NAME.mockup.toml, .job.toml; models go to FOLDER/out.
int main(int argc, char** argv) {
  std::setlocale(LC_ALL, "");
  std::locale::global(std::locale(""));
  // What it says is for a test to read: in no locale.
  std::cout.imbue(std::locale::classic());
  const fs::path folder = argv[1];
  for (int i = 2; i < argc; ++i) {
    const std::string name = argv[i];
    spotblue::write_mockup(spotblue::read_mockup(folder / (name + ".mockup.toml")),
                           folder / "out" / (name + ".step"));
    const spotblue::CheckResult result =
        spotblue::check({spotblue::read_job(folder / (name + ".job.toml"))});
    std::cout << spotblue::check_json(result);
  }
  return 0;
}
