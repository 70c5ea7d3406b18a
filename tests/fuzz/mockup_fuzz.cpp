// Mock-ups: read, checked and placed, or refused in one line.

#include <cmath>

#include "fuzz/fuzzing.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/geometry/mockup_placing.hpp"
#include "spotblue/job/mockup_file.hpp"

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  static const spotblue::fuzz::OneFile file("fuzzed.mockup.toml");
  const std::filesystem::path& path = file.write(spotblue::fuzz::text_of(data, size));
  // What it includes lies beside it.
  spotblue::fuzz::only_clear_errors(spotblue::shown_name(path.parent_path()), [&] {
    const spotblue::Mockup mockup = spotblue::read_mockup(path);
    for (const spotblue::PlacedPart& placed : spotblue::place_parts(mockup)) {
      for (const auto& row : placed.frame.rows) {
        for (const double number : row) {
          spotblue::fuzz::demand(std::isfinite(number), "parts stand somewhere");
        }
      }
    }
  });
  return 0;
}
