#pragma once
/// @file
/// Takes a line of a text apart again, so that tests compare what it says and not its blanks.

#include <sstream>
#include <string>
#include <vector>

namespace spotblue::test {

/// The first line that holds `piece`, cut where two or more blanks stand; empty without one.
[[nodiscard]] inline std::vector<std::string> shown_cells(const std::string& text,
                                                          const std::string& piece) {
  std::istringstream lines(text);
  for (std::string line; std::getline(lines, line);) {
    if (line.find(piece) == std::string::npos) {
      continue;
    }
    std::vector<std::string> found;
    for (std::size_t at = line.find_first_not_of(' '); at != std::string::npos;) {
      const std::size_t end = line.find("  ", at);
      found.push_back(line.substr(at, end - at));
      at = end == std::string::npos ? end : line.find_first_not_of(' ', end);
    }
    return found;
  }
  return {};
}

}  // namespace spotblue::test
